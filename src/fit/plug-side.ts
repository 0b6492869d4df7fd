import { difference } from '../geom/clip.ts';
import { sideOfRegion } from '../geom/contains-point.ts';
import { type Box, boxOf, type Point } from '../geom/point.ts';
import { boundariesOf, type Region, regionOf } from '../geom/region.ts';
import { ringOfBox } from '../geom/ring.ts';
import type { WardSide } from './fit.ts';

/** Plug material that reaches further into the keyway than this past the wall above and below it is a ward, nanometres. */
const WARD_REACH = 20_000;

/** Which part of the plug a point belongs to. */
export interface PlugSide {
  readonly side: WardSide;
  readonly ward: boolean;
}

/** Where heights in a keyway are told from, whatever lies in it and wherever: its lowest point, nanometres. */
export function floorOf(opening: Region): number {
  return boxOfRegion(opening).minY;
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
  const side = best?.side ?? nearestSide(opening, p, tall);
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

/**
 * Where no side is plain (an undercut ward, an island, a point beyond the keyway's corner): the side from which the
 * material comes.
 */
function nearestSide(opening: Region, p: Point, tall: boolean): WardSide {
  const box = boxOfRegion(opening);
  const beside = p.x < box.minX || p.x > box.maxX;
  if (!(tall && beside) && p.y < box.minY) return 'bottom';
  if (!(tall && beside) && p.y > box.maxY) return 'top';
  if (beside) return p.x < box.minX ? 'left' : 'right';
  return rootedSide(opening, box, p) ?? (p.x - box.minX <= box.maxX - p.x ? 'left' : 'right');
}

/** The side of the keyway's box on which the piece of plug that holds `p` is rooted; null for an island. */
function rootedSide(opening: Region, box: Box, p: Point): WardSide | null {
  const pieces = difference(regionOf(ringOfBox(box)), opening);
  const piece = pieces.find((patch) => sideOfRegion([patch], p) !== 'outside');
  if (!piece) return null;
  const held = boxOf(piece.outer);
  const roots: [WardSide, number][] = [
    ['left', held.minX === box.minX ? p.x - box.minX : Infinity],
    ['right', held.maxX === box.maxX ? box.maxX - p.x : Infinity],
    ['bottom', held.minY === box.minY ? p.y - box.minY : Infinity],
    ['top', held.maxY === box.maxY ? box.maxY - p.y : Infinity],
  ];
  const [side, away] = roots.reduce((a, b) => (b[1] < a[1] ? b : a));
  return away < Infinity ? side : null;
}

/**
 * Whether the plug at `p` stands into the keyway: on both sides along the wall the keyway is wider than there. A step or a
 * flare, wider on one side only, is plain wall.
 */
function isWard(opening: Region, p: Point, side: WardSide): boolean {
  const upright = side === 'left' || side === 'right';
  const sign = side === 'left' || side === 'bottom' ? 1 : -1;
  let [before, after] = [Infinity, Infinity];
  for (const ring of boundariesOf(opening))
    for (const q of ring) {
      const out = sign * (upright ? q.x : q.y);
      if ((upright ? q.y - p.y : q.x - p.x) < 0) before = Math.min(before, out);
      else after = Math.min(after, out);
    }
  const reach = sign * (upright ? p.x : p.y) - WARD_REACH;
  return before < reach && after < reach;
}

function boxOfRegion(opening: Region): Box {
  return boxOf(opening.flatMap(({ outer }) => outer));
}
