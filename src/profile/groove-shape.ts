import { squaredDistance } from '../geom/segment-distance.ts';

/** The cross-section of one groove on a straight face; nanometres, `lean` the tangent of the flank angle. */
export interface GrooveShape {
  /** Heights of the two edges of the mouth; absent where the groove runs out at that end of the blade. */
  readonly low: number | null;
  readonly high: number | null;
  readonly depth: number;
  readonly lean: number;
  readonly radius: number;
}

/** A place on a face: height above the back, depth below the face. Nanometres. */
export interface FacePoint {
  readonly up: number;
  readonly in: number;
}

/** Which part of a groove's outline is nearest to a place. */
export type ShapePart = 'land' | 'flank' | 'arc' | 'root';

/** Distance of a place from a groove's outline, positive where the place lies in the groove. */
export interface ShapeDistance {
  readonly signed: number;
  readonly part: ShapePart;
}

/** One half of a groove, seen from its mouth: `across` counts from the mouth's edge towards the middle. */
interface Half {
  readonly depth: number;
  readonly lean: number;
  readonly radius: number;
  /** Where the flank passes into the arc, and the arc into the root. */
  readonly arcFrom: { readonly across: number; readonly in: number };
  readonly arcTo: number;
}

/** Far beyond any blade, nanometres. */
const FAR = 1e9;

/**
 * How far a place is from the outline of a groove with its two lands.
 *
 * Both halves of a groove are alike, so the nearest point lies on the half that the place is on.
 *
 * @check tests/unit/profile/groove-shape.test.ts
 */
export function distanceFromShape(shape: GrooveShape, place: FacePoint): ShapeDistance {
  const below = shape.low === null ? FAR : place.up - shape.low;
  const above = shape.high === null ? FAR : shape.high - place.up;
  const middle = shape.low === null || shape.high === null ? FAR : (shape.high - shape.low) / 2;
  return distanceFromHalf(halfOf(shape), Math.min(below, above), place.in, middle);
}

/** How far the arc of a root corner reaches from the corner, along flank and root: radius times the tangent of half the turn. */
export function arcReach(radius: number, lean: number): number {
  return radius * Math.tan((Math.PI / 2 - Math.atan(lean)) / 2);
}

function halfOf({ depth, lean, radius }: GrooveShape): Half {
  const flank = Math.hypot(lean, 1);
  const reach = arcReach(radius, lean);
  const corner = depth * lean;
  const arcFrom = { across: corner - (reach * lean) / flank, in: depth - reach / flank };
  return { depth, lean, radius, arcFrom, arcTo: corner + reach };
}

function distanceFromHalf(half: Half, across: number, inward: number, middle: number): ShapeDistance {
  const { depth, arcFrom, arcTo } = half;
  const candidates: [ShapePart, number][] = [
    ['land', squaredDistance(across, inward, -FAR, 0, 0, 0)],
    ['flank', squaredDistance(across, inward, 0, 0, arcFrom.across, arcFrom.in)],
    ['root', squaredDistance(across, inward, arcTo, depth, Math.max(arcTo, middle), depth)],
  ];
  const arc = distanceFromArc(half, across, inward);
  if (arc !== null) candidates.push(['arc', arc * arc]);
  const [part, squared] = candidates.reduce((best, next) => (next[1] < best[1] ? next : best));
  const distance = Math.sqrt(squared);
  return { signed: inward < depthOfHalf(half, across) ? distance : -distance, part };
}

/** Distance from the arc where the place lies in the arc's sector, else null: its ends belong to flank and root. */
function distanceFromArc({ radius, arcFrom, arcTo, depth }: Half, across: number, inward: number): number | null {
  if (radius <= 0) return null;
  const [x, y] = [across - arcTo, inward - (depth - radius)];
  const [fromX, fromY] = [arcFrom.across - arcTo, arcFrom.in - (depth - radius)];
  // The sector runs from the flank's end to straight inwards, where the root begins.
  return fromX * y - fromY * x > 0 || x > 0 ? null : Math.abs(Math.hypot(x, y) - radius);
}

/** Depth of the half at a distance from the mouth's edge; below 0 on the land. */
function depthOfHalf({ depth, lean, radius, arcFrom, arcTo }: Half, across: number): number {
  if (across < 0) return 0;
  if (across >= arcTo) return depth;
  if (lean > 0 && across < arcFrom.across) return across / lean;
  return depth - radius + Math.sqrt(Math.max(0, radius * radius - (arcTo - across) ** 2));
}
