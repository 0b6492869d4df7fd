import type { Point } from '../geom/point.ts';
import type { OutlineShear } from './outline-shear.ts';

/** The greatest shear of an outline and where it is. Millimetres. */
export interface Peak {
  readonly at: Point;
  /** Over twist and shear modulus, mm. */
  readonly shear: number;
  /** How far the two solutions differ there. */
  readonly apart: number;
  readonly triangle: number;
  /** Whether it is the mean over a chord. */
  readonly isChord: boolean;
  /** The share of the distances to be kept that could be kept. */
  readonly share: number;
}

/** A corner and the distance to be kept from it, millimetres. */
export interface ShunnedCorner extends Point {
  readonly keepOut: number;
}

/** Two pieces of outline lie in line where they turn by less than this, radians. */
const IN_LINE = 1e-6;

/**
 * The greatest shear along an outline, away from sharp corners; where nothing is away from them, nearer to them.
 *
 * On a straight side the values stand at the middles of pieces. The top of the parabola through the greatest one and its
 * two neighbours is told, where they lie in line.
 *
 * @param corners to keep away from.
 * @check tests/outside/torsion.test.ts
 */
export function peakShear(along: readonly OutlineShear[], corners: readonly ShunnedCorner[]): Peak {
  const off = (p: Point) => Math.min(...corners.map((c) => Math.hypot(p.x - c.x, p.y - c.y) / c.keepOut));
  const reach = ({ at, ends }: OutlineShear) => Math.max(off(at), off(ends[0]), off(ends[1]));
  for (let kept = corners.length > 0 ? 1 : 0; ; kept /= 2) {
    const away = kept > 0 ? along.filter((stretch) => reach(stretch) >= kept) : along;
    if (away.length === 0 && kept > 1e-6) continue;
    const greatest = away.reduce((a, b) => (b.shear > a.shear ? b : a), away[0] ?? along[0]);
    const { apart, triangle, isChord } = greatest;
    return { ...topOfParabola(along, greatest), apart, triangle, isChord, share: kept };
  }
}

/** The top of the parabola through a value and its neighbours in line; the value itself where there is no such top. */
function topOfParabola(along: readonly OutlineShear[], peak: OutlineShear): { at: Point; shear: number } {
  const before = along.find((other) => other.ends[1] === peak.ends[0] && isInLine(other, peak));
  const after = along.find((other) => other.ends[0] === peak.ends[1] && isInLine(other, peak));
  const { at, shear } = peak;
  if (!before || !after || before.shear > shear || after.shear > shear) return { at, shear };
  const [back, ahead] = [distance(before.at, at), distance(at, after.at)];
  const [fall, rise] = [(shear - before.shear) / back, (after.shear - shear) / ahead];
  const bend = (rise - fall) / (back + ahead);
  if (bend >= 0) return { at, shear };
  const slope = fall + bend * back;
  const step = Math.max(-back, Math.min(ahead, -slope / (2 * bend)));
  const unit = { x: (after.at.x - at.x) / ahead, y: (after.at.y - at.y) / ahead };
  return { at: { x: at.x + step * unit.x, y: at.y + step * unit.y }, shear: shear + step * (slope + bend * step) };
}

function isInLine(one: OutlineShear, other: OutlineShear): boolean {
  if (one.isChord || other.isChord) return false;
  const [ux, uy] = [one.ends[1].x - one.ends[0].x, one.ends[1].y - one.ends[0].y];
  const [vx, vy] = [other.ends[1].x - other.ends[0].x, other.ends[1].y - other.ends[0].y];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)) < IN_LINE;
}

function distance(p: Point, q: Point): number {
  return Math.hypot(q.x - p.x, q.y - p.y);
}
