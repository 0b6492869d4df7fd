import type { Random } from '../fit/monte-carlo.ts';
import { type Code, nestedCodes } from './nested-codes.ts';
import { levelsOf, rowTree } from './row-tree.ts';
import { type SearchSetting, searchFrom, type WardSearch } from './ward-search.ts';

/** Most sites that a construction tries for the tree. */
const MOST_SITES = 40;

/**
 * Wards at once: codes for the tree of groups on as few sites as they go on, then further sites, one after another, for
 * the pairs that are still let in. Where the table is no tree at all the further sites do all of it.
 *
 * @param fewest sites that the codes are tried on first.
 */
export function constructWards(setting: SearchSetting, fewest: number, random: Random): WardSearch {
  const ways = [coverRest(searchFrom(setting, 0, []), random)];
  const tree = rowTree(setting.kernel);
  const levels = levelsOf(tree);
  const size = setting.kernel.rows * setting.kernel.columns;
  for (let sites = Math.max(1, fewest); sites < Math.min(MOST_SITES, ways[0].sites); sites++) {
    const codes = codesOn(sites, levels, tree, setting, random);
    if (!codes) continue;
    const searched = coverRest(searchFrom(setting, sites, codes), random);
    ways.push(searched);
    if (searched.sites <= sites || size > 2_000) break;
  }
  return ways.reduce((best, way) => (way.sites < best.sites ? way : best));
}

function codesOn(
  sites: number,
  levels: number,
  tree: ReturnType<typeof rowTree>,
  { depths, stops }: SearchSetting,
  random: Random,
): Code[] | null {
  for (const ranks of rankings(sites * depths, levels)) {
    const codes = nestedCodes(tree, { sites, depths, stops, random, ranks });
    if (codes) return codes;
  }
  return null;
}

/** Ranks of rows and of each level of groups that are worth trying, the likeliest first. */
function rankings(top: number, levels: number): number[][] {
  const middle = Math.floor(top / 2);
  const found: number[][] = [];
  for (const row of [middle, middle - 1, middle + 1, middle - 2]) {
    if (row < 1 || row > top) continue;
    if (levels === 0) found.push([row]);
    for (let above = top - 1; levels > 0 && above > row; above--)
      found.push([
        row,
        ...Array.from({ length: levels }, (_, l) => row + Math.ceil(((above - row) * (l + 1)) / levels)),
      ]);
  }
  return found;
}

/** Adds sites until nothing lacks, each with wards that stop as many of the open pairs as a climb finds. */
export function coverRest(start: WardSearch, random: Random): WardSearch {
  let search = start;
  while (search.lacking > 0) {
    const next = searchFrom(search.setting, search.sites + 1, search.rows());
    fillSite(next, search.sites, random);
    search = next;
  }
  return search;
}

/** Sets the wards of one site, by turns, to the depth at which least is lacking, as long as that helps. */
function fillSite(search: WardSearch, site: number, random: Random): void {
  const { kernel, depths } = search.setting;
  const order = Array.from({ length: kernel.rows }, (_, i) => i);
  for (let i = order.length - 1; i > 0; i--) {
    const k = Math.floor(random() * (i + 1));
    [order[i], order[k]] = [order[k], order[i]];
  }
  for (let round = 0; round < 6; round++) {
    let changed = false;
    for (const row of order) {
      const now = search.wards[row * search.sites + site];
      let [best, least] = [now, 0];
      for (let depth = 0; depth <= depths; depth++) {
        if (depth === now) continue;
        const growth = search.growth(row, site, depth);
        if (growth < least) [best, least] = [depth, growth];
      }
      if (best === now) continue;
      search.set(row, site, best);
      changed = true;
    }
    if (!changed) return;
  }
}
