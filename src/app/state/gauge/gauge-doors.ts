import type { ToolCover } from '../../../gauge/cover-tools.ts';
import type { ThicknessCurve } from '../../../gauge/thickness-curve.ts';
import type { ToolTable } from '../../../gauge/tool-table.ts';
import type { CoverQuestion } from '../../../jobs/cover-openings.ts';
import type { GaugeQuestion } from '../../../jobs/gauge-family.ts';
import type { ToolsQuestion } from '../../../jobs/table-tools.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** The curves of all keyways that were asked for. */
export interface GaugedCurves {
  readonly curves: readonly ThicknessCurve[];
}

/** Told how far a job has come. */
type OnProgress = (done: number, total: number) => void;

/** What finds the curves of keyways and what tools do in them; main.tsx names the real one. */
export interface GaugeDoors {
  /** In a thread of its own, which a cancel ends; curves are told as they come. */
  gaugeFamily(
    question: GaugeQuestion,
    onCurve: (curve: ThicknessCurve) => void,
    onProgress: OnProgress,
  ): JobOnItsWay<GaugedCurves>;
  tableTools(question: ToolsQuestion, onProgress: OnProgress): JobOnItsWay<ToolTable>;
  coverOpenings(question: CoverQuestion, onProgress: OnProgress): JobOnItsWay<ToolCover>;
}
