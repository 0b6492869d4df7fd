import type { Box, Point } from '../geom/point.ts';
import type { Region } from '../geom/region.ts';
import { overlapMeter } from './overlap-area.ts';
import { boxOfRegion, largestArea } from './overlap-regions.ts';

/** A place and the area that is shared there, square nanometres. */
export interface Climbed {
  readonly at: Point;
  readonly area: number;
}

/** The steps of a climb, nanometres: the first, and the last that is tried. */
export interface Steps {
  readonly first: number;
  readonly least: number;
}

const DIRECTIONS: readonly Point[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: -1 },
  { x: 1, y: 1 },
  { x: -1, y: -1 },
  { x: 1, y: -1 },
  { x: -1, y: 1 },
];

/** A gain below this share of the area is rounding. */
const LEAST_GAIN = 1e-9;

/**
 * Climbs from a start to a place at which the area is greatest: steps along eight directions, lengthened while they
 * gain, and halved where none does.
 *
 * @param areaAt the area with the move, square nanometres.
 * @returns a place no worse than the start; a local optimum to within the least step.
 */
export function climb(areaAt: (move: Point) => number, start: Point, { first, least }: Steps): Climbed {
  let best: Climbed = { at: start, area: areaAt(start) };
  for (let step = first; step >= least; ) {
    const next = better(areaAt, best, step);
    if (next) best = next;
    else step /= 2;
  }
  return best;
}

/** The first direction that gains, followed as long as twice the step gains again. */
function better(areaAt: (move: Point) => number, from: Climbed, step: number): Climbed | null {
  for (const direction of DIRECTIONS) {
    let found = tried(areaAt, from, direction, step);
    if (found.area <= gained(from.area)) continue;
    for (let length = step * 2; ; length *= 2) {
      const further = tried(areaAt, from, direction, length);
      if (further.area <= gained(found.area)) return found;
      found = further;
    }
  }
  return null;
}

function gained(area: number): number {
  return area * (1 + LEAST_GAIN) + 1;
}

function tried(areaAt: (move: Point) => number, { at }: Climbed, direction: Point, length: number): Climbed {
  const move = { x: Math.round(at.x + direction.x * length), y: Math.round(at.y + direction.y * length) };
  return { at: move, area: areaAt(move) };
}

/** A region that leaves out less than this share of what stands still covers it: no move can gain. */
const COVERED = 3e-6;

/**
 * Moves a region to where the largest part that it shares with another one, which stands still, is greatest: a climb from
 * the start, or where nothing is shared there, from the best place of a grid over all places at which their boxes meet.
 */
export function climbOverlap(still: Region, moving: Region, start: Point, steps: Steps): Climbed {
  const areaAt = overlapMeter(still, moving);
  const area = areaAt(start);
  if (area >= largestArea(still) * (1 - COVERED)) return { at: start, area };
  if (area > 0) return climb(areaAt, start, steps);
  const [best] = bestOfGrid(areaAt, still, moving, 1);
  return climb(areaAt, best?.at ?? start, steps);
}

/** So many places of the grid are climbed from. */
const CLIMBED = 3;

/** Moves a region to where it shares most with another one, looked for at all places at which their boxes meet. */
export function searchOverlap(still: Region, moving: Region, start: Point, steps: Steps): Climbed {
  const areaAt = overlapMeter(still, moving);
  const near = climbOverlap(still, moving, start, steps);
  const enough = Math.min(largestArea(still), largestArea(moving)) * (1 - COVERED);
  if (near.area >= enough) return near;
  const climbed = bestOfGrid(areaAt, still, moving, CLIMBED).map(({ at }) => climb(areaAt, at, steps));
  return climbed.reduce((a, b) => (b.area > gained(a.area) ? b : a), near);
}

/** How many places across and up are looked at, apart from the middle. */
const GRID = { across: 20, up: 30 } as const;

/** The best places of a grid, not next to each other. What the boxes share bounds what the regions can. */
function bestOfGrid(areaAt: (move: Point) => number, still: Region, moving: Region, count: number): Climbed[] {
  const [s, m] = [boxOfRegion(still), boxOfRegion(moving)];
  const across = (s.maxX - s.minX + m.maxX - m.minX) / GRID.across;
  const up = (s.maxY - s.minY + m.maxY - m.minY) / GRID.up;
  const places: Climbed[] = [];
  for (let i = 1; i < GRID.across; i++)
    for (let k = 1; k < GRID.up; k++) {
      const at = { x: Math.round(s.minX - m.maxX + across * i), y: Math.round(s.minY - m.maxY + up * k) };
      if (boxesShare(s, m, at) <= (places[count - 1]?.area ?? 0)) continue;
      const area = areaAt(at);
      if (area > 0) insert(places, { at, area }, { x: across * 1.5, y: up * 1.5 }, count);
    }
  return places;
}

function boxesShare(s: Box, m: Box, at: Point): number {
  const width = Math.min(s.maxX, m.maxX + at.x) - Math.max(s.minX, m.minX + at.x);
  const height = Math.min(s.maxY, m.maxY + at.y) - Math.max(s.minY, m.minY + at.y);
  return width > 0 && height > 0 ? width * height : 0;
}

/** Keeps the best places; of those nearer to each other than `apart` only the better one. */
function insert(places: Climbed[], place: Climbed, apart: Point, count: number): void {
  const isNear = ({ at }: Climbed) => Math.abs(at.x - place.at.x) < apart.x && Math.abs(at.y - place.at.y) < apart.y;
  if (places.some((other) => isNear(other) && other.area >= place.area)) return;
  const kept = [...places.filter((other) => !isNear(other)), place].sort((a, b) => b.area - a.area).slice(0, count);
  places.splice(0, places.length, ...kept);
}
