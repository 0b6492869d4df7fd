import type { Family } from '../family/family.ts';
import { type FamilyDocument, readFamily } from '../interchange/json/read.ts';
import { familyJsonSchema } from '../interchange/json/schema.ts';
import { JobCancelled } from '../jobs/job.ts';
import { commandHelp } from './command-help.ts';
import { HELP } from './help-text.ts';
import type { CapacityCommand } from './parse-capacity.ts';
import { type Command, parseCommand } from './parse-command.ts';
import { runCapacity } from './run-capacity.ts';
import { runClaims } from './run-claims.ts';
import { runExport } from './run-export.ts';
import { runFit } from './run-fit.ts';
import { runGauge } from './run-gauge.ts';
import { runGrow } from './run-grow.ts';
import { runIdentify } from './run-identify.ts';
import { runAsk, runNames } from './run-names.ts';
import { runPassage } from './run-passage.ts';
import { runPlan } from './run-plan.ts';
import { runPrint3d } from './run-print3d.ts';
import { runPublish } from './run-publish.ts';
import { runStrength } from './run-strength.ts';
import { runTiers } from './run-tiers.ts';
import { EXIT, readOrWarn, type Shell } from './shell.ts';

/** A command that works on a family. */
type FamilyCommand = Extract<Command, { file: string }>;

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
  if (command.name === 'help') shell.print(command.about === undefined ? HELP : commandHelp(command.about));
  if (command.name === 'schema') shell.print(`${JSON.stringify(familyJsonSchema(), null, 2)}\n`);
  if (command.name === 'plan') return runPlan(command, shell, openFamily);
  if (command.name === 'capacity') return runCapacityOf(command, shell);
  if (!('file' in command)) return EXIT.done;
  const document = openFamily(command.file, shell);
  return document ? runOnFamily(document, command, shell) : EXIT.badInput;
}

/** Keys of a family, or of a system without one. */
async function runCapacityOf(command: CapacityCommand, shell: Shell): Promise<number> {
  if (command.file === undefined) return runCapacity(null, command, shell);
  const document = openFamily(command.file, shell);
  return document ? runCapacity(document.family, command, shell) : EXIT.badInput;
}

function runOnFamily(document: FamilyDocument, command: FamilyCommand, shell: Shell): number | Promise<number> {
  const { family } = document;
  switch (command.name) {
    case 'fit':
      return runFit(document, command, shell);
    case 'identify':
      return runIdentify(family, command, shell);
    case 'export':
      return runExport(family, command, shell);
    case 'claims':
      return runClaims(family, command, shell);
    case 'passage':
      return runPassage(family, command, shell);
    case 'gauge':
      return runGauge(family, command, shell);
    case 'grow':
      return runGrow(family, command, shell);
    case 'ask':
      return runAsk(family, command.question, shell);
    case 'names':
      return runNames(family, command.json, shell);
    case 'strength':
      return runStrength(family, command, shell);
    case 'print3d':
      return runPrint3d(family, command, shell);
    case 'publish':
      return runPublish(family, command, shell);
    case 'tiers':
      return runTiers(family, command, shell);
    default:
      shell.print(sayContents(family, command.file));
      return EXIT.done;
  }
}

/** The family in a file, or null after saying what is wrong. */
function openFamily(file: string, shell: Shell): FamilyDocument | null {
  const text = readOrWarn(file, shell);
  if (text === null) return null;
  const read = readFamily(text);
  if (read.ok) return read.document;
  for (const { path, what, cure } of read.faults) shell.warn(`${file}: ${path}: ${what}. ${cure}\n`);
  return null;
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
