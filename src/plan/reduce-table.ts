import {
  addTo,
  type BitSet,
  countMembers,
  emptySet,
  intersection,
  isSubset,
  membersOf,
  setOf,
} from '../order/bit-set.ts';
import type { AccessTable } from './access-table.ts';

/**
 * A table as the solver takes it: what must go in and what must be stopped, by row and by column, without the rows and
 * columns that others speak for. All lists ascend.
 */
export interface Kernel {
  readonly rows: number;
  readonly columns: number;
  /** By row: the columns that must enter it, and those that must be stopped. */
  readonly ones: readonly (readonly number[])[];
  readonly zeros: readonly (readonly number[])[];
  /** By column: the rows that it must enter, and those that must stop it. */
  readonly onesOf: readonly (readonly number[])[];
  readonly zerosOf: readonly (readonly number[])[];
  /** By row and column of the kernel: its place in the table. */
  readonly rowPlaces: readonly number[];
  readonly columnPlaces: readonly number[];
  /** By row of the table: the row of the kernel whose wards it takes; -1: it needs none. */
  readonly speaker: readonly number[];
}

/** Whether all rows have as many cells, each 1, 0 or null. */
export function isTable(table: AccessTable): boolean {
  const columns = table[0]?.length ?? 0;
  return table.every((row) => row.length === columns && row.every((cell) => cell === null || cell === 0 || cell === 1));
}

/** A row or a column as two sets of places across. */
interface Line {
  readonly ones: BitSet;
  readonly zeros: BitSet;
}

/**
 * Leaves out what cannot change the number of sites. A row that stops and admits no more than another one does takes
 * that row's wards; a column whose wishes another column has too, and more, is kept when that one is; a row that stops
 * nothing needs no ward, a column that is stopped nowhere no look. Free cells ask for nothing.
 *
 * @check tests/laws/ward-plans.test.ts, against plans of whole tables by brute force
 */
export function reduceTable(table: AccessTable): Kernel {
  const columns = table[0]?.length ?? 0;
  let rowLines = linesOf(table.length, columns, (i, j) => table[i][j]);
  let columnLines = linesOf(columns, table.length, (j, i) => table[i][j]);
  const speakers = table.map((_, i) => i);
  for (;;) {
    const keptRows = withoutSpokenFor(rowLines, speakers);
    columnLines = onlyWith(columnLines, keptRows, table.length);
    const keptColumns = withoutSpokenFor(columnLines);
    const settled = keptRows.size === rowLines.size && keptColumns.size === columnLines.size;
    rowLines = onlyWith(keptRows, keptColumns, columns);
    columnLines = keptColumns;
    if (settled) return kernelOf(rowLines, columnLines, speakers);
  }
}

type Lines = Map<number, Line>;

function linesOf(count: number, across: number, cell: (line: number, place: number) => 0 | 1 | null): Lines {
  const lines: Lines = new Map();
  for (let line = 0; line < count; line++) {
    const [ones, zeros] = [emptySet(across), emptySet(across)];
    for (let place = 0; place < across; place++) {
      const value = cell(line, place);
      if (value === 1) addTo(ones, place);
      if (value === 0) addTo(zeros, place);
    }
    lines.set(line, { ones, zeros });
  }
  return lines;
}

/** The lines that no other one speaks for; who speaks for the rest is noted, -1 for nobody. */
function withoutSpokenFor(lines: Lines, speakers?: number[]): Lines {
  const kept: Lines = new Map(lines);
  for (const [at, line] of lines) {
    const speaker = countMembers(line.zeros) === 0 ? -1 : speakerFor(at, line, kept);
    if (speaker === undefined) continue;
    kept.delete(at);
    if (speakers) speakers[at] = speaker;
  }
  return kept;
}

function speakerFor(at: number, line: Line, among: Lines): number | undefined {
  for (const [other, wider] of among)
    if (other !== at && isSubset(line.zeros, wider.zeros) && isSubset(line.ones, wider.ones)) return other;
  return undefined;
}

/** The lines with only those places that are left across. */
function onlyWith(lines: Lines, across: Lines, size: number): Lines {
  const left = setOf(size, across.keys());
  return new Map(
    [...lines].map(([at, { ones, zeros }]) => [
      at,
      { ones: intersection(ones, left), zeros: intersection(zeros, left) },
    ]),
  );
}

function kernelOf(rowLines: Lines, columnLines: Lines, speakers: readonly number[]): Kernel {
  const rowPlaces = [...rowLines.keys()];
  const columnPlaces = [...columnLines.keys()];
  const rowAt = new Map(rowPlaces.map((place, i) => [place, i]));
  const columnAt = new Map(columnPlaces.map((place, j) => [place, j]));
  const listed = (places: BitSet, at: Map<number, number>) => membersOf(places).flatMap((place) => at.get(place) ?? []);
  const lastSpeaker = (place: number): number => {
    let at = place;
    while (at >= 0 && speakers[at] !== at) at = speakers[at];
    return at < 0 ? -1 : (rowAt.get(at) ?? -1);
  };
  return {
    rows: rowPlaces.length,
    columns: columnPlaces.length,
    ones: [...rowLines.values()].map(({ ones }) => listed(ones, columnAt)),
    zeros: [...rowLines.values()].map(({ zeros }) => listed(zeros, columnAt)),
    onesOf: [...columnLines.values()].map(({ ones }) => listed(ones, rowAt)),
    zerosOf: [...columnLines.values()].map(({ zeros }) => listed(zeros, rowAt)),
    rowPlaces,
    columnPlaces,
    speaker: speakers.map((_, place) => lastSpeaker(place)),
  };
}

/**
 * Wards of the kernel's rows as wards and least grooves of the whole table.
 *
 * @param wards by row of the kernel, `sites` depths each.
 */
export function expandWards(
  table: AccessTable,
  kernel: Kernel,
  wards: readonly (readonly number[])[],
  sites: number,
): { wards: number[][]; grooves: number[][] } {
  const whole = table.map((_, i) => {
    const speaker = kernel.speaker[i];
    return speaker < 0 ? new Array<number>(sites).fill(0) : [...wards[speaker]];
  });
  const grooves = Array.from({ length: table[0]?.length ?? 0 }, (_, j) =>
    Array.from({ length: sites }, (_, s) =>
      table.reduce((deepest, row, i) => (row[j] === 1 ? Math.max(deepest, whole[i][s]) : deepest), 0),
    ),
  );
  return { wards: whole, grooves };
}
