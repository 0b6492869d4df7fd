import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import {
  addPlainSection,
  addSection,
  changeFamilyFields,
  changeSection,
  deleteSection,
  duplicateSection,
  markInBetween,
  moveSection,
  newFamily,
  noteOf,
} from '../../../src/app/state/draw/section-editing.ts';
import { commitFamily, undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');
const MM = 1e6;

let session: Session;

beforeEach(() => {
  const { doors } = fakeDoors();
  session = makeSession(doors, null);
  openText(session.documents, doors, LESSON, 'lesson.json');
});

const file = () => {
  const { document } = session.documents.getState();
  if (!document) throw new Error('no family is open');
  return document.file;
};
const profileOf = (id: string) => {
  const found = session.documents.getState().document?.family.profiles.find((profile) => profile.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const ids = () => file().profiles.map(({ id }) => id);

const plainBlade = (width: number, height: number) => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

test('a new section stands after the one in hand and is picked', () => {
  const before = file();
  const head = { kind: 'blank' as const, name: 'Teal blank', section: 'Teal', afterId: 'heron-blank' };
  expect(addSection(session, head, plainBlade(2 * MM, 8 * MM))).toBeNull();
  expect(ids().indexOf('teal-blank')).toBe(ids().indexOf('heron-blank') + 1);
  expect(session.selection.getState()).toMatchObject({ entrantId: 'teal-blank', part: 'entrant' });
  undo(session.documents);
  expect(file()).toBe(before);
});

test('a duplicate has every field of its original, a milled one its grooves, and a name of its own', () => {
  const milled = file().profiles.find((entry) => entry.milled);
  if (!milled) throw new Error('the lesson has no milled blade');
  duplicateSection(session, profileOf(milled.id));
  duplicateSection(session, profileOf(milled.id));
  const copies = file().profiles.filter(({ name }) => name.startsWith(`${milled.name}, copy`));
  expect(copies.map(({ name }) => name).sort()).toEqual([`${milled.name}, copy`, `${milled.name}, copy 2`]);
  for (const { id: _id, name: _name, ...rest } of copies) {
    const { id: _ownId, name: _ownName, ...own } = milled;
    expect(rest).toEqual(own);
  }
});

test('what is said of a section changes in one step, the rest stays; an empty field goes', () => {
  const before = file().profiles.find(({ id }) => id === 'heron-blank');
  const fields = {
    kind: 'tool' as const,
    name: 'Heron feeler',
    section: null,
    chambers: 5,
    tolerance: 20_000,
    note: 'thin',
  };
  expect(changeSection(session, 'heron-blank', fields)).toBeNull();
  expect(profileOf('heron-blank')).toMatchObject({
    kind: 'tool',
    name: 'Heron feeler',
    chambers: 5,
    tolerance: 20_000,
  });
  expect(profileOf('heron-blank').section).toBeUndefined();
  expect(noteOf(session, 'heron-blank')).toBe('thin');
  expect(file().profiles.find(({ id }) => id === 'heron-blank')?.milled).toEqual(before?.milled);
  expect(session.documents.getState().past).toHaveLength(1);
});

test('that a section was squeezed in later is kept in the file, and taken back by undo or another press', () => {
  const { documents } = session;
  expect(markInBetween(session, 'bittern-keyway', true)).toBeNull();
  expect(profileOf('bittern-keyway').inBetween).toBe(true);
  undo(documents);
  expect(profileOf('bittern-keyway').inBetween).toBeUndefined();
  markInBetween(session, 'bittern-keyway', true);
  markInBetween(session, 'bittern-keyway', false);
  expect(file()).toEqual(JSON.parse(LESSON));
});

test('a field that the format does not allow is told and changes nothing', () => {
  const before = file();
  const fields = { kind: 'blank' as const, name: 'Heron', section: null, chambers: 99, tolerance: null, note: null };
  expect(changeSection(session, 'heron-blank', fields)).toMatchObject([{ path: expect.stringMatching(/chambers/) }]);
  expect(file()).toBe(before);
});

test('a section moves among those of its list', () => {
  const blanks = () =>
    file()
      .profiles.filter(({ kind }) => kind !== 'opening')
      .map(({ id }) => id);
  const [first, second] = blanks();
  moveSection(session, second, -1);
  expect(blanks().slice(0, 2)).toEqual([second, first]);
  const settled = file();
  expect(moveSection(session, second, -1)).toBeNull();
  expect(file()).toBe(settled);
  undo(session.documents);
  expect(blanks().slice(0, 2)).toEqual([first, second]);
});

test('a deleted section comes back with undo; the last one of a family stays', () => {
  const before = file();
  deleteSection(session, profileOf('heron-blank'));
  expect(ids()).not.toContain('heron-blank');
  expect(session.selection.getState().entrantId).not.toBe('heron-blank');
  undo(session.documents);
  expect(file()).toBe(before);
  for (const id of ids()) deleteSection(session, profileOf(id));
  expect(ids()).toHaveLength(1);
});

test('the fields of the family, in its own units', () => {
  const fields = { name: 'Second lesson', runningClearance: 25_400, tolerance: 12_700, tiltLimitDeg: 1.5, note: null };
  expect(changeFamilyFields(session, fields)).toBeNull();
  expect(file()).toMatchObject({
    name: 'Second lesson',
    runningClearance: 0.0254,
    tolerance: 0.0127,
    tiltLimitDeg: 1.5,
  });
  expect('note' in file()).toBe(false);
  expect(changeFamilyFields(session, { ...fields, tiltLimitDeg: 99 })).toHaveLength(1);
});

test('a new family has a blank and the keyway that it goes into with the running clearance', () => {
  for (const units of ['mm', 'in'] as const) {
    expect(newFamily(session, 'Marsh annexe', units, 30_000)).toBe(true);
    const { doors } = session;
    const { family } = session.documents.getState().document ?? {};
    expect(family).toMatchObject({ name: 'Marsh annexe', units, runningClearance: 30_000 });
    const [slot, blade] = family?.profiles ?? [];
    // Both can be milled at once.
    expect(slot.milled?.grooves).toEqual([]);
    expect(blade.milled?.grooves).toEqual([]);
    const fit = doors.judgeNow(slot.ring, blade.ring, { runningClearance: 30_000, tiltLimit: 0, wear: 0 });
    expect(fit.verdict).toBe('enters');
    expect(Math.abs(fit.clearance - 30_000)).toBeLessThanOrEqual(2);
  }
});

test('a copy with which the file could not be opened again is refused, and says why', () => {
  const image = `data:image/png;base64,iVBORw0KGgo${'A'.repeat(5_600_000)}`;
  const [first, ...others] = file().profiles;
  const large = { ...file(), profiles: [{ ...first, picture: { image } }, ...others] };
  expect(commitFamily(session.documents, session.doors, large)).toBeNull();
  expect(duplicateSection(session, profileOf(first.id))).toBeNull();
  expect(duplicateSection(session, profileOf(first.id))).toBeNull();
  const before = file();
  expect(duplicateSection(session, profileOf(first.id))?.[0].what).toMatch(/pictures take 22\.4 million/);
  expect(file()).toBe(before);
});

test('a plain section is a milled one without a groove yet, as one step of undo, and is picked', () => {
  const steps = session.documents.getState().past.length;
  expect(addPlainSection(session, { kind: 'blank', name: 'Sedge blank' }, 2 * MM, 8 * MM)).toBeNull();
  const added = session.documents.getState().document?.family.profiles.at(-1);
  expect(added).toMatchObject({ name: 'Sedge blank', milled: { thickness: 2 * MM, height: 8 * MM, grooves: [] } });
  expect(session.selection.getState()).toMatchObject({ entrantId: added?.id, part: 'entrant' });
  expect(session.documents.getState().past).toHaveLength(steps + 1);
});
