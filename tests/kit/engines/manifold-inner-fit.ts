import type { CrossSection, ManifoldToplevel } from 'manifold-3d/manifold.js';
import openManifold from 'manifold-3d/manifold.js';
import { boxOf, type Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';
import {
  bisectionOf,
  boxesOverlap,
  cornersOf,
  type InnerFit,
  largestPassing,
  middleOf,
  NO_AREA,
  SLIVER,
  windowOf,
} from './inner-fit-result.ts';

/*
 * The one importer of manifold-3d, a solid-modelling kernel compiled to WebAssembly, of which the flat
 * cross-sections are used.
 */

type Pair = [number, number];

let loaded: ManifoldToplevel | undefined;

/** Loads the library; must have been awaited once before any engine of this file runs. */
export async function loadManifold(): Promise<ManifoldToplevel> {
  if (!loaded) {
    loaded = await openManifold();
    loaded.setup();
  }
  return loaded;
}

function library(): ManifoldToplevel {
  if (!loaded) throw new Error('await loadManifold() first');
  return loaded;
}

/**
 * The inner-fit region by triangles and manifold-3d: its own triangulations of a frame round the opening and of the
 * blank, its own hull of every pair's vertex sums, its own union of those, taken from the window. The clearance is
 * the largest inward offset that leaves something.
 */
export function manifoldInnerFit(opening: OpeningShape, blank: readonly Point[]): InnerFit {
  const window = windowOf(opening, blank);
  if (!window) return NO_AREA;
  const { CrossSection } = library();
  const origin = middleOf(window);
  const sums = forbiddenSums(opening, blank, origin);
  const whole = new CrossSection([cornersOf(window).map((p): Pair => [p.x - origin.x, p.y - origin.y])], 'Positive');
  const free = sums.length === 0 ? whole : CrossSection.difference([whole, ...sums]);
  const result = described(free, origin);
  for (const used of new Set([...sums, whole, free])) used.delete();
  return result;
}

function forbiddenSums(opening: OpeningShape, blank: readonly Point[], origin: Point): CrossSection[] {
  const { CrossSection } = library();
  const window = windowOf(opening, blank);
  if (!window) return [];
  const outside = trianglesOf([frameRound(opening, blank), [...opening.outer].reverse()]);
  const islands = opening.islands.flatMap((island) => trianglesOf([island]));
  const parts = trianglesOf([blank]);
  const sums: CrossSection[] = [];
  for (const solid of [...outside, ...islands]) {
    for (const part of parts) {
      const points = solid.flatMap((p) => part.map((q) => ({ x: p.x - q.x, y: p.y - q.y })));
      if (boxesOverlap(boxOf(points), window))
        sums.push(CrossSection.hull([points.map((p): Pair => [p.x - origin.x, p.y - origin.y])]));
    }
  }
  return sums;
}

/** A rectangle so far outside the opening that the blank, in any placement of the window, stays within it. */
function frameRound(opening: OpeningShape, blank: readonly Point[]): Point[] {
  const o = boxOf(opening.outer);
  const b = boxOf(blank);
  const margin = Math.ceil(b.maxX - b.minX + b.maxY - b.minY);
  return cornersOf({ minX: o.minX - margin, minY: o.minY - margin, maxX: o.maxX + margin, maxY: o.maxY + margin });
}

function trianglesOf(outlines: readonly (readonly Point[])[]): Point[][] {
  const vertices = outlines.flat();
  const numbers = library().triangulate(
    outlines.map((outline) => outline.map((p): Pair => [p.x, p.y])),
    0,
  );
  return numbers.map((triangle) => triangle.map((i) => vertices[i]));
}

const NOWHERE = { radius: 0, short: 0, centre: { x: 0, y: 0 }, play: NO_AREA.play };

function described(free: CrossSection, origin: Point): InnerFit {
  const all = free.decompose();
  const pieces = all.filter((piece) => piece.area() > (SLIVER * perimeterOf(piece)) / 2);
  const places = pieces.map((piece) => ({ ...widestPlace(piece), play: playOf(piece) }));
  const best = places.reduce((a, b) => (b.radius > a.radius ? b : a), NOWHERE);
  const result: InnerFit = {
    area: pieces.reduce((sum, piece) => sum + piece.area(), 0),
    radius: best.radius,
    short: best.short,
    witness: { x: best.centre.x + origin.x, y: best.centre.y + origin.y },
    play: best.play,
    pieces: pieces.length,
    holes: pieces.reduce((sum, piece) => sum + piece.numContour() - 1, 0),
  };
  for (const piece of all) piece.delete();
  return pieces.length === 0 ? NO_AREA : result;
}

function playOf(piece: CrossSection): InnerFit['play'] {
  const { min, max } = piece.bounds();
  return { lateral: max[0] - min[0], vertical: max[1] - min[1] };
}

function perimeterOf(section: CrossSection): number {
  const lengths = section
    .toPolygons()
    .flatMap((outline) =>
      outline.map(([x, y], i) =>
        Math.hypot(outline[(i + 1) % outline.length][0] - x, outline[(i + 1) % outline.length][1] - y),
      ),
    );
  return lengths.reduce((sum, length) => sum + length, 0);
}

/** The last inward offset that leaves something, and a vertex of what it leaves. */
function widestPlace(piece: CrossSection): { readonly centre: Point; readonly radius: number; readonly short: number } {
  const { min, max } = piece.bounds();
  const most = Math.min(max[0] - min[0], max[1] - min[1]) / 2;
  const last = largestPassing(most, (by) => {
    const left = piece.offset(-by, 'Round', 2, 512);
    const [outline] = left.toPolygons();
    left.delete();
    return outline?.[0] ?? null;
  });
  const [x, y] = last?.found ?? piece.toPolygons()[0][0];
  return { centre: { x, y }, radius: last?.by ?? 0, short: bisectionOf(most) };
}
