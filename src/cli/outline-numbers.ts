import type { Family } from '../family/family.ts';
import type { Feature } from '../fit/fit.ts';
import { toNanometres } from '../interchange/json/file-units.ts';
import type { FamilyDocument } from '../interchange/json/read.ts';

/** A corner or edge of an outline by its number; an edge has the number of the corner it starts at. From 0. */
export type FeatureJson = { readonly corner: number } | { readonly edge: number };

/** Numbers the corners and edges of a profile's ring the way its file does. */
export type NumberFeature = (profile: string, feature: Feature) => FeatureJson;

/**
 * Corners and edges as the file numbers them: corner n is the point `outline[n]`. A ring runs counter-clockwise from the
 * first point, so that an outline written clockwise is counted the other way round. The corners of a milled profile,
 * which its file does not list, are numbered counter-clockwise from the left end of its back.
 *
 * @check tests/unit/cli/outline-numbers.test.ts
 */
export function numberFeatures({ family, file }: FamilyDocument): NumberFeature {
  const turned = new Map(
    family.profiles.map(({ id, ring }, i) => [
      id,
      isClockwise(file.profiles[i].outline, ring, family.units) ? ring.length : 0,
    ]),
  );
  return (profile, { kind, index }) => {
    const count = turned.get(profile) ?? 0;
    if (count === 0) return kind === 'corner' ? { corner: index } : { edge: index };
    // An edge that starts at corner n of the ring ends there in the file, and starts at the ring's corner n + 1.
    return kind === 'corner' ? { corner: (count - index) % count } : { edge: count - index - 1 };
  };
}

/** Whether a ring runs the other way round than the outline it was made from. */
function isClockwise(
  outline: number[][] | undefined,
  ring: Family['profiles'][number]['ring'],
  units: Family['units'],
) {
  if (!outline) return false;
  const [x, y] = outline[1].map((length) => toNanometres(length, units));
  return ring[1].x !== x || ring[1].y !== y;
}
