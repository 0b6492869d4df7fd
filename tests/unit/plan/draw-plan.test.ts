import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/family/plan.ts';
import { measureWear } from '../../../src/fit/measure-wear.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { accessOf, reservedTable } from '../../../src/plan/access.ts';
import { confirmPlan } from '../../../src/plan/confirm-plan.ts';
import { drawWardPlan } from '../../../src/plan/draw-plan.ts';
import type { DrawPlanInput } from '../../../src/plan/drawn-plan.ts';
import type { PlanGap } from '../../../src/plan/plan-gap.ts';
import { sayConfirmed } from '../../../src/plan/say-confirmed.ts';
import { solveAtOnce } from '../../../src/plan/solve.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import type { Milled } from '../../../src/profile/profile.ts';
import { soundRing } from '../../kit/shapes.ts';
import { BLADE, GAP, mm } from './sample-blade.ts';

const UM = 1_000;

const point = (x: number, y: number) => ({ x: mm(x), y: mm(y) });
const BIRDS = ['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover', 'Knot'];

const PLAN: Plan = {
  areas: BIRDS.map((name) => ({ id: name.toLowerCase(), name })),
  holders: [{ id: 'warden', name: 'Warden', enters: ['heron', 'smew', 'bittern'] }],
  baseBlanks: true,
  allSection: true,
  reserve: 0,
  stops: 1,
  depths: 1,
  blade: BLADE,
};

function input(change: Partial<Plan> = {}, gap: PlanGap = GAP): DrawPlanInput {
  const plan = { ...PLAN, ...change };
  const access = accessOf(plan);
  const options = { stops: 1, depths: plan.depths as 1 | 2, mostSites: 10, seconds: 1 } as const;
  const wardPlan = solveAtOnce(access.table, options);
  if (!wardPlan) throw new Error('no wards');
  return { plan, access, wardPlan, gap };
}

function draw(asked: DrawPlanInput) {
  const steps = drawWardPlan(asked);
  let step = steps.next();
  while (!step.done) {
    expect(step.value.done).toBeLessThanOrEqual(step.value.total);
    step = steps.next();
  }
  return step.value;
}

function outline(milled: Milled): Ring {
  const points = millOutline(milled);
  if (!Array.isArray(points)) throw new Error('not milled');
  return soundRing(points);
}

describe('a plan that can be drawn', () => {
  const drawn = draw(input());
  if (!drawn.ok) throw new Error(drawn.why.map(({ words }) => words).join());
  const { report, profiles } = drawn;

  test('gives a keyway for each section and a blank for each set', () => {
    expect(profiles.filter(({ kind }) => kind === 'opening').map(({ name }) => name)).toEqual(
      BIRDS.map((name) => `${name} keyway`),
    );
    expect(profiles.filter(({ kind }) => kind === 'blank')).toHaveLength(8);
    expect(new Set(profiles.map(({ id }) => id)).size).toBe(14);
    expect(profiles.find(({ name }) => name === 'Heron blank')?.section).toBe('Heron');
  });

  test('comes to the end of its progress with the last look', () => {
    const seen = [...drawWardPlan(input())].map(({ done, total }) => done / total);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(seen.indexOf(1)).toBe(seen.length - 1);
  });

  test('counts its pairs and finds the gap that it was drawn with', () => {
    expect(report.pairs).toEqual({ wanted: 15, forbidden: 33, free: 0 });
    expect(report.clearance?.length).toBeGreaterThan(79 * UM);
    expect(report.clearance?.length).toBeLessThan(82 * UM);
  });

  test('tells a guard margin of at least a ward less the play, shared by four surfaces', () => {
    // (0.6 - 2 x 0.08) / 4 = 0.11 mm.
    expect(report.guard?.length).toBeGreaterThan(109 * UM);
    expect(report.guard?.length).toBeLessThan(270 * UM);
  });

  test('counts the other pairs that go in after as much wear, each measured by itself', () => {
    const of = (kind: string) =>
      profiles.filter((profile) => profile.kind === kind).map(({ milled }) => outline(milled));
    const [openings, blanks] = [of('opening').map(prepareOpening), of('blank')];
    const { table } = accessOf(PLAN);
    const wears = openings.flatMap((opening, i) =>
      blanks.flatMap((blank, j) => (table[i][j] === 0 ? [measureWear(opening, blank, 'both')] : [])),
    );
    expect(wears).toHaveLength(33);
    expect(Math.min(...wears)).toBe(report.guard?.length);
    expect(wears.filter((wear) => wear === report.guard?.length).length - 1).toBe(report.guard?.alike);
  });

  test('keeps the least web and sees through every keyway', () => {
    for (const { thickness } of report.webs) expect(thickness).toBeGreaterThanOrEqual(GAP.leastWeb);
    expect(report.webs).toHaveLength(8);
    expect(report.sights).toHaveLength(6);
    for (const { paracentric, strip } of report.sights) {
      expect(paracentric).toBe(false);
      expect(strip).toBeGreaterThanOrEqual(mm(2.16 - 1.2));
    }
  });
});

