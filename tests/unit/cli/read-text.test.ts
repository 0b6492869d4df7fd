import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readText } from '../../../src/cli/read-text.ts';

const folder = mkdtempSync(join(tmpdir(), 'sectionary-'));
afterAll(() => rmSync(folder, { recursive: true }));

function fileWith(bytes: Uint8Array | string): string {
  const file = join(folder, `file-${Math.random()}.json`);
  writeFileSync(file, bytes);
  return file;
}

describe('reading the text of a file', () => {
  test('text in UTF-8 comes back as it is, byte-order mark included', () => {
    expect(readText(fileWith('{"name":"Rietgöt €"}'))).toBe('{"name":"Rietgöt €"}');
    expect(readText(fileWith('\uFEFF{}'))).toBe('\uFEFF{}');
  });

  test.each([
    ['a file that is not there', join(folder, 'none.json'), /no such file/],
    ['a folder', folder, /is a folder/],
    ['a file taken for a folder', join(fileWith('{}'), 'x.json'), /no such file/],
    ['text in UTF-16', fileWith(Buffer.from('\uFEFF{"name":1}', 'utf16le')), /not text in UTF-8/],
  ])('%s is told in words', (_, file, words) => {
    expect(() => readText(file)).toThrow(words);
  });

  test('a file without end is refused before it is read', () => {
    const file = fileWith('');
    truncateSync(file, 80_000_001);
    expect(() => readText(file)).toThrow(/larger than 80 MB/);
  });
});
