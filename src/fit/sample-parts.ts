import type { Ring } from '../geom/ring.ts';
import { goesIn } from './judge-fit.ts';
import type { Bands } from './judge-tolerance.ts';
import { randomFrom, type Share, shareOf } from './monte-carlo.ts';
import { growOpening, shrinkBlank } from './offset-shapes.ts';
import type { Opening } from './prepare-opening.ts';

/** Steps into which the blank's band is divided; the threshold is interpolated between them. */
const STEPS = 16;

/** Halvings by which the smallest opening is found: its band less than a five-hundredth. */
const HALVINGS = 9;

/**
 * How many pairs of parts go together, when each outline deviates uniformly by an amount drawn evenly from its band:
 * a seeded draw, with the confidence interval of the share.
 *
 * Each draw is decided by geometry: for steps of the blank's deviation the smallest opening that still takes it is
 * found by halving (a larger opening never takes less), and a draw goes in where its opening is at least that.
 *
 * @param count number of drawn pairs.
 * @accuracy the interpolated threshold is within a few hundredths of the band; the interval is that of the draw.
 * @check tests/outside/monte-carlo.test.ts, against the exact share for a tongue in a slot
 */
export function sampleParts(opening: Opening, blank: Ring, bands: Bands, count: number, seed: number): Share {
  const thresholds = Array.from({ length: STEPS + 1 }, (_, i) =>
    smallestOpening(opening, blank, bands, bands.blank * ((2 * i) / STEPS - 1)),
  );
  const random = randomFrom(seed);
  let inside = 0;
  for (let k = 0; k < count; k++) {
    const place = random() * STEPS;
    const step = Math.floor(place);
    const threshold = between(thresholds[step], thresholds[step + 1], place - step);
    if (bands.opening * (2 * random() - 1) >= threshold) inside++;
  }
  return shareOf(inside, count);
}

/** Linear between two thresholds; where one is out of reach, the other one. */
function between(a: number, b: number, part: number): number {
  if (!Number.isFinite(a)) return b;
  return Number.isFinite(b) ? a + part * (b - a) : a;
}

/**
 * The least deviation of the opening that takes a blank fuller by `fuller`; looked for a little beyond the opening's
 * band, so that it can be interpolated at its ends. Infinite where it lies further out.
 */
function smallestOpening(opening: Opening, ring: Ring, bands: Bands, fuller: number): number {
  const blank = shrinkBlank(ring, -Math.round(fuller));
  if (!blank) return -Infinity;
  const takes = (deviation: number) => {
    const made = growOpening(opening.region, Math.round(deviation));
    return made !== null && goesIn(made, blank);
  };
  const reach = bands.opening + (4 * bands.blank) / STEPS;
  if (!takes(reach)) return Infinity;
  if (takes(-reach)) return -Infinity;
  let [low, high] = [-reach, reach];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (takes(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
