import type { Random } from '../fit/monte-carlo.ts';
import { levelsOf, type RowGroup } from './row-tree.ts';

/** Depths at the sites. */
export type Code = readonly number[];

/** What codes are looked for. */
interface Search {
  readonly sites: number;
  readonly depths: number;
  readonly stops: number;
  readonly random: Random;
  /** Rank of the wards of a row, and of the grooves of a group by its level above the rows. */
  readonly ranks: readonly number[];
}

/** Most codes that are looked through for one choice. */
const MOST_CODES = 600;

/** Looked at for one group's grooves. */
const MOST_GROUP_CODES = 160;

/**
 * Wards for a tree of rows on some sites: Sperner's middle rank on every level. Each group gets grooves within those of
 * the group around it; each row wards of one rank within its group's grooves that every other group's grooves lack, and
 * such that rows of one group differ. With stops above 1 they differ so often.
 *
 * @returns codes by row; null where the chosen ranks, taken greedily, do not have room.
 * @source Sperner 1928 for one level; the split into a part of the group and a part of the row, and the rest, our own.
 */
export function nestedCodes(tree: RowGroup, search: Search): Code[] | null {
  const full = new Array<number>(search.sites).fill(search.depths);
  const homes: { rows: readonly number[]; upper: Code; path: ReadonlySet<RowGroup> }[] = [];
  const grooves = new Map<RowGroup, Code>();
  const descend = (group: RowGroup, upper: Code, path: ReadonlySet<RowGroup>): boolean => {
    if (group.single.length > 0) homes.push({ rows: group.single, upper, path });
    return group.groups.every((inner) => {
      const code = groupCode(
        upper,
        levelsOf(inner),
        [...grooves].filter(([other]) => !path.has(other)),
        search,
      );
      if (!code) return false;
      grooves.set(inner, code);
      return descend(inner, code, new Set([...path, inner]));
    });
  };
  if (!descend(tree, full, new Set())) return null;
  const codes: Code[] = [];
  for (const { rows, upper, path } of homes) {
    const others = [...grooves].flatMap(([group, code]) => (path.has(group) ? [] : [code]));
    const found = rowCodes(rows.length, upper, others, search);
    if (!found) return null;
    for (const [at, row] of rows.entries()) codes[row] = found[at];
  }
  return codes;
}

/** Grooves for a group that overlap least with those taken. */
function groupCode(
  upper: Code,
  level: number,
  taken: readonly (readonly [RowGroup, Code])[],
  { ranks, random, stops }: Search,
): Code | null {
  const rank = ranks[level + 1] ?? ranks[ranks.length - 1];
  let [best, least] = [null as Code | null, Number.POSITIVE_INFINITY];
  for (const code of codesWithin(upper, rank, MOST_GROUP_CODES, random)) {
    let cost = 0;
    for (const [, other] of taken) {
      const shared = sharedRank(code, other);
      cost += 3 ** Math.max(0, shared - (ranks[0] - stops));
    }
    if (cost < least) [best, least] = [code, cost];
  }
  return best;
}

function rowCodes(count: number, upper: Code, others: readonly Code[], search: Search): Code[] | null {
  const { ranks, stops, random } = search;
  const chosen: Code[] = [];
  for (const code of codesWithin(upper, ranks[0], MOST_CODES, random)) {
    if (others.some((other) => excess(code, other) < stops)) continue;
    if (chosen.some((other) => excess(code, other) < stops || excess(other, code) < stops)) continue;
    chosen.push(code);
    if (chosen.length === count) return chosen;
  }
  return null;
}

/** At how many sites `a` is above `b`. */
function excess(a: Code, b: Code): number {
  let count = 0;
  for (let s = 0; s < a.length; s++) if (a[s] > b[s]) count++;
  return count;
}

function sharedRank(a: Code, b: Code): number {
  let rank = 0;
  for (let s = 0; s < a.length; s++) rank += Math.min(a[s], b[s]);
  return rank;
}

/** Different codes below `upper` whose depths add up to `rank`, in an order by chance, `most` at most. */
export function codesWithin(upper: Code, rank: number, most: number, random: Random): Code[] {
  const ways = countWithin(upper, rank);
  const total = ways[0][rank] ?? 0;
  const wanted = Math.min(most, total);
  if (total <= 2 * most) return shuffled(allWithin(upper, rank), random).slice(0, wanted);
  const found = new Map<string, Code>();
  for (let tries = 0; found.size < wanted && tries < 4 * wanted; tries++) {
    const code = drawWithin(upper, rank, ways, random);
    found.set(code.join(), code);
  }
  return [...found.values()];
}

/** By site and rank: in how many ways the sites from there on can have depths that add up to the rank. */
function countWithin(upper: Code, rank: number): number[][] {
  const ways: number[][] = [];
  ways[upper.length] = [1, ...new Array<number>(rank).fill(0)];
  for (let s = upper.length - 1; s >= 0; s--)
    ways[s] = Array.from({ length: rank + 1 }, (_, r) => {
      let sum = 0;
      for (let d = 0; d <= Math.min(upper[s], r); d++) sum += ways[s + 1][r - d];
      return sum;
    });
  return ways;
}

function drawWithin(upper: Code, rank: number, ways: readonly (readonly number[])[], random: Random): Code {
  let rest = rank;
  return upper.map((most, s) => {
    let at = random() * ways[s][rest];
    for (let d = 0; d < Math.min(most, rest); d++) {
      at -= ways[s + 1][rest - d];
      if (at < 0) {
        rest -= d;
        return d;
      }
    }
    const depth = Math.min(most, rest);
    rest -= depth;
    return depth;
  });
}

function allWithin(upper: Code, rank: number): Code[] {
  const found: Code[] = [];
  const room = [...upper];
  for (let s = upper.length - 2; s >= 0; s--) room[s] += room[s + 1];
  const walk = (code: number[], rest: number) => {
    const s = code.length;
    if (s === upper.length) {
      if (rest === 0) found.push(code);
      return;
    }
    for (let d = 0; d <= Math.min(upper[s], rest); d++)
      if (rest - d <= (room[s + 1] ?? 0)) walk([...code, d], rest - d);
  };
  walk([], rank);
  return found;
}

function shuffled<T>(list: T[], random: Random): T[] {
  for (let i = list.length - 1; i > 0; i--) {
    const k = Math.floor(random() * (i + 1));
    [list[i], list[k]] = [list[k], list[i]];
  }
  return list;
}
