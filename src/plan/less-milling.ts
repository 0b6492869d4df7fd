import type { Random } from '../fit/monte-carlo.ts';
import { searchFrom, type WardSearch } from './ward-search.ts';

/** Steps that mending may take before a try is given up. */
const MENDING = 120;

/** Tries for each ward without less milling, after which no more is expected. */
const TRIES = 8;

/** A search for less milling, try by try. */
export interface LessMilling {
  /** True once many tries have brought nothing. */
  readonly done: boolean;
  /** One try; the wards where they need less than any before. */
  step(): WardSearch | null;
}

/**
 * Looks for wards on the same sites that need less milling: some are changed by chance, what is open is mended, and what
 * nothing needs is lowered again.
 */
export function lessMilling(found: WardSearch, random: Random): LessMilling {
  let best = found;
  const { kernel, depths } = found.setting;
  let left = TRIES * found.wards.length;
  return {
    get done() {
      return left <= 0;
    },
    step() {
      if (left <= 0) return null;
      left--;
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
      if (better) left = TRIES * found.wards.length;
      return better ? search : null;
    },
  };
}
