/** Numbers of sides of an outline, one after the other. */
export type Stretch = readonly number[];

/** A stretch turns by less than this, radians, so that its ends face each other across an open mouth. */
const MOST_TURN = Math.PI - 0.01;

/**
 * Parts an outline into stretches that turn to the right at each of their inner corners and by less than half a turn in all:
 * hollows such as a groove, which are convex seen from the material. Any other side is a stretch of its own.
 *
 * @param walls ends of the sides in order, x, y, x, y for each, counter-clockwise.
 * @check tests/outside/plastic-torque.test.ts
 */
export function convexStretches(walls: Float64Array): Stretch[] {
  const count = walls.length / 4;
  const turns = Array.from({ length: count }, (_, wall) => turnAtEnd(walls, wall));
  // Begin behind a corner that parts stretches anyway.
  const start = turns.findIndex((turn) => turn >= 0) + 1;
  const stretches: number[][] = [];
  let [now, turned]: [number[], number] = [[], 0];
  for (let k = 0; k < count; k++) {
    const wall = (start + k) % count;
    now.push(wall);
    turned -= turns[wall];
    if (turns[wall] < 0 && turned < MOST_TURN) continue;
    stretches.push(now);
    [now, turned] = [[], 0];
  }
  return now.length > 0 ? [...stretches, now] : stretches;
}

/** By how much the outline turns at the end of a side, radians, positive to the left. */
function turnAtEnd(walls: Float64Array, wall: number): number {
  const [a, b] = [4 * wall, (4 * (wall + 1)) % walls.length];
  const [ux, uy] = [walls[a + 2] - walls[a], walls[a + 3] - walls[a + 1]];
  const [vx, vy] = [walls[b + 2] - walls[b], walls[b + 3] - walls[b + 1]];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}
