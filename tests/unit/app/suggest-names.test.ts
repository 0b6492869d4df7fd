import { expect, it } from 'vitest';
import { suggestNames, takeName } from '../../../src/app/state/names/suggest-names.ts';
import type { Sense } from '../../../src/names/register.ts';

const sense = (text: string): Sense => ({
  text,
  kind: 'blank',
  profile: null,
  section: null,
  scheme: null,
  chambers: null,
  supersededBy: null,
  note: null,
  source: 'register',
  index: 0,
});

const register = {
  senses: ['Heron keyway', 'Heron blank, five chambers', 'Smew blank', '106', '1060', 'Inlet', 'Heron keyway'].map(
    sense,
  ),
};

const names = (text: string, caret = text.length) => suggestNames(register, text, caret)?.names ?? [];

it('offers the names that begin with the last words typed, each once', () => {
  expect(names('does the her')).toEqual(['Heron keyway', 'Heron blank, five chambers']);
  expect(names('does HERON B')).toEqual(['Heron blank, five chambers']);
  expect(names('what is 10')).toEqual(['106', '1060']);
  expect(names('what differs between Smew blank and sm')).toEqual(['Smew blank']);
});

it('offers nothing for words of the question, one letter, or a name that stands there in full', () => {
  expect(names('what goes in')).toEqual([]);
  expect(names('what is s')).toEqual([]);
  expect(names('what is Smew blank')).toEqual([]);
  expect(names('')).toEqual([]);
  // 106 is whole, but 1060 begins with it too.
  expect(names('what is 106')).toEqual(['106', '1060']);
});

it('replaces what was typed before the caret and keeps what stands after it', () => {
  const text = 'does smew go into Heron keyway?';
  const caret = 'does smew'.length;
  const suggested = suggestNames(register, text, caret);
  if (!suggested) throw new Error('nothing offered');
  expect(takeName(text, suggested, 'Smew blank')).toEqual({
    text: 'does Smew blank go into Heron keyway?',
    caret: 'does Smew blank'.length,
  });
  expect(takeName('what is 10x', { from: 8, to: 10, names: [] }, '106').text).toBe('what is 106 x');
});
