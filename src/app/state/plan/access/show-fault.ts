import type { Plan } from '../../../../family/plan.ts';
import type { AccessFault } from '../../../../plan/access.ts';
import type { Session } from '../../session.ts';
import { treeOf } from './access-rows.ts';
import { accessLookOf, goTo } from './access-state.ts';

/** Leads to where a fault is: unfolds the groups round the area and picks it with the holder. */
export function showFault(session: Session, plan: Plan, { areas, holders }: AccessFault): void {
  const tree = treeOf(plan);
  const areaId = areas.at(-1) ?? null;
  const folded = new Set(accessLookOf(session).getState().folded);
  for (let id = areaId ?? undefined; id !== undefined; ) {
    const parent = tree.byId.get(id)?.area.parent;
    if (parent !== undefined) folded.delete(parent);
    id = parent;
  }
  accessLookOf(session).setState({ folded });
  goTo(session, areaId, holders[0] ?? null);
}

/** Whether a fault is at some place that can be shown. */
export function hasPlace({ areas, holders }: AccessFault): boolean {
  return areas.length + holders.length > 0;
}
