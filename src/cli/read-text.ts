import { readFileSync, statSync } from 'node:fs';

/** Largest file that is read, in bytes: four for each of the 20 million characters that a family file may have. */
const MAX_BYTES = 80_000_000;

/** What the system calls a trouble, in words for people. */
const TROUBLES: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'the file may not be read',
  EPERM: 'the file may not be read',
  EISDIR: 'this is a folder, give a file',
  ENOTDIR: 'there is no such file',
};

/**
 * The text of a file in UTF-8.
 *
 * @throws Error with a message for people where the file cannot be read, is too large, or is not UTF-8.
 * @check tests/unit/cli/read-text.test.ts
 */
export function readText(file: string): string {
  const bytes = readBytes(file);
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new Error('the file is not text in UTF-8; save it as UTF-8');
  }
}

function readBytes(file: string): Uint8Array {
  try {
    if (statSync(file).size <= MAX_BYTES) return readFileSync(file);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    throw new Error(TROUBLES[code] ?? `the file cannot be read (${code || error})`);
  }
  throw new Error(`the file is larger than ${MAX_BYTES / 1e6} MB`);
}
