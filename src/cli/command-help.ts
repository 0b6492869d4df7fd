import { HELP } from './help-text.ts';

/** What `fit` alone needs explained of its answers. */
const ANSWERS_OF_FIT = /^(Verdicts|All parts within their tolerance|JSON)\n/;

/**
 * What `COMMAND --help` prints.
 *
 * @param name a command, as `fit`.
 * @returns its usage, its options, the exit codes and the caution; all of the help where the command is unknown.
 * @check tests/unit/cli/command-help.test.ts
 */
export function commandHelp(name: string): string {
  const parts = HELP.trimEnd().split('\n\n');
  const usage = parts[1].split('\n').filter((line) => line.startsWith(`  ${name} `));
  if (usage.length === 0) return HELP;
  const own = parts.filter(
    (part) =>
      part.startsWith(`Options of ${name}\n`) ||
      /^(Exit codes|Calculated on)/.test(part) ||
      (name === 'fit' && ANSWERS_OF_FIT.test(part)),
  );
  return `${[usage.join('\n'), ...own, 'Use --help alone to see all commands.'].join('\n\n')}\n`;
}
