import clipperLib from 'clipper-lib';
import type { Point } from './point.ts';
import { boundariesOf, type Region } from './region.ts';
import { asTrustedRing } from './ring.ts';

/**
 * Polygon clipping and offsetting: the one file that knows clipper-lib.
 *
 * Everything goes in and comes out in whole nanometres. clipper-lib drops parts without area, so two regions
 * that only touch have an empty intersection here; contact is decided elsewhere (fit/decide-contact).
 */
const { Clipper, ClipperOffset, PolyTree, ClipType, PolyType, PolyFillType, JoinType, EndType, JS } = clipperLib;

type Path = { X: number; Y: number }[];

/** The part of the plane in `a` or in `b`. */
export function union(a: Region, b: Region): Region {
  return combine(ClipType.ctUnion, a, b);
}

/** The part of the plane in `a` and in `b`; parts without area are lost. */
export function intersection(a: Region, b: Region): Region {
  return combine(ClipType.ctIntersection, a, b);
}

/** The part of the plane in `a` but not in `b`. */
export function difference(a: Region, b: Region): Region {
  return combine(ClipType.ctDifference, a, b);
}

/** The part of the plane in exactly one of the two. */
export function symmetricDifference(a: Region, b: Region): Region {
  return combine(ClipType.ctXor, a, b);
}

/** Union of closed polylines that may cross themselves: every place with a positive winding number. */
export function unionOfLoops(loops: readonly (readonly Point[])[]): Region {
  return run(ClipType.ctUnion, loops.map(toPath), [], PolyFillType.pftPositive);
}

/**
 * clipper-lib rounds the number of chords of an arc, so a chord may span up to one and a half of the steps that the
 * tolerance asks for; its distance from the arc grows with the square of that.
 */
const WIDEST_STEP = 2.25;

/** How the corners of an offset are made: `round` is the true offset, `mitre` a polygon round it. */
export type OffsetJoin = 'round' | 'mitre';

/**
 * `region` grown by `distance` (shrunk where negative).
 *
 * With round joins an arc is replaced by chords inside it, so the result lies within the true offset and
 * falls short of it by at most `arcTolerance` plus 1 nm of rounding. With mitre joins the result contains
 * the true offset of a growth (less 1 nm of rounding): corners sharper than the mitre limit of 4 are cut
 * off square at `distance`.
 *
 * @param distance nanometres.
 * @param arcTolerance greatest distance of a chord from its arc, nanometres.
 */
export function offset(region: Region, distance: number, join: OffsetJoin, arcTolerance = 250): Region {
  const offsetter = new ClipperOffset(4, arcTolerance / WIDEST_STEP);
  const paths = boundariesOf(region).map(toPath);
  offsetter.AddPaths(paths, join === 'round' ? JoinType.jtRound : JoinType.jtMiter, EndType.etClosedPolygon);
  const tree = new PolyTree();
  offsetter.Execute(tree, distance);
  return toRegion(tree);
}

function combine(operation: number, a: Region, b: Region): Region {
  return run(operation, boundariesOf(a).map(toPath), boundariesOf(b).map(toPath), PolyFillType.pftNonZero);
}

function run(operation: number, subject: Path[], clip: Path[], fill: number): Region {
  const clipper = new Clipper(Clipper.ioStrictlySimple);
  if (subject.length > 0) clipper.AddPaths(subject, PolyType.ptSubject, true);
  if (clip.length > 0) clipper.AddPaths(clip, PolyType.ptClip, true);
  const tree = new PolyTree();
  clipper.Execute(operation, tree, fill, fill);
  return toRegion(tree);
}

/** Rounds on the way in: clipper-lib takes fractions without a word and then computes wrongly. */
function toPath(points: readonly Point[]): Path {
  return points.map((p) => ({ X: Math.round(p.x), Y: Math.round(p.y) }));
}

function toRegion(tree: InstanceType<typeof PolyTree>): Region {
  return JS.PolyTreeToExPolygons(tree).map(({ outer, holes }) => ({
    outer: asTrustedRing(outer.map(toPoint)),
    holes: holes.map((hole) => hole.map(toPoint)),
  }));
}

function toPoint(p: { X: number; Y: number }): Point {
  return { x: p.X, y: p.Y };
}
