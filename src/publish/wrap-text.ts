import type { TextMeasure } from '../lettering/text-measure.ts';

/** What lines are broken for: their greatest width and the type, in one unit. */
export interface LineRoom {
  readonly width: number;
  /** Height of the em. */
  readonly size: number;
  readonly bold?: boolean;
}

/**
 * A text in lines that are no wider than there is room: broken at spaces (not at no-break ones), a word that is too long by itself between its
 * letters.
 *
 * @returns at least one line; a letter wider than the room stands alone on its line.
 * @check tests/unit/publish/page-parts.test.ts
 */
export function wrapText(text: string, room: LineRoom, measure: TextMeasure): string[] {
  const fits = (line: string) => measure.width(line, room.size, room.bold) <= room.width + 1e-9;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n\t]+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = fits(word) ? [word] : brokenWord(word, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces[pieces.length - 1];
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
}

/** A long word in pieces that fit, by whole characters. */
function brokenWord(word: string, fits: (text: string) => boolean): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && !fits(piece + letter)) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}

/** The text, or as much of its beginning as there is room for, with an ellipsis. */
export function shortenText(text: string, room: LineRoom, measure: TextMeasure): string {
  const fits = (line: string) => measure.width(line, room.size, room.bold) <= room.width + 1e-9;
  if (fits(text)) return text;
  const letters = [...text];
  const start = (count: number) => `${letters.slice(0, count).join('').trimEnd()}…`;
  let [kept, tooMany] = [0, letters.length];
  while (tooMany - kept > 1) {
    const count = (kept + tooMany) >> 1;
    if (fits(start(count))) kept = count;
    else tooMany = count;
  }
  return kept > 0 ? start(kept) : '';
}

/** The lines of a text, the last of so many shortened where it would run on. */
export function wrapUpTo(most: number, text: string, room: LineRoom, measure: TextMeasure): string[] {
  const lines = wrapText(text, room, measure);
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), shortenText(lines.slice(most - 1).join(' '), room, measure)];
}