test('deep wards of both faces make paracentric keyways that are confirmed too', () => {
  const blade = { ...BLADE, grooveDepth: mm(1.2), heightStep: mm(1.4), cutZone: mm(1) };
  const drawn = draw(input({ blade }));
  if (!drawn.ok) throw new Error(drawn.why.map(({ words }) => words).join());
  expect(drawn.report.sights.some(({ paracentric }) => paracentric)).toBe(true);
});

test('two depths', () => {
  const drawn = draw(input({ depths: 2 }));
  expect(drawn.ok).toBe(true);
});

test('a blade that cannot be made says which limit', () => {
  const drawn = draw(input({ blade: { ...BLADE, grooveDepth: mm(0.2) } }));
  expect(drawn.ok).toBe(false);
  if (!drawn.ok) expect(drawn.why[0]).toMatchObject({ field: 'grooveDepth', kind: 'fault' });
});

test('too few sites say how many are wanting', () => {
  const drawn = draw(input({ blade: { ...BLADE, cutZone: mm(6.5) } }));
  expect(drawn.ok).toBe(false);
  if (!drawn.ok) {
    expect(drawn.why[0].words).toMatch(/takes 4 ward sites and the blade has room for 2/);
    expect(drawn.nearest).toMatch(/2 more sites/);
  }
});

test('wards of another plan are not drawn', () => {
  const asked = input();
  const drawn = draw({ ...asked, wardPlan: { ...asked.wardPlan, wards: asked.wardPlan.wards.slice(1) } });
  expect(drawn.ok).toBe(false);
});

test('wards that let a forbidden blank in are not offered: the pair is told', () => {
  const asked = input();
  const grooves = asked.wardPlan.grooves.with(
    0,
    asked.wardPlan.grooves[0].map(() => 1),
  );
  const drawn = draw({ ...asked, wardPlan: { ...asked.wardPlan, grooves } });
  expect(drawn.ok).toBe(false);
  if (!drawn.ok) {
    expect(drawn.pairs).toHaveLength(5);
    expect(drawn.pairs[0].kind).toBe('goes-in');
    expect(drawn.pairs[0].words).toMatch(/“Heron blank” in “Smew keyway” must not enter and does, with 0.08/);
  }
});

test('a wanted blank that is stopped is told with what it collides by', () => {
  const asked = input();
  const grooves = asked.wardPlan.grooves.with(
    0,
    asked.wardPlan.grooves[0].map(() => 0),
  );
  const drawn = draw({ ...asked, wardPlan: { ...asked.wardPlan, grooves } });
  expect(drawn.ok).toBe(false);
  if (!drawn.ok) expect(drawn.pairs[0]).toMatchObject({ kind: 'stays-out', opening: 'heron-keyway' });
});

