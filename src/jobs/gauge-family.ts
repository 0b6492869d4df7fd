import { type Family, openingsOf } from '../family/family.ts';
import { curvingFamily } from '../gauge/family-curves.ts';
import type { ThicknessCurve } from '../gauge/thickness-curve.ts';
import { type Job, runInSlices } from './job.ts';

/** A family, and how far a strip may be tilted. */
export interface GaugeQuestion {
  readonly family: Family;
  /** Radians; 0: it stands upright. */
  readonly tiltLimit: number;
}

/**
 * The curve of every opening of a family, in chart order; parts are the curves as they come.
 *
 * @check tests/unit/jobs/gauge-family.test.ts
 */
export const gaugeFamily: Job<GaugeQuestion, { readonly curves: readonly ThicknessCurve[] }> = (question, context) =>
  runInSlices(
    curvingFamily(openingsOf(question.family), question.tiltLimit, (curve) => context.part?.(curve)),
    context,
  );
