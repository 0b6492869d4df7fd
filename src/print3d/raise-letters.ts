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

/** One line of letters on a flat face; millimetres. */
export interface LetterLine {
  readonly text: string;
  /** Height of the em as it came out. */
  readonly size: number;
  readonly outlines: readonly Loop[];
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
  const wide = source.width(text, room.size, true);
  const size = wide > room.width ? (room.size * room.width) / wide : room.size;
  const left = x - source.width(text, size, true) / 2;
  const base = y - MIDDLE * size;
  const outlines = source
    .letterOutlines(text, size, true, CURVE)
    .map((loop) => loop.map(([px, py]): readonly [number, number] => [left + px, base + py]));
  return { text, size, outlines };
}
