import { expect, test } from 'vitest';
import { placeWards } from '../../../src/plan/place-wards.ts';
import type { WardPlan } from '../../../src/plan/ward-plan.ts';
import { wardSites } from '../../../src/plan/ward-sites.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { BLADE, GAP, mm } from './sample-blade.ts';

const { sites } = wardSites({ ...BLADE, cutZone: 5_500_000 }, GAP, 1);

/** Sections that need two wards of four each; each blank has the grooves of its own section only. */
const PAIRS = [
  [1, 1, 0, 0],
  [1, 0, 1, 0],
  [1, 0, 0, 1],
  [0, 1, 1, 0],
  [0, 1, 0, 1],
  [0, 0, 1, 1],
];
const TABLE = PAIRS.map((_, i) => PAIRS.map((_row, j): 0 | 1 => (i === j ? 1 : 0)));

function wardPlan(codes: readonly (readonly number[])[]): WardPlan {
  return { sites: 4, wards: codes, grooves: codes, lowerBound: 4, bound: 'sperner', proved: true, grooved: 12 };
}

function place(plan: WardPlan) {
  const steps = placeWards(plan, TABLE, sites, BLADE, GAP);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

test('four sites stand on a blade with four', () => {
  expect(sites).toHaveLength(4);
  const { at } = place(wardPlan(PAIRS));
  expect([...at].sort()).toEqual([0, 1, 2, 3]);
});

test('with all pairs of four sites some pair is stopped on one face only, however they are placed', () => {
  // (0.6 - 2 x 0.08) / 4 = 0.11 mm: sections 12 and 13 differ at one site each way.
  expect(place(wardPlan(PAIRS)).guard).toBe(110_000);
});

test('where it can be, every pair is stopped on both faces', () => {
  // Two wards that always go together belong on opposite faces: (0.6 + 0.6 - 2 x 0.08) / 4.
  const codes = [
    [1, 1, 0, 0],
    [0, 0, 1, 1],
  ];
  const table = [
    [1, 0],
    [0, 1],
  ] as const;
  const plan = { ...wardPlan(codes), wards: codes, grooves: codes };
  const steps = placeWards(plan, table, sites, BLADE, GAP);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const { at, guard } = step.value;
  expect(guard).toBe(260_000);
  expect(sites[at[0]].side).not.toBe(sites[at[1]].side);
  expect(sites[at[2]].side).not.toBe(sites[at[3]].side);
});

test('grooves of opposite faces are kept apart where there is room', () => {
  const codes = [
    [1, 0],
    [0, 1],
  ];
  const plan = { ...wardPlan(codes), sites: 2, grooves: [...codes, [1, 1]] };
  const steps = placeWards(
    plan,
    [
      [1, 0, 1],
      [0, 1, 1],
    ],
    sites,
    BLADE,
    GAP,
  );
  let step = steps.next();
  while (!step.done) step = steps.next();
  const [a, b] = step.value.at.map((i) => sites[i]);
  if (a.side !== b.side) expect(a.bottom).not.toBe(b.bottom);
  expect(step.value.guard).toBe(110_000);
});

/** Every order of a few things. */
function* orders(of: readonly number[]): Generator<number[]> {
  if (of.length === 0) yield [];
  for (const [i, first] of of.entries()) for (const rest of orders(of.toSpliced(i, 1))) yield [first, ...rest];
}

test('as good as the best of all placings, on random small plans', () => {
  for (let seed = 1; seed <= 30; seed++) {
    const random = randomNumbers(seed);
    const count = random.whole(2, 4);
    const codes = Array.from({ length: random.whole(2, 6) }, () => sites.map(() => random.whole(0, 1)).slice(0, count));
    const stopped = codes.flatMap((ward) =>
      codes.map((groove) => ward.flatMap((w, site) => (w > groove[site] ? [site] : []))),
    );
    const pairs = stopped.filter((places) => places.length > 0);
    if (pairs.length === 0) continue;
    const guardOf = (at: readonly number[]) => {
      const faces = pairs.map((places) => new Set(places.map((site) => sites[at[site]].side)).size);
      return (Math.min(...faces) * mm(0.6) - 2 * mm(0.08)) / 4;
    };
    const best = Math.max(...[...orders([0, 1, 2, 3])].map(guardOf));
    const plan = { ...wardPlan(codes), sites: count };
    const table = codes.map((ward) => codes.map((groove): 0 | 1 => (ward.some((w, i) => w > groove[i]) ? 0 : 1)));
    const steps = placeWards(plan, table, sites, BLADE, GAP);
    let step = steps.next();
    while (!step.done) step = steps.next();
    expect(step.value.guard, `seed ${seed}`).toBe(best);
    expect(guardOf(step.value.at), `seed ${seed}`).toBe(best);
  }
});
