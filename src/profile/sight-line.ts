import { boxOf, type Point } from '../geom/point.ts';
import { turn } from '../geom/predicates.ts';

/** How far the wards of a keyway reach, and how wide one can look straight through it. Lengths in nanometres. */
export interface Sight {
  /** How far past the upright centre line the longest ward reaches, from either side; below 0 where it stays short of it. */
  readonly left: number;
  readonly right: number;
  /** Whether some ward reaches past the centre line. */
  readonly paracentric: boolean;
  /**
   * Width of the widest upright strip through the full height; where there is none: below 0 by how far wards pass each
   * other, or 0.
   */
  readonly strip: number;
}

/** {@link Sight} with where it is seen, for a picture. */
export interface OutlineSight extends Sight {
  /** The upright centre line, midway between the outermost walls. */
  readonly centre: number;
  /** Between which the strip stands: what reaches furthest in from each side; `from` is the greater one where they pass. */
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
 * on its way from the highest to the lowest point, turns back from going right, and the mirror image on the right. Wards
 * alone make the reach past the centre line.
 *
 * The strip of the line of sight is the widest upright one through the full height of the opening: wards bound it, and so
 * do steps and leaning walls. Only a rounded or nearly level end does not ({@link endOf}): it is seen above a rounded back.
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
  const wards = sightBetween(minX, maxX, leftTip?.x ?? minX, rightTip?.x ?? maxX);
  const seen = widestStrip(outline);
  const passed = seen.to <= seen.from && leftTip !== null && rightTip !== null && wards.strip < 0;
  const [from, to] = passed ? [leftTip.x, rightTip.x] : [seen.from, seen.to];
  const strip = passed ? wards.strip : Math.max(0, to - from);
  return { ...wards, strip, centre: (minX + maxX) / 2, from, to, leftTip, rightTip };
}

/**
 * The widest upright strip from the lower to the upper end of an opening, whichever of several lowest and highest places
 * it stands between; `to` is no more than `from` where there is none.
 */
function widestStrip(outline: readonly Point[]): { from: number; to: number } {
  const { minX, maxX, minY, maxY } = boxOf(outline);
  const placesAt = (y: number) => outline.flatMap((p, i) => (p.y === y ? [i] : []));
  const most = (maxX - minX) / 2;
  const roofs = placesAt(maxY).map((i) => [endOf(outline, i, 1, -1, most), endOf(outline, i, -1, -1, most)]);
  let best = { from: Infinity, to: -Infinity };
  for (const place of placesAt(minY)) {
    const [lowLeft, lowRight] = [endOf(outline, place, -1, 1, most), endOf(outline, place, 1, 1, most)];
    for (const [highLeft, highRight] of roofs) {
      const from = stretch(outline, highLeft, lowLeft).reduce((x, p) => Math.max(x, p.x), -Infinity);
      const to = stretch(outline, lowRight, highRight).reduce((x, p) => Math.min(x, p.x), Infinity);
      if (to - from > best.to - best.from) best = { from, to };
    }
  }
  return best;
}

/** A corner that turns by more than this is no part of a rounding, radians. */
const MOST_TURN = (40 * Math.PI) / 180;

/**
 * Where an end of an opening gives over to its wall: past the chords of a rounding, and past a floor that is not quite
 * level. A rounding widens all the way, turns at no corner by more than {@link MOST_TURN} (a chamfer does), and rises by
 * no more than half the width of the opening, as the largest radius does.
 *
 * @param from a lowest (or highest) vertex.
 * @param step which way along the outline.
 * @param up 1 at the lower end, -1 at the upper one.
 * @param most how far it rises at most, nanometres.
 * @returns the number of the vertex where the wall begins.
 */
function endOf(outline: readonly Point[], from: number, step: 1 | -1, up: 1 | -1, most: number): number {
  const outward = step * up;
  let at = from;
  let slope = 0;
  for (;;) {
    const next = (at + step + outline.length) % outline.length;
    const across = outward * (outline[next].x - outline[at].x);
    const rise = up * (outline[next].y - outline[at].y);
    const steeper = Math.atan2(rise, across);
    if (across <= 0 || steeper < slope || steeper - slope > MOST_TURN) return at;
    // Corners of an outline are rounded to whole nanometres.
    if (up * (outline[next].y - outline[from].y) > most + 2) return at;
    [at, slope] = [next, steeper];
  }
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
