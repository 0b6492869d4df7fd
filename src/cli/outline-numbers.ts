import type { Family } from '../family/family.ts';
import type { Feature } from '../fit/fit.ts';
import type { Point } from '../geom/point.ts';
import { toNanometres } from '../interchange/json/file-units.ts';
import { type CornerOwner, outlineOwners } from '../interchange/json/outline-owners.ts';
import type { FamilyDocument } from '../interchange/json/read.ts';
import type { ProfileFile } from '../interchange/json/schema.ts';
import type { Profile } from '../profile/profile.ts';

/** A corner or edge of an outline by its number; an edge has the number of the corner it starts at. From 0. */
export type FeatureJson = { readonly corner: number } | { readonly edge: number };

/** Numbers the corners and edges of a profile's ring the way its file does. */
export type NumberFeature = (profile: string, feature: Feature) => FeatureJson;

/**
 * Corners and edges as the file numbers them: corner n is the point `outline[n]`. A ring runs counter-clockwise from the
 * first point, so that an outline written clockwise is counted the other way round. The corners of a milled profile,
 * which its file does not list, are numbered counter-clockwise from the left end of its back. What touches an arc is told as
 * the edge that the arc is.
 *
 * @check tests/unit/cli/outline-numbers.test.ts
 */
export function numberFeatures({ family, file }: FamilyDocument): NumberFeature {
  const counts = new Map(family.profiles.map((profile, i) => [profile.id, wayOf(profile, file.profiles[i], family)]));
  return (profile, feature) => {
    const way = counts.get(profile);
    const { kind, index } = way ? onDrawn(feature, way.owners) : feature;
    const turned = way?.turned ?? 0;
    if (turned === 0) return kind === 'corner' ? { corner: index } : { edge: index };
    // An edge that starts at corner n of the ring ends there in the file, and starts at the ring's corner n + 1.
    return kind === 'corner' ? { corner: (turned - index) % turned } : { edge: turned - index - 1 };
  };
}

/** How the ring of a profile was made from its file: which drawn vertex each corner of the ring stems from. */
interface Way {
  /** Number of drawn vertices where the ring runs the other way round than the file, else 0. */
  readonly turned: number;
  /** Where the corners of the ring stem from; null where corner n is vertex n. */
  readonly owners: readonly CornerOwner[] | null;
}

function wayOf({ drawn, ring }: Profile, { outline }: ProfileFile, { units }: Family): Way {
  const corners = drawn ?? ring;
  const owners = drawn ? outlineOwners(drawn) : null;
  return { turned: isClockwise(outline, corners, units) ? corners.length : 0, owners };
}

/** A corner or edge of the ring as one of the drawn outline: what lies on an arc is that arc's edge. */
function onDrawn(feature: Feature, owners: Way['owners']): Feature {
  const owner = owners?.[feature.index];
  if (!owner) return feature;
  return { kind: feature.kind === 'corner' && owner.isVertex ? 'corner' : 'edge', index: owner.vertex };
}

/** Whether the corners run the other way round than the outline they were made from. */
function isClockwise(outline: ProfileFile['outline'], corners: readonly Point[], units: Family['units']): boolean {
  if (!outline) return false;
  const [x, y] = outline[1];
  return corners[1].x !== toNanometres(x, units) || corners[1].y !== toNanometres(y, units);
}
