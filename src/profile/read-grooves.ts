import type { Point } from '../geom/point.ts';
import { makeRing, type Ring } from '../geom/ring.ts';
import { checkMilled, type MillFault } from './check-milled.ts';
import {
  type BladeBox,
  bladeBox,
  bowOf,
  commonDepth,
  type Face,
  type FaceRun,
  readFace,
  slabsOf,
} from './face-runs.ts';
import { type BackShape, fitBack } from './fit-back.ts';
import { fitGroove, type GrooveStretch, type OutlineSample, sampleOutline } from './fit-groove.ts';
import type { FacePoint, GrooveShape } from './groove-shape.ts';
import { millOutline } from './mill-outline.ts';
import type { Groove, GrooveSide, Milled } from './profile.ts';
import { tidyMilled } from './tidy-milled.ts';
import { distanceFromOutline, type UnexplainedPart, unexplainedParts } from './unexplained-parts.ts';

/** An outline read as a milled blade, or why it is none. */
export type GrooveReading =
  | {
      readonly ok: true;
      readonly milled: Milled;
      /** Where the blade's frame stands in the outline's: the left end of its back. */
      readonly shift: Point;
      /** The milled outline where the given one lies. */
      readonly ring: Ring;
      /** What the description does not explain, the furthest off first; in the frame of the given outline. */
      readonly unexplained: readonly UnexplainedPart[];
      /** Greatest distance of the given outline from the milled one, nanometres. */
      readonly off: number;
    }
  | { readonly ok: false; readonly what: string; readonly cure: string };

/** Tolerance where none is given, nanometres: twice what the chords of an imported outline may be off. */
const READING_TOLERANCE = 2_000;

/** A blade has at least this share of its height on each face; a circle has less. */
const LEAST_LAND = 0.02;

/** At least this share of the outline has to be explained: what is explained less is no milled blade. */
const LEAST_EXPLAINED = 0.75;

/** Faces that bow by more than this share of the tolerance, both of them, are parts of a curve. */
const MOST_BOW = 0.4;

/** No tolerance may be a greater share of the outline's size: everything would be a blade. */
const MOST_TOLERANCE = 0.04;

/**
 * Reads an outline as a milled blade: its faces, its grooves with their flanks and roots, steps, and the radius of its
 * back. The outline may stand anywhere, upright; arcs may be chords; it may be off by the tolerance all over, as a
 * traced one is. Where it differs from what can be milled, the difference is told.
 *
 * A face is what lies outermost on its side; whatever lies deeper than the tolerance is a groove. Its shape is fitted by
 * least squares, and the milled outline is then compared with the given one. An outline without two faces, or of which
 * less than three quarters are explained, is no milled blade.
 *
 * @param tolerance how far the outline may be off, nanometres.
 * @accuracy an outline that was milled comes back within 1 um: sides, mouths and roots lie where they lay, radii and
 *   flanks are off by no more than moves the outline by that much.
 * @check tests/unit/profile/read-grooves.test.ts, tests/laws/read-grooves.test.ts
 */
export function readGrooves(ring: Ring, tolerance = READING_TOLERANCE): GrooveReading {
  const slabs = slabsOf(ring);
  const box = bladeBox(ring, slabs, tolerance);
  const size = Math.min(box.right - box.left, box.top - box.back);
  if (size <= 0 || tolerance > size * MOST_TOLERANCE)
    return noBlade('the outline is too small for this tolerance', 'Give a smaller tolerance.');
  const faces = { left: readFace(slabs, box, 'left', tolerance), right: readFace(slabs, box, 'right', tolerance) };
  for (const side of ['left', 'right'] as const) {
    if (faces[side].land < LEAST_LAND * (box.top - box.back))
      return noBlade(`there is no straight upright face on the ${side}`, 'Draw it as an outline.');
  }
  if (Math.min(bowOf(faces.left.longest), bowOf(faces.right.longest)) > MOST_BOW * tolerance)
    return noBlade('its faces are curved', 'Draw it as an outline.');
  const samples = sampleOutline(ring, Math.max(10_000, (box.top - box.back) / 250));
  const { milled, back } = describe(samples, box, faces, tolerance);
  return judge(ring, samples, milled, { x: Math.round(box.left) + 0, y: Math.round(back) + 0 }, tolerance);
}

