import { NM_PER_MM } from '../geom/point.ts';
import { turnAtStart } from './flatten-outline.ts';
import type { SectionOutline } from './section-outline.ts';
import type { SharpCorner } from './strength.ts';

/** A re-entrant corner that turns by more than this, radians, is sharp whatever is beside it: 40 degrees. */
const SHARP_TURN = (40 * Math.PI) / 180;

/** One that turns by more than this is sharp where it stands alone: 10 degrees. */
const LONE_TURN = (10 * Math.PI) / 180;

/** A corner and the number of the edge that starts at it. */
export interface NumberedCorner extends SharpCorner {
  readonly edge: number;
}

/**
 * The re-entrant corners without a rounding, where the elastic shear has no bound.
 *
 * A rounding that was drawn as chords is a row of small turns to one side; such turns of up to 40 degrees are taken for a
 * rounding where a neighbour turns the same way.
 *
 * @returns nanometres, in the order of the outline.
 * @check tests/unit/strength/sharp-corners.test.ts
 */
export function sharpCorners(outline: SectionOutline): NumberedCorner[] {
  const turns = outline.edges.map((_, i) => turnAtStart(outline, i));
  const n = turns.length;
  return turns.flatMap((turn, edge) => {
    const alone = turns[(edge + n - 1) % n] > -LONE_TURN / 2 && turns[(edge + 1) % n] > -LONE_TURN / 2;
    if (-turn <= (alone ? LONE_TURN : SHARP_TURN)) return [];
    const { from } = outline.edges[edge];
    const { x, y } = outline.origin;
    return [{ x: x + from.x * NM_PER_MM, y: y + from.y * NM_PER_MM, angle: Math.PI - turn, edge }];
  });
}

/** The smallest radius of the arcs that bow inwards, nanometres; null where there is none. */
export function leastRootRadius({ edges }: SectionOutline): number | null {
  const radii = edges.flatMap(({ arc }) => (arc && arc.sweep < 0 ? [arc.radius * NM_PER_MM] : []));
  return radii.length > 0 ? Math.min(...radii) : null;
}
