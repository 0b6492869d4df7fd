import type { FileFault } from '../json/file-fault.ts';
import { sayText } from '../json/file-fault.ts';
import type { TableRow } from './table-columns.ts';
import { parseTable } from './table-text.ts';

/** A column of a table of words: what its heading may be. */
export interface WordColumn<Key extends string> {
  readonly key: Key;
  /** Matches the heading in small letters, with single spaces for every space, hyphen and underscore. */
  readonly heading: RegExp;
}

/** A row of a table of words: the cells that have a meaning, by column. Columns that the table lacks are empty. */
export interface WordRow<Key extends string> {
  readonly number: number;
  readonly cells: Readonly<Record<Key, string>>;
}

/** The rows of a table of words, or what is wrong with it. */
export type WordTable<Key extends string> =
  | { readonly ok: true; readonly rows: readonly WordRow<Key>[]; readonly notes: readonly FileFault[] }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/** Longest text that is read, in characters. */
const MOST_CHARACTERS = 5_000_000;

/** What may part cells, the first that parts a heading wins. */
const MARKS = ['\t', ';', '|', ','] as const;

/** So many lines are looked at to find what parts the cells. */
const LOOKED_AT = 200;

/**
 * The rows of a table whose cells are words, pasted or from a file. What parts the cells is what a first line `sep=;`
 * says; else what parts the header into known columns; else tabs, semicolons or bars where most lines have them; else
 * commas. Without a header the columns stand in the order of `columns`.
 *
 * @returns rows with a cell in them, cells trimmed; or the fault that keeps the table from being read.
 * @source RFC 4180, Common Format for CSV Files, 2005, for quotes; parsed by papaparse.
 * @check tests/unit/interchange/csv-names.test.ts
 */
export function readWordTable<Key extends string>(text: string, columns: readonly WordColumn<Key>[]): WordTable<Key> {
  if (text.length > MOST_CHARACTERS) {
    const what = `is longer than ${MOST_CHARACTERS / 1e6} million characters`;
    return { ok: false, faults: [{ path: 'table', what, cure: 'Take a part of it at a time.' }] };
  }
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n|\r/g, '\n');
  const stated = /^sep=(.)\n/.exec(clean)?.[1];
  const { rows: split, badQuote } = parseTable(clean, stated ?? findSeparator(clean, columns));
  if (badQuote !== null) {
    const cure = 'Close it before the end of its cell, or double it where it stands for itself.';
    return { ok: false, faults: [{ path: `row ${badQuote + 1}`, what: 'has a stray quotation mark', cure }] };
  }
  const rows = split
    .map((cells, i) => ({ number: i + 1, cells: cells.map((cell) => plainCell(cell)) }))
    .filter((row) => row.cells.some((cell) => cell !== '') && !(stated && row.number === 1));
  return byColumn(rows, columns);
}

function byColumn<Key extends string>(rows: readonly TableRow[], columns: readonly WordColumn<Key>[]): WordTable<Key> {
  const [head] = rows;
  if (!head) {
    return { ok: false, faults: [{ path: 'table', what: 'is empty', cure: 'Give one row for each entry.' }] };
  }
  const headings = head.cells.map((cell) => meaningOf(cell, columns));
  const headed = headings[0] !== null || headings.filter((key) => key !== null).length > 1;
  const keys = headed ? headings : columns.map(({ key }) => key);
  const faults = headed ? headingFaults(head, headings) : [];
  const notes = headed ? ignoredNote(head, headings) : [];
  const body = headed ? rows.slice(1) : rows;
  if (!headed) faults.push(...tooManyCells(body, keys.length));
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, rows: body.map(({ number, cells }) => ({ number, cells: named(cells, keys, columns) })), notes };
}

function named<Key extends string>(
  cells: readonly string[],
  keys: readonly (Key | null)[],
  columns: readonly WordColumn<Key>[],
): Record<Key, string> {
  const entries = columns.map(({ key }) => [key, cells[keys.indexOf(key)] ?? ''] as const);
  return Object.fromEntries(entries) as Record<Key, string>;
}

function headingFaults(head: TableRow, headings: readonly (string | null)[]): FileFault[] {
  const twice = headings.find((key, i) => key !== null && headings.indexOf(key) !== i);
  if (!twice) return [];
  const place = headings.indexOf(twice);
  const what = `has more than one column that means the same as ${sayText(head.cells[place])}`;
  return [{ path: `row ${head.number}`, what, cure: 'Leave one of them out.' }];
}

function ignoredNote(head: TableRow, headings: readonly (string | null)[]): FileFault[] {
  const ignored = head.cells.filter((cell, i) => cell !== '' && headings[i] === null);
  if (ignored.length === 0) return [];
  const what = `columns not read: ${ignored.slice(0, 5).map(sayText).join(', ')}`;
  return [{ path: `row ${head.number}`, what, cure: 'Nothing, or rename them.' }];
}

function tooManyCells(rows: readonly TableRow[], most: number): FileFault[] {
  const row = rows.find(({ cells }) => cells.slice(most).some((cell) => cell !== ''));
  if (!row) return [];
  const what = `has ${row.cells.length} cells; without a header a row has at most ${most}`;
  return [
    { path: `row ${row.number}`, what, cure: 'Name the columns in a first row, or put texts with commas in quotes.' },
  ];
}

/** A cell without the apostrophe that keeps a spreadsheet from taking it for a formula. */
function plainCell(cell: string): string {
  return cell.trim().replace(/^'(?=\s*[=+\-@＝＋－＠])/, '');
}

function meaningOf<Key extends string>(heading: string, columns: readonly WordColumn<Key>[]): Key | null {
  if (heading.length > 100) return null;
  const plain = heading
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();
  return columns.find((column) => column.heading.test(plain))?.key ?? null;
}

function findSeparator<Key extends string>(text: string, columns: readonly WordColumn<Key>[]): string {
  const lines = text.split('\n', LOOKED_AT).filter((line) => line.trim() !== '');
  const known = (mark: string) =>
    (lines[0] ?? '').split(mark).filter((cell) => meaningOf(cell.replaceAll('"', ''), columns) !== null).length;
  const ofHeader = MARKS.find((mark) => known(mark) > 1);
  if (ofHeader) return ofHeader;
  return (
    MARKS.find((mark) => mark !== ',' && 2 * lines.filter((line) => line.includes(mark)).length > lines.length) ?? ','
  );
}
