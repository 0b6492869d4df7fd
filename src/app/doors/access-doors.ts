import { readHolders } from '../../interchange/csv/read-holders.ts';
import {
  addArea,
  deleteArea,
  indentArea,
  moveArea,
  outdentArea,
  renameArea,
  setAreaSection,
} from '../../interchange/json/edit-areas.ts';
import {
  addHolder,
  deleteHolders,
  emptyPlan,
  moveHolder,
  putPlan,
  renameHolder,
  setPlanOptions,
} from '../../interchange/json/edit-plan.ts';
import { tickArea } from '../../interchange/json/edit-ticks.ts';
import { takeHolders, unknownAreas, withAreas } from '../../interchange/json/take-holders.ts';
import type { AccessDoors } from '../state/plan/access/access-doors.ts';

/** The real operations on areas and holders. */
export const accessDoors: AccessDoors = {
  ...{ addArea, renameArea, setAreaSection, moveArea, indentArea, outdentArea, deleteArea },
  ...{ addHolder, renameHolder, moveHolder, deleteHolders, tickArea },
  ...{ emptyPlan, putPlan, setPlanOptions, readHolders, takeHolders, unknownAreas, withAreas },
};
