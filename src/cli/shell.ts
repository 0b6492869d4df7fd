import type { JobContext } from '../jobs/job.ts';

/** What a command needs of the world around it. */
export interface Shell {
  /** The text of a file. @throws Error with a message for people where it cannot be read */
  readText(file: string): string;
  /** Writes a file of text or of bytes, in place of what it held before. @throws Error with a message for people where it cannot */
  writeText(file: string, text: string | Uint8Array): void;
  /** Whether two names mean the same file. */
  isSameFile(a: string, b: string): boolean;
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

/** Says what is wrong with a file, without a full stop of its own; returns the exit code. */
export function sayFault(file: string, what: string, shell: Shell): number {
  shell.warn(`${file}: ${what}.\n`);
  return EXIT.badInput;
}

/** The text of a file, or null after saying why it cannot be read. */
export function readOrWarn(file: string, shell: Shell): string | null {
  try {
    return shell.readText(file);
  } catch (error) {
    shell.warn(`${file}: ${error instanceof Error ? error.message : error}\n`);
    return null;
  }
}
