import { NM_PER_MM } from '../../geom/point.ts';
import { MAX_BULGE, type Vertex, vertexAt } from '../../geom/vertex.ts';
import type { DrawingOptions, DrawingRead, DrawnPath } from '../drawing.ts';
import { type FileFault, sayText } from '../json/file-fault.ts';
import { cellNumber, type DecimalMark, looksNumeric } from './cell-number.ts';
import { unitOfName } from './length-units.ts';
import { splitRows } from './split-rows.ts';
import { type Columns, columnsOfHeader, columnsOfRow, isHeader, type TableRow } from './table-columns.ts';

/** Longest text that is read, in characters: far more than the points that an outline may have. */
const MOST_CHARACTERS = 5_000_000;

/** Most faults that are told; more of them seldom help. */
const MOST_FAULTS = 20;

/** Farther out no point lies, in nanometres: a thousand kilometres. */
const MOST_FAR = 1e15;

/** An outline as its rows are met. */
interface Started {
  name: string;
  /** Number of its first row. */
  readonly row: number;
  readonly vertices: Vertex[];
}

/** What is known while a table is read. */
interface Table {
  columns: Columns | null;
  mark: { readonly mark: DecimalMark; readonly row: number } | null;
  unit: { readonly name: string; readonly row: number } | null;
  readonly outlines: Started[];
  readonly faults: FileFault[];
  readonly notes: FileFault[];
  /** Whether the next row of numbers starts another outline. */
  fresh: boolean;
  /** What a row by itself calls the next outline. */
  title: string;
}

/**
 * The outlines in a table of points, as files or pasted: rows of x, y and perhaps bulge, an outline a run of rows, parted
 * by empty rows, by another name in the name column, or by another header.
 *
 * @param text CSV with commas, semicolons, tabs, bars or white space; decimal point or comma; with or without a header.
 * @param options a unit of length in place of the table's own.
 * @returns closed paths with their names; or every fault with its row, and no path.
 * @accuracy as written (doubles).
 * @check tests/unit/interchange/csv-read.test.ts
 */
export function readPoints(text: string, options: DrawingOptions = {}): DrawingRead {
  if (text.length > MOST_CHARACTERS) {
    const what = `is longer than ${MOST_CHARACTERS / 1e6} million characters`;
    return { ok: false, faults: [{ path: 'file', what, cure: 'Take the rows of a few outlines only.' }] };
  }
  const { rows, comments, badQuote } = splitRows(text);
  if (badQuote !== null) {
    const cure = 'Close it before the end of its cell, or double it where it stands for itself.';
    return { ok: false, faults: [{ path: `row ${badQuote}`, what: 'has a stray quotation mark', cure }] };
  }
  const table: Table = {
    ...{ columns: null, mark: null, unit: null, fresh: true, title: '' },
    ...{ outlines: [], faults: [], notes: [] },
  };
  for (const row of rows) {
    readRow(row, table);
    if (table.faults.length > MOST_FAULTS) break;
  }
  const stated = statedUnit(table, comments);
  const nmPerUnit = options.nmPerUnit ?? stated ?? NM_PER_MM;
  // An outline that lacks refused rows is not also blamed for having too few.
  const paths = table.faults.length > 0 ? [] : table.outlines.map((outline) => toPath(outline, nmPerUnit, table));
  if (paths.length === 0 && table.faults.length === 0) table.faults.push(nothing());
  if (table.faults.length > 0) return { ok: false, faults: table.faults.slice(0, MOST_FAULTS) };
  return { ok: true, drawing: { paths, nmPerUnit, unitsStated: stated !== null, notes: table.notes } };
}

function nothing(): FileFault {
  return { path: 'table', what: 'holds no points', cure: 'Give x and y of each corner, one corner a row.' };
}

function readRow(row: TableRow, table: Table): void {
  const filled = row.cells.filter((cell) => cell !== '');
  if (filled.length === 0) {
    table.fresh = true;
    return;
  }
  if (isHeader(row)) {
    readHeader(row, table);
    return;
  }
  if (filled.length === 1 && table.fresh && !looksNumeric(filled[0]) && !/^[=+\-@]/.test(filled[0])) {
    table.title = filled[0];
    return;
  }
  if (!table.columns && !row.cells.some(looksNumeric)) {
    tell(table, row, 'has no number and no column called x or y', 'Name the columns x and y, or leave the header out.');
    return;
  }
  table.columns ??= headless(row, table);
  if (table.columns) addPoint(row, table.columns, table);
}

function readHeader(row: TableRow, table: Table): void {
  table.fresh = true;
  const found = columnsOfHeader(row);
  if (!found.ok) {
    tell(table, row, found.what, found.cure);
    return;
  }
  const { nmPerUnit, ignored } = found.columns;
  const before = table.columns?.nmPerUnit ?? nmPerUnit;
  if (nmPerUnit !== null && before !== nmPerUnit)
    tell(table, row, 'names another unit than the header before', 'Give all outlines in one unit.');
  table.columns = { ...found.columns, nmPerUnit: before };
  if (ignored.length === 0) return;
  const names = ignored.slice(0, 5).map(sayText).join(', ');
  table.notes.push({ path: `row ${row.number}`, what: `columns not read: ${names}`, cure: 'Nothing, or rename them.' });
}

