import { expect, test } from 'vitest';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import {
  addArea,
  deleteArea,
  indentArea,
  moveArea,
  outdentArea,
  renameArea,
  setAreaSection,
} from '../../../src/interchange/json/edit-areas.ts';
import {
  addHolder,
  deleteHolders,
  emptyPlan,
  moveHolder,
  renameHolder,
  setBladeLimits,
  setPlanOptions,
} from '../../../src/interchange/json/edit-plan.ts';
import { tickArea } from '../../../src/interchange/json/edit-ticks.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import { areaPath, areaTree, FREE, MUST, NOT } from '../../../src/plan/area-tree.ts';

const BARE: FamilyFile = {
  format: 'sectionary-family',
  version: 1,
  name: 'Marsh',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [],
};

/** The areas of a file as paths, in their order. */
function paths({ plan }: FamilyFile): string[] {
  const tree = areaTree(plan?.areas ?? []);
  return (plan?.areas ?? []).map(({ id }) => areaPath(tree, id));
}

/** Reed with Heron and Bittern in it, Dyke with Crake in it, and Teal. */
function marsh(): FamilyFile {
  let file = addArea(BARE, { name: 'Reed' }).file;
  file = addArea(file, { name: 'Heron' }, { inside: 'reed' }).file;
  file = addArea(file, { name: 'Bittern' }, { after: 'heron' }).file;
  file = addArea(file, { name: 'Dyke' }, { after: 'reed' }).file;
  file = addArea(file, { name: 'Crake' }, { inside: 'dyke' }).file;
  return addArea(file, { name: 'Teal' }).file;
}

function sound(file: FamilyFile): FamilyFile {
  expect(changeFamily(file)).toMatchObject({ ok: true });
  return file;
}

test('an empty plan is sound in either unit, and its blades alike', () => {
  for (const units of ['mm', 'in'] as const) {
    const read = changeFamily({ ...BARE, units, plan: emptyPlan(units) });
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const blade = read.document.family.plan?.blade;
    expect(blade?.thickness).toBeGreaterThan(1_900_000);
    expect(blade?.thickness).toBeLessThan(2_100_000);
    expect(read.document.family.plan?.areas).toEqual([]);
  }
});

test('areas are added below and inside, in the order that people read them', () => {
  expect(paths(sound(marsh()))).toEqual(['Reed', 'Reed / Heron', 'Reed / Bittern', 'Dyke', 'Dyke / Crake', 'Teal']);
});

test('an area that gets another one inside loses the section that it stated', () => {
  const file = setAreaSection(marsh(), 'teal', 'Duck');
  expect(file.plan?.areas.at(-1)?.section).toBe('Duck');
  const held = sound(addArea(file, { name: 'Pond' }, { inside: 'teal' }).file);
  expect(held.plan?.areas.find(({ id }) => id === 'teal')).toEqual({ id: 'teal', name: 'Teal' });
  expect(
    sound(indentArea(setAreaSection(marsh(), 'dyke', 'X'), 'teal')).plan?.areas.find(({ id }) => id === 'dyke'),
  ).toEqual({
    id: 'dyke',
    name: 'Dyke',
  });
});

test('areas move among their own, in and out', () => {
  expect(paths(sound(moveArea(marsh(), 'dyke', -1)))).toEqual([
    'Dyke',
    'Dyke / Crake',
    'Reed',
    'Reed / Heron',
    'Reed / Bittern',
    'Teal',
  ]);
  expect(paths(sound(indentArea(marsh(), 'teal')))).toContain('Dyke / Teal');
  expect(paths(sound(indentArea(marsh(), 'bittern')))).toContain('Reed / Heron / Bittern');
  expect(paths(sound(outdentArea(marsh(), 'heron')))).toEqual([
    'Reed',
    'Reed / Bittern',
    'Heron',
    'Dyke',
    'Dyke / Crake',
    'Teal',
  ]);
  for (const same of [moveArea(marsh(), 'teal', 1), indentArea(marsh(), 'reed'), outdentArea(marsh(), 'teal')])
    expect(paths(same)).toEqual(paths(marsh()));
});