function noBlade(what: string, cure: string): GrooveReading {
  return { ok: false, what, cure };
}

interface Faces {
  readonly left: Face;
  readonly right: Face;
}

/** The blade that fits the outline, and the height of its back in the outline. */
function describe(
  samples: readonly OutlineSample[],
  box: BladeBox,
  faces: Faces,
  tolerance: number,
): { milled: Milled; back: number } {
  const height = box.top - box.back;
  const guess = Math.max(backRadiusOf(faces.left, tolerance), backRadiusOf(faces.right, tolerance));
  const { back, radius } = fitEnd(samples, box, faces, guess, tolerance);
  const based = { ...box, back };
  const grooves = (['left', 'right'] as const).flatMap((side) =>
    stretchesOf(faces[side], side, height, radius, tolerance).map((stretch) =>
      grooveOf(fitGroove(samples, based, stretch, tolerance), side, box.top - back),
    ),
  );
  const lengths = { thickness: box.right - box.left, height: box.top - back, backRadius: radius };
  return { milled: { ...lengths, grooves }, back };
}

/** The stretch at the back of a face, where there is one. */
function endRun(face: Face, tolerance: number): FaceRun | undefined {
  return face.runs.find((run) => run.line[0].up <= 1.5 * tolerance);
}

/** Depth of the step at the back of a face, 0 where there is none. */
function backStep(face: Face, tolerance: number): number {
  const run = endRun(face, tolerance);
  return run && isStep(run, tolerance) ? commonDepth(run, tolerance) : 0;
}

/** Whether a stretch at the back is a step; else it is nothing but the rounded corner. */
function isStep(run: FaceRun, tolerance: number): boolean {
  const radius = cornerRadius(run.line, 0, tolerance) ?? run.to;
  return run.line.some(({ up, in: depth }) => {
    const side = Math.min(up, depth);
    const off = up >= radius || depth >= radius ? side : Math.hypot(radius - up, radius - depth) - radius;
    return Math.abs(off) > 2 * tolerance;
  });
}

/** The radius that a rounded corner has by most of its vertices; null where none lies inside the corner. */
function cornerRadius(line: readonly FacePoint[], step: number, tolerance: number): number | null {
  const radii = line
    .map(({ up, in: depth }) => ({ up, deep: depth - step }))
    .filter(({ up, deep }) => up > tolerance && deep > tolerance)
    .map(({ up, deep }) => up + deep + Math.sqrt(2 * up * deep))
    .sort((a, b) => a - b);
  return radii.length > 0 ? radii[radii.length >> 1] : null;
}

/** Radius of the back's corner on one face, a guess: from what lies deeper than the face or than the step there. */
function backRadiusOf(face: Face, tolerance: number): number {
  const run = endRun(face, tolerance);
  if (!run) return 0;
  const step = backStep(face, tolerance);
  const end = step > 0 ? run.line.findIndex((p) => p.in <= step + tolerance) : run.line.length;
  return cornerRadius(run.line.slice(0, end), step, tolerance) ?? (step > 0 ? 0 : run.to);
}

/** The back of the blade: its height and the radius of its corners. */
function fitEnd(
  samples: readonly OutlineSample[],
  box: BladeBox,
  faces: Faces,
  guess: number,
  tolerance: number,
): BackShape {
  const ends = [faces.left, faces.right].flatMap((face) => {
    const run = endRun(face, tolerance);
    if (!run) return face.runs.slice(0, 1).map((r) => r.from);
    if (!isStep(run, tolerance)) return face.runs.slice(1, 2).map((r) => r.from);
    const depth = backStep(face, tolerance);
    return [run.line.findLast((p) => p.in >= depth - tolerance)?.up ?? run.to];
  });
  const least = Math.min(guess * 1.3 + 4 * tolerance, ...ends.map((end) => end - 2 * tolerance));
  const sides = {
    left: box.left + backStep(faces.left, tolerance),
    right: box.right - backStep(faces.right, tolerance),
    upTo: box.back + least,
  };
  return fitBack(samples, sides, { back: box.back, radius: Math.min(guess, least) });
}

