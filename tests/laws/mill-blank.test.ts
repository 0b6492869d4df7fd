import fc from 'fast-check';
import { expect, test } from 'vitest';
import { difference } from '../../src/geom/clip.ts';
import { regionOf } from '../../src/geom/region.ts';
import { regionArea } from '../../src/geom/region-area.ts';
import { signedArea } from '../../src/geom/signed-area.ts';
import type { Cutter } from '../../src/passage/groove-cover.ts';
import { type BladeWithin, bladeWithin, type PlainBlade } from '../../src/passage/mill-blank.ts';
import { checkMilled } from '../../src/profile/check-milled.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { randomSection } from '../cases/random-section.ts';
import { sectionOutline } from '../cases/section-outline.ts';
import { soundRing } from '../kit/shapes.ts';

const UM = 1_000;

function blade(outline: Parameters<typeof bladeWithin>[0], plain: PlainBlade, cutter: Cutter): BladeWithin | null {
  const search = bladeWithin(outline, plain, cutter);
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

const outlines = (seed: number) => {
  const random = randomNumbers(seed);
  return soundRing(sectionOutline(randomSection(random, random.whole(1, 4), 'any')));
};
const seeds = fc.integer({ min: 0, max: 1e6 });
const cutters = fc.record({
  flank: fc.integer({ min: 0, max: 30 }).map((deg) => (deg * Math.PI) / 180),
  rootRadius: fc.integer({ min: 0, max: 120 }).map((um) => um * UM),
  leastWidth: fc.integer({ min: 0, max: 600 }).map((um) => um * UM),
  depthStep: fc.integer({ min: 10, max: 200 }).map((um) => um * UM),
});
const ANY = { thickness: null, height: null };

test('what is milled lies within the outline, and can be milled by that cutter', () => {
  fc.assert(
    fc.property(seeds, cutters, (seed, cutter) => {
      const outline = outlines(seed);
      const made = blade(outline, ANY, cutter);
      if (!made) return;
      expect(checkMilled(made.milled)).toEqual([]);
      expect(regionArea(difference(regionOf(made.ring), regionOf(outline)))).toBeLessThan(1e8);
      expect(made.area).toBeLessThanOrEqual(signedArea(outline));
      for (const { depth, width, flank, rootRadius } of made.milled.grooves) {
        expect(depth % cutter.depthStep).toBe(0);
        expect(width).toBeGreaterThanOrEqual(cutter.leastWidth);
        expect([flank, rootRadius]).toEqual([cutter.flank, cutter.rootRadius]);
      }
    }),
    { numRuns: 40, seed: 9 },
  );
});

test('a sharp square cutter with fine steps gives a square-grooved blade back but for a rim', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const random = randomNumbers(seed);
      const section = randomSection(random, random.whole(1, 3), 'square');
      const outline = soundRing(sectionOutline(section));
      const made = blade(outline, ANY, { flank: 0, rootRadius: 0, leastWidth: 0, depthStep: UM });
      expect(made).not.toBeNull();
      expect(made?.area ?? 0).toBeGreaterThan(signedArea(outline) * 0.985);
    }),
    { numRuns: 25, seed: 9 },
  );
});
