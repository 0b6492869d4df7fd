import type { Holder } from '../../../../family/plan.ts';
import { type AreaTree, FREE, MUST, NOT } from '../../../../plan/area-tree.ts';
import type { Session } from '../../session.ts';
import { removeArea, removeHolder, shiftArea, shiftHolder, tick, typeName } from './access-editing.ts';
import { tickAfter, tickShown } from './access-rows.ts';
import { fold } from './access-state.ts';

/** A key press, as far as the grid asks. */
export interface AccessKey {
  readonly key: string;
  readonly shift: boolean;
  readonly alt: boolean;
  readonly command: boolean;
}

/** Where a key is pressed: an area, a holder, both, or neither in the corner. */
export interface AccessSpot {
  readonly tree: AreaTree;
  readonly holders: readonly Holder[];
  readonly areaId: string | null;
  readonly holderId: string | null;
  readonly isFolded: boolean;
}

/**
 * Does what a key does in the grid besides walking: on a cell it ticks, on a name it adds, renames, moves or deletes.
 *
 * @returns false for a key that does nothing there.
 * @check tests/unit/app/access-editing.test.ts
 */
export function pressKey(session: Session, key: AccessKey, spot: AccessSpot): boolean {
  if (key.command) return false;
  const { areaId, holderId } = spot;
  if (areaId !== null && holderId !== null) return pressCell(session, key, spot, areaId, holderId);
  if (areaId !== null) return pressArea(session, key, spot, areaId);
  return holderId === null ? false : pressHolder(session, key, holderId);
}

const TICKS: Readonly<Record<string, 0 | 1 | 2>> = {
  x: MUST,
  '1': MUST,
  '+': MUST,
  f: FREE,
  '*': FREE,
  '?': FREE,
  '-': NOT,
  '0': NOT,
  delete: NOT,
  backspace: NOT,
};

function pressCell(
  session: Session,
  { key, alt }: AccessKey,
  spot: AccessSpot,
  areaId: string,
  holderId: string,
): boolean {
  if (alt) return false;
  const holder = spot.holders.find(({ id }) => id === holderId);
  const row = spot.tree.byId.get(areaId);
  if (!holder || !row) return false;
  const isNext = key === ' ' || key === 'Enter';
  const wanted = isNext ? tickAfter(tickShown(spot.tree, holder, row)) : TICKS[key.toLowerCase()];
  if (wanted === undefined) return false;
  tick(session, holderId, areaId, wanted);
  return true;
}

const WAYS: Readonly<Record<string, 'up' | 'down' | 'in' | 'out'>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowRight: 'in',
  ArrowLeft: 'out',
};

function pressArea(session: Session, { key, shift, alt }: AccessKey, spot: AccessSpot, id: string): boolean {
  if (alt) {
    const way = WAYS[key];
    if (way) shiftArea(session, id, way);
    return way !== undefined;
  }
  if (key === 'Enter') typeName(session, { what: 'new area', place: shift ? { inside: id } : { after: id } });
  else if (key === 'F2') typeName(session, { what: 'area', id });
  else if (key === 'Delete' || key === 'Backspace') removeArea(session, id);
  else if (key === ' ' && spot.tree.byId.get(id)?.isGroup) fold(session, id, !spot.isFolded);
  else return false;
  return true;
}

function pressHolder(session: Session, { key, alt }: AccessKey, id: string): boolean {
  if (alt) {
    const isSideways = key === 'ArrowLeft' || key === 'ArrowRight';
    if (isSideways) shiftHolder(session, id, key === 'ArrowLeft' ? -1 : 1);
    return isSideways;
  }
  if (key === 'Enter') typeName(session, { what: 'new holder', after: id });
  else if (key === 'F2') typeName(session, { what: 'holder', id });
  else if (key === 'Delete' || key === 'Backspace') removeHolder(session, id);
  else return false;
  return true;
}
