import type { Point } from '../geom/point.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import type { Placement } from './fit.ts';

/** The blank's outline where the placement puts it: turned about its own origin, then moved. Doubles, nanometres. */
export function placeBlank(blank: readonly Point[], placement: Placement): Ring {
  const c = Math.cos(placement.tilt);
  const s = Math.sin(placement.tilt);
  return asTrustedRing(blank.map((p) => ({ x: c * p.x - s * p.y + placement.x, y: s * p.x + c * p.y + placement.y })));
}
