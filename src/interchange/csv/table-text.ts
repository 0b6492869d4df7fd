import Papa from 'papaparse';

/** A table split into cells by papaparse. */
export interface ParsedTable {
  /** One list of cells for each row, empty rows too. */
  readonly rows: readonly (readonly string[])[];
  /** Place in `rows`, from 0, of the first quotation mark that is never closed or stray; null where there is none. */
  readonly badQuote: number | null;
}

/** What a spreadsheet takes for the start of a formula, after blanks too; the wide signs are for East Asian ones. */
const FORMULA = /^\s*[=+\-@＝＋－＠]/;

/**
 * The cells of a text whose lines end with `\n`. Cells stay text: nothing is converted or evaluated.
 *
 * @source RFC 4180, Common Format for CSV Files, 2005, for quotes.
 * @check tests/unit/interchange/csv-read.test.ts
 */
export function parseTable(text: string, delimiter: string): ParsedTable {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: '\n', skipEmptyLines: false });
  const bad = errors.find(({ type }) => type === 'Quotes');
  return { rows: data, badQuote: bad ? (bad.row ?? 0) : null };
}

/**
 * A table as text, lines ending with CR LF. Numbers are written as numbers; a text that a spreadsheet would take for a
 * formula gets an apostrophe before it.
 *
 * @source RFC 4180; OWASP, CSV Injection, for the apostrophe (from memory).
 * @check tests/unit/interchange/csv-write.test.ts
 */
export function formatTable(rows: readonly (readonly (string | number)[])[], delimiter: string): string {
  const mutable = rows.map((row) => [...row]);
  return `${Papa.unparse(mutable, { delimiter, newline: '\r\n', escapeFormulae: FORMULA })}\r\n`;
}
