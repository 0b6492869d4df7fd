import type { readHolders } from '../../../../interchange/csv/read-holders.ts';
import type * as areas from '../../../../interchange/json/edit-areas.ts';
import type * as plans from '../../../../interchange/json/edit-plan.ts';
import type { tickArea } from '../../../../interchange/json/edit-ticks.ts';
import type { takeHolders, unknownAreas, withAreas } from '../../../../interchange/json/take-holders.ts';

/** The operations of the core on areas and holders; main.tsx names the real ones. */
export interface AccessDoors {
  addArea: typeof areas.addArea;
  renameArea: typeof areas.renameArea;
  setAreaSection: typeof areas.setAreaSection;
  moveArea: typeof areas.moveArea;
  indentArea: typeof areas.indentArea;
  outdentArea: typeof areas.outdentArea;
  deleteArea: typeof areas.deleteArea;
  addHolder: typeof plans.addHolder;
  renameHolder: typeof plans.renameHolder;
  moveHolder: typeof plans.moveHolder;
  deleteHolders: typeof plans.deleteHolders;
  tickArea: typeof tickArea;
  emptyPlan: typeof plans.emptyPlan;
  putPlan: typeof plans.putPlan;
  setPlanOptions: typeof plans.setPlanOptions;
  readHolders: typeof readHolders;
  takeHolders: typeof takeHolders;
  unknownAreas: typeof unknownAreas;
  withAreas: typeof withAreas;
}
