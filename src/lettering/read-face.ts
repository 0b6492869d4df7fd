import { parse } from 'opentype.js';
import type { FaceLetters } from './set-line.ts';

/** A curve of a letter, in em, y down from the base line. */
export type FaceCommand =
  | { readonly type: 'M' | 'L'; readonly x: number; readonly y: number }
  | { readonly type: 'Q'; readonly x: number; readonly y: number; readonly x1: number; readonly y1: number }
  | {
      readonly type: 'C';
      readonly x: number;
      readonly y: number;
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
    }
  | { readonly type: 'Z' };

/** One file of the typeface as numbers. */
export interface Face extends FaceLetters {
  /** The outlines of a text that starts at the origin. */
  path(text: string): readonly FaceCommand[];
}

/** Most widths that are remembered; a long table says the same words again and again. */
const MOST_WIDTHS = 20_000;

/**
 * Reads a font file.
 *
 * @param bytes of a WOFF, TTF or OTF file.
 * @throws Error where the file is no font.
 * @check tests/unit/lettering/typeface.test.ts
 */
export function readFace(bytes: Uint8Array): Face {
  const copy = new Uint8Array(bytes);
  const font = parse(copy.buffer);
  const widths = new Map<string, number>();
  const has = (letter: string) => font.charToGlyphIndex(letter) > 0;
  const width = (text: string) => {
    const known = widths.get(text);
    if (known !== undefined) return known;
    if (widths.size >= MOST_WIDTHS) widths.clear();
    const found = font.getAdvanceWidth(text, font.unitsPerEm) / font.unitsPerEm;
    widths.set(text, found);
    return found;
  };
  return { has, width, path: (text) => font.getPath(text, 0, 0, 1).commands };
}
