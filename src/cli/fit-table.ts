import type { EntryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import type { Fit, Verdict } from '../fit/fit.ts';
import type { ThreeWay } from '../fit/judge-tolerance.ts';
import { clearanceUm } from './fit-json.ts';

/** A sign for each verdict, told apart without colour. */
export const MARKS: Readonly<Record<Verdict, string>> = { enters: '+', tight: '~', blocked: 'x' };

/** A second sign, for all parts within their tolerance. */
const THREE_WAY_MARKS: Readonly<Record<ThreeWay, string>> = { always: 'A', depends: 'D', never: 'N' };

/** Widest a heading may be before it is broken into lines. */
const HEADING_WIDTH = 10;

/** Widest the name of a blank or tool may be before it is broken into lines. */
const LABEL_WIDTH = 30;

/**
 * The matrix of a family as a table: openings as columns, blanks and tools as rows, in each cell a mark and the
 * margin in micrometres, and, where it is given, a second mark for all parts within their tolerance. Long names are
 * broken into lines; openings that do not fit side by side go into further tables below.
 *
 * @param width most characters in a line, as far as one column allows.
 * @param conditions under which the pairs were judged, in words, each starting a part of the title.
 * @param threeWay the answer for all parts within their tolerance, `[profile][opening]`.
 * @check tests/unit/cli/fit-table.test.ts
 */
export function fitTable(
  family: Family,
  matrix: EntryMatrix,
  width: number,
  conditions: readonly string[] = [],
  threeWay?: readonly (readonly ThreeWay[])[],
): string {
  const names = shownNames(family);
  const title = [sayContents(family, matrix), ...conditions].join(', ');
  if (matrix.openings.length === 0 || matrix.profiles.length === 0) return `${title}\nNothing to judge.\n`;
  const labels = matrix.profiles.map((id) => wrap(names.get(id) ?? id, LABEL_WIDTH));
  const columns = matrix.openings.map((id, k) =>
    toColumn(
      wrap(names.get(id) ?? id, HEADING_WIDTH),
      matrix.fits.map((row, i) => toCell(row[k], threeWay?.[i][k])),
    ),
  );
  const labelWidth = Math.max(...labels.flat().map(lengthOf));
  const blocks = sideBySide(columns, width - labelWidth).map((block) => layOut(labels, labelWidth, block));
  return `${[title, ...blocks, threeWay ? `${LEGEND}\n${THREE_WAY_LEGEND}` : LEGEND].join('\n\n')}\n`;
}

/** The names of a family's profiles by their ids, fit for a terminal. */
export function shownNames(family: Family): ReadonlyMap<string, string> {
  return new Map(family.profiles.map((profile) => [profile.id, shown(profile.name)]));
}

/** What is judged, in words. */
function sayContents({ name, runningClearance }: Family, { profiles, openings }: EntryMatrix): string {
  const entrants = count(profiles.length, 'blank or tool', 'blanks and tools');
  const keyways = count(openings.length, 'opening', 'openings');
  return `${shown(name)}: ${entrants} in ${keyways}, running clearance ${runningClearance / 1e3} um`;
}

const LEGEND = `+ enters   the margin, in um, is the gap all round in the best placement
~ tight    goes in with less than the running clearance; 0 where it touches on both sides
x blocked  the margin is minus the depth by which it still collides in the best placement`;

const THREE_WAY_LEGEND = `A always   all parts within their tolerance go together
D depends  some parts within their tolerance go together, some do not
N never    no parts within their tolerance go together`;

/** One opening: the lines of its heading, and a cell for each row. */
interface Column {
  readonly heading: readonly string[];
  readonly cells: readonly string[];
  readonly width: number;
}

function toCell(fit: Fit, threeWay: ThreeWay | undefined): string {
  const margin = `${MARKS[fit.verdict]} ${clearanceUm(fit).toFixed(1).padStart(7)}`;
  return threeWay ? `${margin} ${THREE_WAY_MARKS[threeWay]}` : margin;
}

function toColumn(heading: readonly string[], cells: readonly string[]): Column {
  return { heading, cells, width: Math.max(...[...heading, ...cells].map(lengthOf)) };
}

/** Columns in groups that fit into `width`, at least one in each. */
function sideBySide(columns: readonly Column[], width: number): Column[][] {
  const blocks: Column[][] = [];
  let room = 0;
  for (const column of columns) {
    room -= column.width + 2;
    if (room < 0 || blocks.length === 0) {
      blocks.push([]);
      room = width - column.width - 2;
    }
    blocks[blocks.length - 1].push(column);
  }
  return blocks;
}

/** Headings at the foot of their lines, then the rows, a longer label running on below its first line. */
function layOut(labels: readonly string[][], labelWidth: number, columns: readonly Column[]): string {
  const headingLines = Math.max(...columns.map((column) => column.heading.length));
  const heading = Array.from({ length: headingLines }, (_, line) =>
    toLine('', labelWidth, columns, (column) => column.heading[line - headingLines + column.heading.length] ?? ''),
  );
  const rows = labels.flatMap(([first, ...more], i) => [
    toLine(first, labelWidth, columns, (column) => column.cells[i]),
    ...more,
  ]);
  return [...heading, ...rows].join('\n');
}

function toLine(
  label: string,
  labelWidth: number,
  columns: readonly Column[],
  cellOf: (column: Column) => string,
): string {
  const cells = columns.map((column) => `  ${' '.repeat(column.width - lengthOf(cellOf(column)))}${cellOf(column)}`);
  return `${label}${' '.repeat(labelWidth - lengthOf(label))}${cells.join('')}`.trimEnd();
}

/** A text in lines of at most `width`, broken between words where it can be. */
function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').flatMap((w) => pieces(w, width))) {
    const joined = `${lines[lines.length - 1]} ${word}`;
    if (lines.length > 0 && lengthOf(joined) <= width) lines[lines.length - 1] = joined;
    else lines.push(word);
  }
  return lines;
}

/** A word in pieces of at most `width`. */
function pieces(word: string, width: number): string[] {
  const letters = [...word];
  return Array.from({ length: Math.ceil(letters.length / width) }, (_, i) =>
    letters.slice(i * width, (i + 1) * width).join(''),
  );
}

/** Length of a text in characters. */
function lengthOf(text: string): number {
  return [...text].length;
}

/** A name fit for a terminal: control characters, which could move the cursor, become spaces. */
export function shown(name: string): string {
  return name
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/ +/g, ' ')
    .trim();
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}
