import { expect, test } from 'vitest';
import { checkLesson } from '../../../src/teach/check-lesson.ts';
import { partsOf, wordsOf } from '../../../src/teach/lesson-words.ts';
import { demoFamily, knowledgeOf } from './known-family.ts';

const family = demoFamily('first-lesson');
const knowledge = knowledgeOf(family);

test('a step with words of its own keeps them; one without is told by what the core says', () => {
  const pair = { show: 'pair', title: 'x', blank: 'heron-blank', opening: 'plover-keyway' } as const;
  expect(wordsOf({ ...pair, words: 'My own.' }, knowledge)).toBe('My own.');
  expect(wordsOf({ ...pair, words: '  ' }, knowledge)).toBe(knowledge.sentence('heron-blank', 'plover-keyway'));
  expect(wordsOf(pair, knowledge)).toMatch(/^Heron blank does not enter Plover keyway: blocked by the left ward/);
  expect(wordsOf({ ...pair, show: 'question' }, knowledge)).toBe('Does the Heron blank go into the Plover keyway?');
});

test('a wall is told by how many keyways let the blank in, and by their sections', () => {
  const wall = (blank: string, openings?: string[]) =>
    wordsOf({ show: 'wall', title: 'x', blank, ...(openings ? { openings } : {}) }, knowledge);
  expect(wall('reed-group-blank')).toBe('Reed group blank goes into 2 of 3 keyways: Heron and Bittern.');
  expect(wall('strip-06')).toBe('Strip 0.6 x 6 goes into all 3 keyways.');
  expect(wall('heron-blank', ['bittern-keyway', 'plover-keyway'])).toBe('Heron blank goes into none of 2 keyways.');
  expect(wall('no-such-blank')).toBe('');
});

test('a wall with pairs that are not judged yet says nothing rather than too little', () => {
  const unsure = { ...knowledge, fitOf: () => undefined };
  expect(wordsOf({ show: 'wall', title: 'x', blank: 'reed-group-blank' }, unsure)).toBe('');
});

test('sections that are gone are told step by step, and a lesson without faults has none', () => {
  const steps = [
    { show: 'words', title: 'a' },
    { show: 'pair', title: 'b', blank: 'gone-blank', opening: 'heron-keyway' },
    { show: 'pair', title: 'c', blank: 'heron-blank' },
    { show: 'wall', title: 'd', blank: 'heron-blank', openings: ['heron-keyway', 'gone-1', 'gone-2'] },
    { show: 'question', title: 'e', blank: 'heron-keyway', opening: 'heron-blank' },
    { show: 'tiers', title: 'f', blank: 'gone-blank' },
    { show: 'passage', title: 'g', openings: [] },
  ] as const;
  expect(checkLesson(family, { title: 't', steps })).toEqual([
    { step: 1, field: 'blank', words: 'The blank "gone-blank" is no longer in the family: pick another.' },
    { step: 2, field: 'opening', words: 'No keyway is picked: pick one.' },
    { step: 3, field: 'openings', words: '"gone-1", "gone-2" are no longer in the family.' },
    { step: 4, field: 'blank', words: 'The blank "heron-keyway" is no longer in the family: pick another.' },
    { step: 4, field: 'opening', words: 'The keyway "heron-blank" is no longer in the family: pick another.' },
    { step: 5, field: 'blank', words: 'The blank "gone-blank" is no longer in the family: pick another.' },
    { step: 6, field: 'openings', words: 'No keyway is picked: pick at least one.' },
  ]);
  expect(checkLesson(family, { title: 't', steps: [steps[0]] })).toEqual([]);
});

test('parts are looked up by id and kind; where no keyway is named all are shown in chart order', () => {
  const step = { show: 'wall', title: 'x', blank: 'heron-blank', opening: 'heron-blank' } as const;
  const { blank, opening, openings } = partsOf(family, step);
  expect([blank?.id, opening, openings.map(({ id }) => id)]).toEqual([
    'heron-blank',
    null,
    ['heron-keyway', 'bittern-keyway', 'plover-keyway'],
  ]);
  const some = partsOf(family, { ...step, openings: ['plover-keyway', 'heron-keyway', 'x'] });
  expect(some.openings.map(({ id }) => id)).toEqual(['heron-keyway', 'plover-keyway']);
});
