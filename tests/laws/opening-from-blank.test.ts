import { expect, test } from 'vitest';
import { millOutline } from '../../src/profile/mill-outline.ts';
import { blankFromOpening, openingFromBlank } from '../../src/profile/opening-from-blank.ts';
import type { Groove, Milled } from '../../src/profile/profile.ts';
import { type RandomNumbers, randomNumbers } from '../cases/random-numbers.ts';
import { randomSection } from '../cases/random-section.ts';
import { sectionOutline } from '../cases/section-outline.ts';
import { judge } from '../kit/judge.ts';
import { soundRing } from '../kit/shapes.ts';

const UM = 1_000;

function randomBlade(random: RandomNumbers): Milled {
  const um = (from: number, to: number) => random.whole(from, to) * UM;
  const grooves = Array.from(
    { length: random.whole(1, 4) },
    (): Groove => ({
      side: random.pick(['left', 'right'] as const),
      bottom: random.chance(0.2) ? 0 : um(600, 6500),
      width: um(400, 1200),
      depth: um(200, 900),
      flank: random.chance(0.5) ? 0 : random.between(0, 0.5),
      rootRadius: random.chance(0.4) ? 0 : um(10, 150),
    }),
  );
  return {
    thickness: um(1800, 2600),
    height: um(7500, 9000),
    backRadius: random.chance(0.4) ? 0 : um(50, 500),
    grooves,
  };
}

/** Milled blades that can be drawn. */
function* blades(count: number, salt: number) {
  for (let seed = salt, found = 0; found < count; seed++) {
    const random = randomNumbers(seed);
    const milled = randomBlade(random);
    const points = millOutline(milled);
    if (!Array.isArray(points)) continue;
    found++;
    yield { seed, random, milled, ring: soundRing(points) };
  }
}

/** What the fit core may find less than there is (its search stops 50 nm short), and the tolerance of the rule: 1 um. */
const expectGap = (clearance: number, asked: number, seed: number) => {
  expect(clearance, `${seed}`).toBeGreaterThanOrEqual(asked - 50);
  expect(clearance, `${seed}`).toBeLessThanOrEqual(asked + 1 * UM);
};

test('a milled blank in its own keyway has the clearance asked for', () => {
  for (const { seed, random, milled, ring } of blades(80, 1)) {
    const gap = random.whole(10, 90) * UM;
    const result = openingFromBlank({ name: 'Teal blank', milled, ring }, gap);
    if (!result.ok) throw new Error(`${seed}: ${result.what}`);
    expectGap(judge(result.made.ring, ring).clearance, gap, seed);
  }
});

test('the blank of a milled keyway has the clearance asked for', () => {
  for (const { seed, random, milled, ring } of blades(80, 10_000)) {
    const gap = random.whole(10, 90) * UM;
    const result = blankFromOpening({ name: 'Teal keyway', milled, ring }, gap);
    if (!result.ok) expect(result.what, `${seed}`).toMatch(/with this clearance/);
    else expectGap(judge(ring, result.made.ring).clearance, gap, seed);
  }
});

/** Blades whose back is as good as a half circle, half of them with a step beside it. */
function* roundBacks(count: number) {
  for (let seed = 20_000, found = 0; found < count; seed++) {
    const random = randomNumbers(seed);
    const blade = randomBlade(random);
    const step = { side: random.pick(['left', 'right'] as const), bottom: 0, flank: 0, rootRadius: 0 };
    const [width, depth] = [random.whole(700, 1400) * UM, random.whole(100, 600) * UM];
    const grooves = random.chance(0.5) ? [{ ...step, width, depth }] : [];
    const room = grooves.length > 0 ? Math.min(width, (blade.thickness - depth) / 2) : blade.thickness / 2;
    const milled = { ...blade, grooves, backRadius: Math.floor(room / UM - random.whole(0, 30)) * UM };
    const points = millOutline(milled);
    if (!Array.isArray(points)) continue;
    found++;
    yield { seed, random, milled, ring: soundRing(points) };
  }
}

test('a back that is round all over likewise, both ways', () => {
  for (const { seed, random, milled, ring } of roundBacks(60)) {
    const gap = random.whole(2, 90) * UM;
    const opening = openingFromBlank({ name: 'Teal blank', milled, ring }, gap);
    const blank = blankFromOpening({ name: 'Teal keyway', milled, ring }, gap);
    if (!opening.ok || !blank.ok) throw new Error(`${seed} is refused`);
    expectGap(judge(opening.made.ring, ring).clearance, gap, seed);
    expectGap(judge(ring, blank.made.ring).clearance, gap, seed);
  }
});

test('drawn sections likewise, undercut flanks and all', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const random = randomNumbers(seed);
    const ring = soundRing(sectionOutline(randomSection(random, random.whole(2, 5), 'any')));
    const gap = random.whole(10, 80) * UM;
    const opening = openingFromBlank({ name: 'Teal blank', ring }, gap);
    const blank = blankFromOpening({ name: 'Teal keyway', ring }, gap);
    if (!opening.ok || !blank.ok) throw new Error(`${seed}`);
    expectGap(judge(opening.made.ring, ring).clearance, gap, seed);
    expectGap(judge(ring, blank.made.ring).clearance, gap, seed);
  }
});
