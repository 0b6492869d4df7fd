import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { NameEntry } from '../../../src/family/name-entry.ts';
import { ask, LONGEST_QUESTION } from '../../../src/names/ask.ts';
import { misleadingNames } from '../../../src/names/misleading.ts';
import { resolveName } from '../../../src/names/resolve.ts';
import { demoKnowledge } from '../../kit/demo-knowledge.ts';
import { familyOf, knownAs, named, sectionOf } from '../../kit/named-family.ts';

const knowledge = demoKnowledge();

it('answers every text without a throw', () => {
  const words = fc.constantFrom(
    'Heron',
    'bittern',
    'PC',
    '105',
    '1O5',
    'goes',
    'into',
    'what',
    'is',
    '"',
    '“',
    '”',
    "'s",
    '-',
    ',',
    '?',
    'blank',
    'keyways',
    'six',
    'chambers',
    'not',
    'and',
    'all',
    'who',
    'differs',
    '\u202e',
    '👨‍👩‍👧',
    '<img src=x onerror=alert(1)>',
    '(',
    '\\',
    '$&',
    '\0',
    'עברית',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.array(words, { maxLength: 30 }).map((all) => all.join(' ')),
        fc.string({ unit: 'binary', maxLength: LONGEST_QUESTION }),
      ),
      (question) => {
        const answer = ask(question, knowledge);
        expect(answer.sentences.length).toBeGreaterThan(0);
        expect(answer.choices.length).toBeLessThanOrEqual(10);
      },
    ),
    { numRuns: 300 },
  );
});

it.each([
  ['letters', 'a'.repeat(10_000)],
  ['digits', '1 '.repeat(5_000)],
  ['spaces', ' '.repeat(10_000)],
  ['names', 'Heron '.repeat(1_600)],
  ['quotation marks', '"'.repeat(10_000)],
  ['hyphens', '-'.repeat(10_000)],
  ['a term without end', `what is ${'a '.repeat(4_000)}`],
])('10,000 signs of %s come to an answer', (_, question) => {
  expect(ask(question, knowledge).sentences.length).toBeGreaterThan(0);
  expect(ask(question.slice(0, LONGEST_QUESTION), knowledge).sentences.length).toBeGreaterThan(0);
  expect(resolveName(knowledge.register, question).kind).not.toBe('found');
});

it('knows names of emoji, from right to left, of markup, and of words of questions', () => {
  const odd = ['👍', '🔑🔑', 'מפתח', '<b>X</b>', 'What', 'go into', 'A', 'I', 'constructor', '__proto__', '$&'];
  const family = familyOf(odd.flatMap((section, i) => sectionOf(section, i + 1)));
  const known = knownAs(family);
  for (const section of odd) {
    const answer = ask(`Does "${section} blank" go into "${section} keyway"?`, known);
    expect([section, answer.kind, answer.verdict]).toEqual([section, 'answer', 'enters']);
  }
  expect(ask('Does A go into B?', knownAs(familyOf([...sectionOf('A', 1), ...sectionOf('B', 2)]))).verdict).toBe(
    'blocked',
  );
  expect(ask('does a go into b', knownAs(familyOf([...sectionOf('A', 1), ...sectionOf('B', 2)]))).verdict).toBe(
    'blocked',
  );
  expect(ask('Does I go into I', known).verdict).toBe('enters');
  expect(ask('Can I put 👍 into 🔑🔑?', known).verdict).toBe('blocked');
  expect(() => misleadingNames(known)).not.toThrow();
});

it('does not mind a register of any make: circles, dangling ids, empty sections', () => {
  const entry = fc.record<NameEntry>(
    {
      text: fc.constantFrom('Heron', 'X 1', 'X 2', 'HB', ' ', '1O', 'blank', 'Heron blank'),
      kind: fc.constantFrom('keyway', 'section', 'blank', 'tool', 'series'),
      section: fc.constantFrom('Heron', 'Gone', 'Smew'),
      profile: fc.constantFrom('gone', 'blank-heron-blank--1'),
      scheme: fc.constantFrom('List', 'the Book'),
      chambers: fc.integer({ min: 1, max: 12 }),
      supersededBy: fc.constantFrom('Heron', 'X 1', 'X 2', 'nowhere'),
      note: fc.constantFrom('', 'note'),
    },
    { requiredKeys: ['text', 'kind'] },
  );
  const questions = [
    'What is X 1?',
    'Does X 1 go into X 2?',
    'What goes into HB?',
    'Is X 1 the same as Heron?',
    'X 2',
    'Where does X 2 of the Book go?',
    'What goes into all?',
  ];
  const profiles = [
    ...sectionOf('Heron', 1),
    ...sectionOf('Smew', 2),
    ...sectionOf('Bittern', 3),
    named('tool', 'Pick'),
  ];
  fc.assert(
    fc.property(fc.array(entry, { maxLength: 12 }), (names) => {
      const known = knownAs(familyOf(profiles, names));
      for (const question of questions) expect(ask(question, known).sentences.length).toBeGreaterThan(0);
      for (const { words, why } of misleadingNames(known)) expect(`${words}${why}`).not.toMatch(/undefined|null|NaN/);
    }),
    { numRuns: 300 },
  );
});

it('finds its way in a large family', () => {
  const profiles = Array.from({ length: 200 }, (_, i) =>
    sectionOf(`Section ${String.fromCharCode(65 + (i % 26))}${i}`, i + 1),
  ).flat();
  const names = Array.from(
    { length: 2_000 },
    (_, i): NameEntry => ({
      text: `N ${i}`,
      kind: 'blank',
      section: profiles[(i % 200) * 2].section,
      scheme: 'List',
      chambers: 5 + (i % 2),
    }),
  );
  const known = knownAs(familyOf(profiles, names));
  const long = 'the quick brown fox jumps over '.repeat(18);
  expect(ask(long, known).kind).not.toBe('answer');
  expect(misleadingNames(known)).not.toEqual([]);
  expect(ask('Does N 17 go into the Sektion B1 keyway', known).choices).not.toEqual([]);
});
