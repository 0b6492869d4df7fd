import { expect, test } from 'vitest';
import type { Area, Holder, Plan } from '../../../src/family/plan.ts';
import { accessOf } from '../../../src/plan/access.ts';

const AREAS: Area[] = [
  { id: 'north', name: 'North' },
  { id: 'hall', name: 'Hall', parent: 'north' },
  { id: 'attic', name: 'Attic', parent: 'north' },
  { id: 'mill', name: 'Mill' },
];
const PORTER: Holder = { id: 'porter', name: 'Porter', enters: ['hall', 'mill'] };
const PROVOST: Holder = { id: 'provost', name: 'Provost', enters: ['attic'] };

function faultsOf(of: Partial<Plan>) {
  const plan = { areas: AREAS, holders: [PORTER, PROVOST], baseBlanks: true, allSection: true, reserve: 0, stops: 1 };
  return accessOf({ ...plan, depths: 1, blade: {} as Plan['blade'], ...of }).faults;
}

test('a sound plan has no fault', () => {
  expect(faultsOf({})).toEqual([]);
});

test('names a holder who must enter one area and must not enter another with the same section', () => {
  const areas = AREAS.map((area) => (area.id === 'attic' || area.id === 'hall' ? { ...area, section: 'Heron' } : area));
  expect(faultsOf({ areas, holders: [PORTER] })).toEqual([
    {
      kind: 'contradiction',
      what: 'Porter must enter North / Hall and must not enter North / Attic, but they share the section Heron.',
      cure: 'Tick North / Attic as must or free for Porter, or give it a section of its own.',
      areas: ['hall', 'attic'],
      holders: ['porter'],
    },
    expect.objectContaining({ kind: 'note', what: 'Nobody is ticked to enter North / Attic.' }),
  ]);
  expect(faultsOf({ areas, holders: [{ ...PORTER, free: ['attic'] }, PROVOST] })).toMatchObject([
    { kind: 'contradiction', holders: ['provost'] },
  ]);
});

test('names an area that is ticked both as must and as free', () => {
  expect(faultsOf({ holders: [{ ...PORTER, free: ['mill'] }, PROVOST] })).toMatchObject([
    { kind: 'contradiction', what: 'Porter has Mill both as must and as free.', areas: ['mill'], holders: ['porter'] },
  ]);
});

test('says nothing against an area that is free in a group that must be entered', () => {
  const holders = [{ ...PORTER, enters: ['north', 'mill'], free: ['attic'] }, PROVOST];
  expect(faultsOf({ holders }).filter(({ kind }) => kind !== 'note')).toEqual([]);
});

test('names areas that would share a section only because they are called alike', () => {
  const twice = [...AREAS, { id: 'south', name: 'South' }, { id: 'hall-2', name: ' hall', parent: 'south' }];
  const holders = [{ ...PORTER, enters: ['hall', 'hall-2', 'mill'] }, PROVOST];
  expect(faultsOf({ areas: twice, holders })[0]).toMatchObject({
    kind: 'contradiction',
    what: '2 areas are called Hall and none says its section, so they would share one.',
    areas: ['hall', 'hall-2'],
  });
  const told = twice.map((area) => (area.id === 'hall-2' ? { ...area, section: 'South hall' } : area));
  expect(faultsOf({ areas: told, holders })).toMatchObject([{ kind: 'note', what: '2 areas are called Hall.' }]);
});

test('names a group with a section of its own', () => {
  const areas = AREAS.map((area) => (area.id === 'north' ? { ...area, section: 'Heron' } : area));
  expect(faultsOf({ areas })).toMatchObject([{ kind: 'contradiction', areas: ['north'] }]);
});

test('says what is still to come', () => {
  expect(faultsOf({ areas: [], holders: [] })).toMatchObject([{ kind: 'empty', cure: 'Begin with an area.' }]);
  expect(faultsOf({ holders: [PORTER, PROVOST, { id: 'nurse', name: 'Nurse', enters: [] }] })).toMatchObject([
    { kind: 'empty', what: 'Nurse enters nothing yet.', holders: ['nurse'] },
  ]);
  expect(
    faultsOf({ holders: [PORTER, PROVOST, { id: 'nurse', name: 'Nurse', enters: [], free: ['mill'] }] }),
  ).toMatchObject([{ kind: 'empty', what: 'Nurse must enter nothing: all that is ticked is free.' }]);
});

test('notes an area that nobody enters, holders called alike, sections that differ in capitals', () => {
  expect(faultsOf({ holders: [PORTER] })).toMatchObject([{ kind: 'note', areas: ['attic'] }]);
  expect(faultsOf({ holders: [PORTER, PROVOST, { ...PORTER, id: 'porter-2' }] })).toMatchObject([
    { kind: 'note', holders: ['porter', 'porter-2'] },
  ]);
  const areas = AREAS.map((area) => (area.id === 'attic' ? { ...area, section: 'mill' } : area));
  expect(faultsOf({ areas })).toMatchObject([{ kind: 'note', areas: ['attic', 'mill'] }]);
});

test('notes sections that every blank enters alike', () => {
  const holders = [{ ...PORTER, enters: ['hall', 'mill'] }, PROVOST];
  expect(faultsOf({ holders, baseBlanks: false })).toMatchObject([{ kind: 'note', areas: ['hall', 'mill'] }]);
});