test('deleting an area takes what lies in it along, and no holder speaks of it any more', () => {
  let file = addHolder(marsh(), { name: 'Porter', enters: ['reed', 'teal'], free: ['heron', 'crake'] }).file;
  file = sound(deleteArea(file, 'reed'));
  expect(paths(file)).toEqual(['Dyke', 'Dyke / Crake', 'Teal']);
  expect(file.plan?.holders).toEqual([{ id: 'porter', name: 'Porter', enters: ['teal'], free: ['crake'] }]);
});

test('names and ids: a rename keeps the id, a name again gets an id of its own', () => {
  const renamed = renameArea(marsh(), 'teal', 'Garganey');
  expect(renamed.plan?.areas.at(-1)).toEqual({ id: 'teal', name: 'Garganey' });
  const again = addArea(renamed, { name: 'Teal' });
  expect(again.id).toBe('teal-2');
  expect(addArea(BARE, { name: '水' }).id).toBe('area');
  sound(again.file);
});

test('holders are added, renamed, moved and deleted', () => {
  let file = addHolder(marsh(), { name: 'Porter' }).file;
  file = addHolder(file, { name: 'Cleaner' }).file;
  const added = addHolder(file, { name: 'Nurse' }, 'porter');
  expect(added.file.plan?.holders.map(({ name }) => name)).toEqual(['Porter', 'Nurse', 'Cleaner']);
  const renamed = renameHolder(added.file, 'nurse', 'Warden');
  expect(moveHolder(renamed, 'nurse', 5).plan?.holders.map(({ name }) => name)).toEqual([
    'Porter',
    'Cleaner',
    'Warden',
  ]);
  expect(sound(deleteHolders(renamed, ['porter', 'cleaner'])).plan?.holders.map(({ id }) => id)).toEqual(['nurse']);
});

test('a tick under a group that is ticked speaks of the rest of the group one by one', () => {
  let file = addHolder(marsh(), { name: 'Porter', enters: ['reed'] }).file;
  file = tickArea(file, 'porter', 'heron', NOT);
  expect(file.plan?.holders[0]).toEqual({ id: 'porter', name: 'Porter', enters: ['bittern'] });
  file = tickArea(file, 'porter', 'reed', MUST);
  expect(file.plan?.holders[0].enters).toEqual(['reed']);
  file = sound(tickArea(file, 'porter', 'heron', FREE));
  expect(file.plan?.holders[0]).toEqual({ id: 'porter', name: 'Porter', enters: ['reed'], free: ['heron'] });
  file = tickArea(file, 'porter', 'heron', MUST);
  expect(file.plan?.holders[0].enters).toEqual(['reed']);
  file = tickArea(file, 'porter', 'reed', NOT);
  expect(file.plan?.holders[0].enters).toEqual([]);
});

test('a tick cures an area that was ticked both ways', () => {
  const file = addHolder(marsh(), { name: 'Porter', enters: ['teal'], free: ['teal'] }).file;
  expect(tickArea(file, 'porter', 'teal', MUST).plan?.holders[0]).toMatchObject({ enters: ['teal'], free: [] });
});

test('options and limits of the blade are written in the units of the file, fields unknown to the format stay', () => {
  const plan = { ...emptyPlan('in'), colour: 'green' };
  let file: FamilyFile = { ...BARE, units: 'in', plan };
  file = setPlanOptions(file, { reserve: 8, baseBlanks: false });
  file = sound(setBladeLimits(file, { thickness: 2_540_000, flank: Math.PI / 12, sides: 'left' }));
  expect(file.plan).toMatchObject({ colour: 'green', reserve: 8, baseBlanks: false });
  expect(file.plan?.blade).toMatchObject({ thickness: 0.1, flankDeg: 15, sides: 'left', height: plan.blade.height });
});
