import { expect, test } from 'vitest';
import type { Plan } from '../../src/family/plan.ts';
import { verifyFit } from '../../src/fit/verify-fit.ts';
import { makeRing } from '../../src/geom/ring.ts';
import { accessOf } from '../../src/plan/access.ts';
import { drawWardPlan } from '../../src/plan/draw-plan.ts';
import type { DrawnPlan } from '../../src/plan/drawn-plan.ts';
import { solveAtOnce } from '../../src/plan/solve.ts';
import { wardSites } from '../../src/plan/ward-sites.ts';
import { millOutline } from '../../src/profile/mill-outline.ts';
import type { Milled } from '../../src/profile/profile.ts';
import { randomBladeLimits } from '../cases/random-blade-limits.ts';
import { type RandomNumbers, randomNumbers } from '../cases/random-numbers.ts';
import { judge } from '../kit/judge.ts';

/** Areas in two zones, a holder for each zone and some for areas here and there. */
function randomPlan(random: RandomNumbers): Plan {
  const { blade, depths } = randomBladeLimits(random);
  const count = random.whole(2, 7);
  const zones = ['north', 'south'].map((id) => ({ id, name: id }));
  const areas = Array.from({ length: count }, (_, i) => {
    return { id: `a${i}`, name: `Area ${i}`, parent: zones[i % 2].id };
  });
  const holders = Array.from({ length: random.whole(0, 3) }, (_, i) => {
    const enters = areas.filter(() => random.chance(0.4)).map(({ id }) => id);
    return { id: `h${i}`, name: `Holder ${i}`, enters: enters.length > 0 ? enters : ['a0'] };
  });
  const zone = { id: 'z', name: 'Zone', enters: ['north'] };
  const [baseBlanks, allSection] = [true, random.chance(0.7)];
  return {
    areas: [...zones, ...areas],
    holders: [...holders, zone],
    baseBlanks,
    allSection,
    reserve: 0,
    stops: 1,
    depths,
    blade,
  };
}

function finish(steps: Generator<unknown, DrawnPlan, void>): DrawnPlan {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function outline(milled: Milled) {
  const points = millOutline(milled);
  const made = makeRing(Array.isArray(points) ? points : []);
  if (!made.ok) throw new Error(made.fault.message);
  return made.ring;
}

test('plans of sound blades are confirmed, and so by a second way of judging', () => {
  let drawnPlans = 0;
  for (let seed = 1; drawnPlans < 12; seed++) {
    const random = randomNumbers(seed);
    const plan = randomPlan(random);
    const gap = { runningClearance: 30_000, tolerance: random.whole(0, 15) * 1_000, leastWeb: 400_000 };
    const access = accessOf(plan);
    const room = wardSites(plan.blade, gap, plan.depths).sites.length;
    const options = { stops: 1, depths: plan.depths as 1 | 2 | 3, mostSites: room, seconds: 1 } as const;
    const wardPlan = solveAtOnce(access.table, options);
    if (!wardPlan || room === 0 || wardPlan.sites > room) continue;
    drawnPlans++;
    const drawn = finish(drawWardPlan({ plan, access, wardPlan, gap }));
    if (!drawn.ok) throw new Error(`seed ${seed}: ${drawn.why.map(({ words }) => words).join('; ')}`);
    const of = (kind: string) => drawn.profiles.filter((profile) => profile.kind === kind);
    for (const [i, opening] of of('opening').entries())
      for (const [j, blank] of of('blank').entries()) {
        const [around, inside] = [outline(opening.milled), outline(blank.milled)];
        const fit = judge(around, inside, gap.runningClearance);
        const cell = access.table[i][j];
        const about = `seed ${seed}: ${blank.name} in ${opening.name}`;
        if (cell !== null) expect(fit.verdict, about).toBe(cell === 1 ? 'enters' : 'blocked');
        if ((i * 7 + j + seed) % 23 === 0) expect(verifyFit(around, inside, fit), about).toEqual([]);
      }
  }
});

test('the guard margin is the least wear at which a forbidden pair goes in, and at least the tolerance', () => {
  for (const { drawn, gap } of someDrawn(5)) {
    if (!drawn.report.guard) continue;
    const { blank, opening, length } = drawn.report.guard;
    expect(length).toBeGreaterThan(gap.tolerance);
    const part = (id: string) => outline(drawn.profiles.find((profile) => profile.id === id)?.milled as Milled);
    expect(judge(part(opening), part(blank)).verdict).toBe('blocked');
  }
});

function* someDrawn(count: number) {
  for (let seed = 500, found = 0; found < count; seed++) {
    const plan = randomPlan(randomNumbers(seed));
    const gap = { runningClearance: 30_000, tolerance: 10_000, leastWeb: 400_000 };
    const access = accessOf(plan);
    const room = wardSites(plan.blade, gap, plan.depths).sites.length;
    const options = { stops: 1, depths: plan.depths as 1 | 2 | 3, mostSites: room, seconds: 1 } as const;
    const wardPlan = solveAtOnce(access.table, options);
    if (!wardPlan || wardPlan.sites > room) continue;
    const drawn = finish(drawWardPlan({ plan, access, wardPlan, gap }));
    if (!drawn.ok) throw new Error(`seed ${seed}: ${drawn.why.map(({ words }) => words).join('; ')}`);
    found++;
    yield { drawn, gap };
  }
}
