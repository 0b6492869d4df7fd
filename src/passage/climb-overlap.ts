import type { Point } from '../geom/point.ts';
import type { Region } from '../geom/region.ts';
import { overlapMeter } from './overlap-area.ts';
import { areaOf, boxOfRegion } from './overlap-regions.ts';

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

/** How many places each way are looked at where two regions do not overlap at the start. */
const GRID = 7;

/**
 * Moves a region to where it shares most with another one that stands still: a climb from the start, or where nothing is
 * shared there, from the best place of a coarse grid over all places at which their boxes meet.
 */
export function climbOverlap(still: Region, moving: Region, start: Point, steps: Steps): Climbed {
  const areaAt = overlapMeter(still, moving);
  const area = areaAt(start);
  if (area >= areaOf(still) * (1 - COVERED)) return { at: start, area };
  return climb(areaAt, area > 0 ? start : bestOfGrid(areaAt, still, moving), steps);
}

function bestOfGrid(areaAt: (move: Point) => number, still: Region, moving: Region): Point {
  const [s, m] = [boxOfRegion(still), boxOfRegion(moving)];
  let best: Climbed = {
    at: {
      x: Math.round((s.minX + s.maxX - m.minX - m.maxX) / 2),
      y: Math.round((s.minY + s.maxY - m.minY - m.maxY) / 2),
    },
    area: 0,
  };
  best = { ...best, area: areaAt(best.at) };
  for (let i = 1; i < GRID; i++)
    for (let k = 1; k < GRID; k++) {
      const at = {
        x: Math.round(s.minX - m.maxX + ((s.maxX - m.minX - s.minX + m.maxX) * i) / GRID),
        y: Math.round(s.minY - m.maxY + ((s.maxY - m.minY - s.minY + m.maxY) * k) / GRID),
      };
      const area = areaAt(at);
      if (area > best.area) best = { at, area };
    }
  return best.at;
}
