// Outside truth: the same files read by opentype.js, another library than the one that the code reads with: how wide each
// letter is by itself, and how far its outline reaches. What it says of kerning is wrong for some pairs (it leaves out the
// second of two tables), so lines with kerning are held to Chromium, in tests/browser/page-drawing.test.ts.

import { parse } from 'opentype.js';
import { describe, expect, test } from 'vitest';
import { loadTypeface } from '../../../src/lettering/typeface.ts';

const typeface = await loadTypeface();

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz 0123456789 .,;:!?–—“”‘’()[]&<>+×±−°½%äßçŒ';

function otherReading(bold: boolean) {
  const file = typeface.files.find((f) => f.part === 'latin' && f.bold === bold);
  if (!file) throw new Error('The typeface has no such file.');
  return parse(new Uint8Array(file.bytes).buffer);
}

describe('widths', () => {
  test('of each letter, as opentype.js reads them', () => {
    for (const bold of [false, true]) {
      const font = otherReading(bold);
      for (const letter of LETTERS)
        expect([letter, typeface.width(letter, font.unitsPerEm, bold)]).toEqual([
          letter,
          font.charToGlyph(letter).advanceWidth,
        ]);
    }
  });

  test('of pairs count kerning', () => {
    for (const [pair, less] of [
      ['AV', true],
      ['To', true],
      ['.T', true],
      ['HH', false],
    ] as const) {
      const apart = [...pair].reduce((sum, letter) => sum + typeface.width(letter, 1), 0);
      expect([pair, typeface.width(pair, 1) < apart - 0.01]).toEqual([pair, less]);
    }
  });

  test('grow with the size, and bold is wider', () => {
    expect(typeface.width('Bittern', 8)).toBeCloseTo(2 * typeface.width('Bittern', 4), 9);
    expect(typeface.width('Bittern', 4, true)).toBeGreaterThan(typeface.width('Bittern', 4));
  });

  test('nothing is wide without letters', () => expect(typeface.width('', 4)).toBe(0));
});

describe('letters', () => {
  test('come from the file that has them, and what no file has is missing', () => {
    const { runs } = typeface.setLine('Łódź → A');
    expect(runs.map((run) => [run.kind, run.kind === 'letters' ? run.text : run.letter])).toEqual([
      ['letters', 'Ł'],
      ['letters', 'ód'],
      ['letters', 'ź'],
      ['letters', ' '],
      ['box', '→'],
      ['letters', ' A'],
    ]);
    expect(typeface.missing('µ ≥ Łódź µ')).toEqual(['µ', '≥']);
    expect(typeface.missing('Reed')).toEqual([]);
  });

  test('runs stand side by side and end where the line does', () => {
    const { runs, width } = typeface.setLine('Łódź → A');
    let at = 0;
    for (const run of runs) {
      expect(run.at).toBeCloseTo(at, 12);
      at += run.width;
    }
    expect(at).toBeCloseTo(width, 12);
  });

  test('a letter and its mark are one letter, and control signs are spaces', () => {
    expect(typeface.width('e\u0301', 1)).toBe(typeface.width('\u00e9', 1));
    expect(typeface.missing('a\u0000b\tc\u200b')).toEqual([]);
    expect(typeface.width('a\nb', 1)).toBe(typeface.width('a b', 1));
  });

  test('are there only once they are asked for, and once for all', async () => {
    expect(await loadTypeface()).toBe(typeface);
  });
});

describe('outlines', () => {
  /** Area inside by the sign of the way round, which is that of the non-zero rule where outlines do not overlap. */
  const areaOf = (contours: readonly (readonly (readonly [number, number])[])[]) =>
    Math.abs(
      contours
        .flatMap((contour) => contour.map(([x, y], i) => [x, y, ...contour[(i + 1) % contour.length]]))
        .reduce((sum, [ax, ay, bx, by]) => sum + (ax * by - bx * ay) / 2, 0),
    );

  test.each(['I', 'g', 'Q', '8', '½'])('%s is as wide and as high as opentype.js has it', (letter) => {
    const points = typeface.letterOutlines(letter, 1000, false, 0.01).flat();
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    const { x1, x2, y1, y2 } = otherReading(false).charToGlyph(letter).getBoundingBox();
    const found = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    for (const [i, value] of [x1, x2, y1, y2].entries()) expect(Math.abs(found[i] - value)).toBeLessThan(0.1);
  });

  test('an o has a hole the other way round, and finer pieces change its area by no more than their accuracy', () => {
    const coarse = typeface.letterOutlines('o', 10, false, 0.05);
    const fine = typeface.letterOutlines('o', 10, false, 0.0005);
    expect(coarse).toHaveLength(2);
    expect(fine[0].length).toBeGreaterThan(coarse[0].length);
    const round = 2 * Math.PI * 5;
    expect(Math.abs(areaOf(fine) - areaOf(coarse))).toBeLessThan(2 * round * 0.05);
    expect(areaOf([fine[0]])).toBeGreaterThan(areaOf(fine));
  });

  test('stand one behind the other as wide as the line, and grow with the size', () => {
    const widest = Math.max(...typeface.letterOutlines('Heron', 8).flatMap((contour) => contour.map(([x]) => x)));
    expect(widest).toBeGreaterThan(typeface.width('Hero', 8));
    expect(widest).toBeLessThan(typeface.width('Heron', 8));
    expect(areaOf(typeface.letterOutlines('Heron', 8, true))).toBeCloseTo(
      4 * areaOf(typeface.letterOutlines('Heron', 4, true)),
      9,
    );
  });

  test('nothing repeats a corner, and a missing letter is a box with a hole', () => {
    for (const contour of typeface.letterOutlines('Reed Ł & 8', 5))
      for (const [i, [x, y]] of contour.entries()) expect([x, y]).not.toEqual(contour[(i + 1) % contour.length]);
    const box = typeface.letterOutlines('→', 10);
    expect(box.map(({ length }) => length)).toEqual([4, 4]);
    expect(areaOf(box)).toBeLessThan(areaOf([box[0]]));
    expect(typeface.letterOutlines(' ', 10)).toEqual([]);
  });
});
