import { expect, test } from 'vitest';
import type { AccessTable } from '../../../src/plan/access-table.ts';
import { type NearestPlan, nearestPlans } from '../../../src/plan/nearest-plan.ts';
import { checkWardPlan } from '../../../src/plan/ward-plan.ts';
import { campus } from '../../cases/access-tables.ts';
import { solveOptions } from '../../kit/solve-table.ts';

function nearest(table: AccessTable, changes: Parameters<typeof solveOptions>[0]): NearestPlan[] {
  const steps = nearestPlans(table, solveOptions(changes));
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    expect(step.value.done).toBeLessThan(step.value.total);
  }
}

test('each near plan has room, keeps its own table, and changes what it says', () => {
  const table = campus([4, 4, 4, 4]);
  const found = nearest(table, { stops: 2, mostSites: 7 });
  expect(found.map(({ change }) => change)).toEqual(['stops', 'depths', 'sections', 'sharing']);
  for (const { plan, table: part, options } of found) {
    expect(plan.sites).toBeLessThanOrEqual(7);
    expect(checkWardPlan(part, plan, options.stops)).toBeNull();
  }
  const [stops, depths, sections, sharing] = found;
  expect(stops.options.stops).toBe(1);
  expect(depths.options).toMatchObject({ stops: 2, depths: expect.any(Number) });
  expect(sections.sections.length).toBeLessThan(16);
  expect(sharing.sections.flat().sort((a, b) => a - b)).toEqual(Array.from({ length: 16 }, (_, i) => i));
});

test('sections are left out evenly, with the blanks that were for them alone', () => {
  const [, sections] = nearest(campus([3, 3, 3]), { mostSites: 4 });
  expect(sections.words).toMatch(/^keep \d of 9 sections$/);
  const zones = [0, 1, 2].map((zone) => sections.sections.filter(([row]) => Math.floor(row / 3) === zone).length);
  expect(Math.max(...zones) - Math.min(...zones)).toBeLessThanOrEqual(1);
  for (const blank of sections.blanks)
    expect(sections.table.some((row) => row[sections.blanks.indexOf(blank)] === 1)).toBe(true);
});

test('areas of one zone share before areas of two', () => {
  const sharing = nearest(campus([2, 2, 2, 2]), { mostSites: 4 }).find(({ change }) => change === 'sharing');
  const shared = sharing?.sections.filter((rows) => rows.length === 2) ?? [];
  expect(shared.length).toBeGreaterThan(0);
  for (const [a, b] of shared) expect(Math.floor(a / 2)).toBe(Math.floor(b / 2));
});

test('nothing near is told where one section has no room, or for a table that is none', () => {
  expect(nearest(campus([2, 2]), { stops: 1, depths: 4, mostSites: 0 }).map(({ change }) => change)).toEqual([
    'sections',
    'sharing',
  ]);
  expect(nearest([[1, 0], [1]], { mostSites: 1 })).toEqual([]);
});
