import type { Loop } from './solids.ts';

/** Where outlines of letters come from; sizes in the unit that outlines are wanted in. */
export interface LetterSource {
  width(text: string, size: number, bold?: boolean): number;
  letterOutlines(text: string, size: number, bold?: boolean, accuracy?: number): readonly Loop[];
  missing(text: string): readonly string[];
}

/** How far letters stand out, and how far they reach into what they stand on; millimetres. */
export const RAISED = { out: 0.6, in: 0.3 } as const;

/** Middle of the letters over their base line, in em: half of a capital's height. */
const MIDDLE = 0.335;

/** Greatest distance of a curve from its chords, millimetres. */
const CURVE = 0.02;

/** Letters smaller than this are not raised at all: no printer shows them. */
const LEAST_SIZE = 1;

/** One line of letters on a flat face; millimetres. */
export interface LetterLine {
  readonly text: string;
  /** Height of the em as it came out. */
  readonly size: number;
  /** None where the letters came out too small to be raised. */
  readonly outlines: readonly Loop[];
}

/** Letters are set smaller than this share of the size asked for only where their own room does not allow more. */
const LEAST_SHARE = 0.6;

/**
 * One size for several lines: what all of them have room for, but not much less than the size asked for because of one
 * long line.
 *
 * @param size asked for, millimetres.
 * @check tests/unit/print3d/raise-letters.test.ts
 */
export function commonSize(
  source: LetterSource,
  lines: readonly { readonly text: string; readonly width: number }[],
  size: number,
): number {
  const sizes = lines.map(({ text, width }) => sizeWithin(source, text, width, size));
  return Math.max(LEAST_SHARE * size, Math.min(size, ...sizes));
}

/** The size of one line, at most the one asked for, at which it is no wider than its room. */
function sizeWithin(source: LetterSource, text: string, width: number, size: number): number {
  const wide = source.width(text, size, true);
  return wide > width ? (size * width) / wide : size;
}

/**
 * A line of bold letters about a middle, as large as asked for or as the room allows.
 *
 * @param room its width and the size asked for, millimetres.
 * @check tests/unit/print3d/raise-letters.test.ts
 */
export function fitLetters(
  source: LetterSource,
  text: string,
  room: { readonly width: number; readonly size: number },
  [x, y]: readonly [number, number],
): LetterLine {
  const size = sizeWithin(source, text, room.width, room.size);
  if (size < LEAST_SIZE) return { text, size, outlines: [] };
  const left = x - source.width(text, size, true) / 2;
  const base = y - MIDDLE * size;
  const outlines = source
    .letterOutlines(text, size, true, CURVE)
    .map((loop) => loop.map(([px, py]): readonly [number, number] => [left + px, base + py]));
  return { text, size, outlines };
}
