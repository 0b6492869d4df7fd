import type { Placement } from '../../../fit/fit.ts';

/** Halvings of the way to the wall; nine find it to a five-hundredth of one movement of the hand. */
const HALVINGS = 9;

/** Where a blank is, and whether it is free there. */
export interface Held {
  readonly placement: Placement;
  readonly free: boolean;
}

/**
 * Where a blank on its way from `from` to `wanted` comes to rest: at `wanted` when that is free too or lies
 * more than `give` nanometres past the wall, else at the wall. A blank that already collides is not held.
 *
 * @param gapAt least gap of a placement in nanometres, negative when colliding.
 * @check tests/unit/app/compare-gestures.test.ts
 */
export function stopAtWall(
  from: Held,
  wanted: Placement,
  give: number,
  gapAt: (placement: Placement) => number,
): Placement {
  if (!from.free || gapAt(wanted) >= 0) return wanted;
  const stop = lastFree(from.placement, wanted, gapAt);
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
