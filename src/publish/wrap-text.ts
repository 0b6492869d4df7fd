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
  const width = (line: string) => measure.width(line, room.size, room.bold);
  const fits = (line: string) => width(line) <= room.width + 1e-9;
  const words = text.split(/[ \n\t]+/).filter((part) => part !== '');
  const lines: string[] = [];
  let line = '';
  let next = 0;
  while (next < words.length) {
    const rest = line === '' ? words.slice(next) : [line, ...words.slice(next)];
    const count = wordsThatFit(rest, room.width, width, fits);
    next += line === '' ? count : count - 1;
    line = rest.slice(0, count).join(' ');
    if (next === words.length && fits(line)) break;
    const pieces = fits(line) || [...line].length === 1 ? [line, ''] : brokenWord(line, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces[pieces.length - 1];
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
}

/**
 * How many words go on one line, one at least. Whole lines are measured only about where the words' own widths add up to
 * the room: setting every beginning of a line would take most of the time of a sheet.
 */
function wordsThatFit(
  words: readonly string[],
  room: number,
  width: (text: string) => number,
  fits: (line: string) => boolean,
): number {
  const line = (count: number) => words.slice(0, count).join(' ');
  if (fits(line(words.length))) return words.length;
  let count = 1;
  for (let sum = width(words[0]); count < words.length - 1; count++) {
    sum += width(' ') + width(words[count]);
    if (sum > room) break;
  }
  while (count > 1 && !fits(line(count))) count--;
  while (count < words.length - 1 && fits(line(count + 1))) count++;
  return count;
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
