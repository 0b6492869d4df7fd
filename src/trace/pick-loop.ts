import { boxOf, type Point } from '../geom/point.ts';
import type { TracedLoop } from './trace-picture.ts';

/** A line at least this solid may be what is traced; a drawn frame is less. */
const SOLID = 0.5;

/** The number of the outline that is most likely meant: the largest solid one that the picture's edge does not cut; -1 where there is none. */
export function likeliestLoop(loops: readonly TracedLoop[]): number {
  const whole = loops.findIndex((loop) => !loop.hole && !loop.touchesEdge && loop.solid >= SOLID);
  return whole < 0 && loops.length > 0 ? 0 : whole;
}

/** The number of the smallest outline round a place among the profiles; -1 where there is none. */
export function loopRound(loops: readonly TracedLoop[], place: Point): number {
  let best = -1;
  for (const [i, { vertices, at, area }] of loops.entries()) {
    const inside = isInside(vertices, { x: place.x - at.x, y: place.y - at.y });
    if (inside && (best < 0 || area < loops[best].area)) best = i;
  }
  return best;
}

function isInside(outline: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  for (let i = 0, k = outline.length - 1; i < outline.length; k = i++) {
    const [a, b] = [outline[k], outline[i]];
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

/** How wide and tall an outline is, nanometres. */
export function sizeOfLoop({ vertices }: TracedLoop): { readonly width: number; readonly height: number } {
  const box = boxOf(vertices);
  return { width: box.maxX - box.minX, height: box.maxY - box.minY };
}
