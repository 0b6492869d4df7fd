import type { AccessTable } from '../../plan/access-table.ts';
import { type FileFault, sayText } from '../json/file-fault.ts';
import { splitTable, type WordCells } from './split-table.ts';

/** A table of what must enter what, with a name for each row and column. */
export interface NamedAccessTable {
  readonly table: AccessTable;
  readonly sections: readonly string[];
  readonly blanks: readonly string[];
}

/** The table, or all that is wrong with the text, the first faults of many. */
export type AccessTableRead =
  | { readonly ok: true; readonly read: NamedAccessTable }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/** Most sections and blanks of one table. */
const MOST_SECTIONS = 256;
const MOST_BLANKS = 640;

/** Most faults that are told. */
const MOST_FAULTS = 12;

/** What a cell may hold. */
const MARKS: Readonly<Record<string, 0 | 1 | null>> = { '1': 1, '0': 0, '*': null };

/**
 * A bare matrix: one row a section, one column a blank, in each cell 1 (must enter), 0 (must not) or * (either). Names
 * of blanks may stand in a first row, names of sections in a first column; where there are none they are counted.
 *
 * @check tests/unit/interchange/csv-access-table.test.ts
 */
export function readAccessTable(text: string): AccessTableRead {
  const split = splitTable(text);
  if ('fault' in split) return { ok: false, faults: [split.fault] };
  const { rows } = split;
  if (rows.length === 0) return fault('table', 'is empty', 'Give one row for each section, one cell for each blank.');
  return takeApart(rows);
}

function fault(path: string, what: string, cure: string): AccessTableRead {
  return { ok: false, faults: [{ path, what, cure }] };
}

function isMark(cell: string): boolean {
  return Object.hasOwn(MARKS, cell);
}

function takeApart(rows: readonly WordCells[]): AccessTableRead {
  const head = rows[0].cells.slice(1).some((cell) => !isMark(cell)) || rows[0].cells[0] === '' ? rows[0] : null;
  const mixed = head ? mixedFaults(head) : [];
  if (mixed.length > 0) return { ok: false, faults: mixed.slice(0, MOST_FAULTS) };
  const body = head ? rows.slice(1) : rows;
  if (body.length === 0)
    return fault(`row ${rows[0].number}`, 'names blanks, and no section follows', 'Give one row for each section.');
  const named = body.some(({ cells }) => !isMark(cells[0]));
  const offset = named ? 1 : 0;
  // A first row may name the corner or leave it out.
  const corner = head && named && head.cells.length >= body[0].cells.length ? 1 : 0;
  const columns = head ? head.cells.length - corner : body[0].cells.length - offset;
  const [sections, blanks] = [
    body.map(({ cells }, i) => (named ? cells[0] : `section ${i + 1}`)),
    Array.from({ length: columns }, (_, j) => head?.cells[j + corner] || `blank ${j + 1}`),
  ];
  const faults = [
    ...sizeFaults(body.length, columns),
    ...nameFaults(sections, (i) => `row ${body[i].number}, column 1`),
    ...nameFaults(blanks, (j) => `row ${head?.number ?? 1}, column ${j + corner + 1}`),
    ...body.flatMap((row) => cellFaults(row, columns, offset)),
  ];
  if (faults.length > 0) return { ok: false, faults: faults.slice(0, MOST_FAULTS) };
  const table = body.map(({ cells }) => cells.slice(offset, offset + columns).map((cell) => MARKS[cell]));
  return { ok: true, read: { table, sections, blanks } };
}

/** Cells of a first row that are no marks beside others that are: a slip of the pen is not taken for a heading. */
function mixedFaults({ number, cells }: WordCells): FileFault[] {
  const [corner, ...others] = cells;
  if (corner === '' || !(isMark(corner) || others.some(isMark))) return [];
  const cure =
    'Write 1, 0 or *. Where the row names blanks, leave its first cell empty, or call none of them 1, 0 or *.';
  const first = isMark(corner) ? 0 : 1;
  return cells.flatMap((cell, j) =>
    j < first || isMark(cell)
      ? []
      : [{ path: `row ${number}, column ${j + 1}`, what: `is ${sayText(cell)}, which is no mark`, cure }],
  );
}

function sizeFaults(sections: number, blanks: number): FileFault[] {
  const faults: FileFault[] = [];
  if (blanks < 1) faults.push({ path: 'table', what: 'has no blanks', cure: 'Give one cell for each blank.' });
  if (sections > MOST_SECTIONS || blanks > MOST_BLANKS)
    faults.push({
      path: 'table',
      what: `has ${sections} sections and ${blanks} blanks, more than ${MOST_SECTIONS} and ${MOST_BLANKS}`,
      cure: 'Plan it in parts.',
    });
  return faults;
}

function nameFaults(names: readonly string[], place: (at: number) => string): FileFault[] {
  return names.flatMap((name, at) => {
    if (name === '') return [{ path: place(at), what: 'has no name', cure: 'Name every row, or none.' }];
    if (names.indexOf(name) === at) return [];
    return [{ path: place(at), what: `has the name ${sayText(name)} again`, cure: 'Give each its own name.' }];
  });
}

function cellFaults({ number, cells }: WordCells, columns: number, offset: number): FileFault[] {
  const marks = cells.slice(offset);
  const cure = 'Write 1 (must enter), 0 (must not enter) or * (either).';
  if (marks.length !== columns) {
    const [has, wanted] = [`${marks.length} ${marks.length === 1 ? 'mark' : 'marks'}`, `${columns}`];
    return [{ path: `row ${number}`, what: `has ${has}, must have ${wanted}`, cure }];
  }
  return marks.flatMap((cell, j) =>
    isMark(cell)
      ? []
      : [{ path: `row ${number}, column ${j + offset + 1}`, what: `is ${sayText(cell)}, which is no mark`, cure }],
  );
}
