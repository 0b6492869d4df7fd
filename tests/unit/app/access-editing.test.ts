import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import {
  copyHolder,
  nameSection,
  removeArea,
  takeName,
  takeTable,
  typeName,
} from '../../../src/app/state/plan/access/access-editing.ts';
import { pressKey } from '../../../src/app/state/plan/access/access-keys.ts';
import { accessRows, planForView, tickShown, treeOf } from '../../../src/app/state/plan/access/access-rows.ts';
import { accessLookOf } from '../../../src/app/state/plan/access/access-state.ts';
import { addedAreaWords, tallyPairs } from '../../../src/app/state/plan/access/access-words.ts';
import { planOfSections } from '../../../src/app/state/plan/access/plan-of-sections.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { readHolders } from '../../../src/interchange/csv/read-holders.ts';
import { emptyPlan } from '../../../src/interchange/json/edit-plan.ts';
import { accessOf } from '../../../src/plan/access.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { fakeDoors } from './fake-doors.ts';

let session: Session;

beforeEach(() => {
  session = makeSession(fakeDoors().doors, null);
  const file = {
    format: 'sectionary-family',
    version: 1,
    name: 'Marsh',
    units: 'mm',
    runningClearance: 0.03,
    profiles: [],
  };
  expect(openText(session.documents, session.doors, JSON.stringify(file), 'marsh.json')).toBe(true);
});

function plan() {
  return planForView(session.documents.getState().document?.family.plan);
}

function look() {
  return accessLookOf(session).getState();
}

/** Types names one after another, as Enter does. */
function typeAll(...names: string[]): void {
  for (const name of names) {
    const { typing } = look();
    if (typing) takeName(session, typing, name);
  }
}

function press(key: string, more: { shift?: boolean; alt?: boolean } = {}): boolean {
  const { areaId, holderId, folded } = look();
  const spot = { tree: treeOf(plan()), holders: plan().holders, areaId, holderId, isFolded: folded.has(areaId ?? '') };
  return pressKey(session, { key, shift: false, alt: false, command: false, ...more }, spot);
}

/** The rows as they are shown, two spaces for each group that they lie in. */
function shown(): string[] {
  return accessRows(treeOf(plan()), look().folded, look().typing).map((row) =>
    row.kind === 'new' ? `${'  '.repeat(row.depth)}…` : `${'  '.repeat(row.row.depth)}${row.row.area.name}`,
  );
}

function marsh(): void {
  typeName(session, { what: 'new area', place: {} });
  typeAll('Reed', 'Heron', 'Bittern', 'Teal', '');
  for (const id of ['heron', 'bittern']) {
    accessLookOf(session).setState({ areaId: id, holderId: null });
    press('ArrowRight', { alt: true });
  }
  typeName(session, { what: 'new holder' });
  typeAll('Porter', 'Nurse', '');
}

test('a list of areas is typed line by line, each a step of undo, and moved into a tree by keys', () => {
  typeName(session, { what: 'new area', place: {} });
  typeAll('Reed', '  Heron ');
  expect(shown()).toEqual(['Reed', 'Heron', '…']);
  typeAll('');
  expect(look().typing).toBeNull();
  expect(session.documents.getState().past).toHaveLength(2);
  press('ArrowRight', { alt: true });
  expect(shown()).toEqual(['Reed', '  Heron']);
  press('Enter', { shift: false });
  expect(shown()).toEqual(['Reed', '  Heron', '  …']);
  typeAll('Bittern', '');
  press('ArrowLeft', { alt: true });
  expect(shown()).toEqual(['Reed', '  Heron', 'Bittern']);
  press('ArrowUp', { alt: true });
  expect(shown()).toEqual(['Bittern', 'Reed', '  Heron']);
  for (let i = 0; i < 4; i++) undo(session.documents);
  expect(shown()).toEqual(['Reed', 'Heron']);
});

test('a new area inside a folded group unfolds it', () => {
  marsh();
  accessLookOf(session).setState({ areaId: 'reed', holderId: null });
  press(' ');
  expect(shown()).toEqual(['Reed', 'Teal']);
  press('Enter', { shift: true });
  expect(shown()).toEqual(['Reed', '  Heron', '  Bittern', '  …', 'Teal']);
});

