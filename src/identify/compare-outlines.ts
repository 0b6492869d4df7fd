import { difference } from '../geom/clip.ts';
import { boxOf, type Point } from '../geom/point.ts';
import { boundariesOf, type Region, regionOf } from '../geom/region.ts';
import { asTrustedRing, makeRing } from '../geom/ring.ts';
import { signedArea } from '../geom/signed-area.ts';
import { type Apart, meanApart, measureApart } from '../profile/measure-apart.ts';
import { middleOf, pullOnto } from '../profile/pull-onto.ts';
import { type Pose, poseOutline, posePoint, poseThen, wrappedAngle } from './outline-pose.ts';
import { type Known, type RoughPose, roughPoses, type Unknown } from './rough-poses.ts';

/** An unknown outline laid on a section, and how far the two are apart there. Lengths in nanometres. */
export interface Comparison extends Apart {
  /** What was done to the unknown. */
  readonly pose: Pose;
  /** The unknown in that pose. */
  readonly laid: readonly Point[];
  /** The area that only one of the two covers, square nanometres. */
  readonly areaApart: number;
}

/** Rough poses this much further off than the best one are not looked at, nanometres; and a quarter as much again. */
const NEAR_POSE = 30_000;

/** Most poses that are looked at closely. */
const MOST_POSES = 4;

/** Steps of a few nanometres move nothing that can be seen; where two outlines are far apart no step is the last. */
const PULLED = { steps: 24, enough: 5 };

/**
 * Lays an unknown outline on a section where it lies best, and measures how far the two are apart.
 *
 * Best is where the squares of the distances of both lines from each other sum to the least; the Hausdorff distance is
 * that of this pose, which may be a little more than the least of any pose. Of poses that are as good within `tie` the
 * plainest is taken: as seen before mirrored, upright before upside down.
 *
 * @param tie nanometres of root mean square distance.
 * @accuracy equal outlines come out at 0 where the pose is one of quarter turns, else at a few nanometres; of unequal
 *   ones the pose is off the least by a few micrometres, as places along both stand for the lines.
 * @source least squares of nearest points as in `profile/align-outline.ts`.
 * @check tests/unit/identify/compare-outlines.test.ts, tests/outside/hausdorff.test.ts
 */
export function compareOutlines(unknown: Unknown, known: Known, tie = 1_000, rough?: readonly RoughPose[]): Comparison {
  const poses = rough ?? roughPoses(unknown, known);
  const limit = Math.max(poses[0].rms * 1.25, poses[0].rms + NEAR_POSE);
  const tried = poses
    .filter(({ rms }) => rms <= limit)
    .slice(0, MOST_POSES)
    .map(({ pose }) => settle(unknown, known, pose));
  const least = Math.min(...tried.map(({ rms }) => rms));
  const asGood = tried.filter(({ rms }) => rms <= least + tie);
  const { pose, laid } = asGood.reduce((a, b) => (oddness(b.pose) < oddness(a.pose) ? b : a));
  return { pose, laid, ...measureApart(laid, known.ring), areaApart: areaApart(laid, known.ring) };
}

/** An unknown outline on a section as it lies in the rough: for sections that are far off anyway. */
export function compareRoughly(
  { ring }: Unknown,
  { ring: onto }: Known,
  _tie: number,
  [{ pose }]: readonly RoughPose[],
): Comparison {
  const laid = poseOutline(ring, pose);
  return { pose, laid, ...measureApart(laid, onto), areaApart: areaApart(laid, onto) };
}

/** Mirrored counts more than upside down: the view is told by whoever brings the outline, how it lies is not. */
function oddness({ mirrored, turned }: Pose): number {
  return (mirrored ? 2 : 0) + (Math.abs(turned) > Math.PI / 2 ? 1 : 0);
}

/** A rough pose pulled into place. */
function settle({ ring, turned }: Unknown, { ring: onto }: Known, start: Pose) {
  const begun = poseOutline(ring, start);
  const { angle, by } = pullOnto(begun, onto, turned, PULLED);
  const pulled = poseThen(start, angle, middleOf(begun), by);
  const found = measured(ring, onto, pulled);
  const squared = squareUp(ring, onto, pulled);
  if (!squared) return found;
  const plain = measured(ring, onto, squared);
  return plain.rms <= found.rms + 1 ? plain : found;
}

function measured(ring: readonly Point[], onto: readonly Point[], pose: Pose) {
  const laid = poseOutline(ring, pose);
  return { pose, laid, rms: meanApart(laid, onto).rms };
}

/** Turns smaller than this come of rounding, radians. */
const ROUNDING = 1e-5;

/** The pose by a whole number of quarter turns and box on box, where that is hardly another pose; null where it is. */
function squareUp(ring: readonly Point[], onto: readonly Point[], pose: Pose): Pose | null {
  const turned = Math.round(pose.turned / (Math.PI / 2)) * (Math.PI / 2);
  if (Math.abs(wrappedAngle(pose.turned - turned)) > ROUNDING) return null;
  const own = boxOf(poseOutline(ring, { ...pose, turned, by: { x: 0, y: 0 } }));
  const box = boxOf(onto);
  const by = { x: box.minX - own.minX, y: box.minY - own.minY };
  const off = posePoint({ ...pose, turned, by }, ring[0]);
  const was = posePoint(pose, ring[0]);
  return Math.hypot(off.x - was.x, off.y - was.y) < 100 ? { mirrored: pose.mirrored, turned, by } : null;
}

/** The parts that only one of two outlines covers. */
export interface PartsApart {
  readonly onlyUnknown: Region;
  readonly onlyKnown: Region;
}

/** The parts that only one of two outlines covers as they lie; parts without area are lost. */
export function partsApart(laid: readonly Point[], known: readonly Point[]): PartsApart {
  const [a, b] = [regionFrom(laid), regionFrom(known)];
  return { onlyUnknown: difference(a, b), onlyKnown: difference(b, a) };
}

/**
 * The area that only one of two outlines covers (the symmetric difference), square nanometres.
 *
 * @accuracy of the clipper: crossings are rounded to whole nanometres, so about a nanometre times the length.
 */
export function areaApart(laid: readonly Point[], known: readonly Point[]): number {
  const { onlyUnknown, onlyKnown } = partsApart(laid, known);
  return [...boundariesOf(onlyUnknown), ...boundariesOf(onlyKnown)].reduce((sum, line) => sum + signedArea(line), 0);
}

/** A turn may round two vertices onto one place: such an outline is mended, or taken as it is. */
function regionFrom(points: readonly Point[]): Region {
  const made = makeRing(points);
  return regionOf(made.ok ? made.ring : asTrustedRing(points));
}
