import { readPoints } from '../interchange/csv/read.ts';
import type { DrawingRead } from '../interchange/drawing.ts';
import { readDxf } from '../interchange/dxf/read.ts';
import type { FileFault } from '../interchange/json/file-fault.ts';
import { readSvg } from '../interchange/svg/read.ts';
import { type DrawnLoop, takingOutlines } from '../interchange/take-outline.ts';
import { type Job, JobCancelled, runInSlices } from './job.ts';

/** The forms of drawing that can be read. */
export type DrawingFormat = 'svg' | 'dxf' | 'points';

/** A drawing as a text. */
export interface DrawingInput {
  readonly format: DrawingFormat;
  readonly text: string;
  /** Nanometres in one unit of the drawing, in place of what it says itself. */
  readonly nmPerUnit?: number;
}

/** The loops of a drawing and how it was understood. */
export interface DrawingLoops {
  readonly loops: readonly DrawnLoop[];
  readonly nmPerUnit: number;
  readonly unitsStated: boolean;
  /** Whether each loop stands in a frame of its own, so that places say nothing. */
  readonly apart: boolean;
  readonly notes: readonly FileFault[];
}

/** The loops of a drawing, at least one, or why there are none. */
export type LoopsRead =
  | { readonly ok: true; readonly drawing: DrawingLoops }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

const READERS: Readonly<Record<DrawingFormat, (text: string, options: { nmPerUnit?: number }) => DrawingRead>> = {
  svg: readSvg,
  dxf: readDxf,
  points: readPoints,
};

/** Reads a drawing made elsewhere and finds its loops. */
export const readDrawing: Job<DrawingInput, LoopsRead> = async ({ format, text, nmPerUnit }, context) => {
  await context.pause();
  if (context.cancelled()) throw new JobCancelled();
  const read = READERS[format](text, nmPerUnit === undefined ? {} : { nmPerUnit });
  if (!read.ok) return read;
  const { drawing } = read;
  const apart = format === 'points';
  const { loops, notes } = await runInSlices(takingOutlines(drawing, apart), context);
  const all = [...drawing.notes, ...notes];
  if (loops.length === 0) return { ok: false, faults: [nothingClosed(format), ...all] };
  const { nmPerUnit: scale, unitsStated } = drawing;
  return { ok: true, drawing: { loops, nmPerUnit: scale, unitsStated, apart, notes: all } };
};

function nothingClosed(format: DrawingFormat): FileFault {
  return {
    path: format === 'points' ? 'table' : 'drawing',
    what: 'has no line that encloses anything',
    cure: 'Draw each section as a closed line, as a path or polyline rather than as text or a picture.',
  };
}
