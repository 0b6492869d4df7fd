import { expect, test } from 'vitest';
import { runClingo } from '../../../src/plan/run-clingo.ts';

const pause = () => new Promise<void>((resolve) => setImmediate(resolve));
const goOn = () => false;

/** Holes and one pigeon more: no model, and long to show. */
const pigeons = (holes: number) =>
  `p(1..${holes + 1}). h(1..${holes}). 1 { at(P,H) : h(H) } 1 :- p(P). :- at(P,H), at(Q,H), P < Q.`;

test('a model comes as its atoms, none as none', async () => {
  expect(await runClingo('a. b :- a. #show b/0.', goOn, pause)).toEqual({ kind: 'model', atoms: ['b'] });
  expect(await runClingo('a. :- a.', goOn, pause)).toEqual({ kind: 'none' });
});

test('a programme that is too long is not handed over', async () => {
  const answer = await runClingo(`${'a. '.repeat(500_000)}`, goOn, pause);
  expect(answer).toMatchObject({ kind: 'unknown', why: 'too large' });
});

test('what clingo does not understand is said, and it answers again', async () => {
  expect(await runClingo('a :- (', goOn, pause)).toMatchObject({ kind: 'unknown', why: 'failed' });
  expect(await runClingo('a.', goOn, pause)).toEqual({ kind: 'model', atoms: ['a'] });
});

test('work that takes long is ended when asked, the next question waits its turn', async () => {
  let looks = 0;
  const stopped = runClingo(pigeons(14), () => ++looks > 20, pause);
  const next = runClingo('b.', goOn, pause);
  expect(await stopped).toMatchObject({ kind: 'unknown', why: 'stopped' });
  expect(await next).toEqual({ kind: 'model', atoms: ['b'] });
  expect(looks).toBe(21);
});
