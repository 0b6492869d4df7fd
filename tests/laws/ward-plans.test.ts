// Laws of the solver, against brute force of our own that shares no code with it: the forbidden pairs that one site can
// stop are found by trying every set of rows (every depth of every row), and the fewest sites by trying all unions.

import { expect, test } from 'vitest';
import type { AccessTable } from '../../src/plan/access-table.ts';
import { reduceTable } from '../../src/plan/reduce-table.ts';
import { siteBound } from '../../src/plan/site-bounds.ts';
import { solveAtOnce } from '../../src/plan/solve.ts';
import { checkWardPlan } from '../../src/plan/ward-plan.ts';
import { settingOf } from '../../src/plan/ward-search.ts';
import { tableOf } from '../cases/access-tables.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { solveOptions, solveTable } from '../kit/solve-table.ts';

/** For each way to give every row a ward depth at one site: which forbidden pairs it stops, as bits. */
function stopsOfOneSite(table: AccessTable, depths: number): { stops: bigint[]; pairs: number } {
  const pairs = table.flatMap((row, i) => row.flatMap((cell, j) => (cell === 0 ? [[i, j] as const] : [])));
  const found = new Set<bigint>();
  for (let way = 1; way < (depths + 1) ** table.length; way++) {
    const wards = table.map((_, i) => Math.floor(way / (depths + 1) ** i) % (depths + 1));
    const groove = (j: number) => Math.max(0, ...table.map((row, i) => (row[j] === 1 ? wards[i] : 0)));
    let stopped = 0n;
    for (const [p, [i, j]] of pairs.entries()) if (wards[i] > groove(j)) stopped |= 1n << BigInt(p);
    found.add(stopped);
  }
  const all = [...found];
  // What another way stops too, and more, need not be tried.
  return { stops: all.filter((a) => !all.some((b) => a !== b && (a & ~b) === 0n)), pairs: pairs.length };
}

/** Fewest sites by trying: always the first pair that is open, stopped by each way that can. */
function fewestByTrying(table: AccessTable, stops: number, depths: number): number {
  const { stops: ways, pairs } = stopsOfOneSite(table, depths);
  const goes = (counts: readonly number[], left: number): boolean => {
    const open = counts.findIndex((count) => count < stops);
    if (open < 0) return true;
    if (left === 0) return false;
    return ways.some(
      (way) =>
        (way >> BigInt(open)) & 1n &&
        goes(
          counts.map((count, p) => count + Number((way >> BigInt(p)) & 1n)),
          left - 1,
        ),
    );
  };
  for (let sites = 0; ; sites++) if (goes(new Array<number>(pairs).fill(0), sites)) return sites;
}

function randomTable(seed: number, most: number, free: number): AccessTable {
  const numbers = randomNumbers(seed);
  const density = numbers.between(0.2, 0.8);
  return tableOf(numbers.whole(1, most), numbers.whole(1, most), () =>
    numbers.chance(free) ? null : numbers.chance(density),
  );
}

const seeds = (count: number) => Array.from({ length: count }, (_, seed) => seed);

test('random tables, with free cells in half of them, get the fewest sites, proved', async () => {
  for (const seed of seeds(60)) {
    const table = randomTable(seed, 5, seed % 2 ? 0.2 : 0);
    const plan = await solveTable(table);
    expect({ seed, sites: plan.sites, proved: plan.proved }).toEqual({
      seed,
      sites: fewestByTrying(table, 1, 1),
      proved: true,
    });
  }
});

test.each([
  [2, 1, 4, 20],
  [3, 1, 3, 20],
  [1, 2, 4, 24],
  [1, 3, 3, 16],
  [2, 2, 3, 16],
] as const)('%i stops and %i depths too', async (stops, depths, most, count) => {
  for (const seed of seeds(count)) {
    const table = randomTable(1_000 + seed, most, 0.1);
    const plan = await solveTable(table, { stops, depths });
    const fewest = fewestByTrying(table, stops, depths);
    expect({ seed, sites: plan.sites, proved: plan.proved }).toEqual({ seed, sites: fewest, proved: true });
  }
});

test('sections that exclude each other with several stops, by trying', async () => {
  for (const [k, stops] of [
    [3, 2],
    [3, 3],
    [4, 2],
  ] as const) {
    const table = tableOf(k, k, (i, j) => i === j);
    expect((await solveTable(table, { stops })).sites).toBe(fewestByTrying(table, stops, 1));
  }
});

test('larger random tables keep what they must, and no bound lies above what is found', () => {
  for (const seed of seeds(60)) {
    const numbers = randomNumbers(seed);
    const [stops, depths] = [numbers.pick([1, 2, 3] as const), numbers.pick([1, 2, 3, 4] as const)];
    const table = randomTable(2_000 + seed, 14, numbers.pick([0, 0.1, 0.6]));
    const plan = solveAtOnce(table, solveOptions({ stops, depths }));
    expect(plan && checkWardPlan(table, plan, stops)).toBeNull();
    expect(plan?.lowerBound).toBeLessThanOrEqual(plan?.sites ?? -1);
  }
});

test('bounds lie under the truth', () => {
  for (const seed of seeds(80)) {
    const numbers = randomNumbers(seed);
    const [stops, depths] = [numbers.pick([1, 1, 2, 3]), numbers.pick([1, 1, 2])];
    const table = randomTable(3_000 + seed, 4, numbers.pick([0, 0.2]));
    const { sites } = siteBound(settingOf(reduceTable(table), stops, depths));
    expect(sites).toBeLessThanOrEqual(fewestByTrying(table, stops, depths));
  }
});

test('a freed cell, a row or a column left out, never asks for more sites', async () => {
  for (const seed of seeds(12)) {
    const table = randomTable(4_000 + seed, 5, 0);
    const whole = (await solveTable(table)).sites;
    const [i, j] = [seed % table.length, seed % table[0].length];
    const freed = table.map((row, a) => row.map((cell, b) => (a === i && b === j ? null : cell)));
    const shorter = table.filter((_, a) => a !== i);
    const narrower = table.map((row) => row.filter((_, b) => b !== j));
    for (const less of [freed, shorter, narrower]) expect((await solveTable(less)).sites).toBeLessThanOrEqual(whole);
  }
});
