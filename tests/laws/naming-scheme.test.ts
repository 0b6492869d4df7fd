// Laws of naming a family by a scheme: whatever the family was called, no name of it misleads afterwards, old names still
// lead to what they named, and a longer blank never has the lower number. Random families, fast-check.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Family } from '../../src/family/family.ts';
import { changeFamily } from '../../src/interchange/json/change-family.ts';
import { renameIn } from '../../src/interchange/json/rename.ts';
import { type FamilyFile, FORMAT, VERSION } from '../../src/interchange/json/schema.ts';
import { digitRunsOf, foldName } from '../../src/names/fold-name.ts';
import { misleadingNames } from '../../src/names/misleading.ts';
import { type NamingScheme, nameByScheme, schemeFault } from '../../src/names/naming-scheme.ts';
import { registerOf } from '../../src/names/register.ts';
import { profilesOf } from '../../src/names/resolve.ts';
import { knownAs } from '../kit/named-family.ts';

const SECTIONS = [
  'A',
  'B',
  'AB',
  'BA',
  'Heron',
  'heron',
  'Bittern',
  'HerBit',
  'K10',
  'K1O',
  'Fern',
  'Fem',
  'Alder',
  'K 20',
  '👍',
  'עיט',
  '<b>',
];

interface Drawn {
  readonly section: number | null;
  readonly kind: 'opening' | 'blank' | 'tool';
  readonly chambers: number | null;
  readonly shape: number;
}

const profile = fc.record<Drawn>({
  section: fc.option(fc.nat(SECTIONS.length - 1), { nil: null }),
  kind: fc.constantFrom('opening', 'blank', 'tool'),
  chambers: fc.option(fc.integer({ min: 5, max: 7 }), { nil: null }),
  shape: fc.nat(3),
});

const scheme: fc.Arbitrary<NamingScheme> = fc.oneof(
  fc.record({ by: fc.constant('words' as const), words: fc.constantFrom([], ['Alder', 'Teal'], ['Heron', 'Bittern']) }),
  fc.record({
    by: fc.constant('numbers' as const),
    prefix: fc.constantFrom('K', '', 'PT', 'Q'),
    first: fc.integer({ min: 1, max: 200 }),
    step: fc.integer({ min: 1, max: 25 }),
  }),
);

function fileOf(drawn: readonly Drawn[]): FamilyFile {
  const profiles = drawn.map(({ section, kind, chambers, shape }, i) => {
    const side = 1 + shape / 10;
    const outline: [number, number][] = [
      [0, 0],
      [side, 0],
      [side, side],
      [0, side],
    ];
    const name = `${section === null ? `loose ${i}` : SECTIONS[section]} ${kind} ${i % 3}`;
    return {
      id: `p${i}`,
      kind,
      name,
      outline,
      ...(section !== null && { section: SECTIONS[section] }),
      ...(chambers && { chambers }),
    };
  });
  return { format: FORMAT, version: VERSION, name: 'Marsh', units: 'mm', runningClearance: 0.04, profiles };
}

function familyIn(file: FamilyFile): Family {
  const read = changeFamily(file);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document.family;
}

test('no keyway, section or blank of the family has a misleading name afterwards', () => {
  fc.assert(
    fc.property(fc.array(profile, { minLength: 1, maxLength: 24 }), scheme, (drawn, wanted) => {
      expect(schemeFault(wanted)).toBeNull();
      const file = fileOf(drawn);
      const family = familyIn(renameIn(file, nameByScheme(familyIn(file), wanted)));
      const tools = new Set(family.profiles.filter(({ kind }) => kind === 'tool').map(({ name }) => name));
      const told = misleadingNames(knownAs(family, () => false));
      expect(told.filter(({ texts }) => !texts.every((text) => tools.has(text)))).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test('every old name still leads to what it named, among what it leads to now', () => {
  fc.assert(
    fc.property(fc.array(profile, { minLength: 1, maxLength: 16 }), scheme, (drawn, wanted) => {
      const file = fileOf(drawn);
      const before = familyIn(file);
      const after = familyIn(renameIn(file, nameByScheme(before, wanted)));
      for (const { id, name } of before.profiles) {
        const senses = registerOf(after).senses.filter(({ text }) => foldName(text) === foldName(name));
        expect(senses.flatMap((sense) => profilesOf(after, sense).map((one) => one.id))).toContain(id);
      }
    }),
    { numRuns: 200 },
  );
});

test('numbers follow the chart with the gaps asked for, and say nothing of length', () => {
  fc.assert(
    fc.property(fc.array(profile, { minLength: 1, maxLength: 24 }), fc.integer({ min: 2, max: 20 }), (drawn, step) => {
      const file = fileOf(drawn);
      const family = familyIn(
        renameIn(file, nameByScheme(familyIn(file), { by: 'numbers', prefix: 'K', first: 10, step })),
      );
      const sections = [...new Set(family.profiles.flatMap(({ section }) => section ?? []))];
      const numbers = sections.map((section) => Number(digitRunsOf(section)[0]));
      for (const [i, number] of numbers.entries())
        if (i > 0) expect(number - numbers[i - 1]).toBeGreaterThanOrEqual(step);
      for (const { section, name, kind } of family.profiles)
        if (section !== undefined && kind !== 'tool') expect(digitRunsOf(name)).toEqual(digitRunsOf(section));
    }),
    { numRuns: 200 },
  );
});

test.each<[NamingScheme, RegExp]>([
  [{ by: 'numbers', prefix: 'PO', first: 10, step: 10 }, /read as a digit/],
  [{ by: 'numbers', prefix: 'K', first: 0, step: 10 }, /first number/],
  [{ by: 'numbers', prefix: 'K', first: 1, step: Number.NaN }, /step/],
  [{ by: 'numbers', prefix: 'K-2', first: 1, step: 1 }, /letters only/],
  [{ by: 'words', words: ['Fern', 'Fem'] }, /looks like/],
  [{ by: 'words', words: ['Heron 2'] }, /digit/],
])('a scheme with a fault names nothing: %o', (wanted, fault) => {
  expect(schemeFault(wanted)).toMatch(fault);
  expect(nameByScheme(familyIn(fileOf([{ section: 0, kind: 'blank', chambers: 5, shape: 1 }])), wanted)).toEqual([]);
});
