import { NM_PER_MM, type Point } from '../geom/point.ts';
import { fourCornersFault } from './four-corners.ts';
import type { MarksFault } from './marks-fault.ts';
import {
  depthAt,
  type FourPoints,
  followedBy,
  inverseMap,
  magnificationAt,
  mapOfFourPoints,
  mapPoint,
  type PlaneMap,
  type PlanePoint,
  rescaled,
} from './plane-map.ts';

/** A place in a picture, in pixels from the upper left corner of its upper left pixel, x right, y down. */
export type PicturePoint = PlanePoint;

/** The size of a picture, in pixels. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** Two points of a picture and how far apart they are in truth, in nanometres. */
export interface ScaleMarks {
  readonly from: PicturePoint;
  readonly to: PicturePoint;
  readonly distance: number;
}

/** The corners of a rectangle of known size: upper left, upper right, lower right, lower left as it should stand. */
export interface RectangleMarks {
  readonly corners: FourPoints;
  /** Nanometres. */
  readonly width: number;
  readonly height: number;
}

/** A line of the picture and how it should stand. */
export interface LineMarks {
  readonly from: PicturePoint;
  readonly to: PicturePoint;
  readonly lies: 'upright' | 'level';
}

/** All that is told of how a picture lies; absent parts are not told. */
export interface PictureMarks {
  readonly scale?: ScaleMarks;
  readonly rectangle?: RectangleMarks;
  readonly line?: LineMarks;
  /** A further turn, radians, counter-clockwise. */
  readonly turn: number;
  /** Where the middle of the picture lies among the profiles, nanometres. */
  readonly middle: Point;
}

/** Marks of a picture of which nothing is told yet. */
export const NO_MARKS: PictureMarks = { turn: 0, middle: { x: 0, y: 0 } };

/** How a picture lies among the profiles. */
export interface PictureFrame {
  /** From pixels to nanometres. */
  readonly toProfile: PlaneMap;
  /** From nanometres to pixels. */
  readonly toPicture: PlaneMap;
  /** Nanometres in a pixel at the middle of the picture. */
  readonly nmPerPixel: number;
  /** False where the map only turns, scales and moves. */
  readonly perspective: boolean;
  /** What gives the scale; assumed: nothing does, and a picture is taken as 25 mm high. */
  readonly scaleFrom: 'points' | 'rectangle' | 'assumed';
  /** The distance of the two scale points by the rectangle's size, nanometres, where both are told: a check. */
  readonly distanceByRectangle: number | null;
}

/** A frame or the first reason why there is none. */
export type FrameResult =
  | { readonly ok: true; readonly frame: PictureFrame }
  | { readonly ok: false; readonly fault: MarksFault };

/** Height that a picture is taken to have while no scale is told, nanometres. */
export const ASSUMED_HEIGHT = 25 * NM_PER_MM;

/** Longest distance or side that marks may tell, nanometres: a metre. */
const LONGEST = 1e9;

/** Marks nearer than this, in pixels, tell nothing. */
const LEAST_APART = 1;

/** Nanometres a pixel that a picture may have: finer than any light shows, coarser than a blade. */
const SCALES = { least: 20, most: 2e6 } as const;

/**
 * The frame that marks tell: the rectangle straightens, the two points scale (without them the rectangle's size does),
 * line and turn turn, and the middle of the picture is put where it should lie.
 *
 * @check tests/unit/trace/picture-scale.test.ts, tests/outside/perspective.test.ts
 */
export function makePictureFrame(size: PictureSize, marks: PictureMarks): FrameResult {
  const fault = marksFault(marks);
  if (fault) return { ok: false, fault };
  const straight = straightened(size, marks.rectangle);
  if (!straight) return refuse(HORIZON);
  const measured = marks.scale ? distanceIn(straight, marks.scale) : null;
  if (measured !== null && !(measured > 0)) return refuse(HORIZON);
  const scale = marks.scale && measured ? marks.scale.distance / measured : 1;
  const turn = marks.turn + (marks.line ? turnOf(straight, marks.line) : 0);
  const centre = mapPoint(straight, { x: size.width / 2, y: size.height / 2 });
  const toProfile = followedBy(straight, similarity(scale, turn, centre, marks.middle));
  const toPicture = inverseMap(toProfile);
  const nmPerPixel = magnificationAt(toProfile, { x: size.width / 2, y: size.height / 2 });
  if (!toPicture || !(nmPerPixel >= SCALES.least && nmPerPixel <= SCALES.most)) return refuse(SCALE_FAULT);
  const frame: PictureFrame = {
    toProfile,
    toPicture,
    nmPerPixel,
    perspective: marks.rectangle !== undefined,
    scaleFrom: scaleFrom(marks),
    distanceByRectangle: marks.rectangle ? measured : null,
  };
  return { ok: true, frame };
}

