import { expect, it } from 'vitest';
import { registerOf, sectionsOf } from '../../../src/names/register.ts';
import { familyOf, named, sectionOf } from '../../kit/named-family.ts';

const family = familyOf(
  [...sectionOf('Heron', 1, 5), named('tool', 'Pick')],
  [
    { text: 'PC 1', kind: 'blank', profile: 'blank-heron-blank-5-1', scheme: 'List' },
    { text: 'PC 2', kind: 'blank', section: 'Gone', profile: 'gone', supersededBy: 'PC 1', note: 'lost' },
  ],
);

it('has profiles in chart order, then sections, then the register, each with where it stands', () => {
  const told = registerOf(family).senses.map(({ text, kind, source, index }) => [text, kind, source, index]);
  expect(told).toEqual([
    ['Heron keyway', 'keyway', 'profile', null],
    ['Heron blank', 'blank', 'profile', null],
    ['Pick', 'tool', 'profile', null],
    ['Heron', 'section', 'section', null],
    ['PC 1', 'blank', 'register', 0],
    ['PC 2', 'blank', 'register', 1],
  ]);
  expect(sectionsOf(family)).toEqual(['Heron']);
});

it('takes section and length from the profile that an entry names, and keeps what is not there', () => {
  const [known, gone] = registerOf(family).senses.slice(-2);
  expect(known).toMatchObject({ section: 'Heron', chambers: 5, scheme: 'List', supersededBy: null, note: null });
  expect(gone).toMatchObject({ section: 'Gone', profile: 'gone', supersededBy: 'PC 1', note: 'lost', chambers: null });
});

it('is the same value for the same family', () => {
  expect(registerOf(family)).toBe(registerOf(family));
  expect(registerOf({ ...family })).not.toBe(registerOf(family));
});
