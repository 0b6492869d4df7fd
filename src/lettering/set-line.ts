import type { FacePart } from './face-file.ts';

/** Letters of one file of the typeface that stand together; lengths in em from the start of the line. */
export interface LetterRun {
  readonly kind: 'letters';
  readonly part: FacePart;
  readonly text: string;
  readonly at: number;
  readonly width: number;
}

/** A letter that the typeface has not: a box stands for it. */
export interface BoxRun {
  readonly kind: 'box';
  readonly letter: string;
  readonly at: number;
  readonly width: number;
}

/** One line of text as it is set. */
export interface SetLine {
  readonly runs: readonly (LetterRun | BoxRun)[];
  /** Width of the line, em. */
  readonly width: number;
}

/** The box that stands for a missing letter, em: its lower left corner, its size, and the width of its line. */
export const MISSING_BOX = { left: 0.08, width: 0.44, height: 0.66, line: 0.06, advance: 0.6 } as const;

/** What a file of the typeface says of a text. */
export interface FaceLetters {
  has(letter: string): boolean;
  /** Width of a text with its kerning, em. */
  width(text: string): number;
}

/** A text as it can be set on one line: letters and their marks joined, control signs as spaces. */
export function plainLine(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/\p{Cf}+/gu, '');
}

/**
 * Sets a line: each letter from the first part of the typeface that has it, a box where none has.
 *
 * @param parts in the order in which they are asked.
 * @check tests/unit/lettering/typeface.test.ts
 */
export function setLine(text: string, parts: ReadonlyMap<FacePart, FaceLetters>): SetLine {
  const runs: (LetterRun | BoxRun)[] = [];
  let at = 0;
  for (const piece of splitByPart(plainLine(text), parts)) {
    const width = piece.part === null ? MISSING_BOX.advance : (parts.get(piece.part)?.width(piece.text) ?? 0);
    if (piece.part === null) runs.push({ kind: 'box', letter: piece.text, at, width });
    else runs.push({ kind: 'letters', part: piece.part, text: piece.text, at, width });
    at += width;
  }
  return { runs, width: at };
}

interface Piece {
  readonly part: FacePart | null;
  text: string;
}

function splitByPart(line: string, parts: ReadonlyMap<FacePart, FaceLetters>): Piece[] {
  const pieces: Piece[] = [];
  const asked = [...parts];
  for (const letter of line) {
    const part = asked.find(([, face]) => face.has(letter))?.[0] ?? null;
    const last = pieces.at(-1);
    if (last && part !== null && last.part === part) last.text += letter;
    else pieces.push({ part, text: letter });
  }
  return pieces;
}
