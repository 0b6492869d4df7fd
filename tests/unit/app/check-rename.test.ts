import { expect, it } from 'vitest';
import { namesDoors } from '../../../src/app/doors/names-doors.ts';
import { nameOf, renameAll, troubleWith } from '../../../src/app/state/names/check-rename.ts';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { misleadingNames } from '../../../src/names/misleading.ts';
import { registerOf } from '../../../src/names/register.ts';

const rectangle = (width: number, height: number) => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

const slot = (id: string, section: string) => ({
  ...{ id: `${id}-k`, kind: 'opening', section },
  ...{ name: `${section} keyway`, outline: rectangle(2.1, 6.6) },
});
const blade = (id: string, section: string, name: string, chambers = 6) => ({
  ...{ id, kind: 'blank', section, name, chambers },
  outline: rectangle(2, 6),
});

const FILE = {
  format: 'sectionary-family',
  version: 1,
  name: 'Marsh',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    slot('h', 'Heron'),
    slot('s', 'Smew'),
    blade('hb', 'Heron', 'Heron blank'),
    blade('sb', 'Smew', 'Smew blank'),
  ],
  names: [
    { text: 'Q 7', kind: 'blank', section: 'Heron', scheme: 'store list' },
    { text: 'Q 7', kind: 'blank', section: 'Smew', scheme: 'porter’s book' },
    { text: 'Long one', kind: 'blank', section: 'Smew', chambers: 6 },
  ],
};

function ground(value: object = FILE) {
  const read = readFamily(JSON.stringify(value));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { family, file } = read.document;
  const knowledge = {
    ...{ family, register: registerOf(family), fitOf: () => undefined },
    ...{ reason: () => '', length: (nm: number) => `${nm} nm` },
  };
  return { doors: { changeFamily, names: namesDoors }, file, knowledge, found: misleadingNames(knowledge) };
}

const profile = (id: string) => ({ of: 'profile', id }) as const;

it('tells what is called how', () => {
  const { family } = ground().knowledge;
  expect(nameOf(family, profile('hb'))).toBe('Heron blank');
  expect(nameOf(family, { of: 'section', section: 'Smew' })).toBe('Smew');
  expect(nameOf(family, { of: 'register', index: 2 })).toBe('Long one');
  expect(nameOf(family, profile('gone'))).toBe('');
});

it('lets a good name pass, and the name that the same thing has already', () => {
  const file = { ...FILE, names: [{ text: 'HS', kind: 'section', section: 'Smew' }] };
  expect(troubleWith(ground(file), [{ target: { of: 'register', index: 0 }, to: 'Smew' }])).toBe('');
  expect(troubleWith(ground(), [{ target: profile('hb'), to: 'Alder blank' }])).toBe('');
});

it('says that a name is blank, the same, taken, or given to two things', () => {
  expect(troubleWith(ground(), [{ target: profile('hb'), to: ' ' }])).toBe('Type a name.');
  expect(troubleWith(ground(), [{ target: profile('hb'), to: 'Heron blank ' }])).toBe('It is called so already.');
  expect(troubleWith(ground(), [{ target: profile('hb'), to: 'smew-blank' }])).toBe(
    '“smew-blank” is taken: it is the name of a blank of the Smew section.',
  );
  expect(troubleWith(ground(), [{ target: profile('hb'), to: 'long one' }])).toMatch(/taken.*in the register\.$/);
  const both = ['hb', 'sb'].map((id) => ({ target: profile(id), to: 'Alder blank' }));
  expect(troubleWith(ground(), both)).toBe('“Alder blank” would be the name of two things.');
});

it('says that a name would mislead in its turn', () => {
  // A nought for the letter; its own old name it may look like.
  expect(troubleWith(ground(), [{ target: { of: 'register', index: 2 }, to: 'L0ng one' }])).toBe('');
  expect(troubleWith(ground(), [{ target: profile('hb'), to: 'L0ng one' }])).toMatch(/^It would mislead too: /);
});

it('takes all suggestions at once where that leaves no fault', () => {
  const before = ground();
  expect(before.found.map(({ kind }) => kind)).toContain('two schemes');
  const { renames, trouble } = renameAll(before);
  expect(trouble).toBe('');
  const after = changeFamily(namesDoors.renameIn(before.file, renames));
  if (!after.ok) throw new Error(JSON.stringify(after.faults));
  const { family } = after.document;
  expect(misleadingNames({ ...before.knowledge, family, register: registerOf(family) })).toEqual([]);
});

it('does not take all at once where two findings want different names for one thing', () => {
  const before = ground();
  const target = profile('hb');
  const found = ['Alder', 'Birch'].map((to) => ({
    ...{ kind: 'joined' as const, texts: ['Heron blank'], words: to, why: '' },
    renames: [{ target, to }],
  }));
  expect(renameAll({ ...before, found }).trouble).toBe('Two different names are suggested for “Heron blank”.');
  expect(renameAll({ ...before, found: [] }).trouble).toBe('No new names can be suggested.');
});
