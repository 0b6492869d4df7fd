import { countWord } from '../../../../family/count-word.ts';
import type { AddedEntry, PlanOptions } from '../../../../interchange/json/edit-plan.ts';
import type { FamilyFile, PlanFile } from '../../../../interchange/json/schema.ts';
import type { HoldersTable } from '../../../../interchange/json/take-holders.ts';
import { areaTree, type Tick } from '../../../../plan/area-tree.ts';
import { editFamily, type Refusal } from '../../edit-document.ts';
import type { Session } from '../../session.ts';
import { changePlan } from '../sections/sections-choices.ts';
import { type AccessTyping, accessLookOf, fold, goTo } from './access-state.ts';
import { addedAreaWords } from './access-words.ts';

function say(session: Session, refusal: Refusal, done: string): Refusal {
  const [fault] = refusal ?? [];
  accessLookOf(session).setState({ said: fault ? `${fault.path}: ${fault.what}. ${fault.cure}` : done });
  return refusal;
}

function planNow({ documents }: Session) {
  return documents.getState().document?.family.plan;
}

function areaName(session: Session, id: string): string {
  return planNow(session)?.areas.find((area) => area.id === id)?.name ?? '';
}

/** Lets a name be typed: of a new area or holder, or another one of what is there. */
export function typeName(session: Session, typing: AccessTyping | null): void {
  if (typing?.what === 'new area' && typing.place.inside !== undefined) fold(session, typing.place.inside, false);
  accessLookOf(session).setState({ typing });
}

/**
 * Leaves what is typed.
 *
 * @param staysHere whether the focus goes back to the cell; not where it went elsewhere already.
 */
export function leaveTyping(session: Session, staysHere = true): void {
  accessLookOf(session).setState((s) => ({ typing: null, grasp: s.grasp + (staysHere ? 1 : 0) }));
}

/**
 * Takes a name that was typed. A new area or holder is followed by the place for the next one, so that a list is typed
 * line by line; an empty name ends it.
 *
 * @param goesOn whether that place comes, and the focus stays here.
 */
export function takeName(session: Session, typing: AccessTyping, typed: string, goesOn = true): void {
  const name = typed.trim().replace(/\s+/g, ' ');
  const { addArea, addHolder, renameArea, renameHolder } = session.doors.access;
  if (name === '') leaveTyping(session, goesOn);
  else if (typing.what === 'new area' || typing.what === 'new holder') {
    const add = (file: FamilyFile) =>
      typing.what === 'new area' ? addArea(file, { name }, typing.place) : addHolder(file, { name }, typing.after);
    takeNew(session, typing.what, add, `${name} is added.`, goesOn);
  } else {
    const rename = typing.what === 'area' ? renameArea : renameHolder;
    const refusal = editFamily(session, (file) => rename(file, typing.id, name));
    leaveTyping(session, goesOn);
    say(session, refusal, '');
  }
}

function takeNew(
  session: Session,
  what: 'new area' | 'new holder',
  add: (file: FamilyFile) => AddedEntry,
  done: string,
  goesOn: boolean,
): void {
  let id = '';
  const refusal = editFamily(session, (file) => {
    const added = add(file);
    id = added.id;
    return added.file;
  });
  if (!refusal) accessLookOf(session).setState(what === 'new area' ? { areaId: id, holderId: null } : { holderId: id });
  if (refusal || !goesOn) leaveTyping(session, goesOn);
  else typeName(session, what === 'new area' ? { what, place: { after: id } } : { what, after: id });
  say(session, refusal, done);
}

/** Ticks an area or a whole group for a holder. */
export function tick(session: Session, holderId: string, areaId: string, wanted: Tick): Refusal {
  const refusal = editFamily(session, (file) => session.doors.access.tickArea(file, holderId, areaId, wanted));
  return refusal ? say(session, refusal, '') : null;
}

/** Moves an area among its own, into the one before it, or out of its group. */
export function shiftArea(session: Session, id: string, how: 'up' | 'down' | 'in' | 'out'): Refusal {
  const { moveArea, indentArea, outdentArea } = session.doors.access;
  const before = planNow(session)?.areas;
  const refusal = editFamily(session, (file) => {
    if (how === 'in') return indentArea(file, id);
    return how === 'out' ? outdentArea(file, id) : moveArea(file, id, how === 'up' ? -1 : 1);
  });
  const parent = planNow(session)?.areas.find((area) => area.id === id)?.parent;
  if (how === 'in' && parent !== undefined) fold(session, parent, false);
  accessLookOf(session).setState((s) => ({ grasp: s.grasp + 1 }));
  const isMoved = planNow(session)?.areas !== before;
  const from = before?.find((area) => area.id === id)?.parent;
  return say(session, refusal, isMoved ? emptiedWords(session, from).trim() : NOT_MOVED[how]);
}

