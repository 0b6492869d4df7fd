import type { Groove, Milled } from './profile.ts';

/** Sizes this near to a whole micrometre, nanometres, are taken for it. */
const NEAR = 25;

/** Angles this near to a whole hundredth of a degree, in degrees, are taken for it. */
const NEAR_DEG = 0.002;

/**
 * A description with its sizes in whole steps: measured sizes have digits that mean nothing. Sizes that are a whole
 * micrometre but for rounding become that, and flanks a whole hundredth of a degree.
 *
 * @param step nanometres; 1 keeps what was measured.
 * @check tests/unit/profile/tidy-milled.test.ts
 */
export function tidyMilled(milled: Milled, step: number): Milled {
  const height = tidyLength(milled.height, step);
  return {
    thickness: tidyLength(milled.thickness, step),
    height,
    backRadius: tidyLength(milled.backRadius, step),
    grooves: milled.grooves.map((groove) => tidyGroove(groove, milled.height, height, step)),
  };
}

/** A groove that runs out at an end of the blade still does so afterwards. */
function tidyGroove(groove: Groove, heightBefore: number, height: number, step: number): Groove {
  const bottom = tidyLength(groove.bottom, step);
  const atTop = groove.bottom + groove.width >= Math.round(heightBefore);
  const top = atTop ? height : tidyLength(groove.bottom + groove.width, step);
  return {
    side: groove.side,
    bottom,
    width: top - bottom,
    depth: tidyLength(groove.depth, step),
    flank: tidyAngle(groove.flank, step > 1 ? 0.5 : 0.01),
    rootRadius: tidyLength(groove.rootRadius, step),
  };
}

function tidyLength(nm: number, step: number): number {
  const whole = Math.round(nm / 1_000) * 1_000;
  if (Math.abs(nm - whole) <= NEAR) return whole + 0;
  return Math.round(nm / step) * step + 0;
}

function tidyAngle(radians: number, stepDeg: number): number {
  const degrees = (radians * 180) / Math.PI;
  const whole = Math.round(degrees / stepDeg) * stepDeg;
  const kept = stepDeg >= 0.5 || Math.abs(degrees - whole) <= NEAR_DEG ? Number(whole.toFixed(2)) : degrees;
  return (kept * Math.PI) / 180;
}
