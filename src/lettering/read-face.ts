import { create, type Font, type GlyphRun } from 'fontkit';
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
  /** The font as the writer of PDF files takes it, so that it sets letters as they were measured, and only once. */
  readonly font: object;
}

/** Most lines that are remembered; a long table says the same words again and again. */
const MOST_LINES = 20_000;

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
  const font = remembering(create(bytes));
  const em = font.unitsPerEm;
  const has = (letter: string) => font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0);
  const width = (text: string) => font.layout(text).advanceWidth / em;
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
  return { has, width, path, font };
}

/** The font with the lines remembered that it has set. */
function remembering(font: Font): Font {
  const runs = new Map<string, GlyphRun>();
  const layout = (text: string): GlyphRun => {
    const run = runs.get(text) ?? font.layout(text);
    if (runs.size >= MOST_LINES) runs.clear();
    runs.set(text, run);
    // The writer of PDF files changes the positions that it is given.
    const positions = run.positions.map((position) => ({ ...position }));
    return { glyphs: run.glyphs, advanceWidth: run.advanceWidth, positions };
  };
  return Object.assign(Object.create(font) as Font, { layout });
}

/** Numbers x, y, x, y, ... as places in em. */
function pairs(numbers: readonly number[], x: number, y: number, em: number): (readonly [number, number])[] {
  return Array.from({ length: numbers.length / 2 }, (_, i) => [
    (numbers[2 * i] + x) / em,
    (numbers[2 * i + 1] + y) / em,
  ]);
}
