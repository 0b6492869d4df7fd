import { type Random, shuffled } from '../fit/monte-carlo.ts';
import { choose } from './choose.ts';
import { partGroups } from './part-groups.ts';
import { levelsOf, type RowGroup } from './row-tree.ts';
import type { Code } from './ward-code.ts';

/** What codes are looked for. */
export interface CodeSearch {
  readonly sites: number;
  readonly depths: number;
  readonly stops: number;
  readonly random: Random;
  /** Whether neighbouring groups choose with a close look at what rows are left. */
  readonly parted: boolean;
  /** Rank of the wards of a row, and of the grooves of a group by its level above the rows. */
  readonly ranks: readonly number[];
}

/** Most codes that are looked through for the rows of one group. */
const MOST_CODES = 600;

/** Most codes that are looked through for the grooves of neighbouring groups. */
const MOST_GROUP_CODES = 220;

/** Most wards that groups are parted by. */
const MOST_WARDS = 1_000;

/** Orders in which rows with several stops take their codes. */
const ORDERS = 6;

/** Rounds in which each of neighbouring groups chooses anew. */
const ROUNDS = 6;

/** Codes for rows, and how many of them are not as they should be. */
export interface NestedCodes {
  readonly codes: readonly Code[];
  readonly missing: number;
}

/** Rows in one group, what their wards lie within, and the groups around them. */
interface Home {
  readonly rows: readonly number[];
  readonly upper: Code;
  readonly path: ReadonlySet<RowGroup>;
}

/**
 * Wards for a tree of rows on some sites: Sperner's middle rank on every level. Each group gets grooves within those of
 * the group around it; each row wards of one rank within its group's grooves that every other group's grooves lack, and
 * such that rows of one group differ. With stops above 1 they differ so often.
 *
 * @source Sperner 1928 for one level; grooves of neighbouring groups that share as little as they can, our own.
 * @check tests/outside/ward-sites.test.ts
 */
export function nestedCodes(tree: RowGroup, search: CodeSearch): NestedCodes {
  const full = new Array<number>(search.sites).fill(search.depths);
  const grooves = new Map<RowGroup, Code>();
  const homes: Home[] = [];
  const queue: [RowGroup, Code, ReadonlySet<RowGroup>][] = [[tree, full, new Set()]];
  for (const [group, upper, path] of queue) {
    if (group.single.length > 0) homes.push({ rows: group.single, upper, path });
    const beside = [...grooves].flatMap(([other, code]) => (path.has(other) ? [] : [code]));
    const chosen = groupCodes(group.groups, upper, beside, search);
    for (const [at, inner] of group.groups.entries()) {
      grooves.set(inner, chosen[at]);
      queue.push([inner, chosen[at], new Set([...path, inner])]);
    }
  }
  const codes: Code[] = [];
  let missing = 0;
  for (const { rows, upper, path } of homes) {
    const others = [...grooves].flatMap(([group, code]) => (path.has(group) ? [] : [code]));
    const found = rowCodes(rows.length, upper, others, search);
    missing += rows.length - found.sound;
    for (const [at, row] of rows.entries()) codes[row] = found.codes[at];
  }
  return { codes, missing };
}

