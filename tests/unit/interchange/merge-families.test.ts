import { expect, test } from 'vitest';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import { type MergeChoice, mergeFamilies, planMerge } from '../../../src/interchange/json/merge-families.ts';
import { type FamilyDocument, readFamily } from '../../../src/interchange/json/read.ts';

const BLADE = [
  [0, 0],
  [2.1, 0],
  [2.1, 8.4],
  [0, 8.4],
];
const THIN = [
  [0, 0],
  [1, 0],
  [1, 6, 0.2],
  [0, 6],
];
const MILLED = {
  thickness: 2,
  height: 8.4,
  backRadius: 0.4,
  grooves: [{ side: 'left', bottom: 3, width: 1.2, depth: 0.7, flankDeg: 10, rootRadius: 0.1, cutter: 'A' }],
};

function documentOf(profiles: object[], fields: object = {}): FamilyDocument {
  const head = { format: 'sectionary-family', version: 1, name: 'Reed', units: 'mm', runningClearance: 0.04 };
  const read = readFamily(JSON.stringify({ ...head, ...fields, profiles }));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document;
}
const blank = (id: string, fields: object = {}) => ({
  id,
  kind: 'blank',
  name: `${id} blank`,
  outline: BLADE,
  ...fields,
});

const OURS = documentOf([blank('heron'), blank('snipe'), blank('teal', { name: 'Marsh blank' })]);

test('a new section is added at the end as it stands, unknown fields too', () => {
  const theirs = documentOf([blank('rail', { outline: THIN, drawer: 7 })], { name: 'Sedge' });
  expect(planMerge(OURS, theirs)).toEqual({
    rows: [{ id: 'rail', name: 'rail blank', kind: 'blank', standing: 'new', namesake: null, usual: 'add' }],
    differences: [],
  });
  const merged = mergeFamilies(OURS, theirs);
  expect(merged.profiles.slice(0, 3)).toEqual(OURS.file.profiles);
  expect(merged.profiles[3]).toBe(theirs.file.profiles[0]);
  expect(merged.name).toBe('Reed');
});

test('what is said otherwise of a section with the same outline is told, and so is another tilt limit', () => {
  const theirs = documentOf([blank('heron', { name: 'Old heron', tolerance: 0.02 })]);
  const { rows, differences } = planMerge(OURS, theirs);
  expect(rows[0]).toMatchObject({ standing: 'same', usual: 'skip' });
  expect(differences).toEqual([
    expect.stringMatching(/^.+ is there already with the same outline but another name, tolerance; left out, it stays/),
  ]);
  const leaning = { ...theirs, family: { ...OURS.family, tiltLimit: Math.PI / 60 } };
  expect(planMerge(OURS, leaning).differences).toEqual([
    expect.stringMatching(/lets a blade lean by 3°, Reed by \d+(\.\d+)?°, which then holds for all/),
  ]);
});

test('the same id with the same shape is there already; with another shape it is a clash', () => {
  const theirs = documentOf([blank('heron', { name: 'Old heron' }), blank('snipe', { outline: THIN })]);
  expect(planMerge(OURS, theirs).rows.map(({ standing, usual }) => [standing, usual])).toEqual([
    ['same', 'skip'],
    ['clash', 'add'],
  ]);
  const ids = (choice?: MergeChoice) =>
    mergeFamilies(OURS, theirs, new Map(choice ? [['snipe', choice]] : [])).profiles.map(({ id }) => id);
  expect(ids()).toEqual(['heron', 'snipe', 'teal', 'snipe-2']);
  expect(ids('skip')).toEqual(['heron', 'snipe', 'teal']);
  expect(ids('replace')).toEqual(['heron', 'snipe', 'teal']);
  expect(mergeFamilies(OURS, theirs, new Map([['snipe', 'replace']])).profiles[1].outline).toEqual(THIN);
});

test('the same outline as another kind is a clash', () => {
  const theirs = documentOf([blank('heron', { kind: 'opening' })]);
  expect(planMerge(OURS, theirs).rows[0].standing).toBe('clash');
});

