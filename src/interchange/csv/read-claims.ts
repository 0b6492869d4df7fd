import type { Claim } from '../../family/claim.ts';
import { type FileFault, sayText } from '../json/file-fault.ts';
import { MAX_CLAIMS } from '../json/record-schema.ts';
import { looksNumeric } from './cell-number.ts';
import { type ClaimColumns, claimColumns, claimHeading } from './claim-columns.ts';
import { claimMark, isClaimMark } from './claim-marks.ts';
import { type WordCells as Row, splitTable } from './split-table.ts';
import { isHeader } from './table-columns.ts';

/** list: one claim a row. matrix: keyways along the first row, blanks down the first column, a mark in each cell. */
export type ClaimsForm = 'list' | 'matrix';

/** How a table is read. */
export interface ClaimsReading {
  /** Of a matrix: the first row has the blanks and the first column the keyways. */
  readonly swapped?: boolean;
}

/** The claims of a table with what is wrong in other rows or cells, or why none can be read. */
export type ClaimsRead =
  | {
      readonly ok: true;
      readonly form: ClaimsForm;
      readonly claims: readonly Claim[];
      /** Rows or cells that are left out, the first {@link MOST_FAULTS}. */
      readonly faults: readonly FileFault[];
      /** How many rows or cells are left out. */
      readonly leftOut: number;
      /** Whether the table says who says so. */
      readonly namesSource: boolean;
    }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/** Most faults that are told. */
export const MOST_FAULTS = 20;

/** Longest name, as in the family file. */
const LONGEST_NAME = 200;

interface Found {
  readonly claims: Claim[];
  readonly faults: FileFault[];
  leftOut: number;
}

const FORMS =
  'Give a list with the columns blank, keyway and enters, or a matrix: keyways along the first row, blanks down the first column.';

/**
 * The claims of a table: CSV with commas, semicolons, bars or tabs, or cells pasted from a spreadsheet. Cells are text;
 * a formula is never worked out. Rows and cells that say nothing clear are left out and told one by one.
 *
 * @check tests/unit/interchange/claims-read.test.ts, tests/laws/claims.test.ts
 */
export function readClaims(text: string, { swapped = false }: ClaimsReading = {}): ClaimsRead {
  const split = splitTable(text);
  if ('fault' in split) return { ok: false, faults: [split.fault] };
  const { rows } = split;
  const [head] = rows;
  if (!head) return refuse('holds no claims', FORMS);
  const header = claimColumns(head.cells);
  if (header && !header.ok) return refuse(header.what, header.cure, `row ${head.number}`);
  const found: Found = { claims: [], faults: [], leftOut: 0 };
  const columns = header?.columns ?? (isMatrix(rows) ? null : headlessColumns(rows));
  if (columns === undefined) return refuse('is neither a list of claims nor a matrix', FORMS);
  if (columns) for (const row of header ? rows.slice(1) : rows) readRow(row, columns, found);
  else readMatrix(rows, swapped, found);
  if (found.claims.length > MAX_CLAIMS)
    return refuse(`holds more than ${MAX_CLAIMS.toLocaleString('en')} claims`, 'Take them in several parts.');
  if (found.claims.length === 0 && found.leftOut === 0) return refuse('says nothing of any pair', FORMS);
  return {
    ok: true,
    form: columns ? 'list' : 'matrix',
    ...found,
    namesSource: columns?.by != null && found.claims.some(({ by }) => by !== undefined),
  };
}

/** Whether a text is a table of claims rather than one of points, by its first lines. */
export function looksLikeClaims(text: string): boolean {
  const lines = text.slice(0, 65_536).split(/\r\n|\r|\n/, 60);
  // The last line may be cut off in the middle.
  const split = splitTable(lines.slice(0, Math.max(1, lines.length - 1)).join('\n'));
  if ('fault' in split) return false;
  const [head] = split.rows;
  if (!head || isHeader(head)) return false;
  if (claimColumns(head.cells)) return true;
  if (head.cells.slice(1).some(looksNumeric)) return false;
  return isMatrix(split.rows) || headlessColumns(split.rows) !== undefined;
}

function refuse(what: string, cure: string, path = 'table'): ClaimsRead {
  return { ok: false, faults: [{ path, what, cure }] };
}

/** So many rows are looked at to know the form. */
const LOOKED_AT = 60;

