import type { Random } from '../fit/monte-carlo.ts';
import { searchFrom, type WardSearch } from './ward-search.ts';

/** Steps that mending may take before a try is given up. */
const MENDING = 120;

/**
 * Looks for wards on the same sites that need less milling: some are changed by chance, what is open is mended, and what
 * nothing needs is lowered again.
 */
export function lessMilling(found: WardSearch, random: Random): { step(): WardSearch | null } {
  let best = found;
  const { kernel, depths } = found.setting;
  return {
    /** One try; the wards where they need less than any before. */
    step() {
      if (kernel.rows === 0) return null;
      const search = searchFrom(best.setting, best.sites, best.rows());
      const changes = 1 + Math.floor(random() * 3);
      for (let i = 0; i < changes; i++) {
        const [row, site] = [Math.floor(random() * kernel.rows), Math.floor(random() * best.sites)];
        search.set(row, site, search.wards[row * best.sites + site] > 0 ? 0 : 1 + Math.floor(random() * depths));
      }
      for (let i = 0; i < MENDING && search.lacking > 0; i++) search.mend(random);
      if (search.lacking > 0) return null;
      search.trim(random);
      if (search.grooved > best.grooved) return null;
      const better = search.grooved < best.grooved;
      best = search;
      return better ? search : null;
    },
  };
}
