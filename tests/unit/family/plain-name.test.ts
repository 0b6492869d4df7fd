import { describe, expect, test } from 'vitest';
import { fileNameText, hyphenedName, idName } from '../../../src/family/plain-name.ts';

describe('names of files', () => {
  test('keep letters of any script and lose what a disk refuses', () => {
    expect(fileNameText('Heron: "main" / Größe 2.5')).toBe('Heron main Größe 2.5');
    expect(fileNameText(' ..hidden?. ')).toBe('hidden');
    expect(fileNameText('…')).toBe('');
    expect(fileNameText('a'.repeat(200))).toHaveLength(80);
    // Letters and their marks, one by one, and an end that is no blank.
    expect(fileNameText('Re\u0301seau')).toBe('R\u00e9seau');
    expect(fileNameText('\u0915\u0941\u0902\u091c\u0940')).toBe('\u0915\u0941\u0902\u091c\u0940');
    expect(fileNameText(`${'a'.repeat(79)} b`)).toBe('a'.repeat(79));
    expect([...fileNameText('\u{1d400}'.repeat(90))]).toHaveLength(80);
  });
});

describe('names as one word', () => {
  test('lose accents, not letters', () => {
    expect(hyphenedName('Ünder / "Zwölf"')).toBe('under-zwolf');
    expect(idName('Häher blank, 6')).toBe('haher-blank-6');
  });

  test('of other scripts keep their letters in files, and not in ids', () => {
    expect(hyphenedName('Зуёк 3')).toBe('зуек-3');
    expect([idName('Зуёк 3'), idName('Зуёк')]).toEqual(['3', '']);
  });

  test('have hyphens between words alone, and an end', () => {
    expect(idName('--a  b--')).toBe('a-b');
    expect(idName('a'.repeat(200))).toHaveLength(80);
  });
});
