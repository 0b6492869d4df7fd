import { choose } from './choose.ts';
import { largeClique } from './large-clique.ts';
import type { SiteBound } from './ward-plan.ts';
import type { SearchSetting } from './ward-search.ts';
import { largestRank } from './widest-antichain.ts';

/** A number of sites that no plan can do with less, and what shows it. */
export interface LowerBound {
  readonly sites: number;
  readonly bound: SiteBound;
}

/** Most sites that are thought of. */
const MOST = 60;

/**
 * How many sections on `sites` sites can all keep each other's blanks out: the largest antichain in a product of
 * chains with `depths + 1` steps, which is its middle rank.
 *
 * @source depths 1: E. Sperner, Ein Satz ueber Untermengen einer endlichen Menge, 1928; more: de Bruijn, Tengbergen,
 *   Kruyswijk, On the set of divisors of a number, 1951 (both from memory).
 * @check tests/outside/ward-sites.test.ts
 */
export function antichainCapacity(sites: number, depths: number): number {
  return largestRank({ levels: new Array<number>(sites).fill(depths) });
}

/**
 * An upper bound on the sections of which each has at least `stops` wards that any other one lacks. Without some
 * stops - 1 sites they still form an antichain; and for single depths each set of wards takes all chains through its
 * subsets that lack stops - 1 wards, which no other one shares.
 *
 * @source for stops 1: Sperner. For more: the proof of the LYM inequality (D. Lubell, A short proof of Sperner's lemma,
 *   1966; from memory) with those subsets in place of the sets.
 * @check tests/outside/ward-sites.test.ts, tests/laws/ward-plans.test.ts
 */
function apartCapacity(sites: number, depths: number, stops: number): number {
  if (sites < stops) return 1;
  const shorter = antichainCapacity(sites - stops + 1, depths);
  if (depths > 1 || stops === 1) return shorter;
  let most = 1;
  for (let size = stops; size <= sites; size++) {
    const chains = choose(size, stops - 1) / choose(sites, size - stops + 1);
    most = Math.max(most, Math.floor(1 / chains + 1e-9));
  }
  return Math.min(most, shorter);
}

/** Fewest sites on which `count` sections can keep each other apart. */
function sitesForApart(count: number, depths: number, stops: number): number {
  if (count < 2) return 0;
  let sites = 1;
  while (sites < MOST && apartCapacity(sites, depths, stops) < count) sites++;
  return sites;
}

/**
 * The best of the bounds that need no search: sections, or blanks, that all exclude each other (Sperner), groups of
 * such sections (the chains that pass through them), and forbidden pairs of which no site stops two (a fooling set).
 *
 * @check tests/outside/ward-sites.test.ts; tests/laws/ward-plans.test.ts holds that no bound is above the truth.
 */
export function siteBound(setting: SearchSetting): LowerBound {
  const { kernel, depths, stops } = setting;
  if (kernel.rows === 0) return { sites: 0, bound: 'none' };
  const apart = rowsApart(setting);
  const ofRows = sitesForApart(apart.length, depths, stops);
  const ofColumns = sitesForApart(columnsApart(setting).length, depths, stops);
  const chains = Math.max(ofRows, ofColumns, stops, sitesForGroups(setting, apart));
  const fooling = sitesForFooling(setting);
  return chains >= fooling ? { sites: chains, bound: 'sperner' } : { sites: fooling, bound: 'fooling' };
}

/** Rows of which each must have a ward that another one lacks, both ways: a blank is stopped in one and enters the other. */
function rowsApart({ kernel }: SearchSetting): number[] {
  const parts = kernel.zeros.map((zeros) => {
    const beside = new Uint8Array(kernel.rows);
    for (const j of zeros) for (const k of kernel.onesOf[j]) beside[k] = 1;
    return beside;
  });
  return largeClique(kernel.rows, (a, b) => parts[a][b] === 1 && parts[b][a] === 1);
}

/** Columns of which each must lack a groove of another one, both ways. */
function columnsApart({ kernel }: SearchSetting): number[] {
  const parts = kernel.onesOf.map((rows) => {
    const beside = new Uint8Array(kernel.columns);
    for (const i of rows) for (const j of kernel.zeros[i]) beside[j] = 1;
    return beside;
  });
  return largeClique(kernel.columns, (a, b) => parts[a][b] === 1 && parts[b][a] === 1);
}

