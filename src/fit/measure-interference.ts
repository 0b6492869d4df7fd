import { measureClearance } from './measure-clearance.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';
import { subtractWindows } from './subtract-windows.ts';

/** Greatest width of the bracket round an interference, nanometres. */
export const INTERFERENCE_BRACKET = 600;

/** First growth that is tried, nanometres; steps halve or double from here so that openings share grown copies. */
const FIRST_STEP = 128_000;

/** A blank further out than this is not measured more closely, nanometres (about 94 mm). */
const MOST = 94_000_000;

/** By how much a grown opening may fall short of the true offset: arc tolerance plus rounding, nanometres. */
const ARC_LOSS = 102;

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
 * @returns `above` < interference <= `atMost`, at most 0.6 um apart for parts within the accepted size.
 * @source Huttenlocher, Kedem & Sharir, Discrete Comput. Geom. 9 (1993) 267-291 (definition); the bracket is ours.
 * @check tests/outside, closed forms and a grid search by an independent library
 */
export function measureInterference(opening: Opening, blank: Blank): Interference {
  let { low, high, found } = firstBracket(opening, blank);
  while (high - low > INTERFERENCE_BRACKET - ARC_LOSS) {
    const middle = (low + high) / 2;
    const cells = cellsAt(opening, blank, middle);
    if (cells.length === 0) low = middle;
    else [high, found] = [middle, cells];
  }
  const centre = found.length > 0 ? measureClearance(opening.roundGrown(high), blank, found, 500) : { x: 0, y: 0 };
  return { above: Math.max(0, low - ARC_LOSS), atMost: high, x: centre.x, y: centre.y };
}

function cellsAt(opening: Opening, blank: Blank, growth: number) {
  return subtractWindows(opening.roundGrown(growth), blank);
}

function firstBracket(opening: Opening, blank: Blank) {
  let low = 0;
  let high = FIRST_STEP;
  let found = cellsAt(opening, blank, high);
  while (found.length === 0 && high < MOST) {
    low = high;
    high *= 2;
    found = cellsAt(opening, blank, high);
  }
  return { low, high, found };
}
