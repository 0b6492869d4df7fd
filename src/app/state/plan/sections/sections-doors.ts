import type { setBladeLimits } from '../../../../interchange/json/edit-plan.ts';
import type { takePlan } from '../../../../interchange/json/take-plan.ts';
import type { SolveInput } from '../../../../jobs/solve-plan.ts';
import type { DrawnPlan, DrawPlanInput } from '../../../../plan/drawn-plan.ts';
import type { NearestPlan } from '../../../../plan/nearest-plan.ts';
import type { WardPlan } from '../../../../plan/ward-plan.ts';
import type { JobOnItsWay } from '../../job-on-its-way.ts';

/** The operations of the sections sheet; main.tsx names the real ones. */
export interface SectionsDoors {
  /** In a thread of its own; every better plan as it comes. */
  solve(
    input: SolveInput,
    onPart: (plan: WardPlan) => void,
    onProgress: (done: number, total: number) => void,
  ): JobOnItsWay<WardPlan>;
  /** Nearest plans that the blade has room for, in a thread of its own. */
  near(input: SolveInput): JobOnItsWay<NearestPlan[]>;
  /** Wards made into milled sections and judged, in a thread of its own. */
  draw(input: DrawPlanInput, onProgress: (done: number, total: number) => void): JobOnItsWay<DrawnPlan>;
  /** The file with the planned sections in place of those planned before. */
  readonly takePlan: typeof takePlan;
  readonly setBladeLimits: typeof setBladeLimits;
}