test('cells are ticked by keys: the next one, must, free, not', () => {
  marsh();
  accessLookOf(session).setState({ areaId: 'reed', holderId: 'porter' });
  const tree = treeOf(plan());
  const now = (area: string) => {
    const row = tree.byId.get(area);
    const porter = plan().holders.find(({ id }) => id === 'porter');
    return row && porter && tickShown(tree, porter, row);
  };
  const seen = [' ', ' ', ' ', 'x', 'F', '-', '1', '0'].map((key) => {
    press(key);
    return now('heron');
  });
  expect(seen).toEqual([1, 2, 0, 1, 2, 0, 1, 0]);
  accessLookOf(session).setState({ areaId: 'heron' });
  press('x');
  expect([now('reed'), now('heron'), now('bittern')]).toEqual(['some', 1, 0]);
  expect(press('q')).toBe(false);
});

test('deleting picks the next, and an undo brings all back', () => {
  marsh();
  accessLookOf(session).setState({ areaId: 'reed', holderId: 'porter' });
  press('x');
  removeArea(session, 'reed');
  expect(look().areaId).toBe('teal');
  expect(look().said).toBe('Reed is deleted with all in it. Ctrl+Z brings it back.');
  expect(plan().holders[0].enters).toEqual([]);
  undo(session.documents);
  expect(plan().holders[0].enters).toEqual(['reed']);
  expect(look().said).toBe('');
});

test('a holder is copied with the ticks and named', () => {
  marsh();
  accessLookOf(session).setState({ areaId: 'teal', holderId: 'porter' });
  press('f');
  copyHolder(session, 'porter');
  expect(look().typing).toEqual({ what: 'holder', id: 'porter-copy' });
  typeAll('Warden');
  expect(plan().holders.map(({ name, free }) => [name, free])).toEqual([
    ['Porter', ['teal']],
    ['Warden', ['teal']],
    ['Nurse', undefined],
  ]);
});

test('a section is named, and taken off again where it is the name of the area', () => {
  marsh();
  nameSection(session, 'teal', ' Heron ');
  expect(accessOf(plan()).sections.map(({ areas }) => areas)).toEqual([['heron', 'teal'], ['bittern']]);
  nameSection(session, 'teal', 'Teal');
  expect(plan().areas.at(-1)).toEqual({ id: 'teal', name: 'Teal' });
});

test('a table is taken as one step', () => {
  const read = readHolders('holder,Hall,Mill\nPorter,x,\nNurse,,x');
  if (!read.ok) throw new Error('not read');
  takeTable(session, read, true);
  expect(look()).toMatchObject({ pasting: false, said: '2 areas and 2 holders added.' });
  expect(session.documents.getState().past).toHaveLength(1);
  expect(tallyPairs(accessOf(plan()))).toEqual({ must: 4, not: 2, free: 0 });
});

test('areas of a table are counted alike before and after it is taken, groups apart', () => {
  const read = readHolders('holder,North / Hall,Hall,North / Attic,Mill\nPorter,x,,,\nNurse,,,x,');
  if (!read.ok) throw new Error('not read');
  const before = session.documents.getState().document?.file;
  if (!before) throw new Error('no family');
  const { plan: shown } = session.doors.access.withAreas(before, read.areas).file;
  // "Hall" is the one in North.
  expect(addedAreaWords([], shown?.areas ?? [])).toBe('3 areas and 1 group');
  takeTable(session, read, true);
  expect(look().said).toBe('3 areas, 1 group and 2 holders added.');
});

test('a plan of what a family is has its sections, and the group blanks as holders', () => {
  const family = demoFamily();
  const openings = family.profiles.filter(({ kind }) => kind === 'opening');
  const blanks = family.profiles.filter(({ kind }) => kind !== 'opening');
  const sets: Record<string, string[]> = {
    'reed-group-blank': ['heron', 'smew', 'bittern'],
    'heron-blank-5': ['heron'],
    'polder-all-section-blank': openings.map(({ id }) => id.replace('-keyway', '')),
  };
  const judged = (goes: boolean) => ({ verdict: goes ? 'enters' : 'blocked' }) as never;
  const fits = {
    openings: openings.map(({ id }) => id),
    profiles: blanks.map(({ id }) => id),
    fits: blanks.map(({ id }) => openings.map((o) => judged(sets[id]?.includes(o.id.replace('-keyway', '')) ?? false))),
  };
  const made = planOfSections(family, fits, emptyPlan('mm'));
  expect(made.areas).toHaveLength(10);
  expect(made.holders).toEqual([{ id: 'holder-1', name: 'Reed group blank', enters: ['area-1', 'area-2', 'area-3'] }]);
  expect(made.allSection).toBe(true);
});
