import { hausdorff } from '../geom/hausdorff.ts';
import { boxOf, type Point } from '../geom/point.ts';
import type { Profile } from '../profile/profile.ts';
import { areaMoments } from './area-moments.ts';

/** Outlines of one kind no further apart than this are one and the same section, nanometres. */
const SAME = 1_000;

/**
 * Profiles of one kind with the same outline, wherever it was drawn: a section in five and in six chambers is one line.
 *
 * @returns groups in chart order.
 * @accuracy outlines up to 1 um apart are the same, box laid on box.
 * @check tests/unit/identify/equal-outlines.test.ts
 */
export function equalOutlines(profiles: readonly Profile[]): Profile[][] {
  const groups: { readonly profiles: Profile[]; readonly shape: Shape }[] = [];
  for (const profile of profiles) {
    const shape = shapeOf(profile.ring);
    const known = groups.find((group) => group.profiles[0].kind === profile.kind && isSame(group.shape, shape));
    if (known) known.profiles.push(profile);
    else groups.push({ profiles: [profile], shape });
  }
  return groups.map((group) => group.profiles);
}

interface Shape {
  readonly wide: number;
  readonly tall: number;
  readonly area: number;
  readonly middle: Point;
  readonly length: number;
  readonly points: readonly Point[];
}

function shapeOf(ring: readonly Point[]): Shape {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const points = ring.map(({ x, y }) => ({ x: x - minX, y: y - minY }));
  const length = points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length];
    return sum + Math.hypot(q.x - p.x, q.y - p.y);
  }, 0);
  const { area, middle } = areaMoments(points);
  return { wide: maxX - minX, tall: maxY - minY, area, middle, length, points };
}

function isSame(a: Shape, b: Shape): boolean {
  if (Math.abs(a.wide - b.wide) > SAME || Math.abs(a.tall - b.tall) > SAME) return false;
  // A band of that width along the outline is all that they may differ by: it moves the middle by so little.
  const band = SAME * Math.max(a.length, b.length);
  if (Math.abs(a.area - b.area) > band) return false;
  const reach = (band * (a.wide + a.tall)) / a.area;
  if (Math.hypot(a.middle.x - b.middle.x, a.middle.y - b.middle.y) > reach) return false;
  return hausdorff(a.points, b.points).distance <= SAME;
}