test('a name that another section has is shown', () => {
  const theirs = documentOf([blank('rail', { name: 'Marsh blank' }), blank('teal', { name: 'Marsh blank' })]);
  expect(planMerge(OURS, theirs).rows.map(({ namesake }) => namesake)).toEqual(['teal', null]);
});

test('a section under a name that is taken is named apart, by the family that it comes from', () => {
  const theirs = documentOf(
    [
      blank('rail', { name: 'Marsh blank', outline: THIN }),
      blank('teal', { name: 'Marsh blank', outline: THIN }),
      blank('dunlin', { name: 'Dunlin blank', outline: THIN }),
    ],
    { name: 'Sedge' },
  );
  const merged = mergeFamilies(OURS, theirs);
  const names = merged.profiles.slice(OURS.file.profiles.length).map(({ name }) => name);
  expect(names).toEqual(['Marsh blank (Sedge)', 'Marsh blank (Sedge, 2)', 'Dunlin blank']);
  const long = documentOf([
    blank('a', { name: 'x'.repeat(200), outline: THIN }),
    blank('b', { name: 'x'.repeat(200) }),
  ]);
  const read = changeFamily(mergeFamilies(OURS, long));
  expect(read).toMatchObject({ ok: true });
});

test('two of theirs that would take one new id get two', () => {
  const theirs = documentOf([blank('snipe', { outline: THIN }), blank('snipe-2', { outline: THIN })]);
  const ids = mergeFamilies(OURS, theirs).profiles.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toHaveLength(5);
});

test('lengths are converted so that every outline is the same to the nanometre', () => {
  const inch = (value: unknown): unknown => {
    if (typeof value === 'number') return value / 25.4;
    if (Array.isArray(value)) return value.map(inch);
    return value;
  };
  const milled = {
    thickness: 0.08,
    height: 0.33,
    grooves: [{ side: 'right', bottom: 0.1, width: 0.05, depth: 0.03, flankDeg: 12, cutter: 'A' }],
  };
  const theirs = documentOf(
    [
      blank('rail', {
        outline: (THIN as number[][]).map(([x, y, b]) => [inch(x), inch(y), ...(b ? [b] : [])]),
        tolerance: 0.001,
      }),
      blank('bittern', { outline: undefined, milled }),
    ],
    { units: 'in', runningClearance: 0.0015, name: 'Sedge' },
  );
  const read = changeFamily(mergeFamilies(OURS, theirs));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { family, file } = read.document;
  expect(family.profiles[3].ring).toEqual(theirs.family.profiles[0].ring);
  expect(family.profiles[3].tolerance).toBe(25_400);
  expect(family.profiles[4].ring).toEqual(theirs.family.profiles[1].ring);
  expect(family.profiles[4].milled).toEqual(theirs.family.profiles[1].milled);
  expect(file.profiles[4].milled?.grooves[0]).toMatchObject({ flankDeg: 12, cutter: 'A' });
  expect(planMerge(OURS, theirs).differences).toEqual([
    'Sedge has a running clearance of 0.0381 mm, Reed of 0.04 mm, which then holds for all.',
    'Sedge is written in in; its lengths are converted to mm.',
  ]);
});

test('the other way, millimetres into inches, a milled blade and a tolerance come along', () => {
  const ours = documentOf(
    [
      blank('heron', {
        outline: [
          [0, 0],
          [0.08, 0],
          [0.08, 0.3],
        ],
      }),
    ],
    { units: 'in', runningClearance: 0.001, tolerance: 0.001 },
  );
  const theirs = documentOf([blank('rail', { outline: undefined, milled: MILLED })]);
  const read = changeFamily(mergeFamilies(ours, theirs));
  expect(read.ok && read.document.family.profiles[1].milled).toEqual(theirs.family.profiles[0].milled);
  expect(planMerge(ours, theirs).differences).toContain(
    'Reed states a tolerance of 0 in, Reed of 0.001 in, which then holds for every section that states none of its own.',
  );
});

