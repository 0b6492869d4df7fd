import { NM_PER_MM } from '../geom/point.ts';
import { turnAtStart } from './flatten-outline.ts';
import type { SectionEdge, SectionOutline } from './section-outline.ts';
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
 * @check tests/unit/strength/section-outline.test.ts
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

/** A re-entrant corner of a rounding that was drawn as chords. */
export interface BluntCorner {
  /** Number of the edge that starts at it. */
  readonly edge: number;
  /** Half the shorter one of its two edges, millimetres: nearer than that, its stress is that of the corner. */
  readonly keepOut: number;
  /** Those of its two edges that are not much longer than the other: chords of the rounding. */
  readonly chords: readonly number[];
}

/** A re-entrant corner that turns by less than this, radians, does not matter: 2 degrees. */
const NO_TURN = (2 * Math.PI) / 180;

/** An edge is a chord where it is no longer than this many times the other edge at a corner of the rounding. */
const CHORD_RATIO = 2;

/**
 * The re-entrant corners of roundings that were drawn as chords. A chord bears in the mean what the rounding bears there,
 * while the corners themselves would show false peaks.
 *
 * @check tests/unit/strength/section-outline.test.ts
 */
export function bluntCorners(outline: SectionOutline, sharp: readonly NumberedCorner[]): BluntCorner[] {
  const { edges } = outline;
  const isSharp = new Set(sharp.map(({ edge }) => edge));
  return edges.flatMap((_, edge) => {
    if (isSharp.has(edge) || turnAtStart(outline, edge) > -NO_TURN) return [];
    const before = (edge + edges.length - 1) % edges.length;
    const [one, two] = [lengthOf(edges[before]), lengthOf(edges[edge])];
    const shorter = Math.min(one, two);
    const chords = [before, edge].filter((k) => lengthOf(edges[k]) <= CHORD_RATIO * shorter && !edges[k].arc);
    return [{ edge, keepOut: shorter / 2, chords }];
  });
}

function lengthOf({ from, to }: SectionEdge): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

/** The smallest radius of the arcs that bow inwards, nanometres; null where there is none. */
export function leastRootRadius({ edges }: SectionOutline): number | null {
  const radii = edges.flatMap(({ arc }) => (arc && arc.sweep < 0 ? [arc.radius * NM_PER_MM] : []));
  return radii.length > 0 ? Math.min(...radii) : null;
}
