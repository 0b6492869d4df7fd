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

let last: TiersOfFits | null = null;

/**
 * The tiers of what is known; null until every pair is judged. Blanks of which wear leaves nothing have no place in
 * them. While blocked pairs are measured the verdicts stay, and so does the value that is given back.
 *
 * @check tests/unit/app/tiers-matrix.test.ts
 */
export function tiersOfFits(fits: KnownFits | null, wornAway: ReadonlySet<string>): TiersOfFits | null {
  if (!fits || fits.openings.length === 0) return null;
  const rows = fits.profiles.flatMap((id, i) => (wornAway.has(id) ? [] : [`${id}\t${combOf(fits.fits[i])}`]));
  if (rows.length === 0 || rows.some((row) => row.indexOf('.', row.indexOf('\t')) >= 0)) return null;
  const key = `${fits.openings.join('\t')}\n${rows.join('\n')}`;
  if (last?.key === key) return last;
  const table = withEntrants(entryTable(fits), (id) => !wornAway.has(id));
  last = { key, table, tiers: tiersOf(table) };
  return last;
}
