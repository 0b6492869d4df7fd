import { expect, test } from 'vitest';
import { makeQuiz, markAnswer, nearMissesOf, scoreOf } from '../../../src/teach/quiz.ts';
import type { TeachingKnowledge } from '../../../src/teach/teaching-knowledge.ts';
import { demoFamily, familyOf, knowledgeOf } from './known-family.ts';

const college = knowledgeOf(demoFamily('polderwick'));
const first = knowledgeOf(demoFamily('first-lesson'));
const SEEDS = Array.from({ length: 60 }, (_, i) => i * 7919 + 1);

const verdictsOf = (knowledge: TeachingKnowledge, seed: number) =>
  makeQuiz(knowledge, seed).map(({ entrantId, openingId }) => knowledge.fitOf(entrantId, openingId)?.verdict);

test('a seed gives the same round each time, another seed another round', () => {
  expect(makeQuiz(college, 5)).toEqual(makeQuiz(college, 5));
  const rounds = new Set(SEEDS.map((seed) => JSON.stringify(makeQuiz(college, seed))));
  expect(rounds.size).toBe(SEEDS.length);
});

test('every round has ten questions, some that go in, a tight one, some that do not, and near misses', () => {
  const near = new Set(nearMissesOf(college).map(({ entrantId, openingId }) => `${entrantId} ${openingId}`));
  const counts = new Set<number>();
  for (const seed of SEEDS) {
    const questions = makeQuiz(college, seed);
    const verdicts = verdictsOf(college, seed);
    const blocked = verdicts.filter((verdict) => verdict === 'blocked').length;
    counts.add(blocked);
    expect(questions).toHaveLength(10);
    expect(verdicts).toContain('tight');
    expect(verdicts).toContain('enters');
    expect(blocked).toBeGreaterThanOrEqual(4);
    expect(blocked).toBeLessThanOrEqual(6);
    const missed = questions.filter(({ entrantId, openingId }) => near.has(`${entrantId} ${openingId}`)).length;
    expect(missed).toBeGreaterThanOrEqual(blocked / 2);
  }
  // The number of each is not always the same, so the last answer cannot be counted out.
  expect(counts.size).toBeGreaterThan(1);
});

test('the order is mixed: the first answer is now this, now that', () => {
  const firsts = SEEDS.map((seed) => verdictsOf(college, seed)[0] === 'blocked');
  expect(firsts).toContain(true);
  expect(firsts).toContain(false);
});

test('a near miss fails by less than any blocked pair that is none', () => {
  const { family, fitOf } = college;
  const depth = (entrant: string, opening: string) => -(fitOf(entrant, opening)?.clearance ?? 0);
  const near = nearMissesOf(college);
  const isNear = new Set(near.map(({ entrantId, openingId }) => `${entrantId} ${openingId}`));
  const deepestNear = Math.max(...near.map(({ entrantId, openingId }) => depth(entrantId, openingId)));
  for (const entrant of family.profiles)
    for (const opening of family.profiles) {
      const blocked = fitOf(entrant.id, opening.id)?.verdict === 'blocked';
      const twin = entrant.id === 'heron-blank-6';
      if (blocked && !twin && !isNear.has(`${entrant.id} ${opening.id}`))
        expect(depth(entrant.id, opening.id)).toBeGreaterThanOrEqual(deepestNear);
    }
});

test('no two questions of a round are the same pair of shapes, and no blank is asked again and again', () => {
  for (const seed of SEEDS) {
    const shapes = makeQuiz(college, seed).map(
      ({ entrantId, openingId }) => `${entrantId.replace(/-\d$/, '')} ${openingId}`,
    );
    expect(new Set(shapes).size).toBe(shapes.length);
    const perBlank = new Map<string, number>();
    for (const shape of shapes) perBlank.set(shape.split(' ')[0], (perBlank.get(shape.split(' ')[0]) ?? 0) + 1);
    expect(Math.max(...perBlank.values())).toBeLessThanOrEqual(3);
  }
});

test('a small family gives the questions that it has; one without pairs, or not judged, gives none', () => {
  // 5 entrants in 3 keyways.
  expect(makeQuiz(first, 3, 40)).toHaveLength(15);
  expect(makeQuiz({ ...first, fitOf: () => undefined }, 3)).toEqual([]);
  const blade = {
    id: 'a',
    kind: 'blank',
    name: 'A',
    outline: [
      [0, 0],
      [1, 0],
      [1, 2],
    ],
  };
  const file = {
    format: 'sectionary-family',
    version: 1,
    name: 'x',
    units: 'mm',
    runningClearance: 0,
    profiles: [blade],
  };
  expect(makeQuiz(knowledgeOf(familyOf(JSON.stringify(file))), 3)).toEqual([]);
});

test('blocked pairs whose depth is not known yet are not asked', () => {
  const unmeasured: TeachingKnowledge = {
    ...first,
    fitOf: (entrant, opening) => {
      const fit = first.fitOf(entrant, opening);
      return fit?.verdict === 'blocked' ? { ...fit, clearance: Number.NEGATIVE_INFINITY } : fit;
    },
  };
  expect(makeQuiz(unmeasured, 1).every((q) => unmeasured.fitOf(q.entrantId, q.openingId)?.verdict !== 'blocked')).toBe(
    true,
  );
});

test('answers are marked by the core: tight and enters both mean that it goes in', () => {
  const tight = { entrantId: 'strip-131', openingId: 'dunlin-keyway' };
  const blocked = { entrantId: 'strip-131', openingId: 'smew-keyway' };
  expect(markAnswer(college, tight, 'enters')).toMatchObject({ right: true, verdict: 'tight' });
  expect(markAnswer(college, tight, 'tight')).toMatchObject({ right: true });
  expect(markAnswer(college, tight, 'blocked')).toMatchObject({ right: false });
  expect(markAnswer(college, blocked, 'enters')).toMatchObject({ right: false, verdict: 'blocked' });
  expect(markAnswer(college, blocked, 'blocked')?.sentence).toMatch(/does not enter Smew keyway/);
  expect(markAnswer(college, { entrantId: 'gone', openingId: 'smew-keyway' }, 'blocked')).toBeNull();
});

test('a score counts right answers and rows of them; what cannot be marked neither counts nor breaks a row', () => {
  const right = { right: true, verdict: 'enters', sentence: '' } as const;
  const wrong = { ...right, right: false };
  expect(scoreOf([])).toEqual({ right: 0, of: 0, streak: 0, longest: 0 });
  expect(scoreOf([right, right, null, right, wrong, right])).toEqual({ right: 4, of: 5, streak: 1, longest: 3 });
});
