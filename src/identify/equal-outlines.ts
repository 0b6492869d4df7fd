import { hausdorff } from '../geom/hausdorff.ts';
import { boxOf, type Point } from '../geom/point.ts';
import { signedArea } from '../geom/signed-area.ts';
import type { Profile } from '../profile/profile.ts';

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
  return { wide: maxX - minX, tall: maxY - minY, area: signedArea(points), length, points };
}

function isSame(a: Shape, b: Shape): boolean {
  if (Math.abs(a.wide - b.wide) > SAME || Math.abs(a.tall - b.tall) > SAME) return false;
  if (Math.abs(a.area - b.area) > SAME * Math.max(a.length, b.length)) return false;
  return hausdorff(a.points, b.points).distance <= SAME;
}
