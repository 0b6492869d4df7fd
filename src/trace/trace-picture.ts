import { signedArea } from '../geom/signed-area.ts';
import { blurPicture } from './blur-picture.ts';
import { dropSpecks } from './drop-specks.ts';
import { type Contour, findContours, type Shade } from './find-contours.ts';
import type { GrayPicture } from './gray-picture.ts';
import { magnificationAt, type PlaneMap } from './plane-map.ts';
import { type OutlineSettings, outlineOf, type TracedOutline } from './trace-outline.ts';

/** How a picture is traced. */
export interface TraceSettings extends OutlineSettings {
  /** A light, 0 to 65,535. */
  readonly threshold: number;
  /** Which side of the threshold is outlined. */
  readonly shade: Shade;
  /** Blur before the threshold, pixels (standard deviation). */
  readonly blur: number;
  /** Patches and holes smaller than this are specks, square nanometres. */
  readonly leastArea: number;
}

/** One closed line of a picture as an outline. */
export interface TracedLoop extends TracedOutline {
  readonly hole: boolean;
  readonly touchesEdge: boolean;
  /** How much of the area inside has the outlined shade, 0 to 1: a frame of lines has little, a solid part 1. */
  readonly solid: number;
}

/** All that was found in a picture. */
export interface PictureTrace {
  /** The largest first. */
  readonly loops: readonly TracedLoop[];
  /** Number of specks that were wiped away. */
  readonly specks: number;
  /** Number of lines that were too small, or of which there were too many. */
  readonly leftOut: number;
  /** Lines that make no outline, and why. */
  readonly faults: readonly { readonly what: string; readonly cure: string }[];
}

/** Most lines that are made into outlines. */
export const MOST_LOOPS = 24;

/** Fewest pixels of a patch, whatever the area asked for. */
const LEAST_PIXELS = 12;

/**
 * Every outline of the dark or light parts of a picture.
 *
 * @yields how far it has come, after each small piece of work but the contour, which is one piece (0.1 s for two million
 *   pixels).
 * @check tests/unit/trace/trace-picture.test.ts
 */
export function* tracePicture(
  picture: GrayPicture,
  toProfile: PlaneMap,
  settings: TraceSettings,
): Generator<{ done: number; total: number }, PictureTrace, void> {
  const middle = { x: picture.width / 2, y: picture.height / 2 };
  const leastPixels = Math.max(LEAST_PIXELS, settings.leastArea / magnificationAt(toProfile, middle) ** 2);
  const blurred = yield* told(blurPicture(picture, settings.blur), 1);
  const { picture: clean, dropped } = yield* told(dropSpecks(blurred, settings.threshold, leastPixels), 4);
  yield { done: 6, total: 10 };
  const contours = findContours(clean, settings.threshold, settings.shade);
  yield { done: 8, total: 10 };
  const sized = contours.map((contour) => ({ contour, pixels: Math.abs(signedArea(contour.points)) }));
  const large = sized.filter(({ pixels }) => pixels >= leastPixels / 2).sort((a, b) => b.pixels - a.pixels);
  const loops: TracedLoop[] = [];
  const faults: { what: string; cure: string }[] = [];
  for (const { contour, pixels } of large.slice(0, MOST_LOOPS)) {
    const made = outlineOf(contour, toProfile, settings);
    if (!made.ok) faults.push({ what: made.what, cure: made.cure });
    else loops.push({ ...made.outline, ...kindOf(contour, pixels, sized) });
    yield { done: 9, total: 10 };
  }
  loops.sort((a, b) => b.area - a.area);
  return { loops, specks: dropped, leftOut: contours.length - Math.min(large.length, MOST_LOOPS), faults };
}

/** Tells the same progress for each piece of a part of the work. */
function* told<Output>(steps: Generator<void, Output, void>, done: number) {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield { done, total: 10 };
  }
}

function kindOf(contour: Contour, pixels: number, all: readonly { contour: Contour; pixels: number }[]) {
  const holes = all.filter((other) => other.contour.hole && other.contour.patch === contour.patch);
  const open = contour.hole ? pixels : holes.reduce((sum, hole) => sum + hole.pixels, 0);
  return { hole: contour.hole, touchesEdge: contour.touchesEdge, solid: Math.max(0, 1 - open / pixels) };
}
