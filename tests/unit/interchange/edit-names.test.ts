import { expect, it } from 'vitest';
import { addNames, removeNames, replaceName } from '../../../src/interchange/json/edit-names.ts';
import type { FamilyFile, NameFile } from '../../../src/interchange/json/schema.ts';

const FILE = { name: 'Marsh', profiles: [] } as unknown as FamilyFile;
const HERON: NameFile = { text: 'H1', kind: 'blank', section: 'Heron', chambers: 5 };
const SMEW: NameFile = { text: 'S1', kind: 'blank', section: 'Smew' };

it('adds behind what is there, and leaves the old value alone', () => {
  const one = addNames(FILE, [HERON]);
  expect(addNames(one, [SMEW]).names).toEqual([HERON, SMEW]);
  expect(FILE.names).toBeUndefined();
  expect(addNames(one, [])).toBe(one);
});

it('changes one entry and keeps what the format does not know of it', () => {
  const file = { ...FILE, names: [SMEW, { ...HERON, shelf: 4 } as NameFile] };
  const changed = replaceName(file, 1, { text: 'H2', kind: 'series', section: 'Heron' });
  expect(changed.names).toEqual([SMEW, { text: 'H2', kind: 'series', section: 'Heron', shelf: 4 }]);
  expect(replaceName(file, 2, HERON)).toBe(file);
});

it('takes entries out, and the register with the last of them', () => {
  const file = { ...FILE, names: [HERON, SMEW] };
  expect(removeNames(file, [0]).names).toEqual([SMEW]);
  expect('names' in removeNames(file, [1, 0])).toBe(false);
  expect(removeNames(file, [7])).toBe(file);
});
