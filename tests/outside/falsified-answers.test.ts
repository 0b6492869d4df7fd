// The comparisons themselves: a right answer passes, and the same answer falsified by little more than a micrometre, or
// turned round, is caught by name. Otherwise empty lists of disagreements would prove nothing.

import { beforeAll, describe, expect, test } from 'vitest';
import type { FitCase } from '../cases/fit-case.ts';
import { keywayPair, nearContactPair } from '../cases/keyway-pairs.ts';
import { type CoreAnswer, coreAnswer } from '../kit/engines/core-answer.ts';
import { disagreements, knownFaults, witnessFaults } from '../kit/engines/disagreements.ts';
import { jstsInnerFit } from '../kit/engines/jsts-inner-fit.ts';
import { loadManifold, manifoldInnerFit } from '../kit/engines/manifold-inner-fit.ts';

beforeAll(async () => {
  await loadManifold();
});

const fitting = findPair((answer, pair) => answer.fit.clearance > 5000 && pair.known.clearance !== undefined);
const blocked = findPair((answer) => answer.fit.verdict === 'blocked' && answer.fit.clearance < -5000);

function findPair(wanted: (answer: CoreAnswer, pair: FitCase) => boolean): { pair: FitCase; answer: CoreAnswer } {
  for (let seed = 0; ; seed++) {
    const pair = keywayPair(seed, 20);
    const answer = coreAnswer(pair);
    if (wanted(answer, pair)) return { pair, answer };
  }
}

function allFaults({ pair, answer }: { pair: FitCase; answer: CoreAnswer }): string[] {
  return [
    ...disagreements(pair, answer, 'JSTS', jstsInnerFit),
    ...disagreements(pair, answer, 'manifold-3d', manifoldInnerFit),
    ...witnessFaults(pair, answer),
    ...knownFaults(pair, answer),
  ];
}

function withFit(answer: CoreAnswer, change: Partial<CoreAnswer['fit']>): CoreAnswer {
  return { ...answer, fit: { ...answer.fit, ...change } };
}

test('right answers pass', () => {
  expect(allFaults(fitting)).toEqual([]);
  expect(allFaults(blocked)).toEqual([]);
});

describe('of a pair that goes in', () => {
  const { pair, answer } = fitting;
  const { fit, area } = answer;
  const falsified: [string, CoreAnswer][] = [
    ['clearance 1.1 um too large', withFit(answer, { clearance: fit.clearance + 1100 })],
    ['clearance 1.1 um too small', withFit(answer, { clearance: fit.clearance - 1100 })],
    ['called blocked', withFit(answer, { verdict: 'blocked', clearance: -3000 })],
    ['placed elsewhere', withFit(answer, { placement: { ...fit.placement, x: fit.placement.x + 1100 } })],
    ['play 1.1 um too wide', withFit(answer, { play: { ...fit.play, lateral: fit.play.lateral + 1100 } })],
    ['a roughly stated clearance', withFit(answer, { accuracy: 1100 })],
    ['area as if 2 nm were lost at the edge', { ...answer, area: area - 2 * (fit.play.lateral + fit.play.vertical) }],
  ];
  test.each(falsified)('%s', (_, wrong) => expect(allFaults({ pair, answer: wrong })).not.toEqual([]));
});

describe('of a pair that does not', () => {
  const { pair, answer } = blocked;
  const { fit } = answer;
  const falsified: [string, CoreAnswer][] = [
    ['called tight', withFit(answer, { verdict: 'tight', clearance: 500 })],
    ['interference 1.1 um too large', withFit(answer, { clearance: fit.clearance - 1100 })],
    ['interference 1.1 um too small', withFit(answer, { clearance: fit.clearance + 1100 })],
    ['placed elsewhere', withFit(answer, { placement: { ...fit.placement, x: fit.placement.x + 3000 } })],
    ['area out of nothing', { ...answer, area: 1e6 }],
  ];
  test.each(falsified)('%s', (_, wrong) => expect(allFaults({ pair, answer: wrong })).not.toEqual([]));
});

test('of a pair in exact contact: called blocked, or given a clearance', () => {
  const pair = nearContactPair(0, 20);
  const answer = coreAnswer(pair);
  expect(pair.known.outcome).toBe('contact');
  expect(allFaults({ pair, answer })).toEqual([]);
  expect(allFaults({ pair, answer: withFit(answer, { verdict: 'blocked', clearance: -1 }) })).not.toEqual([]);
  expect(allFaults({ pair, answer: withFit(answer, { clearance: 60 }) })).not.toEqual([]);
});