/** The grooves and steps of a face, each with the heights up to half way to its neighbours. */
function stretchesOf(
  face: Face,
  side: GrooveSide,
  height: number,
  backRadius: number,
  tolerance: number,
): GrooveStretch[] {
  return face.runs.flatMap((run, i) => {
    const atBack = run === endRun(face, tolerance);
    if (atBack && !isStep(run, tolerance)) return [];
    const atTop = run.line[run.line.length - 1].up >= height - 1.5 * tolerance;
    const below = i > 0 ? (face.runs[i - 1].to + run.from) / 2 : Math.min(run.from, backRadius + tolerance);
    const above = i + 1 < face.runs.length ? (run.to + face.runs[i + 1].from) / 2 : height - tolerance;
    const reach = 0.5 * (run.to - run.from) + 2 * tolerance;
    const from = atBack ? Math.max(tolerance, backRadius - 500) : Math.max(below, run.from - reach);
    const to = atTop ? height - tolerance : Math.min(above, run.to + reach);
    return [{ side, run, within: [from, to] as const, atBack, atTop }];
  });
}

function grooveOf({ low, high, depth, lean, radius }: GrooveShape, side: GrooveSide, height: number): Groove {
  const bottom = low === null ? 0 : Math.round(low);
  const top = high === null ? Math.round(height) : Math.round(high);
  return { side, bottom, width: top - bottom, depth, flank: Math.atan(lean), rootRadius: radius };
}

/** Compares what was read with the outline; what cannot be milled as read is mended or left out. */
function judge(
  ring: Ring,
  samples: readonly OutlineSample[],
  rough: Milled,
  shift: Point,
  tolerance: number,
): GrooveReading {
  const milled = soundMilled(tidyMilled(rough, tolerance > READING_TOLERANCE ? 1_000 : 1));
  const points = milled ? millOutline(milled) : [];
  const made = makeRing(Array.isArray(points) ? points.map((p) => ({ x: p.x + shift.x, y: p.y + shift.y })) : []);
  if (!milled || !made.ok) return noBlade('what was read cannot be milled', 'Draw it as an outline.');
  const distances = samples.map((p) => distanceFromOutline(made.ring, p));
  const length = (of: readonly OutlineSample[]) => of.reduce((sum, p) => sum + p.weight, 0);
  const explained = samples.filter((_, i) => distances[i] <= tolerance);
  if (length(explained) < LEAST_EXPLAINED * length(samples))
    return noBlade('grooves and steps explain too little of the outline', 'Draw it as an outline.');
  const unexplained = unexplainedParts(ring, made.ring, tolerance);
  const off = distances.reduce((most, d) => Math.max(most, d), 0);
  return { ok: true, milled, shift, ring: made.ring, unexplained, off };
}

/** A description that can be milled: radii as small as need be, and without the grooves that cannot be. */
function soundMilled(milled: Milled): Milled | null {
  let sound = milled;
  for (let round = 0; round < 4 * (milled.grooves.length + 1); round++) {
    const [fault] = checkMilled(sound);
    if (!fault) return sound;
    const next = mended(sound, fault, round < milled.grooves.length + 1);
    if (!next) return null;
    sound = next;
  }
  return null;
}

/** The description with the part at fault made smaller, or left out. */
function mended(milled: Milled, { kind, grooves: [first] }: MillFault, shrink: boolean): Milled | null {
  const smaller = (radius: number) => (shrink ? Math.max(0, Math.floor(radius * 0.999 - 2)) : 0);
  if (kind === 'back-radius-too-large') return { ...milled, backRadius: smaller(milled.backRadius) };
  if (first === undefined) return null;
  const groove = milled.grooves[first];
  if (kind === 'flanks-meet' && shrink)
    return { ...milled, grooves: milled.grooves.with(first, { ...groove, flank: groove.flank * 0.98 }) };
  if (kind === 'root-radius-too-large' && groove.rootRadius > 0)
    return { ...milled, grooves: milled.grooves.with(first, { ...groove, rootRadius: smaller(groove.rootRadius) }) };
  return { ...milled, grooves: milled.grooves.toSpliced(first, 1) };
}
