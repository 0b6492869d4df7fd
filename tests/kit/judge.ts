import type { Fit } from '../../src/fit/fit.ts';
import { judgeFit } from '../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import type { Region } from '../../src/geom/region.ts';
import type { Ring } from '../../src/geom/ring.ts';

/** The running clearance that tests use where it does not matter, nanometres. */
export const RUNNING = 40_000;

/** A blank judged in an opening, both as outlines. */
export function judge(opening: Ring | Region, blank: Ring, runningClearance = RUNNING): Fit {
  return judgeFit(prepareOpening(opening), prepareBlank(blank), runningClearance);
}
