import type { KnownFits } from './known-fits.ts';

/** What goes into what, in chart order: rows are blanks and tools, columns keyways. */
export interface EntryTable {
  readonly entrants: readonly string[];
  readonly openings: readonly string[];
  /** `goesIn[entrant][opening]`; null where the pair is not judged yet. */
  readonly goesIn: readonly (readonly (boolean | null)[])[];
}

/** What is known of a family as yes and no: what enters goes in, and so does what is tight. */
export function entryTable(fits: KnownFits): EntryTable {
  return {
    entrants: fits.profiles,
    openings: fits.openings,
    goesIn: fits.fits.map((row) => row.map((fit) => (fit ? fit.verdict !== 'blocked' : null))),
  };
}

/** The table with some of its rows only, in the order of the table. */
export function withEntrants(table: EntryTable, wanted: (id: string) => boolean): EntryTable {
  const rows = table.entrants.flatMap((id, i) => (wanted(id) ? [i] : []));
  return {
    entrants: rows.map((i) => table.entrants[i]),
    openings: table.openings,
    goesIn: rows.map((i) => table.goesIn[i]),
  };
}

/** How many pairs of a table are not judged yet. */
export function countUnjudged({ goesIn }: EntryTable): number {
  return goesIn.reduce((sum, row) => sum + row.filter((cell) => cell === null).length, 0);
}
