import { type Random, shuffled } from '../fit/monte-carlo.ts';
import { choose } from './choose.ts';
import { nestedCodes } from './nested-codes.ts';
import { levelsOf, type RowGroup, rowTree } from './row-tree.ts';
import type { Code } from './ward-code.ts';
import { type SearchSetting, searchFrom, type WardSearch } from './ward-search.ts';

/** So many sites above the fewest thinkable, for each stop, codes for the tree are tried on. */
const FURTHER_SITES = 8;

/** Tables with no more cells than this are covered site by site first. */
const SMALL = 600;

/** Most levels of groups that codes are made for; a longer chain of groups has better ways. */
const MOST_LEVELS = 3;

/**
 * Wards at once: codes for the tree of groups on as few sites as they go on, then further sites, one after another, for
 * the pairs that are still let in. Where the table is no tree at all the further sites do all of it.
 *
 * @param fewest sites that the codes are tried on first.
 * @yields between pieces of work that take some hundredths of a second on large tables.
 */
export function* constructingWards(
  setting: SearchSetting,
  fewest: number,
  random: Random,
): Generator<void, WardSearch, void> {
  const { kernel, stops } = setting;
  const tree = rowTree(kernel);
  const small = kernel.rows * kernel.columns <= SMALL;
  const plain = () => coveringRest(searchFrom(setting, 0, []), random);
  const first = small ? yield* plain() : null;
  const most = levelsOf(tree) > MOST_LEVELS ? 0 : Math.min(fewest + FURTHER_SITES * stops, (first?.sites ?? 99) - 1);
  for (let sites = Math.max(1, fewest); sites <= most; sites++) {
    const codes = yield* codesOn(sites, tree, setting, random);
    if (!codes) continue;
    const coded = yield* coveringRest(searchFrom(setting, sites, codes), random);
    const other = first ?? (coded.sites > fewest + 1 ? yield* plain() : coded);
    return other.sites < coded.sites ? other : coded;
  }
  return first ?? (yield* plain());
}

/** The first codes for a tree that go on some sites, over all rankings that are worth trying. */
function* codesOn(
  sites: number,
  tree: RowGroup,
  setting: SearchSetting,
  random: Random,
): Generator<void, readonly Code[] | null, void> {
  const { depths, stops } = setting;
  for (const ranks of rankings(sites, tree, setting)) {
    // With several stops a close look takes too long for an answer at once.
    const { codes, missing } = nestedCodes(tree, { sites, depths, stops, random, ranks, parted: stops === 1 });
    if (missing === 0) return codes;
    yield;
  }
  return null;
}

/** Codes of some ranking, taken by chance; where room ran out rows have codes that others have too. */
export function someCodes(setting: SearchSetting, sites: number, random: Random): readonly Code[] | null {
  const { depths, stops, kernel } = setting;
  const tree = rowTree(kernel);
  if (levelsOf(tree) > MOST_LEVELS) return null;
  const choices = rankings(sites, tree, setting);
  const ranks = choices[Math.floor(random() ** 2 * choices.length)];
  return ranks ? nestedCodes(tree, { sites, depths, stops, random, ranks, parted: true }).codes : null;
}

/** Most rankings that are tried on one number of sites, with one stop and with several. */
const MOST_RANKINGS = [5, 2] as const;

/**
 * Ranks of rows and of each level of groups that are worth trying on some sites, the likeliest first: rows within a
 * group, and all of them, must have room among the sets of their rank (the LYM inequality), and those come first whose
 * rows and groups take the least share of all chains of sets.
 */
function rankings(sites: number, tree: RowGroup, { depths, stops }: SearchSetting): number[][] {
  const [top, levels] = [sites * depths, levelsOf(tree)];
  const size = largestHome(tree);
  const taken = (wards: number, within: number) => choose(wards, stops - 1) / choose(within, wards - stops + 1);
  const found: { ranks: number[]; share: number }[] = [];
  for (let row = stops; row <= top; row++)
    for (let above = levels > 0 ? row + 1 : top; above <= (levels > 0 ? top - 1 : top); above++) {
      const crowded = depths === 1 && Math.max(size * taken(row, above), tree.rows.length * taken(row, top)) > 1 + 1e-9;
      if (crowded) continue;
      const groups = levels > 0 ? (tree.rows.length / size) * (1 - size * taken(row, above)) : 0;
      const share = tree.rows.length * taken(row, top) + groups / choose(top, above);
      const between = (level: number) => row + Math.ceil(((above - row) * level) / levels);
      found.push({ ranks: [row, ...Array.from({ length: levels }, (_, level) => between(level + 1))], share });
    }
  return found
    .sort((a, b) => a.share - b.share)
    .slice(0, MOST_RANKINGS[stops > 1 ? 1 : 0])
    .map(({ ranks }) => ranks);
}

/** The most rows that lie directly in one group. */
function largestHome({ single, groups }: RowGroup): number {
  return Math.max(single.length, ...groups.map(largestHome));
}

/** Adds sites until nothing lacks, each with wards that stop as many of the open pairs as a climb finds. */
function* coveringRest(start: WardSearch, random: Random): Generator<void, WardSearch, void> {
  let search = start;
  while (search.lacking > 0) {
    const next = searchFrom(search.setting, search.sites + 1, search.rows());
    fillSite(next, search.sites, random);
    search = next;
    yield;
  }
  return search;
}

/** Sets the wards of one site, by turns, to the depth at which least is lacking, as long as that helps. */
function fillSite(search: WardSearch, site: number, random: Random): void {
  const { kernel, depths } = search.setting;
  const order = shuffled([...Array(kernel.rows).keys()], random);
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
