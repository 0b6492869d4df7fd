import type { FileFault } from '../json/file-fault.ts';
import { parseTable } from './table-text.ts';

/** A row that is not empty, with its number in the text from 1. */
export interface WordCells {
  readonly number: number;
  readonly cells: readonly string[];
}

/** Longest text that is read, in characters: a list of as many claims as a family may have. */
const MOST_TABLE_CHARACTERS = 8_000_000;

/**
 * The rows of a table of words that are not empty, their cells without what is round them. What parts the cells is what a
 * first line `sep=;` says, else tabs, semicolons or bars where most lines have them, else commas.
 *
 * @returns the rows, or the fault that keeps the table from being split.
 * @source RFC 4180, Common Format for CSV Files, 2005, for quotes; parsed by papaparse.
 * @check tests/unit/interchange/claims-read.test.ts, tests/unit/interchange/read-holders.test.ts,
 *   tests/unit/interchange/csv-access-table.test.ts
 */
export function splitTable(text: string): { readonly rows: readonly WordCells[] } | { readonly fault: FileFault } {
  const fault = (path: string, what: string, cure: string) => ({ fault: { path, what, cure } });
  if (text.length > MOST_TABLE_CHARACTERS)
    return fault(
      'table',
      `is longer than ${MOST_TABLE_CHARACTERS / 1e6} million characters`,
      'Take it in several parts.',
    );
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n|\r/g, '\n');
  const stray = clean.indexOf('\0');
  if (stray >= 0) {
    const row = clean.slice(0, stray).split('\n').length;
    return fault(`row ${row}`, 'has characters that no table has', 'Save the table as CSV in UTF-8 and take that.');
  }
  const stated = /^sep=(.)\n/.exec(clean)?.[1];
  const { rows, badQuote } = parseTable(clean, stated ?? findSeparator(clean));
  if (badQuote !== null) {
    const cure = 'Close it before the end of its cell, or double it where it stands for itself.';
    return fault(`row ${badQuote + 1}`, 'has a stray quotation mark', cure);
  }
  const all = rows.map((cells, i) => ({ number: i + 1, cells: cells.map(plainCell) }));
  const filled = all.filter(({ cells }) => cells.some((cell) => cell !== ''));
  return { rows: stated ? filled.slice(1) : filled };
}

/** What parts the cells of most of the first lines: tabs, semicolons, bars, else commas. */
function findSeparator(text: string): string {
  const lines = text
    .split('\n', 60)
    .map((line) => line.slice(0, 4_000).replace(/"[^"]*"/g, ''))
    .filter((line) => line.trim() !== '');
  const parts = (mark: string) => 2 * lines.filter((line) => line.includes(mark)).length > lines.length;
  return ['\t', ';', '|'].find(parts) ?? ',';
}

/** A cell without what is round it, and without the apostrophe that keeps a spreadsheet from taking it for a formula. */
function plainCell(cell: string): string {
  if (cell === '') return '';
  return cell
    .replace(/[\p{Cc}\s]+/gu, ' ')
    .trim()
    .replace(/^'(?=\s*[=+\-@＝＋－＠])/, '');
}
