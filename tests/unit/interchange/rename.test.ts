import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { renameIn } from '../../../src/interchange/json/rename.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import type { Rename } from '../../../src/names/misleading-name.ts';
import { registerOf } from '../../../src/names/register.ts';
import { profilesOf, resolveName } from '../../../src/names/resolve.ts';

function demo(): FamilyFile {
  const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
  if (!read.ok) throw new Error('the demo family is not sound');
  return read.document.file;
}

const FILE = demo();

/** Ids that a name stands for in a file. */
function idsOf(file: FamilyFile, text: string): string[] | null {
  const read = changeFamily(file);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { family } = read.document;
  const found = resolveName(registerOf(family), text);
  return found.kind === 'found' ? profilesOf(family, found.senses[0]).map(({ id }) => id) : null;
}

describe('a renamed profile', () => {
  const renamed = renameIn(FILE, [{ target: { of: 'profile', id: 'nose-feeler' }, to: 'Ward probe' }]);

  it('is found by its new name and by its old one', () => {
    expect(idsOf(renamed, 'Ward probe')).toEqual(['nose-feeler']);
    expect(idsOf(renamed, 'Nose feeler')).toEqual(['nose-feeler']);
    expect(renamed.names?.at(-1)).toEqual({
      text: 'Nose feeler',
      kind: 'tool',
      profile: 'nose-feeler',
      supersededBy: 'Ward probe',
    });
  });

  it('leaves everything else as it is, by identity', () => {
    expect(FILE.profiles.filter((profile) => !renamed.profiles.includes(profile)).map(({ id }) => id)).toEqual([
      'nose-feeler',
    ]);
    expect(renamed.claims).toBe(FILE.claims);
  });

  it('that gets its old name back has no old name left', () => {
    const back = renameIn(renamed, [{ target: { of: 'profile', id: 'nose-feeler' }, to: 'Nose feeler' }]);
    expect(back.names?.filter(({ text }) => text === 'Nose feeler')).toEqual([]);
    expect(idsOf(back, 'Ward probe')).toEqual(['nose-feeler']);
  });
});

describe('a renamed section', () => {
  const renamed = renameIn(FILE, [{ target: { of: 'section', section: 'Smew' }, to: 'Merganser' }]);

  it('takes its profiles, their names and its entries with it', () => {
    expect(renamed.profiles.filter(({ section }) => section === 'Merganser').map(({ name }) => name)).toEqual([
      'Merganser keyway',
      'Merganser blank',
    ]);
    expect(renamed.names?.filter(({ text }) => text === 'HB')).toMatchObject([{ section: 'Merganser' }]);
    for (const text of ['Smew', 'Merganser', 'HB']) expect(idsOf(renamed, text)).toEqual(['smew-keyway', 'smew-blank']);
    for (const text of ['Smew blank', 'PC 107']) expect(idsOf(renamed, text)).toEqual(['smew-blank']);
  });

  it('changes whole words only', () => {
    const file = {
      ...FILE,
      profiles: FILE.profiles.map((p) => (p.id === 'smew-blank' ? { ...p, name: 'Smewish Smew' } : p)),
    };
    const names = renameIn(file, [{ target: { of: 'section', section: 'Smew' }, to: 'Teal' }]).profiles.map(
      ({ name }) => name,
    );
    expect(names).toContain('Smewish Teal');
  });
});

describe('several renames at once', () => {
  it('let two sections change names', () => {
    const swapped = renameIn(FILE, [
      { target: { of: 'section', section: 'Smew' }, to: 'Knot' },
      { target: { of: 'section', section: 'Knot' }, to: 'Smew' },
    ]);
    const named = Object.fromEntries(swapped.profiles.map(({ id, name, section }) => [id, [name, section]]));
    expect(named['smew-keyway']).toEqual(['Knot keyway', 'Knot']);
    expect(named['knot-keyway']).toEqual(['Smew keyway', 'Smew']);
    expect(idsOf(swapped, 'Smew blank')).toEqual(['knot-blank']);
  });

  it('rename an entry of the register, the old text behind it', () => {
    const at = FILE.names?.findIndex(({ text }) => text === 'PC 14O') ?? -1;
    const renamed = renameIn(FILE, [{ target: { of: 'register', index: at }, to: ' PC 140 ' }]);
    expect(renamed.names?.[at]).toMatchObject({ text: 'PC 140', section: 'Avocet' });
    expect(renamed.names?.at(-1)).toMatchObject({
      text: 'PC 14O',
      section: 'Avocet',
      scheme: 'Stores list',
      supersededBy: 'PC 140',
    });
    expect(idsOf(renamed, 'PC 14O')).toEqual(['avocet-blank']);
  });

  it.each<[string, Rename[]]>([
    ['no rename', []],
    ['a blank name', [{ target: { of: 'profile', id: 'smew-blank' }, to: '  ' }]],
    [
      'what is not there',
      [
        { target: { of: 'section', section: 'Teal' }, to: 'Gull' },
        { target: { of: 'register', index: 999 }, to: 'x' },
      ],
    ],
    ['the same name', [{ target: { of: 'section', section: 'Smew' }, to: 'Smew' }]],
  ])('change nothing by %s', (_, renames) => expect(renameIn(FILE, renames)).toBe(FILE));
});
