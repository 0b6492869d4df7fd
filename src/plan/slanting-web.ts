import type { BladeLimits } from '../family/plan.ts';
import { NM_PER_UM, type Point } from '../geom/point.ts';
import { turn } from '../geom/predicates.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import { roundCorners } from '../profile/round-corners.ts';

/**
 * The web between two grooves in opposite faces, the right one higher by `rise`: the shortest way from one to the other,
 * aslant where they do not stand level.
 *
 * @param left depth of the groove in the left face, nanometres; `right` of the other one.
 * @returns nanometres; 0 where the grooves meet.
 * @accuracy 1 um: arcs are chords, which make a groove too large there.
 * @check tests/unit/plan/slanting-web.test.ts
 */
export function slantingWeb(blade: BladeLimits, left: number, right: number, rise: number): number {
  const a = grooveLine(blade, left);
  const b = grooveLine(blade, right).map(({ x, y }) => ({ x: blade.thickness - x, y: y + rise }));
  if (spansMeet(a, b)) return 0;
  return Math.min(leastWay(a, b), leastWay(b, a));
}

/**
 * The least rise from which the web between two grooves of full depth is thick enough; 0 where it is at any rise.
 *
 * @param web nanometres.
 * @accuracy 1 um, never too little.
 */
export function leastRise(blade: BladeLimits, web: number): number {
  const depth = blade.grooveDepth;
  if (blade.thickness - 2 * depth >= web) return 0;
  let [low, high] = [0, blade.grooveWidth + web];
  while (high - low > NM_PER_UM) {
    const middle = (low + high) / 2;
    if (slantingWeb(blade, depth, depth, middle) >= web) high = middle;
    else low = middle;
  }
  return Math.ceil(high);
}

/** Mouth, root and mouth of a groove from below; x is the depth below the face, y the height above its lower edge. */
function grooveLine({ grooveWidth, flank, rootRadius }: BladeLimits, depth: number): Point[] {
  const run = depth * Math.tan(flank);
  return roundCorners([
    { at: { x: 0, y: 0 }, radius: 0 },
    { at: { x: depth, y: run }, radius: rootRadius },
    { at: { x: depth, y: grooveWidth - run }, radius: rootRadius },
    { at: { x: 0, y: grooveWidth }, radius: 0 },
  ]);
}

/** Whether a corner of either groove lies in the other one; both are convex and alike. */
function spansMeet(a: readonly Point[], b: readonly Point[]): boolean {
  return a.some((p) => isInside(p, b)) || b.some((p) => isInside(p, a)) || crosses(a, b);
}

function isInside(p: Point, line: readonly Point[]): boolean {
  const sides = line.map((q, i) => turn(q, line[(i + 1) % line.length], p));
  return sides.every((s) => s >= 0) || sides.every((s) => s <= 0);
}

function crosses(a: readonly Point[], b: readonly Point[]): boolean {
  return a.some((p, i) => {
    const q = a[(i + 1) % a.length];
    return b.some((r, k) => {
      const s = b[(k + 1) % b.length];
      return turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0;
    });
  });
}

function leastWay(from: readonly Point[], to: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const p of from)
    for (let i = 0; i < to.length; i++) {
      const q = nearestOnSegment(p, to[i], to[(i + 1) % to.length]);
      least = Math.min(least, Math.hypot(p.x - q.x, p.y - q.y));
    }
  return least;
}
