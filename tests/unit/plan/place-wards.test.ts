import { expect, test } from 'vitest';
import { placeWards } from '../../../src/plan/place-wards.ts';
import type { WardPlan } from '../../../src/plan/ward-plan.ts';
import { wardSites } from '../../../src/plan/ward-sites.ts';
import { BLADE, GAP } from './sample-blade.ts';

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
