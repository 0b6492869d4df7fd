import type { Ring } from '../geom/ring.ts';
import { goesIn } from './judge-fit.ts';
import { growOpening, shrinkBlank } from './offset-shapes.ts';
import type { Opening } from './prepare-opening.ts';

/** What wears: the blank, the keyway, or each by the same amount. */
export type Worn = 'blank' | 'keyway' | 'both';

/** Half the greatest error of a wear figure, nanometres. */
export const WEAR_ACCURACY = 500;

/** First wear that is tried, nanometres. */
const FIRST_STEP = 64_000;

/** No part wears by more than this, nanometres: beyond it the answer is "never". */
const MOST = 4_000_000;

/**
 * The uniform wear at which a blocked pair first goes in, in nanometres; 0 where it goes in new, Infinity where no
 * wear up to 4 mm does it.
 *
 * A worn blank has lost the amount all round, a worn keyway has grown by it. Wear only ever helps entry, so the
 * threshold is found by halving.
 *
 * @accuracy 1 um, never too little: after this much wear it does go in.
 */
export function measureWear(opening: Opening, blank: Ring, worn: Worn): number {
  if (outcomeOf(opening, blank, worn, 0) === 'in') return 0;
  let low = 0;
  let high = FIRST_STEP;
  let outcome = outcomeOf(opening, blank, worn, high);
  for (; outcome === 'out'; outcome = outcomeOf(opening, blank, worn, high)) {
    low = high;
    high *= 2;
    if (low >= MOST) return Infinity;
  }
  // First it stays out, then it goes in, and at last nothing is left of the blank.
  while (high - low > 2 * WEAR_ACCURACY) {
    const middle = (low + high) / 2;
    const found = outcomeOf(opening, blank, worn, middle);
    if (found === 'out') low = middle;
    else [high, outcome] = [middle, found];
  }
  return outcome === 'in' ? high : Infinity;
}

/** What becomes of a pair after so much wear: the blank stays out, goes in, or is gone. */
type Outcome = 'out' | 'in' | 'gone';

function outcomeOf(opening: Opening, blank: Ring, worn: Worn, wear: number): Outcome {
  const lean = shrinkBlank(blank, worn === 'keyway' ? 0 : wear);
  if (!lean) return 'gone';
  const wide = worn === 'blank' || wear === 0 ? opening : growOpening(opening.region, wear);
  return wide && goesIn(wide, lean) ? 'in' : 'out';
}

/** Whether the pair goes in after that much wear; a blank worn away altogether does not count as going in. */
export function entersWorn(opening: Opening, blank: Ring, worn: Worn, wear: number): boolean {
  return outcomeOf(opening, blank, worn, wear) === 'in';
}
