import { makeStore, type Store } from '../store.ts';

/** The sheets of the Plan view, in the order of the work. */
export const PLAN_SHEETS = ['access', 'blade', 'sections', 'grow', 'strength', 'capacity'] as const;

/** See {@link PLAN_SHEETS}. */
export type PlanSheet = (typeof PLAN_SHEETS)[number];

/** What the Plan view shows. The plan itself stands in the family. */
export interface PlanState {
  readonly sheet: PlanSheet;
}

/** What the view begins with for each family. */
const NOTHING_PLANNED: PlanState = { sheet: 'access' };

/** A store that shows areas and holders. */
export function makePlanStore(): Store<PlanState> {
  return makeStore<PlanState>(NOTHING_PLANNED);
}
