import type { Placement } from '../../../fit/fit.ts';
import { boxOf, type Point } from '../../../geom/point.ts';
import { type Vertex, vertexAt } from '../../../geom/vertex.ts';
import type { Profile, ProfileKind } from '../../../profile/profile.ts';
import { editedVertices } from '../../state/draw/draw-state.ts';
import { placed, unplaced } from '../placed-points.ts';

/** Another outline that lies under the edited one. */
export interface Ghost {
  readonly id: string;
  readonly name: string;
  readonly kind: ProfileKind;
  /** Whether it is the other one of the picked pair. */
  readonly counterpart: boolean;
  /** In the edited outline's own frame, nanometres. */
  readonly vertices: readonly Vertex[];
  readonly ring: readonly Point[];
  /** The upper right corner of its box, where its name stands. */
  readonly corner: Point;
}

/**
 * Another profile where it lies under the edited one: of its own kind in the same frame, else as the two lie in their
 * best placement.
 *
 * @param placement of the blank in the opening, whichever of them is edited; null where it is not known.
 * @returns whole nanometres, so that what is drawn to it lies on it.
 */
export function ghostOf(edited: Profile, other: Profile, placement: Placement | null, counterpart: boolean): Ghost {
  const head = { id: other.id, name: other.name, kind: other.kind, counterpart };
  const vertices = editedVertices(other);
  const sameSide = (edited.kind === 'opening') === (other.kind === 'opening');
  if (sameSide || !placement) return { ...head, vertices, ring: other.ring, corner: cornerOf(other.ring) };
  const move = (points: readonly Point[]) =>
    edited.kind === 'opening' ? placed(points, placement) : points.map((p) => unplaced(p, placement));
  const whole = move(vertices).map(({ x, y }, i) => vertexAt(Math.round(x), Math.round(y), vertices[i].bulge));
  const ring = move(other.ring);
  return { ...head, vertices: whole, ring, corner: cornerOf(ring) };
}

function cornerOf(ring: readonly Point[]): Point {
  const { maxX, maxY } = boxOf(ring);
  return { x: maxX, y: maxY };
}
