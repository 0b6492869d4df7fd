import { expect, test } from 'vitest';
import type { Plan } from '../../../src/family/plan.ts';
import { catalogue } from '../../../src/jobs/catalogue.ts';
import { JobCancelled, type JobContext } from '../../../src/jobs/job.ts';
import { accessOf } from '../../../src/plan/access.ts';
import { solveAtOnce } from '../../../src/plan/solve.ts';
import { BLADE, GAP } from '../plan/sample-blade.ts';

const NAMES = Array.from({ length: 12 }, (_, i) => `Area ${i + 1}`);

const PLAN: Plan = {
  areas: NAMES.map((name) => ({ id: name, name })),
  holders: [],
  ...{ baseBlanks: true, allSection: true, reserve: 0, stops: 1, depths: 1, blade: BLADE },
};

function input() {
  const access = accessOf(PLAN);
  const wardPlan = solveAtOnce(access.table, { stops: 1, depths: 1, mostSites: 10, seconds: 0 });
  if (!wardPlan) throw new Error('no wards');
  return { plan: PLAN, access, wardPlan, gap: GAP };
}

function context(change: Partial<JobContext> = {}): JobContext {
  let now = 0;
  return { progress: () => {}, cancelled: () => false, pause: async () => {}, now: () => ++now * 30, ...change };
}

test('a plan is drawn with progress that never goes back', async () => {
  const seen: number[] = [];
  const drawn = await catalogue.drawPlan(input(), context({ progress: (done, total) => seen.push(done / total) }));
  expect(drawn.ok && drawn.profiles).toHaveLength(25);
  expect(seen.length).toBeGreaterThan(20);
  expect(seen).toEqual([...seen].sort((a, b) => a - b));
  expect(Math.max(...seen)).toBeLessThanOrEqual(1);
});

test('drawing can be given up', async () => {
  let looks = 0;
  const given = catalogue.drawPlan(input(), context({ cancelled: () => ++looks > 3 }));
  await expect(given).rejects.toBeInstanceOf(JobCancelled);
});

test('input and answer go through a structured clone, as between threads', async () => {
  const asked = structuredClone(input());
  const drawn = await catalogue.drawPlan(asked, context());
  expect(structuredClone(drawn)).toEqual(drawn);
});
