import { type EntryTable, entryTable, withEntrants } from '../../../family/entry-table.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import { type Tiers, tiersOf } from '../../../family/tiers.ts';
import { combOf } from '../fits-lookup.ts';

/** The tiers of a family with the table that they come from. */
export interface TiersOfFits {
  /** The same text for the same tiers. */
  readonly key: string;
  readonly table: EntryTable;
  readonly tiers: Tiers;
}

/** Those asked for last: of all that go in, and of blanks alone. */
let last: readonly TiersOfFits[] = [];

const MOST_KEPT = 2;

/**
 * The tiers of what is known; null until every pair is judged. While blocked pairs are measured the verdicts stay, and
 * so does the value that is given back.
 *
 * @param leftOut ids of those that have no place in them: of which wear leaves nothing, or tools where only blanks are
 *   shown.
 * @check tests/unit/app/tiers-matrix.test.ts
 */
export function tiersOfFits(fits: KnownFits | null, leftOut: ReadonlySet<string>): TiersOfFits | null {
  if (!fits || fits.openings.length === 0) return null;
  const rows = fits.profiles.flatMap((id, i) => (leftOut.has(id) ? [] : [`${id}\t${combOf(fits.fits[i])}`]));
  if (rows.length === 0 || rows.some((row) => row.indexOf('.', row.indexOf('\t')) >= 0)) return null;
  const key = `${fits.openings.join('\t')}\n${rows.join('\n')}`;
  const known = last.find((kept) => kept.key === key);
  if (known) return known;
  const table = withEntrants(entryTable(fits), (id) => !leftOut.has(id));
  const made = { key, table, tiers: tiersOf(table) };
  last = [made, ...last].slice(0, MOST_KEPT);
  return made;
}
