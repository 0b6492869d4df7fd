import type { Placement } from '../../../fit/fit.ts';

/** Halvings of the way to the wall; twelve find it to a four-thousandth of the step. */
const HALVINGS = 12;

/**
 * Where a blank on its way from a free placement to `wanted` comes to rest: at `wanted` when that is free
 * too or lies more than `give` nanometres past the wall, else at the wall. A blank that already collides
 * is not held.
 */
export function stopAtWall(
  from: Placement,
  wanted: Placement,
  give: number,
  gapAt: (placement: Placement) => number,
): Placement {
  if (gapAt(wanted) >= 0 || gapAt(from) < 0) return wanted;
  const stop = lastFree(from, wanted, gapAt);
  const past = Math.hypot(wanted.x - stop.x, wanted.y - stop.y);
  return past > give ? wanted : stop;
}

function lastFree(free: Placement, colliding: Placement, gapAt: (placement: Placement) => number): Placement {
  let best = free;
  let low = 0;
  let high = 1;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    const candidate = along(free, colliding, middle);
    if (gapAt(candidate) >= 0) {
      low = middle;
      best = candidate;
    } else high = middle;
  }
  return best;
}

function along(a: Placement, b: Placement, part: number): Placement {
  return { ...a, x: Math.round(a.x + (b.x - a.x) * part), y: Math.round(a.y + (b.y - a.y) * part) };
}
