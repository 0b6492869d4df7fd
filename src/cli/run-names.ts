import type { Family } from '../family/family.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { JobRefused } from '../jobs/job.ts';
import type { Answer } from '../names/answer.ts';
import type { MisleadingName } from '../names/misleading-name.ts';
import type { Sense } from '../names/register.ts';
import { shown } from './fit-table.ts';
import { EXIT, type Shell } from './shell.ts';

/**
 * Answers a question about a family in plain words; other questions are offered where it cannot be answered.
 *
 * @returns the exit code.
 * @check tests/unit/cli/run-names.test.ts
 */
export async function runAsk(family: Family, question: string, shell: Shell): Promise<number> {
  const answer = await orWarn(() => catalogue.askFamily({ family, question }, shell.jobs), shell);
  if (!answer) return EXIT.badInput;
  shell.print(`${answerText(answer)}\n`);
  return EXIT.done;
}

function answerText({ sentences, choices }: Answer): string {
  return [...sentences, ...choices.map(({ question }) => `- ${question}`)].map(shown).join('\n');
}

/**
 * Prints the register of a family and the names in it that mislead.
 *
 * @returns the exit code.
 * @check tests/unit/cli/run-names.test.ts
 */
export async function runNames(family: Family, json: boolean, shell: Shell): Promise<number> {
  const names = await orWarn(() => catalogue.listNames({ family }, shell.jobs), shell);
  if (!names) return EXIT.badInput;
  const text = json
    ? `${JSON.stringify({ names: names.senses, misleading: names.misleading }, null, 2)}\n`
    : `${names.senses.map(line).join('\n')}\n\n${sayMisleading(names.misleading)}`;
  shell.print(text);
  return EXIT.done;
}

/** One name of the register in one line: its text, its kind, and what it stands for. */
function line({ text, kind, section, chambers, scheme, supersededBy }: Sense): string {
  const parts = [
    kind,
    ...(section === null ? [] : [`section ${section}`]),
    ...(chambers === null ? [] : [`${chambers} chambers`]),
    ...(scheme === null ? [] : [`in "${scheme}"`]),
    ...(supersededBy === null ? [] : [`now ${supersededBy}`]),
  ];
  return shown(`${text}: ${parts.join(', ')}`);
}

function sayMisleading(names: readonly MisleadingName[]): string {
  if (names.length === 0) return 'No name misleads.\n';
  const told = names.map(({ words, why, renames }) => {
    const instead = renames.length > 0 ? ` Instead: ${renames.map(({ to }) => to).join(', ')}.` : '';
    return shown(`${words} ${why}${instead}`);
  });
  return `Names that mislead\n${told.join('\n')}\n`;
}

/** The result of a job, or null after saying why it was refused. */
async function orWarn<Output>(run: () => Promise<Output>, shell: Shell): Promise<Output | null> {
  try {
    return await run();
  } catch (error) {
    if (!(error instanceof JobRefused)) throw error;
    shell.warn(`${error.message}.\n`);
    return null;
  }
}
