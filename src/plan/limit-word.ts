import type { BladeLimits } from '../family/plan.ts';
import type { PlanGap } from './plan-gap.ts';

/** A field that a planner may change: a limit of the blade, the family's gaps, or what is asked of the wards. */
export type LimitField = keyof BladeLimits | keyof PlanGap | 'depths' | 'stops';

/** What a limit does to a plan, for a person. */
export interface LimitWord {
  readonly field: LimitField;
  /** fault: no blade can be made so. binds: it keeps the number of sites down. note: worth knowing. */
  readonly kind: 'fault' | 'binds' | 'note';
  readonly words: string;
  /** What to do about it; empty where nothing needs to be done. */
  readonly cure: string;
}
