import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** What the system calls a trouble, in words for people. */
const TROUBLES: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder',
  ENOTDIR: 'there is no such folder',
  EACCES: 'the file may not be written',
  EPERM: 'the file may not be written',
  EROFS: 'the disk may not be written',
  EISDIR: 'this is a folder, give a file',
  ENOSPC: 'the disk is full',
};

/**
 * Writes a file, text in UTF-8, in place of what it held.
 *
 * @throws Error with a message for people where the file cannot be written.
 * @check tests/unit/cli/write-text.test.ts
 */
export function writeText(file: string, text: string | Uint8Array): void {
  try {
    writeFileSync(file, text);
  } catch (error) {
    throw new Error(writeTrouble(error));
  }
}

/** Why something cannot be written, in words for people, of what the system threw. @check tests/unit/cli/write-text.test.ts */
export function writeTrouble(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return TROUBLES[code] ?? `the file cannot be written (${code || error})`;
}

/** Whether two names mean the same file, seen from where the program runs. */
export function isSameFile(a: string, b: string): boolean {
  return resolve(a) === resolve(b);
}
