import type { ThicknessCurve } from '../../../gauge/thickness-curve.ts';
import type { GaugeQuestion } from '../../../jobs/gauge-family.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** The curves of all keyways that were asked for. */
export interface GaugedCurves {
  readonly curves: readonly ThicknessCurve[];
}

/** What finds the curves of keyways; main.tsx names the real one. */
export interface GaugeDoors {
  /** In a thread of its own, which a cancel ends; curves are told as they come. */
  gaugeFamily(
    question: GaugeQuestion,
    onCurve: (curve: ThicknessCurve) => void,
    onProgress: (done: number, total: number) => void,
  ): JobOnItsWay<GaugedCurves>;
}
