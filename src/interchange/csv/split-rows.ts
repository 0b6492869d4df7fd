import { looksNumeric } from './cell-number.ts';
import { columnsOfHeader, type TableRow } from './table-columns.ts';
import { parseTable } from './table-text.ts';

/** A table split into cells, its comments apart. */
export interface SplitTable {
  readonly rows: readonly TableRow[];
  /** What stands behind `#` at the start of a row. */
  readonly comments: readonly string[];
  /** Number of the row whose quotation mark is never closed, or closed in the middle of a cell; null where none is. */
  readonly badQuote: number | null;
}

/** So many lines are looked at to find what parts the cells. */
const LOOKED_AT = 200;

/**
 * Splits a table into rows and cells. What parts the cells is what a first line `sep=;` says; else what parts the header
 * into columns called x and y; else tabs, semicolons or bars where they part numbers, white space, commas.
 *
 * @returns every row, empty ones too, cells trimmed; comments apart.
 * @source RFC 4180, Common Format for CSV Files, 2005, for quotes; parsed by papaparse.
 * @check tests/unit/interchange/csv-read.test.ts
 */
export function splitRows(text: string): SplitTable {
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n|\r/g, '\n');
  const stated = /^sep=(.)\n/.exec(clean)?.[1];
  const separator = stated ?? findSeparator(clean);
  const even = separator === ' ' ? clean.split('\n').map(withTabs).join('\n') : clean;
  const delimiter = separator === ' ' ? '\t' : separator;
  const table = parseTable(even, delimiter);
  const all = table.rows.map((cells, i) => ({ number: i + 1, cells: cells.map((cell) => cell.trim()) }));
  const isComment = ({ cells }: TableRow) =>
    cells[0]?.startsWith('#') && cells.every((c, i) => i === 0 || !isNumber(c));
  const rows = all.filter((row) => !isComment(row) && !(stated && row.number === 1));
  const comments = all.filter(isComment).map(({ cells }) => cells.join(' ').slice(1).trim());
  return { rows, comments, badQuote: table.badQuote === null ? null : table.badQuote + 1 };
}

function isNumber(cell: string): boolean {
  return /^[+\-−]?[\d.,]+([eE][+-]?\d+)?$/.test(cell);
}

/** A number that no comma ends, as it would if commas parted the cells. */
function isWord(word: string): boolean {
  return isNumber(word) && !word.endsWith(',');
}

/** Cells parted by white space parted by tabs; a unit in brackets stays with its name. */
function withTabs(line: string): string {
  return line
    .trim()
    .replace(/\s+/g, '\t')
    .replace(/\t(?=[([])/g, '');
}

function findSeparator(text: string): string {
  const lines = text
    .split('\n', LOOKED_AT)
    .map((line) =>
      line.replace(/"(?<=(?:^|[\t;|,]\s*)")([^"]*)"/g, (_, inner: string) => inner.replace(/[\t;|,]/g, '.')).trim(),
    )
    .filter((line) => line !== '' && !line.startsWith('#'));
  const ofHeader = ['\t', ';', '|', ','].find((mark) => partsHeader(lines[0] ?? '', mark));
  if (ofHeader) return ofHeader;
  const partsNumbers = (mark: string) =>
    lines.filter((line) => line.split(mark).filter(looksNumeric).length > 1).length;
  const plain = ['\t', ';', '|'].find((mark) => 2 * partsNumbers(mark) > lines.length);
  if (plain) return plain;
  const numbers = lines.filter((line) => /^[+\-−]?[.,]?\d/.test(line));
  const spaced = numbers.map((line) => line.split(/\s+/)).filter((words) => words.length > 1 && words.every(isWord));
  if (2 * spaced.length > numbers.length) return ' ';
  return 2 * lines.filter((line) => line.includes(',')).length > lines.length ? ',' : ' ';
}

function partsHeader(line: string, mark: string): boolean {
  const cells = line.split(mark);
  return cells.length > 1 && columnsOfHeader({ number: 1, cells }).ok;
}
