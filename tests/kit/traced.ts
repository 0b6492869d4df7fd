import type { GrayPicture } from '../../src/trace/gray-picture.ts';
import type { PlaneMap } from '../../src/trace/plane-map.ts';
import { type PictureTrace, type TraceSettings, tracePicture } from '../../src/trace/trace-picture.ts';

/** All outlines of a picture, found in one go. */
export function traced(picture: GrayPicture, toProfile: PlaneMap, settings: TraceSettings): PictureTrace {
  return finish(tracePicture(picture, toProfile, settings));
}

/** What a generator ends with. */
export function finish<Output>(steps: Generator<unknown, Output, void>): Output {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
