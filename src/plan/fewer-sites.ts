import type { Random } from '../fit/monte-carlo.ts';
import { someCodes } from './construct-wards.ts';
import { searchFrom, type WardSearch } from './ward-search.ts';

/** A search for the same table on one site less, in small steps. */
export interface FewerSites {
  /** The wards as they stand; they do once nothing is lacking. */
  readonly search: WardSearch;
  /** One step; returns about how much it cost, in looks at pairs. */
  step(): number;
}

/** Steps without a better state after which the search starts anew from another site left out. */
const PATIENCE = 4_000;

/**
 * Leaves out the site whose loss costs least and mends what is open again, step by step. After a while without progress
 * it starts anew from another site left out, with some wards changed by chance.
 */
export function fewerSites(found: WardSearch, random: Random): FewerSites {
  const { setting, sites } = found;
  const rows = found.rows();
  const without = (site: number) =>
    searchFrom(
      setting,
      sites - 1,
      rows.map((row) => row.filter((_, s) => s !== site)),
    );
  const lacking = found.lackingWithout();
  const starts = Array.from({ length: sites }, (_, site) => site).sort((a, b) => lacking[a] - lacking[b]);
  let [turn, idle] = [0, 0];
  const state = { search: without(starts[0]) };
  let least = state.search.lacking;
  const cost = 2 * Math.max(1, (setting.kernel.rows + setting.kernel.columns) * sites);
  const renew = () => {
    turn++;
    const codes = turn % 2 === 1 ? someCodes(setting, sites - 1, random) : null;
    state.search = codes ? searchFrom(setting, sites - 1, codes) : without(starts[(turn >> 1) % sites]);
    const shaken = codes ? 0 : Math.floor(turn / (2 * sites)) * 0.02;
    for (let row = 0; row < setting.kernel.rows; row++)
      for (let site = 0; site < sites - 1; site++)
        if (random() < Math.min(0.3, shaken)) state.search.set(row, site, Math.floor(random() * (setting.depths + 1)));
    [least, idle] = [state.search.lacking, 0];
  };
  return {
    get search() {
      return state.search;
    },
    step() {
      if (idle > PATIENCE) renew();
      state.search.mend(random);
      idle = state.search.lacking < least ? 0 : idle + 1;
      least = Math.min(least, state.search.lacking);
      return cost;
    },
  };
}
