import { expect, test } from 'vitest';
import type { Family } from '../../../src/family/family.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { checkLesson } from '../../../src/teach/check-lesson.ts';
import { makeLesson } from '../../../src/teach/make-lesson.ts';
import { nearMissesOf } from '../../../src/teach/quiz.ts';
import { soundRing } from '../../kit/shapes.ts';
import { demoFamily, familyOf, knowledgeOf } from './known-family.ts';

const polderwick = demoFamily('polderwick');

test('the demo family gives one step of each kind that there is to teach, and shows only what it has', () => {
  const lesson = makeLesson(knowledgeOf(polderwick));
  expect(lesson.steps.map(({ show, blank, opening }) => [show, blank, opening])).toEqual([
    ['words', undefined, undefined],
    ['pair', 'heron-blank-5', 'heron-keyway'],
    ['pair', 'heron-blank-5', 'smew-keyway'],
    ['wall', 'smew-blank', undefined],
    ['wall', 'reed-group-blank', undefined],
    ['tiers', 'polder-all-section-blank', undefined],
    ['wall', 'polder-all-section-blank', undefined],
    ['pair', 'heron-blank-6', 'heron-keyway'],
    ['passage', undefined, undefined],
    ['question', lesson.steps[9].blank, lesson.steps[9].opening],
  ]);
  expect(checkLesson(polderwick, lesson)).toEqual([]);
});

test('the question is about a pair that is blocked, by a blank other than that of the first steps', () => {
  const knowledge = knowledgeOf(polderwick);
  const asked = makeLesson(knowledge).steps.at(-1);
  expect(asked?.show).toBe('question');
  expect(knowledge.fitOf(asked?.blank ?? '', asked?.opening ?? '')?.verdict).toBe('blocked');
  expect(asked?.blank).not.toMatch(/^heron/);
});

test('the same outline drawn elsewhere, from another vertex on, is still the same section', () => {
  const aside: Family = {
    ...polderwick,
    profiles: polderwick.profiles.map((profile) =>
      profile.id === 'heron-blank-6' ? { ...profile, ring: drawnElsewhere(profile.ring) } : profile,
    ),
  };
  const lengths = makeLesson(knowledgeOf(aside)).steps.find(({ title }) => title === 'Two names, one section');
  expect(lengths?.blank).toBe('heron-blank-6');
  const pairs = nearMissesOf(knowledgeOf(aside)).map(({ entrantId, openingId }) => `${entrantId} ${openingId}`);
  const plain = nearMissesOf(knowledgeOf(polderwick)).map(({ entrantId, openingId }) => `${entrantId} ${openingId}`);
  expect(pairs).toEqual(plain);
});

/** An outline 1 mm aside that begins with its fourth vertex. */
function drawnElsewhere(ring: Ring): Ring {
  const moved = ring.map(({ x, y }) => ({ x: x + 1e6, y }));
  return soundRing([...moved.slice(3), ...moved.slice(0, 3)]);
}

const part = (keep: (id: string) => boolean): Family => ({
  ...polderwick,
  profiles: polderwick.profiles.filter(({ id }) => keep(id)),
});

test('a family without group blanks, lengths or a second keyway gives the steps that are left', () => {
  const shows = (family: Family) => makeLesson(knowledgeOf(family)).steps.map(({ show }) => show);
  expect(shows(part((id) => id.startsWith('heron-keyway') || id === 'heron-blank-5'))).toEqual(['words', 'pair']);
  expect(shows(part((id) => id.endsWith('-keyway')))).toEqual(['words', 'passage']);
  expect(shows(part((id) => id === 'heron-blank-5'))).toEqual(['words']);
  expect(shows(part((id) => /^(heron|bittern)-(keyway|blank|blank-5)$/.test(id)))).toEqual([
    'words',
    'pair',
    'pair',
    'passage',
    'question',
  ]);
});

test('titles stay within what a file may hold, however long the names are', () => {
  const name = 'N'.repeat(200);
  const square = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ];
  const profiles = [
    { id: 'k', kind: 'opening', name, section: name, outline: square.map(([x, y]) => [x * 1.1, y * 1.1]) },
    { id: 'b', kind: 'blank', name, section: name, outline: square },
  ];
  const file = { format: 'sectionary-family', version: 1, name, units: 'mm', runningClearance: 0.04, profiles };
  const lesson = makeLesson(knowledgeOf(familyOf(JSON.stringify(file))));
  const again = familyOf(JSON.stringify({ ...file, lesson }));
  expect(again.lesson?.steps).toHaveLength(2);
});