test('the lengths of a kept picture are converted too', () => {
  const picture = {
    image: 'data:image/png;base64,iVBORw0KGgo=',
    scale: { from: [0, 0], to: [10, 0], distance: 25.4 },
    middle: [2.54, 5.08],
    shelf: 3,
  };
  const ours = documentOf(
    [
      blank('heron', {
        outline: [
          [0, 0],
          [0.08, 0],
          [0.08, 0.3],
        ],
      }),
    ],
    { units: 'in', runningClearance: 0.001 },
  );
  const merged = mergeFamilies(ours, documentOf([blank('rail', { picture })]));
  expect(merged.profiles[1].picture).toMatchObject({ scale: { distance: 1 }, middle: [0.1, 0.2], shelf: 3 });
});

test('a merge leaves both families as they were', () => {
  const theirs = documentOf([blank('snipe', { outline: THIN })]);
  const before = JSON.stringify([OURS, theirs]);
  mergeFamilies(OURS, theirs, new Map([['snipe', 'replace']]));
  expect(JSON.stringify([OURS, theirs])).toBe(before);
});

test('names and claims come along under the ids that their sections have now; a lesson where there is none', () => {
  const known = { text: 'H 1', kind: 'blank', profile: 'heron' };
  const theirs = documentOf([blank('heron'), blank('snipe', { outline: THIN }), blank('rail', { outline: THIN })], {
    name: 'Sedge',
    leastWeb: 0.5,
    names: [known, { text: 'S 2', kind: 'blank', profile: 'snipe' }, { text: 'R 3', kind: 'blank', profile: 'rail' }],
    claims: [{ blank: 'S 2', opening: 'Heron', enters: false, by: 'Wall chart' }],
    lesson: { title: 'Sedge', steps: [{ show: 'wall', title: 'One', blank: 'snipe' }] },
  });
  const ours = documentOf([blank('heron'), blank('snipe'), blank('teal')], { names: [known] });
  expect(planMerge(ours, theirs).differences).toEqual([
    'Sedge wants a web of at least 0.5 mm, Reed sets none, which then holds for all.',
    '3 names and 1 claim of Sedge come along where they are new.',
    'The lesson of Sedge becomes that of Reed.',
  ]);
  const merged = mergeFamilies(ours, theirs, new Map([['rail', 'skip']]));
  expect(merged.names).toEqual([known, { text: 'S 2', kind: 'blank', profile: 'snipe-2' }]);
  expect(merged.claims).toEqual(theirs.file.claims);
  expect(merged.lesson?.steps[0].blank).toBe('snipe-2');
  expect(changeFamily(merged).ok).toBe(true);
  const again = mergeFamilies(
    { ...ours, file: merged },
    theirs,
    new Map([
      ['snipe', 'skip'],
      ['rail', 'skip'],
    ]),
  );
  expect(again.names).toEqual(merged.names);
  expect(again.claims).toBe(merged.claims);
});

test('claims that name sections by their ids follow them to new ids, and stay behind with those that are left out', () => {
  const claims = [
    { blank: 'snipe', opening: 'Heron', enters: true },
    { blank: ' rail', opening: 'Heron', enters: true },
    { blank: 'Nobody', opening: 'snipe', enters: false, by: 'Wall chart' },
  ];
  const theirs = documentOf([blank('snipe', { outline: THIN }), blank('rail', { outline: THIN })], { claims });
  const ours = documentOf([blank('heron'), blank('snipe'), blank('rail')]);
  expect(mergeFamilies(ours, theirs, new Map([['rail', 'skip']])).claims).toEqual([
    { blank: 'snipe-2', opening: 'Heron', enters: true },
    { blank: 'Nobody', opening: 'snipe-2', enters: false, by: 'Wall chart' },
  ]);
});

test('a section of another shape under one name is told, once; one of the same shape is not', () => {
  const section = (id: string, outline: number[][], fields: object = {}) =>
    blank(id, { section: 'Heron', outline, ...fields });
  const ours = documentOf([section('heron', BLADE)]);
  const moved = BLADE.map(([x, y]) => [x + 1, y]);
  const same = documentOf([section('heron-6', moved)], { name: 'Sedge' });
  expect(planMerge(ours, same).differences).toEqual([]);
  const other = documentOf([section('heron-5', THIN), section('heron-6', THIN)], { name: 'Sedge' });
  expect(planMerge(ours, other).differences).toEqual([
    expect.stringMatching(/^The section Heron has another shape in Sedge\. Where both are kept, names and claims/),
  ]);
});
