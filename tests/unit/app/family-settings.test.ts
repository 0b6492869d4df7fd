import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { editFamily } from '../../../src/app/state/edit-document.ts';
import { makeFamilySettings } from '../../../src/app/state/family-settings.ts';
import type { Shelf } from '../../../src/app/state/kept-store.ts';
import {
  capacitySettings,
  capacityStateOf,
  setCapacity,
  setRules,
} from '../../../src/app/state/plan/capacity/capacity-state.ts';
import { setStrength, strengthSettings, strengthStateOf } from '../../../src/app/state/plan/strength/strength-state.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');

const session = (shelf: Shelf | null = null) => makeSession(fakeDoors().doors, shelf);

function memory(): Shelf {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

const USUAL = { material: 'brass', torque: 2.5 };
const settings = () => makeFamilySettings('test', USUAL, (kept) => ({ ...USUAL, torque: Number(kept.torque) }));

test('each family of each window has settings of its own, and begins with the usual ones', () => {
  const { storeOf, settingsOf, change } = settings();
  const [one, other] = [session(), session()];
  change(one, 'Polderwick', { torque: 3 });
  change(one, 'Polderwick', { material: 'steel' });
  const all = storeOf(one).getState();
  expect(settingsOf(all, 'Polderwick')).toEqual({ material: 'steel', torque: 3 });
  // No name of a family is taken for what every object has.
  for (const name of ['Dunmere', 'constructor']) expect(settingsOf(all, name)).toEqual(USUAL);
  expect(settingsOf(storeOf(other).getState(), 'Polderwick').torque).toBe(2.5);
});

test('settings are kept for the next visit, those of the families that were changed longest ago are let go', () => {
  const { storeOf, settingsOf, change } = settings();
  const shelf = memory();
  const before = session(shelf);
  for (let i = 0; i < 40; i++) change(before, `Family ${i}`, { torque: i });
  change(before, 'Family 20', { torque: 21 });
  const all = storeOf(session(shelf)).getState();
  expect(Object.keys(all)).toHaveLength(30);
  expect(settingsOf(all, 'Family 39').torque).toBe(39);
  expect(settingsOf(all, 'Family 20').torque).toBe(21);
  expect(settingsOf(all, 'Family 9').torque).toBe(2.5);
});

test('a family that is given another name keeps its settings', () => {
  const { doors } = fakeDoors();
  const one = makeSession(doors, null);
  openText(one.documents, doors, LESSON, 'lesson.json');
  const { name } = JSON.parse(LESSON) as { name: string };
  setCapacity(one, name, { firstDepth: 1 });
  editFamily(one, (file) => ({ ...file, name: 'Another name' }));
  const shown = (family: string) => capacitySettings(capacityStateOf(one).getState(), family).firstDepth;
  expect(shown('Another name')).toBe(1);
  openText(one.documents, doors, JSON.stringify({ ...JSON.parse(LESSON), name: 'Another family' }), 'other.json');
  expect(shown('Another family')).toBe(0);
});

test('it keeps them when it is renamed before anything has looked at them', () => {
  const { doors } = fakeDoors();
  const shelf = memory();
  const { name } = JSON.parse(LESSON) as { name: string };
  const before = session(shelf);
  setCapacity(before, name, { firstDepth: 1 });
  setStrength(before, name, { torqueNm: 3.5 });
  const again = makeSession(doors, shelf);
  openText(again.documents, doors, LESSON, 'lesson.json');
  editFamily(again, (file) => ({ ...file, name: 'Another name' }));
  expect(capacitySettings(capacityStateOf(again).getState(), 'Another name').firstDepth).toBe(1);
  expect(strengthSettings(strengthStateOf(again).getState(), 'Another name').torqueNm).toBe(3.5);
});

test('two windows keep the settings of different families without undoing one another', () => {
  const { storeOf, settingsOf, change } = settings();
  const shelf = memory();
  const [one, other] = [session(shelf), session(shelf)];
  for (const window of [one, other]) storeOf(window);
  change(one, 'Polderwick', { torque: 3 });
  change(other, 'Dunmere', { torque: 4 });
  change(one, 'Polderwick', { torque: 5 });
  const all = storeOf(session(shelf)).getState();
  expect([settingsOf(all, 'Polderwick').torque, settingsOf(all, 'Dunmere').torque]).toEqual([5, 4]);
});

test.each([0, -1, 100.5, 1e300, '3', null])('a torque of %j that was kept is as usual', (torqueNm) => {
  const shelf = memory();
  shelf.setItem('sectionary-strength', JSON.stringify({ Polderwick: { torqueNm } }));
  const all = strengthStateOf(session(shelf)).getState();
  expect(strengthSettings(all, 'Polderwick').torqueNm).toBe(2.5);
});

test('the rules of a bitting, the metal and the torque come back; what was kept and is none is as usual', () => {
  const shelf = memory();
  const before = session(shelf);
  setRules(before, 'Polderwick', { chambers: 5, maximumAdjacent: null, master: [1, 2, 3, 4, 5] });
  setCapacity(before, 'Polderwick', { firstDepth: 1, example: 12n });
  setStrength(before, 'Polderwick', { torqueNm: 3.5, materialId: 'no metal' });
  const again = session(shelf);
  const capacity = () => capacitySettings(capacityStateOf(again).getState(), 'Polderwick');
  const rules = { chambers: 5, maximumAdjacent: null, master: [1, 2, 3, 4, 5] };
  expect(capacity()).toMatchObject({ rules, firstDepth: 1, example: null });
  const strength = strengthSettings(strengthStateOf(again).getState(), 'Polderwick');
  expect(strength).toMatchObject({ torqueNm: 3.5, materialId: expect.not.stringContaining('no metal') });
  for (const wrong of [{ chambers: 900 }, { excluded: [['a']] }, { progression: 'any' }, { master: 'none' }]) {
    const kept = { rules: { ...USUAL_RULES, chambers: 5, ...wrong } };
    shelf.setItem('sectionary-capacity', JSON.stringify({ Polderwick: kept, Dunmere: 7 }));
    const all = capacityStateOf(session(shelf)).getState();
    expect(capacitySettings(all, 'Polderwick').rules).toEqual(USUAL_RULES);
    expect(capacitySettings(all, 'Dunmere').rules).toEqual(USUAL_RULES);
  }
});