const NOT_MOVED = {
  up: 'It is the first of its group.',
  down: 'It is the last of its group.',
  in: 'There is no area before it to go into.',
  out: 'It lies in no group.',
} as const;

/** Deletes an area with all that lies in it; the next one is picked. */
export function removeArea(session: Session, id: string): Refusal {
  const tree = areaTree(planNow(session)?.areas ?? []);
  const at = tree.rows.findIndex(({ area }) => area.id === id);
  if (at < 0) return null;
  const row = tree.rows[at];
  const behind = tree.rows.slice(at + 1).find(({ depth }) => depth <= row.depth);
  const next = behind ?? tree.rows[at - 1];
  const name = areaName(session, id);
  const refusal = editFamily(session, (file) => session.doors.access.deleteArea(file, id));
  if (!refusal) goTo(session, next?.area.id ?? null, accessLookOf(session).getState().holderId);
  const with_ = row.isGroup ? ' with all in it' : '';
  return say(
    session,
    refusal,
    `${name} is deleted${with_}. ${emptiedWords(session, row.area.parent)}Ctrl+Z brings it back.`,
  );
}

/** That a group which has lost its last area is an area with a keyway from now on; empty where it is not so. */
function emptiedWords(session: Session, parent: string | undefined): string {
  const areas = planNow(session)?.areas ?? [];
  if (parent === undefined || areas.some((area) => area.parent === parent)) return '';
  return `${areaName(session, parent)} holds no area any more: it is one now, with a keyway of its own. `;
}

/** Deletes a holder; the next one is picked. */
export function removeHolder(session: Session, id: string): Refusal {
  const holders = planNow(session)?.holders ?? [];
  const at = holders.findIndex((holder) => holder.id === id);
  if (at < 0) return null;
  const next = holders[at + 1] ?? holders[at - 1];
  const refusal = editFamily(session, (file) => session.doors.access.deleteHolders(file, [id]));
  if (!refusal) goTo(session, accessLookOf(session).getState().areaId, next?.id ?? null);
  return say(session, refusal, `${holders[at].name} is deleted. Ctrl+Z brings it back.`);
}

/** Moves a holder to the left or to the right. */
export function shiftHolder(session: Session, id: string, steps: number): Refusal {
  const refusal = editFamily(session, (file) => session.doors.access.moveHolder(file, id, steps));
  accessLookOf(session).setState((s) => ({ grasp: s.grasp + 1 }));
  return say(session, refusal, '');
}

/** Adds a holder with the ticks of another one, and lets it be named. */
export function copyHolder(session: Session, id: string): Refusal {
  let added = '';
  const refusal = editFamily(session, (file) => {
    const holder = file.plan?.holders.find((other) => other.id === id);
    if (!holder) return file;
    const { name, enters, free } = holder;
    const answer = session.doors.access.addHolder(file, { name: `${name}, copy`, enters, free }, id);
    added = answer.id;
    return answer.file;
  });
  if (!refusal) accessLookOf(session).setState({ holderId: added, typing: { what: 'holder', id: added } });
  return say(session, refusal, '');
}

/** Says which section an area has; empty: the one of its own name. */
export function nameSection(session: Session, id: string, typed: string): Refusal {
  const section = typed.trim().replace(/\s+/g, ' ');
  const isOwn = section === '' || section === areaName(session, id);
  const refusal = editFamily(session, (file) => session.doors.access.setAreaSection(file, id, isOwn ? null : section));
  return say(session, refusal, '');
}

/** Changes what the plan asks for besides areas and holders. */
export function changeOptions(session: Session, options: Partial<PlanOptions>): Refusal {
  return say(session, changePlan(session, { options }), '');
}

/** Takes a table of holders as one step. */
export function takeTable(session: Session, table: HoldersTable, addAreas: boolean): Refusal {
  const before = planNow(session);
  const refusal = editFamily(session, (file) => session.doors.access.takeHolders(file, table, addAreas));
  if (refusal) return refusal;
  const after = planNow(session);
  const holders = (after?.holders.length ?? 0) - (before?.holders.length ?? 0);
  const areas = addedAreaWords(before?.areas ?? [], after?.areas ?? [], ', ');
  const had = new Set(before?.areas.map(({ id }) => id));
  const fresh = after?.areas.find(({ id }) => !had.has(id));
  goTo(session, (fresh ?? after?.areas[0])?.id ?? null, null);
  accessLookOf(session).setState({ pasting: false });
  say(session, null, `${areas} and ${countWord(holders, 'holder')} added.`);
  return null;
}

/** Puts a whole plan in place of the one that is there. */
export function takePlan(session: Session, plan: PlanFile, done: string): Refusal {
  const refusal = editFamily(session, (file) => session.doors.access.putPlan(file, plan));
  if (!refusal) goTo(session, plan.areas[0]?.id ?? null, null);
  return say(session, refusal, done);
}
