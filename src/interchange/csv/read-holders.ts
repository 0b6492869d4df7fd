import { type FileFault, sayText } from '../json/file-fault.ts';
import { MAX_AREAS, MAX_HOLDERS } from '../json/record-schema.ts';
import { type HolderColumns, holderColumns, holderHeading } from './holder-columns.ts';
import { holderMark, isHolderMark } from './holder-marks.ts';
import { splitTable, type WordCells } from './split-table.ts';

/** list: one holder and one area a row. matrix: areas along one edge, holders along the other, a mark in each cell. */
export type HoldersForm = 'list' | 'matrix';

/** An area of a table: the groups that it lies in and its own name. */
export interface NamedArea {
  readonly path: readonly string[];
  readonly section?: string;
}

/** What a table says of one holder and one area. */
export interface SaidAccess {
  /** Places among the holders and the areas of the table. */
  readonly holder: number;
  readonly area: number;
  readonly tick: 'must' | 'free' | 'not';
}

/** The areas and holders of a table, and what is wrong in other rows or cells; or why it cannot be read. */
export type HoldersRead =
  | {
      readonly ok: true;
      readonly form: HoldersForm;
      /** What stands in the rows of a matrix. */
      readonly rows: 'holders' | 'areas';
      readonly areas: readonly NamedArea[];
      readonly holders: readonly string[];
      readonly said: readonly SaidAccess[];
      /** Rows or cells that are left out, the first {@link MOST_TOLD}. */
      readonly faults: readonly FileFault[];
      readonly leftOut: number;
    }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/** How a table is read. */
export interface HoldersReading {
  /** What stands in the rows of a matrix; found by its words where not given. */
  readonly rows?: 'holders' | 'areas';
  /** Names of areas that are known already, to know them by. */
  readonly areas?: readonly string[];
}

/** Most rows or cells that are told one by one. */
const MOST_TOLD = 20;

/** Longest name, as in the family file. */
const LONGEST_NAME = 200;

const FORMS =
  'Give a list with the columns holder and area, or a matrix: areas along the first row, holders down the first column.';

/** Things by name, in the order in which they come up. */
class Named<T> {
  readonly list: T[] = [];
  readonly #places = new Map<string, number>();

  place(name: string, make: () => T): number {
    const key = plainName(name);
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    this.#places.set(key, this.list.length);
    return this.list.push(make()) - 1;
  }

  has(name: string): boolean {
    return this.#places.has(plainName(name));
  }
}

interface Found {
  readonly areas: Named<NamedArea>;
  readonly holders: Named<string>;
  readonly said: SaidAccess[];
  readonly faults: FileFault[];
  leftOut: number;
}

/**
 * The holders and areas of a table: CSV with commas, semicolons, bars or tabs, or cells pasted from a spreadsheet. An area
 * may be written with the groups that it lies in, "North / Hall". Cells are text; a formula is never worked out. Rows and
 * cells that say nothing clear are left out and told one by one.
 *
 * @check tests/unit/interchange/read-holders.test.ts
 */
export function readHolders(text: string, reading: HoldersReading = {}): HoldersRead {
  const split = splitTable(text);
  if ('fault' in split) return { ok: false, faults: [split.fault] };
  const { rows } = split;
  const [head] = rows;
  if (!head) return refuse('is empty', FORMS);
  const header = holderColumns(head.cells);
  if (header && !header.ok) return refuse(header.what, header.cure, `row ${head.number}`);
  const columns = header?.columns ?? (isMatrix(rows) ? null : headlessColumns(rows));
  if (columns === undefined) return refuse('is neither a list of holders and areas nor a matrix', FORMS);
  const found: Found = { areas: new Named(), holders: new Named(), said: [], faults: [], leftOut: 0 };
  const inRows = reading.rows ?? rowsOf(rows, reading.areas ?? []);
  if (columns) for (const row of header ? rows.slice(1) : rows) readRow(row, columns, found);
  else readMatrix(rows, inRows, found);
  return answer(found, columns ? 'list' : 'matrix', inRows);
}

function answer(
  { areas, holders, said, faults, leftOut }: Found,
  form: HoldersForm,
  rows: 'holders' | 'areas',
): HoldersRead {
  const most = (count: number, limit: number, what: string) =>
    count > limit
      ? refuse(
          `holds ${count.toLocaleString('en')} ${what}, more than ${limit.toLocaleString('en')}`,
          'Take a part of it.',
        )
      : null;
  const over = most(areas.list.length, MAX_AREAS, 'areas') ?? most(holders.list.length, MAX_HOLDERS, 'holders');
  if (over) return over;
  if (areas.list.length === 0 && holders.list.length === 0 && leftOut === 0)
    return refuse('names no area and no holder', FORMS);
  return { ok: true, form, rows, areas: areas.list, holders: holders.list, said, faults, leftOut };
}

function refuse(what: string, cure: string, path = 'table'): HoldersRead {
  return { ok: false, faults: [{ path, what, cure }] };
}

/** So many rows are looked at to know the form. */
const LOOKED_AT = 60;

/** Whether cells below and right of the first row and column are marks, or all empty under several heads. */
function isMatrix(rows: readonly WordCells[]): boolean {
  const [head, ...body] = rows.slice(0, LOOKED_AT);
  const heads = head.cells.slice(1).filter((cell) => cell !== '');
  if (heads.length === 0 || body.length === 0) return false;
  const corner = head.cells[0] ?? '';
  const isCorner = corner === '' || holderHeading(corner) !== null || /[\\/|]/.test(corner);
  const cells = body.flatMap((row) => row.cells.slice(1)).filter((cell) => cell !== '');
  const marks = cells.filter(isHolderMark).length;
  if (cells.length === 0) return isCorner;
  return marks >= (isCorner ? 0.5 : 0.75) * cells.length && heads.some((cell) => !isHolderMark(cell));
}