describe('forbidden pairs at the guard margin', () => {
  test('are judged tilted within the family’s limit, and the plan says so', () => {
    const drawn = draw(input({}, { ...GAP, tiltLimit: Math.PI / 90 }));
    if (!drawn.ok) throw new Error(drawn.why.map(({ words }) => words).join());
    const { tilted } = drawn.report;
    expect(tilted?.looked).toBeGreaterThan(0);
    expect(tilted?.looked).toBeLessThanOrEqual(Math.min(12, tilted?.ofPairs ?? 0));
    expect(drawn.report.tolerance).toBe(GAP.tolerance);
    expect(sayConfirmed(drawn.report, (id) => id)[0]).toMatch(/^Tilted by up to 2°, \d+ of \d+ forbidden pairs/);
  });

  test('that go in tilted as drawn are refused; within tolerance only, they are told', () => {
    // A slot that leans by 3 degrees: too narrow for the upright blade, and 0.1 mm wider than the leaning one.
    const confirmed = (tiltLimit: number, slot: number) => {
      const lean = (x: number, y: number) => ({ x: Math.round(mm(x + Math.tan(Math.PI / 60) * y)), y: mm(y) });
      const opening = soundRing([lean(0, -0.2), lean(slot, -0.2), lean(slot, 8.4), lean(0, 8.4)]);
      const blank = soundRing([point(0, 0), point(2, 0), point(2, 8), point(0, 8)]);
      const parts = [
        [opening, 'keyway'],
        [blank, 'blank'],
      ] as const;
      const [keyway, blade] = parts.map(([ring, id]) => ({ id, name: id, ring }));
      const steps = confirmPlan([keyway], [blade], [[0]], {
        runningClearance: mm(0.04),
        tolerance: mm(0.03),
        tiltLimit,
      });
      for (;;) {
        const step = steps.next();
        if (step.done) return step.value;
      }
    };
    const degree = Math.PI / 180;
    expect(confirmed(0, 2.1)).toMatchObject({ faults: [], tilted: null });
    expect(confirmed(degree, 2.1)).toMatchObject({ faults: [], tilted: { looked: 1, loosest: null } });
    const refused = confirmed(4 * degree, 2.1);
    expect(refused.faults).toHaveLength(1);
    expect(refused.faults[0].words).toBe(
      '“blank” in “keyway” must not enter and does when it is tilted, within the tilt limit of 4°',
    );
    const loose = confirmed(4 * degree, 1.97);
    expect(loose).toMatchObject({ faults: [], tilted: { loosest: { blank: 'blank', opening: 'keyway' } } });
  });
});

test('sections kept in reserve are drawn and confirmed too, and not given', () => {
  const plan = { ...PLAN, reserve: 3 };
  const access = accessOf(plan);
  const options = { stops: 1, depths: 1, mostSites: 10, seconds: 1 } as const;
  const wardPlan = solveAtOnce(reservedTable(access, 3), options);
  if (!wardPlan) throw new Error('no wards');
  const asked = { plan, access, wardPlan, gap: GAP };
  const drawn = draw(asked);
  if (!drawn.ok) throw new Error(drawn.why.map(({ words }) => words).join());
  expect(drawn.report.reserve).toBe(3);
  expect(drawn.profiles).toHaveLength(14);
  expect(drawn.report.pairs.wanted).toBe(15);
  // A reserve that the all-section blank does not enter is not confirmed.
  const grooves = wardPlan.grooves.map((depths, j) =>
    access.blanks[j]?.rank === 'all-section' ? depths.map(() => 0) : depths,
  );
  const sole = {
    ...wardPlan,
    wards: wardPlan.wards.map((depths, i) => (i < 6 ? depths.map(() => 0) : depths)),
    grooves,
  };
  const free = { ...access, table: access.table.map((row) => row.map(() => null)) };
  const refused = draw({ ...asked, access: free, wardPlan: sole });
  expect(refused.ok).toBe(false);
  if (!refused.ok)
    expect(refused.pairs.some(({ opening, kind }) => opening === 'reserve-keyway-1' && kind === 'stays-out')).toBe(
      true,
    );
});