/** Grooves for neighbouring groups within `upper`: greedily, then each anew, so that little is lost by what they share. */
function groupCodes(
  groups: readonly RowGroup[],
  upper: Code,
  beside: readonly Code[],
  search: CodeSearch,
): readonly Code[] {
  if (groups.length === 0) return [];
  const { ranks, random } = search;
  const byRank = new Map<number, readonly Code[]>();
  const choices = groups.map((group) => {
    const level = levelsOf(group) + 1;
    const rank = Math.min(ranks[level] ?? ranks[ranks.length - 1], rankOf(upper));
    const known = byRank.get(rank) ?? codesWithin(upper, rank, MOST_GROUP_CODES, random);
    byRank.set(rank, known);
    return known;
  });
  const lost = lossTable(search);
  const loss = (a: Code, b: Code) => lost[sharedRank(a, b)];
  const fixed = new Map([...byRank.values()].flat().map((code) => [code, sumOf(beside, (b) => loss(code, b))]));
  const chosen: Code[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    let changed = false;
    for (const [at, codes] of choices.entries()) {
      const others = chosen.filter((_, k) => k !== at);
      const cost = (code: Code) => (fixed.get(code) ?? 0) + sumOf(others, (other) => loss(code, other));
      const now = chosen[at];
      const best = codes.reduce(
        (least, code) => {
          const costs = cost(code);
          return costs < least.costs ? { code, costs } : least;
        },
        now ? { code: now, costs: cost(now) } : { code: codes[0] ?? upper, costs: Number.POSITIVE_INFINITY },
      );
      changed ||= best.code !== now;
      chosen[at] = best.code;
    }
    if (!changed) break;
  }
  const plain = !search.parted || groups.some((group) => levelsOf(group) > 0);
  return plain ? chosen : partedCodes(groups, choices, chosen, upper, beside, search);
}

/** Grooves of groups that hold rows alone, chosen anew where rows would lack wards of their own. */
function partedCodes(
  groups: readonly RowGroup[],
  choices: readonly (readonly Code[])[],
  first: readonly Code[],
  upper: Code,
  beside: readonly Code[],
  { ranks, stops, random }: CodeSearch,
): readonly Code[] {
  const wards = codesWithin(upper, Math.min(ranks[0], rankOf(upper)), MOST_WARDS, random).filter((ward) =>
    beside.every((other) => excess(ward, other) >= stops),
  );
  return partGroups({ sizes: groups.map(({ rows }) => rows.length), choices, first, wards, stops, random });
}

function sumOf(codes: readonly Code[], value: (code: Code) => number): number {
  let sum = 0;
  for (const code of codes) sum += value(code);
  return sum;
}

/** By the rank that two groups share: about how many wards of one are let by into the other. */
function lossTable({ sites, depths, stops, ranks }: CodeSearch): number[] {
  const [rank, whole] = [ranks[0], ranks[1] ?? sites * depths];
  return Array.from({ length: sites * depths + 1 }, (_, shared) => {
    if (depths > 1) return 3 ** Math.max(0, shared - rank + stops) - 1;
    let lost = 0;
    for (let inside = Math.max(0, rank - stops + 1); inside <= rank; inside++)
      lost += choose(shared, inside) * choose(Math.max(0, whole - shared), rank - inside);
    return lost;
  });
}

/** Wards for the rows of one group; those after the sound ones repeat what the search came across. */
function rowCodes(count: number, upper: Code, others: readonly Code[], search: CodeSearch) {
  const { ranks, stops, random } = search;
  const rank = Math.min(ranks[0], rankOf(upper));
  let best: { codes: Code[]; sound: number } | null = null;
  for (let order = 0; order < (stops > 1 ? ORDERS : 1); order++) {
    const found = firstCodes(codesWithin(upper, rank, MOST_CODES, random), count, others, stops);
    if (!best || found.sound > best.sound) best = found;
    if (best.sound === count) break;
  }
  const { codes, sound } = best ?? { codes: [], sound: 0 };
  return { codes: Array.from({ length: count }, (_, at) => codes[at % Math.max(1, codes.length)] ?? upper), sound };
}

/** The first codes that differ enough from all before and from what they must not go into; then some that do not. */
function firstCodes(among: readonly Code[], count: number, others: readonly Code[], stops: number) {
  const [chosen, spare]: [Code[], Code[]] = [[], []];
  for (const code of among) {
    const sound =
      others.every((other) => excess(code, other) >= stops) &&
      chosen.every((other) => excess(code, other) >= stops && excess(other, code) >= stops);
    if (sound) chosen.push(code);
    else if (spare.length < count) spare.push(code);
    if (chosen.length === count) break;
  }
  return { codes: [...chosen, ...spare], sound: chosen.length };
}

function rankOf(code: Code): number {
  return code.reduce((sum, depth) => sum + depth, 0);
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
function codesWithin(upper: Code, rank: number, most: number, random: Random): Code[] {
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
