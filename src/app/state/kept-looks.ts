import { type ConditionsState, TELLINGS } from './conditions-state.ts';
import { DRAW_FORMS, type DrawState, type SnapSettings } from './draw/draw-state.ts';
import { GAUGE_SHEETS, type GaugeState } from './gauge/gauge-state.ts';
import { keepFields, oneOf, type Shelf, yesOrNo } from './kept-store.ts';
import { NAMES_SHEETS, type NamesState } from './names/names-state.ts';
import { PLAN_SHEETS, type PlanState } from './plan/plan-state.ts';
import { PUBLISH_SHEETS, type PublishState } from './publish/publish-state.ts';
import type { Store } from './store.ts';
import { TEACH_SHEETS, type TeachState } from './teach/teach-state.ts';
import { CELL_SIZES, MATRIX_ORDERS, TIERS_SHEETS, TIERS_SHOWN, type TiersState } from './tiers/tiers-state.ts';

/** The stores of a window that hold what is looked at. */
interface Looks {
  readonly tiers: Store<TiersState>;
  readonly plan: Store<PlanState>;
  readonly gauge: Store<GaugeState>;
  readonly names: Store<NamesState>;
  readonly teach: Store<TeachState>;
  readonly publish: Store<PublishState>;
  readonly draw: Store<DrawState>;
  readonly conditions: Store<ConditionsState>;
}

/**
 * Keeps which sheet of each view is open, as long as the tab is: one that is loaded again shows what it showed, a new one
 * begins with the first sheets.
 *
 * @param tab the memory that a tab has to itself.
 * @check tests/unit/app/kept-looks.test.ts, tests/browser/keep-reload.test.ts
 */
export function keepSheets({ tiers, plan, gauge, names, teach, publish, draw, conditions }: Looks, tab: Shelf | null) {
  keepFields(tiers, tab, 'sectionary-tab-tiers', { sheet: oneOf(TIERS_SHEETS) });
  keepFields(plan, tab, 'sectionary-tab-plan', { sheet: oneOf(PLAN_SHEETS) });
  keepFields(gauge, tab, 'sectionary-tab-gauge', { sheet: oneOf(GAUGE_SHEETS) });
  keepFields(names, tab, 'sectionary-tab-names', { sheet: oneOf(NAMES_SHEETS) });
  keepFields(teach, tab, 'sectionary-tab-teach', { sheet: oneOf(TEACH_SHEETS) });
  keepFields(publish, tab, 'sectionary-tab-publish', { sheet: oneOf(PUBLISH_SHEETS) });
  keepFields(draw, tab, 'sectionary-tab-draw', { form: oneOf(DRAW_FORMS) });
  keepFields(conditions, tab, 'sectionary-tab-wall', { telling: oneOf(TELLINGS) });
}

/**
 * Keeps how the user likes matrix, diagram and drawing sheet, in this browser: it is about no family.
 *
 * @check tests/unit/app/kept-looks.test.ts
 */
export function keepLikings({ tiers, draw }: Looks, shelf: Shelf | null): void {
  keepFields(tiers, shelf, 'sectionary-tiers', {
    shown: oneOf(TIERS_SHOWN),
    matrixShare: (kept) => (typeof kept === 'number' && kept > 0 && kept < 1 ? kept : undefined),
    rowOrder: oneOf(MATRIX_ORDERS),
    columnOrder: oneOf(MATRIX_ORDERS),
    cellSize: oneOf(CELL_SIZES),
    withTools: yesOrNo,
    claimMarks: yesOrNo,
  });
  keepFields(draw, shelf, 'sectionary-draw', { counterpart: yesOrNo, snap: snapOf });
}

/** A finer grid than a thousandth of a millimetre is none. */
const LEAST_STEP = 1_000;

function snapOf(kept: unknown): SnapSettings | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { grid, step, vertices, edges, axes } = kept as Record<string, unknown>;
  const isStep = step === null || (Number.isInteger(step) && Number(step) >= LEAST_STEP);
  const switches = [grid, vertices, edges, axes];
  if (!isStep || switches.some((value) => typeof value !== 'boolean')) return undefined;
  return kept as SnapSettings;
}
