import type { Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import type { WardSide } from './fit.ts';

/** Plug material that reaches further into the keyway than this past its outermost wall is a ward, nanometres. */
const WARD_REACH = 20_000;

/** Which part of the plug a point belongs to. */
export interface PlugSide {
  readonly side: WardSide;
  readonly ward: boolean;
}

/**
 * Names the part of the plug at `p`, a point in or on the plug: the side from which the material comes, and
 * whether it is a ward or the plain wall.
 *
 * Material on the left is what meets no keyway when followed to the left, and so on; where two sides qualify
 * (a corner), the side across which the keyway is nearer.
 *
 * @param tall for a colliding part: whether it is taller than wide. Beyond a corner of the keyway no side is nearer, and
 * a tall part lies along a side wall, a wide one along the floor or the top.
 */
export function plugSideOf(opening: Region, p: Point, tall = false): PlugSide {
  const rays = castRays(opening, p);
  const sides: { side: WardSide; free: boolean; across: number }[] = [
    { side: 'left', free: rays.left === Infinity, across: rays.right },
    { side: 'right', free: rays.right === Infinity, across: rays.left },
    { side: 'bottom', free: rays.down === Infinity, across: rays.up },
    { side: 'top', free: rays.up === Infinity, across: rays.down },
  ];
  const best = sides.filter((s) => s.free && s.across < Infinity).sort((a, b) => a.across - b.across)[0];
  const side = best?.side ?? nearestSide(opening, p, rays, tall);
  return { side, ward: isWard(opening, p, side) };
}

interface Rays {
  readonly left: number;
  readonly right: number;
  readonly up: number;
  readonly down: number;
}

/** Distance from p to the nearest boundary straight left, right, up and down, Infinity where there is none. */
function castRays(opening: Region, p: Point): Rays {
  const across: number[] = [];
  const along: number[] = [];
  for (const ring of boundariesOf(opening))
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length];
      if (a.y > p.y !== b.y > p.y) across.push(a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x) - p.x);
      if (a.x > p.x !== b.x > p.x) along.push(a.y + ((p.x - a.x) / (b.x - a.x)) * (b.y - a.y) - p.y);
    });
  return { left: leastBelow(across), right: leastAbove(across), down: leastBelow(along), up: leastAbove(along) };
}

function leastAbove(offsets: readonly number[]): number {
  return offsets.reduce((least, d) => (d >= 0 ? Math.min(least, d) : least), Infinity);
}

function leastBelow(offsets: readonly number[]): number {
  return offsets.reduce((least, d) => (d <= 0 ? Math.min(least, -d) : least), Infinity);
}

/** Where no side is plain (an undercut ward, an island, a point outside all bands): the side the point lies towards. */
function nearestSide(opening: Region, p: Point, rays: Rays, tall: boolean): WardSide {
  const box = boxOfRegion(opening);
  const beside = p.x < box.minX || p.x > box.maxX;
  if (!(tall && beside) && p.y < box.minY) return 'bottom';
  if (!(tall && beside) && p.y > box.maxY) return 'top';
  if (rays.left === Infinity && rays.right === Infinity) return p.x < (box.minX + box.maxX) / 2 ? 'left' : 'right';
  return p.x - box.minX <= box.maxX - p.x ? 'left' : 'right';
}

function isWard(opening: Region, p: Point, side: WardSide): boolean {
  const box = boxOfRegion(opening);
  if (side === 'left') return p.x > box.minX + WARD_REACH;
  if (side === 'right') return p.x < box.maxX - WARD_REACH;
  return side === 'bottom' ? p.y > box.minY + WARD_REACH : p.y < box.maxY - WARD_REACH;
}

function boxOfRegion(opening: Region) {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { outer } of opening)
    for (const { x, y } of outer) {
      minX = Math.min(minX, x);
      maxX = Math.max(maxX, x);
      minY = Math.min(minY, y);
      maxY = Math.max(maxY, y);
    }
  return { minX, minY, maxX, maxY };
}
