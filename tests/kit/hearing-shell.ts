import { runCommand } from '../../src/cli/run-command.ts';
import type { Shell } from '../../src/cli/shell.ts';

/** What a shell is given otherwise than usual; usual is one that writes nothing and never stops a job. */
export type ShellChange = Partial<Omit<Shell, 'jobs'>> & { readonly jobs?: Partial<Shell['jobs']> };

/** A shell in which every file holds this text, and everything that was said in it. */
export function hearingShell(text: string, change: ShellChange = {}) {
  const said = { out: '', err: '' };
  const { jobs, ...rest } = change;
  const shell: Shell = {
    readText: () => text,
    writeText: () => {
      throw new Error('nothing is written here');
    },
    isSameFile: (a, b) => a === b,
    print: (words) => {
      said.out += words;
    },
    warn: (words) => {
      said.err += words;
    },
    width: 120,
    ...rest,
    jobs: { progress: () => {}, cancelled: () => false, pause: () => Promise.resolve(), now: () => 0, ...jobs },
  };
  return { shell, said };
}

/** Runs a command in such a shell: its exit code, and what it said. */
export async function hearCommand(words: readonly string[], text: string, change: ShellChange = {}) {
  const { shell, said } = hearingShell(text, change);
  const code = await runCommand(words, shell);
  return { code, ...said };
}

/** Files that a command writes, by their names; in the folder `full` none can be written. */
export function writtenFiles() {
  const written = new Map<string, string | Uint8Array>();
  const writeText: Shell['writeText'] = (file, content) => {
    if (file.startsWith('full/')) throw new Error('the disk is full');
    written.set(file, content);
  };
  return { written, writeText };
}
