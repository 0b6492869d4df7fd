import { checkOutline, type OutlineFault } from './check-outline.ts';
import type { Box, Point } from './point.ts';
import { signedArea } from './signed-area.ts';

declare const ringBrand: unique symbol;

/**
 * The boundary of a simple polygon: at least three vertices in whole nanometres, counter-clockwise,
 * no vertex repeated (the first is not given again at the end), no edge touching another one except
 * at the shared end. The promise is made once, by {@link makeRing}; every later routine relies on it.
 */
export type Ring = readonly Point[] & { readonly [ringBrand]: true };

/** Either a ring or the reason why the points do not make one. */
export type RingResult =
  | { readonly ok: true; readonly ring: Ring }
  | { readonly ok: false; readonly fault: OutlineFault };

/**
 * Makes a ring of vertices in nanometres: rounds to whole nanometres, drops a repeated closing point and
 * consecutive repeats, turns a clockwise outline round, and refuses what is not a simple polygon.
 *
 * @param points vertices in order, either way round, nanometres.
 * @returns the ring, counter-clockwise and starting at the first given vertex, or the first fault found.
 * @check tests/unit/geom/ring.test.ts
 */
export function makeRing(points: readonly Point[]): RingResult {
  const rounded = dropRepeats(points.map((p) => ({ x: Math.round(p.x) + 0, y: Math.round(p.y) + 0 })));
  const fault = checkOutline(rounded);
  if (fault) return { ok: false, fault };
  if (signedArea(rounded) > 0) return { ok: true, ring: asTrustedRing(rounded) };
  const [first, ...rest] = rounded;
  return { ok: true, ring: asTrustedRing([first, ...rest.reverse()]) };
}

/**
 * Takes points as a ring without looking: for results whose construction already guarantees the promise
 * of {@link Ring} (a translated or mirrored ring, a clipping result after cleaning).
 */
export function asTrustedRing(points: readonly Point[]): Ring {
  return points as Ring;
}

/** The outline of a box, its sides moved out by `by` where that is given; nanometres. */
export function ringOfBox({ minX, minY, maxX, maxY }: Box, by = 0): Ring {
  return asTrustedRing([
    { x: minX - by, y: minY - by },
    { x: maxX + by, y: minY - by },
    { x: maxX + by, y: maxY + by },
    { x: minX - by, y: maxY + by },
  ]);
}

/** Tells one ring from several, for functions that take either. */
export function isRing(shape: Ring | readonly Ring[]): shape is Ring {
  return shape.length > 0 && !Array.isArray(shape[0]);
}

/** Consecutive equal vertices reduced to one, the closing repeat included. */
function dropRepeats(points: readonly Point[]): Point[] {
  const kept = points.filter((p, i) => i === 0 || p.x !== points[i - 1].x || p.y !== points[i - 1].y);
  while (kept.length > 1 && kept[0].x === kept[kept.length - 1].x && kept[0].y === kept[kept.length - 1].y) kept.pop();
  return kept;
}
