import { parseArgs } from 'node:util';

/** What a command line asks for. */
export type Command =
  | { readonly name: 'fit'; readonly file: string; readonly json: boolean; readonly verify: boolean }
  | { readonly name: 'check'; readonly file: string }
  | { readonly name: 'schema' }
  | { readonly name: 'help' };

/** A command, or what is wrong with the words, in one line. */
export type ParsedCommand =
  | { readonly ok: true; readonly command: Command }
  | { readonly ok: false; readonly fault: string };

/** How many files and which options each command takes. */
const GRAMMAR: Readonly<Record<Command['name'], { files: number; options: readonly string[] }>> = {
  fit: { files: 1, options: ['json', 'verify'] },
  check: { files: 1, options: [] },
  schema: { files: 0, options: [] },
  help: { files: 0, options: [] },
};

/**
 * Reads the words after the program's name.
 *
 * @returns help for `--help` anywhere; a fault for unknown commands and options and for files missing or too many.
 * @check tests/unit/cli/parse-command.test.ts
 */
export function parseCommand(words: readonly string[]): ParsedCommand {
  const split = splitWords(words);
  if (typeof split === 'string') return { ok: false, fault: split };
  const { values, positionals } = split;
  if (values.help) return { ok: true, command: { name: 'help' } };
  const [name, ...files] = positionals;
  if (name === undefined) return { ok: false, fault: 'no command given' };
  if (!Object.hasOwn(GRAMMAR, name)) return { ok: false, fault: `there is no command "${name}"` };
  return toCommand(name as Command['name'], files, values);
}

/** Options and the other words, or what is wrong with an option. */
function splitWords(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { json: { type: 'boolean' }, verify: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    });
  } catch (error) {
    return error instanceof Error ? error.message.split('. ')[0] : String(error);
  }
}

function toCommand(
  name: Command['name'],
  files: string[],
  values: { json?: boolean; verify?: boolean },
): ParsedCommand {
  const grammar = GRAMMAR[name];
  const stray = Object.keys(values).find((option) => !grammar.options.includes(option));
  if (stray) return { ok: false, fault: `"${name}" takes no --${stray}` };
  if (files.length < grammar.files) return { ok: false, fault: `"${name}" needs the name of a family file` };
  if (files.length > grammar.files) return { ok: false, fault: `"${name}" takes no "${files[grammar.files]}"` };
  const { json = false, verify = false } = values;
  if (name === 'fit') return { ok: true, command: { name, file: files[0], json, verify } };
  if (name === 'check') return { ok: true, command: { name, file: files[0] } };
  return { ok: true, command: { name } };
}