/** Columns of a list without a header: holder, area, perhaps a mark; undefined where it is none. */
function headlessColumns(rows: readonly WordCells[]): HolderColumns | undefined {
  const some = rows.slice(0, LOOKED_AT);
  const named = some.filter(
    ({ cells }) => (cells[0] ?? '') !== '' && (cells[1] ?? '') !== '' && !isHolderMark(cells[1]),
  );
  const isWide = some.some(({ cells }) => cells.slice(3).some((cell) => cell !== ''));
  if (isWide || 2 * named.length < some.length) return undefined;
  return { holder: 0, area: 1, mark: 2, section: -1 };
}

/** What stands in the rows of a matrix: by its corner, by areas that are known, by names that are paths; else holders. */
function rowsOf(rows: readonly WordCells[], known: readonly string[]): 'holders' | 'areas' {
  const [head, ...body] = rows;
  const corner = holderHeading(head.cells[0] ?? '');
  if (corner === 'area') return 'areas';
  if (corner === 'holder') return 'holders';
  const areas = new Set(known.map(plainName));
  const areasIn = (names: readonly string[]) =>
    names.filter((name) => areas.has(plainName(pathOf(name).at(-1) ?? '')) || pathOf(name).length > 1).length;
  return areasIn(body.map(({ cells }) => cells[0] ?? '')) > areasIn(head.cells.slice(1)) ? 'areas' : 'holders';
}

function readRow({ number, cells }: WordCells, columns: HolderColumns, found: Found): void {
  const at = (column: number) => cells[column] ?? '';
  const place = (column: number, name: string) => `row ${number}, column ${column + 1} (${name})`;
  for (const name of ['holder', 'area', 'section'] as const) {
    const fault = longFault(at(columns[name]));
    if (!fault) continue;
    leaveOut(found, place(columns[name], name), fault, 'Give a shorter name.');
    return;
  }
  const mark = at(columns.mark) === '' ? ({ says: 'must' } as const) : holderMark(at(columns.mark));
  if (mark.says === 'unclear') {
    leaveOut(found, place(columns.mark, 'enters'), `${sayText(at(columns.mark))} ${mark.what}`, mark.cure);
    return;
  }
  const section = at(columns.section);
  const areas = at(columns.area)
    .split(';')
    .map(pathOf)
    .filter((path) => path.length > 0)
    .map((path) => areaPlace(found, path, section));
  const holder = at(columns.holder) === '' ? null : found.holders.place(at(columns.holder), () => at(columns.holder));
  if (holder === null || mark.says === 'nothing') return;
  for (const area of areas) found.said.push({ holder, area, tick: mark.says });
}

function readMatrix(rows: readonly WordCells[], inRows: 'holders' | 'areas', found: Found): void {
  const [head, ...body] = rows;
  const place = (name: string, what: 'holders' | 'areas') =>
    what === 'areas' ? areaPlace(found, pathOf(name), '') : found.holders.place(name, () => name);
  const across = inRows === 'areas' ? 'holders' : 'areas';
  const tops = head.cells.map((name, k) => {
    if (k === 0) return null;
    const fault = headFault(found, name, across);
    if (fault && name !== '')
      leaveOut(found, `row ${head.number}, column ${k + 1}`, fault, 'Give each a name of its own.');
    return fault ? null : place(name, across);
  });
  for (const { number, cells } of body) {
    const fault = headFault(found, cells[0] ?? '', inRows);
    if (fault) {
      leaveOut(found, `row ${number}, column 1`, fault, 'Give each row a name of its own.');
      continue;
    }
    const row = place(cells[0], inRows);
    for (let k = 1; k < cells.length; k++) {
      const at = `row ${number}, column ${k + 1}`;
      readCell(cells[k], at, inRows === 'areas' ? [tops[k], row] : [row, tops[k]], found);
    }
  }
}

function readCell(
  cell: string,
  at: string,
  [holder, area]: readonly [number | null | undefined, number | null | undefined],
  found: Found,
): void {
  const mark = holderMark(cell);
  if (mark.says === 'nothing') return;
  if (mark.says === 'unclear') leaveOut(found, at, `${sayText(cell)} ${mark.what}`, mark.cure);
  else if (holder == null || area == null)
    leaveOut(found, at, 'stands in a column without a name of its own', 'Give it a name in the first row.');
  else found.said.push({ holder, area, tick: mark.says });
}

/** The place of an area; a later row may say the section that an earlier one did not. */
function areaPlace(found: Found, path: readonly string[], section: string): number {
  const place = found.areas.place(path.join(' / '), () => ({ path }));
  const { list } = found.areas;
  if (section !== '' && list[place].section === undefined) list[place] = { ...list[place], section };
  return place;
}

function headFault(found: Found, name: string, what: 'holders' | 'areas'): string | null {
  if (name === '') return 'is empty';
  const isThere = what === 'areas' ? found.areas.has(pathOf(name).join(' / ')) : found.holders.has(name);
  return isThere ? `${sayText(name)} is there twice` : longFault(name);
}

function longFault(name: string): string | null {
  return name.length > LONGEST_NAME ? `is longer than ${LONGEST_NAME} letters` : null;
}

/** The names along the way to an area: "North / Hall" and "North > Hall" are two; a slash without spaces is part of a name. */
function pathOf(text: string): string[] {
  return text
    .split(/\s\/\s|\s*[>›→]\s*/)
    .map((name) => name.trim())
    .filter((name) => name !== '');
}

function plainName(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}

function leaveOut(found: Found, path: string, what: string, cure: string): void {
  found.leftOut++;
  if (found.faults.length < MOST_TOLD) found.faults.push({ path, what, cure });
}
