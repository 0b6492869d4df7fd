import type { EntryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { readFamily } from '../interchange/json/read.ts';
import { familyJsonSchema } from '../interchange/json/schema.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { JobCancelled, type JobContext } from '../jobs/job.ts';
import { toFitJson, writeFitJson } from './fit-json.ts';
import { fitTable } from './fit-table.ts';
import { HELP } from './help-text.ts';
import { type Command, parseCommand } from './parse-command.ts';

/** What a command needs of the world around it. */
export interface Shell {
  /** The text of a file. @throws Error with a message for people where it cannot be read */
  readText(file: string): string;
  /** Prints results. */
  print(text: string): void;
  /** Prints what is not a result: faults and progress. */
  warn(text: string): void;
  /** Most characters in a line of a table. */
  readonly width: number;
  readonly jobs: JobContext;
}

/** How a command ended, as the exit code of the program. */
export const EXIT = { done: 0, notConfirmed: 1, badInput: 2, stopped: 130 } as const;

/**
 * Does what a command line asks for.
 *
 * @param words the words after the program's name.
 * @returns the exit code; everything said goes through `shell`.
 * @check tests/unit/cli/run-command.test.ts
 */
export async function runCommand(words: readonly string[], shell: Shell): Promise<number> {
  const parsed = parseCommand(words);
  if (!parsed.ok) {
    shell.warn(`${parsed.fault}. Use --help to see the commands.\n`);
    return EXIT.badInput;
  }
  try {
    return await run(parsed.command, shell);
  } catch (error) {
    if (!(error instanceof JobCancelled)) throw error;
    shell.warn('Stopped; nothing was printed.\n');
    return EXIT.stopped;
  }
}

async function run(command: Command, shell: Shell): Promise<number> {
  if (command.name === 'help') shell.print(HELP);
  if (command.name === 'schema') shell.print(`${JSON.stringify(familyJsonSchema(), null, 2)}\n`);
  if (command.name === 'check' || command.name === 'fit') {
    const family = openFamily(command.file, shell);
    if (!family) return EXIT.badInput;
    if (command.name === 'fit') return judge(family, command, shell);
    shell.print(sayContents(family, command.file));
  }
  return EXIT.done;
}

/** The family in a file, or null after saying what is wrong. */
function openFamily(file: string, shell: Shell): Family | null {
  let text: string;
  try {
    text = shell.readText(file);
  } catch (error) {
    shell.warn(`${file}: ${error instanceof Error ? error.message : error}\n`);
    return null;
  }
  const read = readFamily(text);
  if (read.ok) return read.document.family;
  for (const { path, what, cure } of read.faults) shell.warn(`${file}: ${path}: ${what}. ${cure}\n`);
  return null;
}

async function judge(family: Family, { json, verify }: Command & { name: 'fit' }, shell: Shell): Promise<number> {
  const matrix = await catalogue.fitFamily({ family }, shell.jobs);
  const code = verify ? await confirm(family, matrix, shell) : EXIT.done;
  shell.print(json ? writeFitJson(toFitJson(matrix)) : fitTable(family, matrix, shell.width));
  return code;
}

/** Checks every fit by the second method and says which it does not confirm. */
async function confirm(family: Family, matrix: EntryMatrix, shell: Shell): Promise<number> {
  const disagreements = await catalogue.verifyFamily({ family, matrix }, shell.jobs);
  for (const { profile, opening, reasons } of disagreements)
    shell.warn(`not confirmed: ${profile} in ${opening}: ${reasons.join('; ')}\n`);
  const pairs = matrix.profiles.length * matrix.openings.length;
  shell.warn(`${pairs - disagreements.length} of ${pairs} fits confirmed by the second method\n`);
  return disagreements.length > 0 ? EXIT.notConfirmed : EXIT.done;
}

/** What a sound file holds, in one line. */
function sayContents({ profiles, units }: Family, file: string): string {
  const number = (kind: string, one: string, many: string) => {
    const count = profiles.filter((profile) => profile.kind === kind).length;
    return `${count} ${count === 1 ? one : many}`;
  };
  const contents = [
    number('opening', 'opening', 'openings'),
    number('blank', 'blank', 'blanks'),
    number('tool', 'tool', 'tools'),
  ];
  return `${file}: sound, ${contents.join(', ')}, in ${units}\n`;
}
