// Laws of the solver, against brute force of our own that shares no code with it (tests/kit/fewest-sites.ts).

import { expect, test } from 'vitest';
import type { AccessTable } from '../../src/plan/access-table.ts';
import { reduceTable } from '../../src/plan/reduce-table.ts';
import { siteBound } from '../../src/plan/site-bounds.ts';
import { solveAtOnce } from '../../src/plan/solve.ts';
import { checkWardPlan } from '../../src/plan/ward-plan.ts';
import { settingOf } from '../../src/plan/ward-search.ts';
import { tableOf } from '../cases/access-tables.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { fewestByTrying } from '../kit/fewest-sites.ts';
import { solveOptions, solveTable } from '../kit/solve-table.ts';

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
