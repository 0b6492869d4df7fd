import { expect, test } from 'vitest';
import { type HoldersReading, readHolders } from '../../../src/interchange/csv/read-holders.ts';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import { takeHolders, unknownAreas } from '../../../src/interchange/json/take-holders.ts';
import { accessOf } from '../../../src/plan/access.ts';
import { areaPath, areaTree } from '../../../src/plan/area-tree.ts';

const BARE: FamilyFile = {
  format: 'sectionary-family',
  version: 1,
  name: 'Marsh',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [],
};

function read(text: string, reading?: HoldersReading) {
  const answer = readHolders(text, reading);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer;
}

/** What is said, in words: "Porter must North / Hall". */
function told(text: string, reading?: HoldersReading): string[] {
  const { said, holders, areas } = read(text, reading);
  return said.map(({ holder, area, tick }) => `${holders[holder]} ${tick} ${areas[area].path.join(' / ')}`);
}

function faultsOf(text: string) {
  const answer = readHolders(text);
  return answer.faults.map(({ path, what }) => `${path}: ${what}`);
}

function taken(text: string, file = BARE, addAreas = true): FamilyFile {
  const next = takeHolders(file, read(text), addAreas);
  expect(changeFamily(next)).toMatchObject({ ok: true });
  return next;
}

test('reads a matrix with its marks, however they are parted', () => {
  for (const mark of ['\t', ';', ',', '|']) {
    const rows = [
      ['', 'Hall', 'Mill', 'Attic', 'Shed'],
      ['Porter', 'x', '1', '*', ''],
      ['Nurse', '✓', '-', '?', '0'],
    ];
    expect(told(rows.map((row) => row.join(mark)).join('\r\n'))).toEqual([
      'Porter must Hall',
      'Porter must Mill',
      'Porter free Attic',
      'Nurse must Hall',
      'Nurse not Mill',
      'Nurse free Attic',
      'Nurse not Shed',
    ]);
  }
});

test('knows which edge has the areas: by the corner, by known areas, by paths, or as it is told', () => {
  const swapped = ['Porter must Hall'];
  expect(told('area,Porter\nHall,yes')).toEqual(swapped);
  expect(told(',Porter\nHall,yes', { areas: ['hall'] })).toEqual(swapped);
  expect(told(',Porter\nNorth / Hall,yes')).toEqual(['Porter must North / Hall']);
  expect(told(',Porter\nHall,yes', { rows: 'areas' })).toEqual(swapped);
  expect(told(',Porter\nHall,yes')).toEqual(['Hall must Porter']);
  expect(told('holder,Hall\nPorter,yes')).toEqual(swapped);
});

test('reads a list with a header or without one, several areas in a cell, a section and a mark', () => {
  expect(told('holder,area\nPorter,Hall; North / Attic\nNurse,Hall')).toEqual([
    'Porter must Hall',
    'Porter must North / Attic',
    'Nurse must Hall',
  ]);
  expect(told('Porter,Hall\nNurse,Mill,*')).toEqual(['Porter must Hall', 'Nurse free Mill']);
  const { areas, holders } = read('Where\tWho\tSection\nHall\tPorter\tHeron\nMill\t\tTeal\n\tNurse\t');
  expect(areas).toEqual([
    { path: ['Hall'], section: 'Heron' },
    { path: ['Mill'], section: 'Teal' },
  ]);
  expect(holders).toEqual(['Porter', 'Nurse']);
});

test('leaves out what says nothing clear, and tells it by row and column', () => {
  expect(faultsOf('holder,Hall,Mill,\nPorter,x,perhaps,x\nPorter,x,x\n,x\nNurse,×,=1+1,x')).toEqual([
    'row 2, column 3: "perhaps" is no mark',
    'row 2, column 4: stands in a column without a name of its own',
    'row 3, column 1: "Porter" is there twice',
    'row 4, column 1: is empty',
    'row 5, column 2: "×" may mean either',
    'row 5, column 3: "=1+1" is a formula, which is not worked out here',
    'row 5, column 4: stands in a column without a name of its own',
  ]);
});

test('a formula in a name is text', () => {
  expect(told("holder,area\n'=SUM(A1),Hall")).toEqual(['=SUM(A1) must Hall']);
});

test('says why a table cannot be read', () => {
  expect(faultsOf('')).toEqual(['table: is empty']);
  expect(faultsOf('Porter')).toEqual(['table: is neither a list of holders and areas nor a matrix']);
  expect(faultsOf('holder,section\nPorter,Heron')).toEqual(['row 1: has no column “area”']);
  expect(faultsOf('holder,area\n"Porter,Hall')).toEqual(['row 2: has a stray quotation mark']);
  const many = Array.from({ length: 1_001 }, (_, i) => `Porter,Room ${i}`).join('\n');
  expect(faultsOf(`holder,area\n${many}`)).toEqual(['table: holds 1,001 areas, more than 1,000']);
});

test('paths make a tree, and areas called alike get sections of their own', () => {
  const file = taken('holder,area\nPorter,North / Hall\nPorter,North / Attic\nNurse,South / Hall');
  const areas = file.plan?.areas ?? [];
  expect(areas.map(({ id }) => areaPath(areaTree(areas), id))).toEqual([
    'North',
    'North / Hall',
    'North / Attic',
    'South',
    'South / Hall',
  ]);
  const answer = changeFamily(file);
  const plan = answer.ok ? answer.document.family.plan : undefined;
  if (!plan) throw new Error('no plan');
  expect(accessOf(plan).sections.map(({ name }) => name)).toEqual(['Hall', 'Attic', 'South Hall']);
  expect(accessOf(plan).faults.filter(({ kind }) => kind === 'contradiction')).toEqual([]);
});

test('what a matrix says of a known holder takes the place of what was said, a list adds', () => {
  const before = taken('holder,Hall,Mill,Attic\nPorter,x,x,');
  expect(taken('holder,Hall,Mill\nporter,,*', before).plan?.holders).toEqual([
    { id: 'porter', name: 'Porter', enters: [], free: ['mill'] },
  ]);
  expect(taken('holder,area\nPorter,Attic', before).plan?.holders[0].enters).toEqual(['hall', 'mill', 'attic']);
});

test('a group that is ticked stands for what is in it, but for what has a mark of its own', () => {
  const text = 'holder,North,North / Hall,North / Attic,North / Roof\nPorter,x,,-,*\nNurse,-,x,,';
  expect(taken(text).plan?.holders).toEqual([
    { id: 'porter', name: 'Porter', enters: ['hall'], free: ['roof'] },
    { id: 'nurse', name: 'Nurse', enters: ['hall'] },
  ]);
});

test('areas that are not known are offered, and left out where they are not wanted', () => {
  const before = taken('holder,area\nPorter,Hall');
  const table = read('holder,area\nNurse,hall\nNurse,Mill');
  expect(unknownAreas(before, table.areas)).toEqual([{ path: ['Mill'] }]);
  const after = takeHolders(before, table, false);
  expect(after.plan?.areas).toHaveLength(1);
  expect(after.plan?.holders[1].enters).toEqual(['hall']);
});
