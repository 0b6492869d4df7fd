import { EXIT, type Shell, sayFault } from './shell.ts';

/** A file that a command writes. */
export interface OutFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Whether a file may be written: not the family file itself, which is said.
 *
 * @check tests/unit/cli/run-export.test.ts
 */
export function mayWriteOrWarn(name: string, familyFile: string, shell: Shell): boolean {
  if (!shell.isSameFile(familyFile, name)) return true;
  sayFault(name, 'this is the family file itself: give another name after -o', shell);
  return false;
}

/**
 * Writes the files of a command, none where one of them is the family file; stops at the first that cannot be written and
 * says why.
 *
 * @returns the exit code.
 * @check tests/unit/cli/publish.test.ts, tests/unit/cli/print3d.test.ts
 */
export function writeFiles(files: readonly OutFile[], familyFile: string, shell: Shell): number {
  if (!files.every(({ name }) => mayWriteOrWarn(name, familyFile, shell))) return EXIT.badInput;
  for (const { name, content } of files) {
    try {
      shell.writeText(name, content);
    } catch (error) {
      return sayFault(name, error instanceof Error ? error.message : String(error), shell);
    }
  }
  return EXIT.done;
}

/** The name of one of several files: numbered before its ending, with words behind the number where they are given. */
export function numberedName(output: string, index: number, of: number, words?: string): string {
  const number = String(index + 1).padStart(String(of).length, '0');
  return output.replace(/(\.[^./\\]*)$/, `-${number}${words === undefined ? '' : `-${words}`}$1`);
}

/** Files as they are told of: the only one, or the first and the last. */
export function fileSpan(files: readonly OutFile[]): string {
  return files.length > 1 ? `${files[0].name} to ${files[files.length - 1].name}` : files[0].name;
}
