import { describe, expect, test } from 'vitest';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { BAD_FILES } from '../../cases/bad-files/bad-files.ts';
import { familyValue } from '../../cases/bad-files/nearly-sound.ts';

describe('a text that is no sound family file', () => {
  test('the family that the cases start from is sound', () => {
    expect(readFamily(JSON.stringify(familyValue()))).toMatchObject({ ok: true });
  });

  test('case names are unique', () => {
    expect(new Set(BAD_FILES.map((bad) => bad.name)).size).toBe(BAD_FILES.length);
  });

  test.each(BAD_FILES)('$name: is refused with its place, the reason and a cure', ({ text, path, words }) => {
    const read = readFamily(text);
    expect(Object.keys(read).sort()).toEqual(['faults', 'ok']);
    if (read.ok) throw new Error('was accepted');
    const [first] = read.faults;
    expect(first.path).toMatch(path instanceof RegExp ? path : new RegExp(`^${literally(path)}$`));
    expect(first.what).toMatch(words);
    for (const fault of read.faults) {
      expect(fault.path).not.toBe('');
      expect(fault.cure.length).toBeGreaterThan(5);
      expect(fault.what.length).toBeLessThan(400);
    }
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(Object.getOwnPropertyNames(Object.prototype)).toHaveLength(12);
  });
});

/** A text as a pattern that matches only itself. */
function literally(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