function headless(row: TableRow, table: Table): Columns | null {
  const found = columnsOfRow(row);
  if (found.ok) return found.columns;
  tell(table, row, found.what, found.cure);
  return null;
}

function addPoint(row: TableRow, columns: Columns, table: Table): void {
  const { cells } = row;
  const used = cells.reduce((last, cell, i) => (cell === '' ? last : i + 1), 0);
  if (used > columns.width) {
    const cure =
      'Give as many as the rows before; where the comma is the decimal mark, part cells by semicolons or tabs.';
    tell(table, row, `has ${used} cells, the rows before have ${columns.width}`, cure);
    return;
  }
  const x = readCell('x', cells[columns.x], row, table);
  const y = readCell('y', cells[columns.y], row, table);
  const given = columns.bulge === null ? '' : (cells[columns.bulge] ?? '');
  const bulge = given === '' ? 0 : readBulge(given, row, table);
  if (x === null || y === null || bulge === null) return;
  const name = columns.name === null ? null : plainName(cells[columns.name] ?? '');
  startOutline(row, name, table).vertices.push(vertexAt(x, y, bulge));
}

/** The outline that a row belongs to. An empty name is the name above it. */
function startOutline(row: TableRow, name: string | null, table: Table): Started {
  const last = table.outlines.at(-1);
  const same = name === null || name === '' || name === last?.name;
  if (last && same && !table.fresh) return last;
  const label = name || table.title;
  if (label !== '' && table.outlines.some((outline) => outline.name === label)) {
    const what = `${sayText(label)} comes a second time, as an outline of its own`;
    table.notes.push({ path: `row ${row.number}`, what, cure: 'Put its rows together, if they are one outline.' });
  }
  const started = { name: label, row: row.number, vertices: [] };
  table.outlines.push(started);
  table.fresh = false;
  table.title = '';
  return started;
}

/** A name without the apostrophe that keeps a spreadsheet from taking it for a formula. */
function plainName(cell: string): string {
  return cell.replace(/^'(?=\s*[=+\-@＝＋－＠])/, '');
}

function readCell(column: string, cell: string | undefined, row: TableRow, table: Table): number | null {
  const read = cellNumber(cell ?? '');
  if (!read.ok) {
    tell(table, row, `${column} ${read.what}`, read.cure);
    return null;
  }
  if (read.unit !== '' && table.unit && table.unit.name !== read.unit)
    tell(table, row, `${column} is in ${read.unit}, row ${table.unit.row} in ${table.unit.name}`, 'Use one unit.');
  if (read.unit !== '') table.unit ??= { name: read.unit, row: row.number };
  if (read.mark && table.mark && table.mark.mark !== read.mark) {
    const [here, before] = [read.mark, table.mark.mark].map((mark) => (mark === ',' ? 'comma' : 'point'));
    const cure = 'Use one decimal mark, and no thousands separators.';
    tell(table, row, `${column} has a ${here} where row ${table.mark.row} has a ${before}`, cure);
  }
  if (read.mark) table.mark ??= { mark: read.mark, row: row.number };
  return read.value;
}

function readBulge(cell: string, row: TableRow, table: Table): number | null {
  const bulge = readCell('bulge', cell, row, table);
  if (bulge === null || Math.abs(bulge) <= MAX_BULGE) return bulge;
  const cure = 'It is the tangent of a quarter of the arc; if this column is something else, name the columns.';
  tell(table, row, `bulge is ${bulge}, must be from -${MAX_BULGE} to ${MAX_BULGE}`, cure);
  return null;
}

function tell(table: Table, row: TableRow, what: string, cure: string): void {
  table.faults.push({ path: `row ${row.number}`, what, cure });
}

/** The unit of a table by its header, its cells or a comment such as `# units: in`; null where none says. */
function statedUnit({ columns, unit }: Table, comments: readonly string[]): number | null {
  if (columns?.nmPerUnit) return columns.nmPerUnit;
  if (unit) return unitOfName(unit.name);
  const said = comments.flatMap((comment) => /\bunits?[\s:=]+([a-zµμ"]+)/i.exec(comment)?.[1] ?? []);
  return said.map(unitOfName).find((found) => found !== null) ?? null;
}

function toPath({ name, row, vertices }: Started, nmPerUnit: number, table: Table): DrawnPath {
  const [first, last] = [vertices[0], vertices[vertices.length - 1]];
  const open = vertices.length > 1 && first.x === last.x && first.y === last.y ? vertices.slice(0, -1) : vertices;
  const placed = open.map(({ x, y, bulge }) => vertexAt(x * nmPerUnit, y * nmPerUnit, bulge));
  const least = open.some(({ bulge = 0 }) => bulge !== 0) ? 2 : 3;
  const fault = (what: string, cure: string) => table.faults.push({ path: `row ${row}`, what, cure });
  if (placed.length < least)
    fault(`the outline that begins here has ${placed.length} points`, 'Give three or more; an empty row ends it.');
  if (placed.some(({ x, y }) => !(Math.abs(x) <= MOST_FAR && Math.abs(y) <= MOST_FAR)))
    fault('the outline that begins here reaches a thousand kilometres out', 'Check its numbers and the unit.');
  return { vertices: placed, closed: true, label: name };
}
