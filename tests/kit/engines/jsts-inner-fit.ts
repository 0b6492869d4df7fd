import { boxOf, type Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';
import { convexParts, convexPartsOutside } from './convex-parts.ts';
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
import {
  type JstsGeometry,
  jstsDifference,
  jstsHull,
  jstsInnerPoint,
  jstsInscribedCircle,
  jstsPieces,
  jstsPolygon,
  jstsProbe,
  jstsShrunken,
} from './jsts-shapes.ts';

/**
 * The inner-fit region by convex parts and JSTS: the window of translations less every sum of a convex part of what
 * is not opening and a convex part of the mirrored blank, each sum the convex hull of the sums of their vertices.
 *
 * @source erosion = complement of (complement + mirrored blank): Bennell & Oliveira, "The geometry of nesting
 * problems: a tutorial", European J. Operational Research 184 (2008) 397-415.
 */
export function jstsInnerFit(opening: OpeningShape, blank: readonly Point[]): InnerFit {
  const window = windowOf(opening, blank);
  if (!window) return NO_AREA;
  const origin = middleOf(window);
  let free: JstsGeometry = jstsPolygon(cornersOf(window).map((p) => minus(p, origin)));
  for (const sum of forbiddenSums(opening, blank, origin)) {
    free = jstsDifference(free, sum);
    if (free.isEmpty()) return NO_AREA;
  }
  return described(free, origin);
}

/** Convex sets of translations that make the blank collide, largest first, relative to `origin`; those outside the window left out. */
function forbiddenSums(opening: OpeningShape, blank: readonly Point[], origin: Point): JstsGeometry[] {
  const window = windowOf(opening, blank);
  if (!window) return [];
  const reach = Math.max(window.maxX - window.minX, window.maxY - window.minY) + sizeOf(blank) + sizeOf(opening.outer);
  const blankParts = convexParts(blank);
  const sums: JstsGeometry[] = [];
  for (const outside of convexPartsOutside(opening, reach)) {
    for (const part of blankParts) {
      const points = outside.flatMap((p) => part.map((q) => minus(p, q)));
      if (!boxesOverlap(boxOf(points), window)) continue;
      const hull = jstsHull(points.map((p) => minus(p, origin)));
      if (hull) sums.push(hull);
    }
  }
  return sums.sort((a, b) => b.getArea() - a.getArea());
}

function described(free: JstsGeometry, origin: Point): InnerFit {
  const pieces = jstsPieces(free).filter(({ piece }) => piece.getArea() > (SLIVER * piece.getLength()) / 2);
  if (pieces.length === 0) return NO_AREA;
  const circles = pieces.map(({ piece }) => ({ ...widestPlace(piece), play: playOf(piece) }));
  const best = circles.reduce((a, b) => (b.radius > a.radius ? b : a));
  return {
    area: pieces.reduce((sum, { piece }) => sum + piece.getArea(), 0),
    radius: best.radius,
    short: best.short,
    witness: { x: best.centre.x + origin.x, y: best.centre.y + origin.y },
    play: best.play,
    pieces: pieces.length,
    holes: pieces.reduce((sum, { holes }) => sum + holes, 0),
  };
}

function playOf(piece: JstsGeometry): InnerFit['play'] {
  const box = piece.getEnvelopeInternal();
  return { lateral: box.getWidth(), vertical: box.getHeight() };
}

/** Where the library's own inscribed circle is used, nanometres. */
const CIRCLE_ACCURACY = 50;

interface Circle {
  readonly centre: Point;
  readonly radius: number;
  readonly short: number;
}

/**
 * The largest circle of a piece: the last shrinking that leaves something, and a point of what it leaves. (The
 * library's own inscribed circle needs a hundred times as long for the long thin regions of near-contact pairs.)
 * Shrinking sometimes leaves a remnant of a curve turned inside out, where no such circle is; that shows at once in
 * the distance from the outline, and then the library's inscribed circle is used after all.
 */
function widestPlace(piece: JstsGeometry): Circle {
  const { distanceToOutline } = jstsProbe(piece);
  const box = piece.getEnvelopeInternal();
  let sound = true;
  const most = Math.min(box.getWidth(), box.getHeight()) / 2;
  const last = largestPassing(most, (by): Point | null => {
    const left = jstsShrunken(piece, by);
    if (left.isEmpty()) return null;
    const centre = jstsInnerPoint(left);
    sound &&= distanceToOutline(centre) > by * (1 - 1e-4) - 0.01;
    return centre;
  });
  if (!sound) return { ...jstsInscribedCircle(piece, CIRCLE_ACCURACY), short: CIRCLE_ACCURACY };
  return { centre: last?.found ?? jstsInnerPoint(piece), radius: last?.by ?? 0, short: bisectionOf(most) };
}

function sizeOf(points: readonly Point[]): number {
  const box = boxOf(points);
  return Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
}

function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}