/** Whether cells below and right of the first row and column are marks as a rule, and what heads them is not. */
function isMatrix(rows: readonly Row[]): boolean {
  const [head, ...body] = rows.slice(0, LOOKED_AT);
  const cells = body.flatMap((row) => row.cells.slice(1)).filter((cell) => cell !== '');
  const marks = cells.filter(isClaimMark).length;
  const corner = head.cells[0] ?? '';
  if (marks === 0 || marks < (isCorner(corner) ? 0.5 : 0.75) * cells.length) return false;
  if (body.some((row) => (row.cells[0] ?? '') === '' || looksNumeric(row.cells[0]) !== looksNumeric(body[0].cells[0])))
    return false;
  const headings = head.cells.slice(1).filter((cell) => cell !== '');
  if (headings.length === 0) return false;
  // A keyway may be called X or 1; then an empty corner, or a word such as "blank" in it, tells a matrix.
  return isCorner(corner) || headings.some((cell) => !isClaimMark(cell));
}

/** Whether the first cell of a table can only be the corner of a matrix: empty, or a word such as "blank". */
function isCorner(cell: string): boolean {
  return cell === '' || claimHeading(cell) !== null;
}

/**
 * The columns of a list without a header: blank, keyway, mark, perhaps source and note; undefined where it is none. What stands in
 * the first cell may tell that it is the corner of a matrix.
 */
function headlessColumns(rows: readonly Row[]): ClaimColumns | undefined {
  const some = rows.slice(0, LOOKED_AT);
  if (isCorner(some[0].cells[0] ?? '')) return undefined;
  const marked = some.filter(({ cells }) => isClaimMark(cells[2] ?? '') && cells[0] !== '' && cells[1] !== '');
  if (marked.length === 0 || 2 * marked.length < some.length) return undefined;
  const width = Math.max(...some.map(({ cells }) => cells.length));
  return { blank: 0, opening: 1, enters: 2, by: width > 3 ? 3 : null, note: width > 4 ? 4 : null };
}

function readRow({ number, cells }: Row, columns: ClaimColumns, found: Found): void {
  const at = (column: number | null) => (column === null ? '' : (cells[column] ?? ''));
  const place = (column: number, name: string) => `row ${number}, column ${column + 1} (${name})`;
  const mark = claimMark(at(columns.enters));
  if (mark.says === 'nothing') {
    leaveOut(found, place(columns.enters, 'enters'), 'is empty', 'Write yes or no.');
    return;
  }
  if (mark.says === 'unclear') {
    leaveOut(found, place(columns.enters, 'enters'), `${sayText(at(columns.enters))} ${mark.what}`, mark.cure);
    return;
  }
  for (const [column, name] of [
    [columns.blank, 'blank'],
    [columns.opening, 'keyway'],
  ] as const) {
    const fault = nameFault(at(column));
    if (!fault) continue;
    leaveOut(found, place(column, name), fault, `Give the name of a ${name}.`);
    return;
  }
  const by = at(columns.by).slice(0, LONGEST_NAME);
  const note = at(columns.note);
  found.claims.push({
    blank: at(columns.blank),
    opening: at(columns.opening),
    enters: mark.says === 'enters',
    ...(by === '' ? {} : { by }),
    ...(note === '' ? {} : { note }),
  });
}

function readMatrix(rows: readonly Row[], swapped: boolean, found: Found): void {
  const [head, ...body] = rows;
  const tops = head.cells.map((name) => ({ name, fault: nameFault(name) }));
  for (const row of body) {
    const fault = nameFault(row.cells[0] ?? '');
    if (fault) leaveOut(found, `row ${row.number}, column 1`, fault, 'Give the name of the row.');
    else for (let k = 1; k < row.cells.length; k++) readMatrixCell(row, k, tops[k], swapped, found);
  }
}

function readMatrixCell(
  { number, cells }: Row,
  k: number,
  top: { readonly name: string; readonly fault: string | null } | undefined,
  swapped: boolean,
  found: Found,
): void {
  const mark = claimMark(cells[k]);
  if (mark.says === 'nothing') return;
  const place = `row ${number}, column ${k + 1}`;
  const why = top ? top.fault : 'is empty';
  if (mark.says === 'unclear') leaveOut(found, place, `${sayText(cells[k])} ${mark.what}`, mark.cure);
  else if (!top || why)
    leaveOut(found, place, `stands in a column whose name ${why}`, 'Give it a name in the first row.');
  else {
    const [blank, opening] = swapped ? [top.name, cells[0]] : [cells[0], top.name];
    found.claims.push({ blank, opening, enters: mark.says === 'enters' });
  }
}

function nameFault(name: string): string | null {
  if (name === '') return 'is empty';
  return name.length > LONGEST_NAME ? `is longer than ${LONGEST_NAME} letters` : null;
}

function leaveOut(found: Found, path: string, what: string, cure: string): void {
  found.leftOut++;
  if (found.faults.length < MOST_FAULTS) found.faults.push({ path, what, cure });
}
