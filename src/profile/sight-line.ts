import { boxOf, type Point } from '../geom/point.ts';
import { turn } from '../geom/predicates.ts';

/** How far the wards of a keyway reach, and how wide one can look straight through it. Lengths in nanometres. */
export interface Sight {
  /** How far past the upright centre line the longest ward reaches, from either side; below 0 where it stays short of it. */
  readonly left: number;
  readonly right: number;
  /** Whether some ward reaches past the centre line. */
  readonly paracentric: boolean;
  /** Width of the widest upright strip that no ward stands into; below 0: wards pass each other by so much. */
  readonly strip: number;
}

/** {@link Sight} with where it is seen, for a picture. */
export interface OutlineSight extends Sight {
  /** The upright centre line, midway between the outermost walls. */
  readonly centre: number;
  /** Between which the strip stands: the tips that reach furthest in, or the outermost wall on a side without a ward. */
  readonly from: number;
  readonly to: number;
  /** The tips of the longest wards; null on a side without one. */
  readonly leftTip: Point | null;
  readonly rightTip: Point | null;
}

/**
 * Sight through a keyway whose outermost walls stand at `minX` and `maxX` and whose wards reach in as far as `from` on the
 * left and `to` on the right (the walls themselves where there is none).
 */
export function sightBetween(minX: number, maxX: number, from: number, to: number): Sight {
  const centre = (minX + maxX) / 2;
  const [left, right] = [from - centre, centre - to];
  return { left, right, paracentric: left > 0 || right > 0, strip: to - from };
}

/**
 * Paracentric reach and line of sight of any opening.
 *
 * A ward is what stands into the keyway from a side so that along that side the keyway is wider both above and below; a
 * step or a rounded end, wider on one side only, is plain wall. So the tips are the places on the left where the outline,
 * on its way from the highest to the lowest point, turns back from going right, and the mirror image on the right.
 *
 * @param outline a simple polygon, counter-clockwise, nanometres.
 * @check tests/unit/profile/sight-line.test.ts
 */
export function sightOf(outline: readonly Point[]): OutlineSight {
  const { minX, maxX, minY, maxY } = boxOf(outline);
  const top = outline.findIndex((p) => p.y === maxY);
  const bottom = outline.findIndex((p) => p.y === minY);
  const leftTip = furthest(tipsOf(stretch(outline, top, bottom), 1), 1);
  const rightTip = furthest(tipsOf(stretch(outline, bottom, top), -1), -1);
  const [from, to] = [leftTip?.x ?? minX, rightTip?.x ?? maxX];
  return { ...sightBetween(minX, maxX, from, to), centre: (minX + maxX) / 2, from, to, leftTip, rightTip };
}

/** The outline from one of its vertices to another one, both included, the way it runs. */
function stretch(outline: readonly Point[], from: number, to: number): Point[] {
  const count = ((to - from + outline.length) % outline.length) + 1;
  return Array.from({ length: count }, (_, i) => outline[(from + i) % outline.length]);
}

/**
 * Places where a stretch of outline turns back from going to one side, around material.
 *
 * @param sign 1 for turning back from the right, -1 from the left.
 */
function tipsOf(line: readonly Point[], sign: 1 | -1): Point[] {
  const tips: Point[] = [];
  for (let i = 1; i + 1 < line.length; i++) {
    if (sign * (line[i].x - line[i - 1].x) <= 0) continue;
    // An upright tip has two corners: the way goes back after the second one.
    let last = i;
    while (last + 1 < line.length && line[last + 1].x === line[i].x) last++;
    const next = line[last + 1];
    if (!next || sign * (next.x - line[i].x) >= 0) continue;
    if (turn(line[i - 1], line[i], next) < 0) tips.push({ x: line[i].x, y: (line[i].y + line[last].y) / 2 });
  }
  return tips;
}

function furthest(tips: readonly Point[], sign: 1 | -1): Point | null {
  return tips.reduce<Point | null>((best, tip) => (best && sign * (tip.x - best.x) <= 0 ? best : tip), null);
}
