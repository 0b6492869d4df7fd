import type { GrayPicture } from '../trace/gray-picture.ts';
import type { PlaneMap } from '../trace/plane-map.ts';
import { type PictureTrace, type TraceSettings, tracePicture } from '../trace/trace-picture.ts';
import { type Job, runInSlices } from './job.ts';

/** A picture, where it lies, and how it is to be traced. */
export interface TraceInput {
  readonly picture: GrayPicture;
  /** From pixels to nanometres. */
  readonly toProfile: PlaneMap;
  readonly settings: TraceSettings;
}

/** All outlines of a picture; a cancel is heard between the rows of a picture, but for the contour itself. */
export const tracePictureJob: Job<TraceInput, PictureTrace> = ({ picture, toProfile, settings }, context) =>
  runInSlices(tracePicture(picture, toProfile, settings), context);
