import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { isSameFile, writeText } from '../../../src/cli/write-text.ts';

const folder = mkdtempSync(join(tmpdir(), 'write-text-'));

describe('writing a file', () => {
  afterAll(() => rmSync(folder, { recursive: true }));

  it('writes UTF-8 in place of what was there', () => {
    const file = join(folder, 'a.svg');
    writeText(file, 'a long text that was there');
    writeText(file, 'Rietgöt €');
    expect(readFileSync(file, 'utf8')).toBe('Rietgöt €');
  });

  it.each([
    ['missing/a.svg', /^there is no such folder$/],
    ['', /^this is a folder, give a file$/],
  ])('says for people why "%s" cannot be written', (name, words) => {
    expect(() => writeText(join(folder, name), 'x')).toThrow(words);
  });

  it('knows a file by several names', () => {
    expect(isSameFile('a/../b.json', './b.json')).toBe(true);
    expect(isSameFile('a.json', 'b.json')).toBe(false);
  });
});