/**
 * Groups of sections that exclude each other, each with a blank of its own. A maximal chain of sets of sites that meets
 * the wards of one group's sections or its blank's grooves meets nothing of another group, so the shares of chains that
 * the groups take add up to 1 at most. A group takes least for some size of grooves and at most two sizes of wards.
 *
 * @source the LYM inequality (Lubell 1966, from memory), with the intervals from wards to grooves in place of sets.
 */
function sitesForGroups({ kernel, depths, stops }: SearchSetting, apart: readonly number[]): number {
  if (depths > 1 || stops > 1) return 0;
  const inside = new Set(apart);
  const free = new Set(apart);
  const groups: number[] = [];
  const blanks = kernel.onesOf
    .map((rows, j) => ({ rows: rows.filter((i) => inside.has(i)), stopped: new Set(kernel.zerosOf[j]) }))
    .filter(({ rows, stopped }) => rows.length > 1 && apart.every((i) => stopped.has(i) || rows.includes(i)))
    .sort((a, b) => a.rows.length - b.rows.length);
  for (const { rows } of blanks) {
    if (!rows.every((i) => free.has(i))) continue;
    for (const i of rows) free.delete(i);
    groups.push(rows.length);
  }
  if (groups.length < 2 && free.size === 0) return 0;
  const numberOf = new Map(groups.map((size) => [size, groups.filter((other) => other === size).length]));
  for (let sites = 1; sites < MOST; sites++) {
    const alone = free.size / choose(sites, Math.floor(sites / 2));
    const shares = [...numberOf].reduce((sum, [size, number]) => sum + number * leastShare(sites, size), alone);
    if (shares <= 1 + 1e-9) return sites;
  }
  return 0;
}

/** The least share of maximal chains that a group of `size` sections and its blank can meet; infinite: it has no room. */
function leastShare(sites: number, size: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let grooves = 0; grooves <= sites; grooves++) {
    if (choose(grooves, Math.floor(grooves / 2)) < size) continue;
    const whole = 1 / choose(sites, grooves);
    const room = (wards: number) => 1 / choose(grooves, wards);
    const share = (wards: number) => 1 / choose(sites, wards) - whole * room(wards);
    // Two sections or more that exclude each other lie strictly between no ward and all grooves of their blank.
    for (let a = 1; a < grooves; a++)
      for (let b = a; b < grooves; b++) {
        const mixed = leastMix([room(a), share(a)], [room(b), share(b)], size);
        least = Math.min(least, whole + mixed);
      }
  }
  return least;
}

/** Least total share of `size` sets of two kinds, each `[room, share]`, whose rooms add up to 1 at most. */
function leastMix([roomA, shareA]: [number, number], [roomB, shareB]: [number, number], size: number): number {
  const [low, high] = roomA <= roomB ? [roomA, roomB] : [roomB, roomA];
  const [shareLow, shareHigh] = roomA <= roomB ? [shareA, shareB] : [shareB, shareA];
  if (low * size > 1 + 1e-9) return Number.POSITIVE_INFINITY;
  if (shareLow <= shareHigh) return size * shareLow;
  const most = high - low < 1e-12 ? size : Math.min(size, (1 - low * size) / (high - low));
  return most * shareHigh + (size - most) * shareLow;
}

/**
 * A fooling set: forbidden pairs of which no site can stop two. With several depths one site stops a chain of them, a
 * pair a depth, unless they forbid each other both ways.
 */
function sitesForFooling(setting: SearchSetting): number {
  const { kernel, depths, stops } = setting;
  const enters = kernel.ones.map((columns) => {
    const row = new Uint8Array(kernel.columns);
    for (const j of columns) row[j] = 1;
    return row;
  });
  // Where there are too many, those whose section and blank have most to do with others come first.
  const ties = ([i, j]: readonly [number, number]) => kernel.ones[i].length + kernel.onesOf[j].length;
  const chosen = kernel.zeros
    .flatMap((columns, i) => columns.map((j) => [i, j] as const))
    .sort((a, b) => ties(b) - ties(a))
    .slice(0, MOST_FOOLING);
  const oneWay = (a: number, b: number) => enters[chosen[a][0]][chosen[b][1]] === 1;
  const some = largeClique(chosen.length, (a, b) => oneWay(a, b) || oneWay(b, a));
  const weak = Math.ceil((stops * some.length) / depths);
  if (depths === 1) return weak;
  return Math.max(weak, stops * largeClique(chosen.length, (a, b) => oneWay(a, b) && oneWay(b, a)).length);
}

/** Most forbidden pairs among which a fooling set is looked for. */
const MOST_FOOLING = 400;