/** Where a point of the picture lies among the profiles, nanometres, not rounded; null beyond the horizon. */
export function toProfilePlane(frame: PictureFrame, point: PicturePoint): Point | null {
  return depthAt(frame.toProfile, point) > 0 ? mapPoint(frame.toProfile, point) : null;
}

/** Which point of the picture lies at a place among the profiles; null beyond the horizon. */
export function toPicturePlane(frame: PictureFrame, point: Point): PicturePoint | null {
  return depthAt(frame.toPicture, point) > 0 ? mapPoint(frame.toPicture, point) : null;
}

function refuse(fault: MarksFault): FrameResult {
  return { ok: false, fault };
}

const HORIZON: MarksFault = {
  of: 'rectangle',
  what: 'the four corners make so steep a perspective that the picture reaches beyond its own horizon',
  cure: 'Mark the corners of a larger rectangle, or take the picture more from above.',
};

const SCALE_FAULT: MarksFault = {
  of: 'picture',
  what: 'a pixel would be less than 0.00002 mm or more than 2 mm',
  cure: 'Check the distance and its unit.',
};

function scaleFrom({ scale, rectangle }: PictureMarks): PictureFrame['scaleFrom'] {
  if (scale) return 'points';
  return rectangle ? 'rectangle' : 'assumed';
}

/** What can be said of marks by themselves. */
function marksFault({ scale, rectangle, line, turn, middle }: PictureMarks): MarksFault | null {
  if (![turn, middle.x, middle.y].every(Number.isFinite))
    return { of: 'picture', what: 'the turn or the place is no number', cure: 'Type a number.' };
  if (scale && !areApart(scale.from, scale.to))
    return { of: 'scale', what: 'the two points are the same', cure: 'Move one of them to the other end.' };
  if (scale && !isLength(scale.distance))
    return { of: 'scale', what: 'the distance is not above 0, or over a metre', cure: 'Type the distance in truth.' };
  if (line && !areApart(line.from, line.to))
    return { of: 'line', what: 'the two ends are the same', cure: 'Move one of them along the line.' };
  if (!rectangle) return null;
  if (!isLength(rectangle.width) || !isLength(rectangle.height))
    return { of: 'rectangle', what: 'width or height is not above 0, or over a metre', cure: 'Type both in truth.' };
  return fourCornersFault(rectangle.corners);
}

function areApart(a: PicturePoint, b: PicturePoint): boolean {
  return Math.hypot(b.x - a.x, b.y - a.y) >= LEAST_APART;
}

function isLength(nm: number): boolean {
  return nm > 0 && nm <= LONGEST;
}

/**
 * The map that makes the rectangle upright and of its size, or only turns y up and scales to the assumed height. Its
 * divisor is positive over the picture's middle; null where the middle lies beyond the horizon.
 */
function straightened({ width, height }: PictureSize, rectangle: RectangleMarks | undefined): PlaneMap | null {
  if (!rectangle) {
    const k = ASSUMED_HEIGHT / height;
    return [k, 0, 0, 0, -k, 0, 0, 0, 1];
  }
  const { corners, width: w, height: h } = rectangle;
  const map = mapOfFourPoints(corners, [
    { x: 0, y: h },
    { x: w, y: h },
    { x: w, y: 0 },
    { x: 0, y: 0 },
  ]);
  if (!map) return null;
  const atCorner = depthAt(map, corners[0]);
  const facing = rescaled(map, 1 / atCorner);
  return depthAt(facing, { x: width / 2, y: height / 2 }) > 0 ? facing : null;
}

function distanceIn(map: PlaneMap, { from, to }: ScaleMarks): number {
  if (!(depthAt(map, from) > 0 && depthAt(map, to) > 0)) return 0;
  const [a, b] = [mapPoint(map, from), mapPoint(map, to)];
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The least turn that makes a line stand as told; it does not matter which end is which. */
function turnOf(map: PlaneMap, { from, to, lies }: LineMarks): number {
  const [a, b] = [mapPoint(map, from), mapPoint(map, to)];
  const wanted = lies === 'level' ? 0 : Math.PI / 2;
  const off = wanted - Math.atan2(b.y - a.y, b.x - a.x);
  return off - Math.PI * Math.round(off / Math.PI);
}

/** Turns by `turn` and scales about `centre`, which goes to `to`. */
function similarity(scale: number, turn: number, centre: PlanePoint, to: Point): PlaneMap {
  const c = scale * Math.cos(turn);
  const s = scale * Math.sin(turn);
  return [c, -s, to.x - c * centre.x + s * centre.y, s, c, to.y - s * centre.x - c * centre.y, 0, 0, 1];
}
