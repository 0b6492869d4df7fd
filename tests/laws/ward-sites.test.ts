import { expect, test } from 'vitest';
import { judgeEntry } from '../../src/fit/judge-fit.ts';
import { judgeTolerance } from '../../src/fit/judge-tolerance.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { verifyFit } from '../../src/fit/verify-fit.ts';
import { bladeOf, keywayOf, type ShapeResult } from '../../src/plan/ward-shapes.ts';
import { wardSites } from '../../src/plan/ward-sites.ts';
import { thinnestWeb } from '../../src/profile/thinnest-web.ts';
import { randomBladeLimits } from '../cases/random-blade-limits.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { judge } from '../kit/judge.ts';

const UM = 1_000;

/** Blades with at least one ward site. */
function* soundBlades(count: number, salt: number) {
  for (let seed = salt, found = 0; found < count; seed++) {
    const random = randomNumbers(seed);
    const { blade, gap, depths } = randomBladeLimits(random);
    const layout = wardSites(blade, gap, depths);
    if (layout.sites.length === 0) continue;
    found++;
    yield { seed, random, blade, gap, depths, layout };
  }
}

function shapeOf(made: ShapeResult, seed: number) {
  if (!made.ok) throw new Error(`seed ${seed}: ${made.what}`);
  return made;
}

test('with a groove at every site at full depth a blade keeps its least web', () => {
  for (const { seed, blade, gap, depths, layout } of soundBlades(150, 1)) {
    const { milled } = shapeOf(
      bladeOf(
        blade,
        layout.sites,
        layout.sites.map(() => depths),
      ),
      seed,
    );
    const web = thinnestWeb(milled)?.thickness ?? 0;
    expect(web, `seed ${seed}`).toBeGreaterThanOrEqual(gap.leastWeb as number);
    expect(Math.abs(web - layout.web), `seed ${seed}`).toBeLessThanOrEqual(2 * UM);
  }
});

test('a blank enters exactly where its grooves are as deep as the wards, for all parts within tolerance', () => {
  let [goes, stays] = [0, 0];
  for (const { seed, random, blade, gap, depths, layout } of soundBlades(120, 10_000)) {
    const { sites } = layout;
    const bands = { blank: gap.tolerance, opening: gap.tolerance };
    for (let trial = 0; trial < 6; trial++) {
      const wards = sites.map(() => random.whole(0, depths));
      const grooves = randomGrooves(wards, depths, trial, random);
      const opening = prepareOpening(shapeOf(keywayOf(blade, sites, wards, gap), seed).ring);
      const { ring } = shapeOf(bladeOf(blade, sites, grooves), seed);
      const included = wards.every((ward, i) => ward <= grooves[i]);
      const fit = judgeEntry(opening, prepareBlank(ring), gap.runningClearance);
      const about = `seed ${seed} trial ${trial}: ${wards} in ${grooves}`;
      expect(judgeTolerance(opening, [ring], fit, bands), about).toBe(included ? 'always' : 'never');
      if (included)
        expect(fit.clearance + fit.accuracy, about).toBeGreaterThanOrEqual(
          gap.runningClearance + 2 * gap.tolerance - 1,
        );
      if (included) goes++;
      else stays++;
    }
  }
  expect(goes).toBeGreaterThan(150);
  expect(stays).toBeGreaterThan(250);
});

/** Grooves for the wards: just enough, more than enough, or one of them one step short. */
function randomGrooves(
  wards: readonly number[],
  depths: number,
  trial: number,
  random: ReturnType<typeof randomNumbers>,
) {
  const enough = wards.map((ward) => (random.chance(0.5) ? ward : random.whole(ward, depths)));
  if (trial % 3 === 0) return enough;
  const warded = wards.flatMap((ward, i) => (ward > 0 ? [i] : []));
  if (trial % 3 === 1 && warded.length > 0) {
    const short = random.pick(warded);
    return enough.map((depth, i) => (i === short ? wards[i] - 1 : depth));
  }
  return wards.map(() => random.whole(0, depths));
}

test('fits of drawn keyways and blades are confirmed the second way', () => {
  for (const { seed, random, blade, gap, depths, layout } of soundBlades(25, 20_000)) {
    const wards = layout.sites.map(() => random.whole(0, depths));
    const grooves = randomGrooves(wards, depths, seed, random);
    const opening = shapeOf(keywayOf(blade, layout.sites, wards, gap), seed).ring;
    const blank = shapeOf(bladeOf(blade, layout.sites, grooves), seed).ring;
    expect(verifyFit(opening, blank, judge(opening, blank, gap.runningClearance)), `seed ${seed}`).toEqual([]);
  }
});
