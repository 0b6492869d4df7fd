import { boxOf, type Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';
import { type JstsGeometry, jstsDifference, jstsGrown, jstsOpening, jstsPolygon, openingOf } from './jsts-shapes.ts';

/*
 * Interference by JSTS. The depth h(t) of a placement is the greatest distance of a point of the blank from the
 * opening; it is at most d exactly where the blank lies inside the opening grown by d. The interference is the least
 * depth over all placements, so it is below d exactly where the blank goes into the opening grown by d.
 */

/** By how much, in nanometres, an opening grown here may fall short, its arcs being inscribed polygons. */
export const ARC_SHORTFALL = 100;

/** Sides to the quarter turn that keep the arcs' sagitta, by (1 - cos(pi / 4n)), below the shortfall. */
function arcSegments(by: number): number {
  return Math.max(8, Math.ceil(Math.sqrt((by * Math.PI ** 2) / 32 / ARC_SHORTFALL)));
}

/** The opening grown all round, arcs inscribed, rounded to whole nanometres. */
export function grownOpening(opening: OpeningShape, by: number): OpeningShape {
  return openingOf(jstsGrown(jstsOpening(opening), by, arcSegments(by)));
}

/** Computes depths of one pair. */
export class DepthMeter {
  private readonly middle: Point;
  private readonly opening: JstsGeometry;
  private readonly grown = new Map<number, JstsGeometry>();

  constructor(
    opening: OpeningShape,
    private readonly blank: readonly Point[],
  ) {
    const box = boxOf(opening.outer);
    this.middle = { x: Math.round((box.minX + box.maxX) / 2), y: Math.round((box.minY + box.maxY) / 2) };
    this.opening = jstsOpening(opening, { x: -this.middle.x, y: -this.middle.y });
  }

  /** Whether no point of the blank moved by `at` is further than `depth` from the opening (a thousandth of a nanometre let pass). */
  isWithin(at: Point, depth: number): boolean {
    const placed = jstsPolygon(
      this.blank.map((p) => ({ x: p.x + at.x - this.middle.x, y: p.y + at.y - this.middle.y })),
    );
    const left = jstsDifference(placed, this.grownBy(depth));
    return left.getArea() <= 1e-3 * left.getLength();
  }

  /** The depth of the placement `at`, at most `accuracy` and the arcs' shortfall too large. */
  depthAt(at: Point, accuracy: number): number {
    let exceeded = 0;
    let enough = 1e6;
    while (!this.isWithin(at, enough)) enough *= 2;
    while (enough - exceeded > accuracy) {
      const depth = (enough + exceeded) / 2;
      if (this.isWithin(at, depth)) enough = depth;
      else exceeded = depth;
    }
    return enough;
  }

  private grownBy(depth: number): JstsGeometry {
    const known = this.grown.get(depth);
    if (known) return known;
    const made = jstsGrown(this.opening, depth, arcSegments(depth));
    this.grown.set(depth, made);
    return made;
  }
}

/** The least depth on a square grid of `steps` x `steps` placements with `pitch` between them round `middle`. */
export function leastDepthOnGrid(
  meter: DepthMeter,
  middle: Point,
  pitch: number,
  steps: number,
  accuracy: number,
): number {
  let least = Infinity;
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      const at = { x: middle.x + (i - (steps - 1) / 2) * pitch, y: middle.y + (j - (steps - 1) / 2) * pitch };
      if (least === Infinity || meter.isWithin(at, least - accuracy)) least = meter.depthAt(at, accuracy);
    }
  }
  return least;
}
