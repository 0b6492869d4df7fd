import { expect, test } from 'vitest';
import type { Area, Holder, Plan } from '../../../src/family/plan.ts';
import { accessOf, reservedTable } from '../../../src/plan/access.ts';

const BLADE = {
  thickness: 2_000_000,
  height: 8_000_000,
  backRadius: 0,
  cutZone: 3_000_000,
  backZone: 0,
  grooveWidth: 600_000,
  heightStep: 800_000,
  grooveDepth: 600_000,
  depthStep: 0,
  flank: 0,
  rootRadius: 0,
  sides: 'both',
} as const;

/** Areas written as "Heron" or "Reed/Heron", each id its own name in small letters. */
function areas(...paths: string[]): Area[] {
  const all = new Map<string, Area>();
  for (const path of paths) {
    let parent: string | undefined;
    for (const name of path.split('/')) {
      const id = name.toLowerCase();
      if (!all.has(id)) all.set(id, { id, name, ...(parent !== undefined && { parent }) });
      parent = id;
    }
  }
  return [...all.values()];
}

function holder(name: string, enters: string[], free?: string[]): Holder {
  return { id: name.toLowerCase().replaceAll(' ', '-'), name, enters, ...(free && { free }) };
}

function plan(of: Partial<Plan>): Plan {
  return {
    areas: [],
    holders: [],
    baseBlanks: false,
    allSection: false,
    reserve: 0,
    stops: 1,
    depths: 1,
    blade: BLADE,
    ...of,
  };
}

const MARSH = areas('Reed/Heron', 'Reed/Bittern', 'Dyke/Crake', 'Dyke/Teal');

/** Blanks as "name: sections (holders)". */
function told(of: Partial<Plan>): string[] {
  const access = accessOf(plan({ areas: MARSH, ...of }));
  return access.blanks.map(
    ({ name, sections, rank, holders }) =>
      `${rank} ${name}: ${sections.map((s) => access.sections[s].name).join()} (${holders.join()})`,
  );
}

test('asks for one blank for each different set, groups being all that is in them', () => {
  const holders = [
    holder('Porter', ['reed']),
    holder('Cleaner', ['heron', 'bittern']),
    holder('Tutor', ['teal']),
    holder('Warden', ['bittern', 'crake']),
  ];
  expect(told({ holders })).toEqual([
    'base Teal: Teal (tutor)',
    'group Reed: Heron,Bittern (porter,cleaner)',
    'group Warden: Bittern,Crake (warden)',
  ]);
});

test('adds base blanks and an all-section blank where they are asked for, and gives them to who needs just that', () => {
  const holders = [holder('Tutor', ['teal']), holder('Provost', ['reed', 'dyke'])];
  expect(told({ holders, baseBlanks: true, allSection: true })).toEqual([
    'base Heron: Heron ()',
    'base Bittern: Bittern ()',
    'base Crake: Crake ()',
    'base Teal: Teal (tutor)',
    'all-section All-section blank: Heron,Bittern,Crake,Teal (provost)',
  ]);
});

test('leaves that name one section are one section', () => {
  const shared = [...MARSH, { id: 'mill', name: 'Mill', section: ' Teal ' }];
  const access = accessOf(plan({ areas: shared, holders: [holder('Miller', ['mill', 'teal'])] }));
  expect(access.sections.map(({ name, areas: ids }) => [name, ids])).toEqual([
    ['Heron', ['heron']],
    ['Bittern', ['bittern']],
    ['Crake', ['crake']],
    ['Teal', ['teal', 'mill']],
  ]);
  expect(access.blanks.map(({ sections }) => sections)).toEqual([[3]]);
  expect(access.table).toEqual([[0], [0], [0], [1]]);
});

test('what is said of an area counts more than what is said of its group', () => {
  const access = accessOf(plan({ areas: MARSH, holders: [holder('Porter', ['reed'], ['bittern'])] }));
  expect(access.table.map(([cell]) => cell)).toEqual([1, null, 0, 0]);
});

test('a holder with free areas carries the one other blank that does, and is told', () => {
  const holders = [holder('Porter', ['heron'], ['bittern', 'crake']), holder('Cleaner', ['heron', 'bittern'])];
  expect(told({ holders })).toEqual(['group Reed: Heron,Bittern (cleaner,porter)']);
  const { faults } = accessOf(plan({ areas: MARSH, holders }));
  expect(faults.filter(({ holders: ids }) => ids.includes('porter')).map(({ kind, what }) => [kind, what])).toEqual([
    ['note', 'Porter: with what is free, the blank Reed does.'],
  ]);
});

test('where two blanks would do, another one is made and the choice is told', () => {
  const holders = [
    holder('Porter', ['heron'], ['bittern', 'crake']),
    holder('Cleaner', ['heron', 'bittern']),
    holder('Nurse', ['heron', 'crake']),
  ];
  expect(told({ holders })).toHaveLength(3);
  const { faults } = accessOf(plan({ areas: MARSH, holders }));
  expect(faults.some(({ kind, what }) => kind === 'note' && what.includes('Reed or Nurse would do'))).toBe(true);
});

test('holders with one set keep free only what is free for each of them', () => {
  const holders = [holder('Porter', ['heron'], ['bittern', 'crake']), holder('Cleaner', ['heron'], ['crake'])];
  const { blanks } = accessOf(plan({ areas: MARSH, holders }));
  expect(blanks.map(({ sections, free }) => [sections, free])).toEqual([[[0], [2]]]);
});

test('no blank is named by the sections that it joins, nor like a section that it is not', () => {
  const holders = [
    holder('Heron and Teal keeper', ['heron', 'teal']),
    holder('Crake', ['bittern', 'crake']),
    holder('Ann', ['bittern', 'teal']),
    holder('Bob', ['bittern', 'teal']),
  ];
  const { blanks } = accessOf(plan({ areas: MARSH, holders }));
  expect(blanks.map(({ name }) => name).sort()).toEqual([
    'Blank for 2 keyways',
    'Blank for 2 keyways, no. 2',
    'Blank for 2 keyways, no. 3',
  ]);
});

test('the id of a blank stays when areas are moved, added or put in another order', () => {
  const holders = [holder('Warden', ['bittern', 'crake'])];
  const idOf = (of: Area[]) => accessOf(plan({ areas: of, holders })).blanks.map(({ id }) => id);
  const before = idOf(MARSH);
  expect(idOf([...MARSH].reverse())).toEqual(before);
  expect(idOf([...MARSH, ...areas('Mill')])).toEqual(before);
  expect(idOf(MARSH.map(({ parent, ...area }) => area).filter(({ id }) => id !== 'reed' && id !== 'dyke'))).toEqual(
    before,
  );
});

test('later sections are entered by the all-section blank and one of their own', () => {
  const access = accessOf(plan({ areas: areas('Heron', 'Teal'), baseBlanks: true, allSection: true, reserve: 2 }));
  expect(reservedTable(access, 2)).toEqual([
    [1, 0, 1, 0, 0],
    [0, 1, 1, 0, 0],
    [0, 0, 1, 1, 0],
    [0, 0, 1, 0, 1],
  ]);
});

test('an empty plan asks for nothing', () => {
  const access = accessOf(plan({ baseBlanks: true, allSection: true }));
  expect([access.sections, access.blanks, access.table]).toEqual([[], [], []]);
  expect(access.faults.map(({ kind }) => kind)).toEqual(['empty']);
});
