import type { Point } from '../../src/geom/point.ts';
import { type Comparison, compareOutlines } from '../../src/identify/compare-outlines.ts';
import { type LayOptions, prepareKnown, prepareUnknown } from '../../src/identify/rough-poses.ts';

const ANY_WAY: LayOptions = { mirrored: true, turned: true };

/** Two outlines that are compared once. */
export function compareOnce(unknown: readonly Point[], known: readonly Point[], options = ANY_WAY): Comparison {
  return compareOutlines(prepareUnknown(unknown, options), prepareKnown(known));
}
