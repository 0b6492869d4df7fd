import { create } from 'fontkit';
import type { FaceLetters } from './set-line.ts';

/** A part of an outline, in em, y up from the base line: to where it goes, and the points that bend it on its way. */
export interface FaceStep {
  readonly kind: 'move' | 'line' | 'curve' | 'close';
  /** Control points and the end; of a line or a move the end alone, of a close none. */
  readonly points: readonly (readonly [x: number, y: number])[];
}

/** One file of the typeface as numbers. */
export interface Face extends FaceLetters {
  /** The outlines of a text that starts at the origin. */
  path(text: string): FaceStep[];
}

/** Most widths that are remembered; a long table says the same words again and again. */
const MOST_WIDTHS = 20_000;

const KINDS = {
  moveTo: 'move',
  lineTo: 'line',
  quadraticCurveTo: 'curve',
  bezierCurveTo: 'curve',
  closePath: 'close',
} as const;

/**
 * Reads a font file.
 *
 * @param bytes of a WOFF, TTF or OTF file.
 * @throws Error where the file is no font.
 * @check tests/unit/lettering/typeface.test.ts, tests/browser/page-drawing.test.ts
 */
export function readFace(bytes: Uint8Array): Face {
  const font = create(bytes);
  const em = font.unitsPerEm;
  const widths = new Map<string, number>();
  const has = (letter: string) => font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0);
  const width = (text: string) => {
    const known = widths.get(text);
    if (known !== undefined) return known;
    if (widths.size >= MOST_WIDTHS) widths.clear();
    const found = font.layout(text).advanceWidth / em;
    widths.set(text, found);
    return found;
  };
  const path = (text: string) => {
    const { glyphs, positions } = font.layout(text);
    let at = 0;
    return glyphs.flatMap(({ path: { commands } }, i) => {
      const { xAdvance, xOffset, yOffset } = positions[i];
      const [x, y] = [at + xOffset, yOffset];
      at += xAdvance;
      return commands.map(({ command, args }) => ({ kind: KINDS[command], points: pairs(args, x, y, em) }));
    });
  };
  return { has, width, path };
}

/** Numbers x, y, x, y, ... as places in em. */
function pairs(numbers: readonly number[], x: number, y: number, em: number): (readonly [number, number])[] {
  return Array.from({ length: numbers.length / 2 }, (_, i) => [
    (numbers[2 * i] + x) / em,
    (numbers[2 * i + 1] + y) / em,
  ]);
}
