import { measureClearance } from './measure-clearance.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';
import { subtractWindows } from './subtract-windows.ts';

/** Greatest width of the bracket round an interference, nanometres. */
export const INTERFERENCE_BRACKET = 800;

/** First growth that is tried, nanometres. */
const FIRST_STEP = 128_000;

/** A blank further out than this is not measured more closely, nanometres (about 94 mm). */
const MOST = 94_000_000;

/** Coordinates of a grown opening are whole nanometres, so it may fall short by this besides its arc tolerance. */
const ROUNDING = 2;

/** A bracket of the interference and the placement that shows its upper end. Nanometres. */
export interface Interference {
  readonly above: number;
  readonly atMost: number;
  readonly x: number;
  readonly y: number;
}

/**
 * The least depth by which the blank still collides, over all translations: the directed Hausdorff distance
 * from blank to opening under translation.
 *
 * The blank goes into the opening grown by d exactly when some placement leaves no point of it deeper than d, so
 * d is found by halving a bracket, each step judged by the inner-fit region. Points inside closed pockets of the
 * plug count, because the grown opening counts them.
 *
 * @returns `above` < interference <= `atMost`, at most 0.8 um apart for parts within the accepted size.
 * @source Huttenlocher, Kedem & Sharir, Discrete Comput. Geom. 9 (1993) 267-291 (definition); the bracket is ours.
 * @check tests/outside, closed forms and a grid search by an independent library
 */
export function measureInterference(opening: Opening, blank: Blank): Interference {
  let { low, high, found, grown } = firstBracket(opening, blank);
  while (high - low > INTERFERENCE_BRACKET && high < MOST) {
    const middle = (low + high) / 2;
    const arcTolerance = arcToleranceFor(high - low);
    const trial = opening.roundGrown(middle, arcTolerance);
    const cells = subtractWindows(trial, blank);
    if (cells.length === 0) low = middle - arcTolerance - ROUNDING;
    else [high, found, grown] = [middle, cells, trial];
  }
  const centre = found.length > 0 ? measureClearance(grown, blank, found, 500, Infinity) : { x: 0, y: 0 };
  return { above: Math.max(0, low), atMost: high + ROUNDING, x: centre.x, y: centre.y };
}

/** Doubles the growth until the blank goes in. */
function firstBracket(opening: Opening, blank: Blank) {
  let low = 0;
  let high = FIRST_STEP;
  for (;;) {
    const arcTolerance = arcToleranceFor(high - low);
    const grown = opening.roundGrown(high, arcTolerance);
    const found = subtractWindows(grown, blank);
    if (found.length > 0 || high >= MOST) return { low, high, found, grown };
    low = high - arcTolerance - ROUNDING;
    high *= 2;
  }
}

/** Coarse arcs while the bracket is wide: a step may lose a tenth of it, and a grown opening has few vertices. */
function arcToleranceFor(bracket: number): number {
  return Math.max(40, bracket / 10);
}
