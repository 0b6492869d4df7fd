// Widths are held against the numbers in the font file itself: its advance widths are read from the same WOFF by
// fontkit, another library than the one that the code reads with.

import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { loadTypeface } from '../../../src/lettering/typeface.ts';

const typeface = await loadTypeface();

/** What fontkit says a text is wide, in em. */
function fontkitWidth(text: string, bold: boolean): number {
  const file = typeface.files.find((f) => f.part === 'latin' && f.bold === bold);
  if (!file) throw new Error('The typeface has no such file.');
  const font = create(Buffer.from(file.bytes));
  return font.layout(text, ['kern']).advanceWidth / font.unitsPerEm;
}

describe('widths', () => {
  test.each(['0.55 mm', 'AVATAR To', 'The Bittern blank enters all', 'Übergröße (½)'])(
    '%s, as fontkit has it',
    (text) => {
      for (const bold of [false, true]) expect(typeface.width(text, 1, bold)).toBeCloseTo(fontkitWidth(text, bold), 3);
    },
  );

  test('grow with the size, and bold is wider', () => {
    expect(typeface.width('Bittern', 8)).toBeCloseTo(2 * typeface.width('Bittern', 4), 9);
    expect(typeface.width('Bittern', 4, true)).toBeGreaterThan(typeface.width('Bittern', 4));
  });

  test('nothing is wide without letters', () => expect(typeface.width('', 4)).toBe(0));
});
