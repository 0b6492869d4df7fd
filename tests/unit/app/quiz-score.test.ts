import { expect, test } from 'vitest';
import type { Shelf } from '../../../src/app/state/kept-store.ts';
import { answerNow, beginRound, goOn, markedAnswers, questionNow } from '../../../src/app/state/teach/quiz-round.ts';
import { keepRound, makeQuizScoreStore, NO_SCORE } from '../../../src/app/state/teach/quiz-score.ts';
import { makeTeachStore } from '../../../src/app/state/teach/teach-state.ts';
import { demoFamily, knowledgeOf } from '../teach/known-family.ts';

test('the score outlives the session, can be wiped, and a shelf with nonsense on it is as good as an empty one', () => {
  const kept = new Map<string, string>();
  const shelf: Shelf = { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => kept.set(key, value) };
  const store = makeQuizScoreStore(shelf);
  keepRound(store, { right: 7, of: 10, longest: 4 });
  keepRound(store, { right: 9, of: 10, longest: 3 });
  expect(makeQuizScoreStore(shelf).getState()).toEqual({ rounds: 2, right: 16, of: 20, longest: 4 });
  store.setState(NO_SCORE);
  expect(makeQuizScoreStore(shelf).getState()).toEqual(NO_SCORE);
  for (const nonsense of [
    '',
    '{',
    '[]',
    '{"rounds":-1,"right":0,"of":0,"longest":0}',
    '{"rounds":1,"right":3,"of":2,"longest":0}',
  ])
    expect(makeQuizScoreStore({ getItem: () => nonsense, setItem: () => {} }).getState()).toEqual(NO_SCORE);
});

test('a shelf that refuses costs the memory of the score and nothing else', () => {
  const refuse = () => {
    throw new Error('quota exceeded');
  };
  const store = makeQuizScoreStore({ getItem: refuse, setItem: refuse });
  keepRound(store, { right: 1, of: 1, longest: 1 });
  expect(store.getState().rounds).toBe(1);
});

test('a round goes question by question, takes one answer each, and is counted once at its end', () => {
  const knowledge = knowledgeOf(demoFamily('first-lesson'));
  const window = { teach: makeTeachStore(), quizScore: makeQuizScoreStore(null) };
  expect(beginRound(window, knowledge, 11)).toBe(true);
  const round = () => {
    const now = window.teach.getState().round;
    if (!now) throw new Error('no round');
    return now;
  };
  const count = round().questions.length;
  for (let n = 0; n < count; n++) {
    expect(questionNow(round())?.at).toBe(n);
    answerNow(window, 'enters');
    answerNow(window, 'blocked');
    expect(round().said).toHaveLength(n + 1);
    expect(questionNow(round())?.at).toBe(n);
    goOn(window, knowledge);
    goOn(window, knowledge);
  }
  expect(questionNow(round())).toBeNull();
  const goesIn = round().questions.filter(
    (q) => knowledge.fitOf(q.entrantId, q.openingId)?.verdict !== 'blocked',
  ).length;
  expect(markedAnswers(round(), knowledge).filter((answer) => answer?.right)).toHaveLength(goesIn);
  answerNow(window, 'enters');
  goOn(window, knowledge);
  expect(window.quizScore.getState()).toMatchObject({ rounds: 1, right: goesIn, of: count });
});

test('where nothing is judged no round begins', () => {
  const knowledge = { ...knowledgeOf(demoFamily('first-lesson')), fitOf: () => undefined };
  const teach = makeTeachStore();
  expect(beginRound({ teach }, knowledge, 1)).toBe(false);
  expect(teach.getState().round).toBeNull();
});
