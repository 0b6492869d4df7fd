import { boxOf, type Point, translatePoints } from '../geom/point.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import { type Indent, indentsOf } from './indents.ts';
import type { PassageGroove } from './passage.ts';

/** A ward belongs to a groove where they share at least this share of the lower one's height. */
const LEAST_SHARE = 0.25;

/** Whether an indent lies at the height of another one, on the same side. */
export function isBeside(a: Indent, b: Indent): boolean {
  if (a.side !== b.side) return false;
  const shared = Math.min(a.to, b.to) - Math.max(a.from, b.from);
  return shared > 0 && shared >= LEAST_SHARE * Math.min(a.to - a.from, b.to - b.from);
}

/**
 * The grooves of a common blank, from below, each with the keyways that have a ward there.
 *
 * @param blank its back on y = 0.
 * @param openings each with the move that lays it round the blank.
 * @check tests/unit/passage/demo-passage.test.ts
 */
export function grooveCauses(
  blank: Ring,
  openings: readonly { readonly id: string; readonly ring: Ring; readonly move: Point }[],
): PassageGroove[] {
  const { minX, maxX } = boxOf(blank);
  const wards = openings.map(({ id, ring, move }) => ({
    id,
    wards: indentsOf(asTrustedRing(translatePoints(ring, move))),
  }));
  return indentsOf(blank)
    .map((groove) => ({
      side: groove.side,
      from: groove.from,
      to: groove.to,
      depth: groove.depth,
      face: groove.side === 'left' ? minX : maxX,
      ids: wards.filter((one) => one.wards.some((ward) => isBeside(ward, groove))).map(({ id }) => id),
    }))
    .sort((a, b) => a.from - b.from);
}
