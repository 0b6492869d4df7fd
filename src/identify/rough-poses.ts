import type { Point } from '../geom/point.ts';
import { mirrorAbout } from '../profile/mirror-outline.ts';
import { leastSquares, pointsAlong, type Want } from '../profile/pull-onto.ts';
import { type AreaMoments, areaMoments } from './area-moments.ts';
import { type DistanceField, distanceField, readField } from './distance-field.ts';
import { type Pose, wrappedAngle } from './outline-pose.ts';

/** What an unknown outline may be put through to lie on a section. */
export interface LayOptions {
  /** Whether it is tried mirrored too, as the view from the tip. */
  readonly mirrored: boolean;
  /** Whether it may be turned, by any angle: a picture lies as it was taken. */
  readonly turned: boolean;
}

/** An unknown outline made ready to be laid on many sections. */
export interface Unknown {
  /** Counter-clockwise, nanometres. */
  readonly ring: readonly Point[];
  readonly views: readonly UnknownView[];
  readonly turned: boolean;
}

interface UnknownView {
  readonly mirrored: boolean;
  readonly field: DistanceField;
  readonly moments: AreaMoments;
}

/** A section made ready to lie under unknown outlines. */
export interface Known {
  readonly ring: readonly Point[];
  readonly moments: AreaMoments;
  /** Points along it. */
  readonly along: readonly Point[];
}

/** A pose of the unknown on a section, and how far the section's points are then from it: root mean square. */
export interface RoughPose {
  readonly pose: Pose;
  readonly rms: number;
}

/** Points of a section that are looked at. */
const POINTS = 120;

const MOST_STEPS = 14;

/** Directions nearer than this are the same start, radians. */
const SAME_START = 0.12;

/** An outline rounder than this has no direction of its own: quarters are tried as well. */
const ROUND = 0.75;

/** Prepares an unknown outline; about 20 ms for 200 vertices. */
export function prepareUnknown(ring: readonly Point[], { mirrored, turned }: LayOptions): Unknown {
  const views = (mirrored ? [false, true] : [false]).map((over) => {
    const seen = over ? mirrorAbout(ring, 'left-right', 0) : ring;
    return { mirrored: over, field: distanceField(seen), moments: areaMoments(seen) };
  });
  return { ring, views, turned };
}

/** Prepares a section of the family. */
export function prepareKnown(ring: readonly Point[]): Known {
  return { ring, moments: areaMoments(ring), along: pointsAlong(ring, POINTS) };
}

/**
 * Every way worth a closer look to lay an unknown outline on a section: middle on middle, turned so that both are long in
 * the same direction and as drawn, and from there let down into the hollow of the unknown's distances.
 *
 * @returns the closest first.
 * @accuracy the distance is that of the section's points from the unknown only, so a little too small: it sorts out, it
 *   does not decide.
 * @source the iteration is Gauss and Newton's on a distance field; A. Fitzgibbon, "Robust registration of 2D and 3D point
 *   sets", Image and Vision Computing 21 (2003) 1145-1153 (from memory).
 */
export function roughPoses(unknown: Unknown, known: Known): RoughPose[] {
  const found = unknown.views.flatMap((view) =>
    startsOf(view.moments, known.moments, unknown.turned).map((start) => letDown(view, known, start, unknown.turned)),
  );
  found.sort((a, b) => a.rms - b.rms);
  return found.filter(({ pose }, i) => !found.slice(0, i).some((other) => isSamePose(pose, other.pose)));
}

/** Several starts may end in one hollow. */
function isSamePose(a: Pose, b: Pose): boolean {
  return a.mirrored === b.mirrored && Math.abs(wrappedAngle(a.turned - b.turned)) < SAME_START;
}

/** By how much the section is turned at first, radians. */
function startsOf(own: AreaMoments, other: AreaMoments, turned: boolean): number[] {
  if (!turned) return [0];
  const along = own.long - other.long;
  const round = Math.max(own.slender, other.slender) > ROUND;
  const wanted = [0, Math.PI, along, along + Math.PI];
  if (round) wanted.push(Math.PI / 2, -Math.PI / 2, along + Math.PI / 2, along - Math.PI / 2);
  return wanted.filter((angle, i) => !wanted.slice(0, i).some((b) => Math.abs(wrappedAngle(angle - b)) < SAME_START));
}

function letDown({ mirrored, field, moments }: UnknownView, known: Known, start: number, turn: boolean): RoughPose {
  const middle = known.moments.middle;
  let [angle, x, y] = [start, moments.middle.x, moments.middle.y];
  let best = { angle, x, y, rms: Number.POSITIVE_INFINITY };
  for (let n = 0; n < MOST_STEPS; n++) {
    const { wants, rms } = wantsOf(field, known, { angle, x, y });
    if (rms < best.rms) best = { angle, x, y, rms };
    if (rms > best.rms * 1.5) break;
    const step = leastSquares(wants, { x, y }, turn);
    [angle, x, y] = [angle + step.angle, x + step.by.x, y + step.by.y];
    if (Math.hypot(step.by.x, step.by.y) < field.cell / 100 && Math.abs(step.angle) < 1e-4) break;
  }
  // From the section onto the unknown, turned the other way: from the unknown onto the section.
  const [cos, sin] = [Math.cos(-best.angle), Math.sin(-best.angle)];
  const by = { x: middle.x - (best.x * cos - best.y * sin), y: middle.y - (best.x * sin + best.y * cos) };
  return { pose: { mirrored, turned: wrappedAngle(-best.angle), by }, rms: best.rms };
}

/** Where each point of the section wants to go, the section turned about its middle and its middle moved to (x, y). */
function wantsOf(field: DistanceField, { along, moments }: Known, at: { angle: number; x: number; y: number }) {
  const [cos, sin] = [Math.cos(at.angle), Math.sin(at.angle)];
  let squares = 0;
  const wants = along.map((p): Want => {
    const [px, py] = [p.x - moments.middle.x, p.y - moments.middle.y];
    const place = { x: at.x + px * cos - py * sin, y: at.y + px * sin + py * cos };
    const { value, dx, dy } = readField(field, place.x, place.y);
    squares += value * value;
    return { at: place, towards: { x: dx, y: dy }, distance: -value };
  });
  return { wants, rms: Math.sqrt(squares / along.length) };
}
