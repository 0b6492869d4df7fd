// Interference: the least over all placements of the greatest distance of a point of the blank from the opening, the
// directed Hausdorff distance under translation (Huttenlocher, Kedem & Sharir, Discrete Comput. Geom. 9 (1993) 267-291;
// Alt, Behrends & Blomer, Ann. Math. Artif. Intell. 13 (1995) 251-265). Closed forms: tests/cases/blocked-fits.ts.
// Against JSTS both ways. The depth of the placement shown is measured by overlay with the grown opening: the true
// least can be no more. And the blank must not go into the opening grown by a little less, by JSTS or manifold-3d: the
// true least can be no less, wherever the blank may be. Besides, depths on a grid round the placement shown.

import { beforeAll, describe, expect, test, vi } from 'vitest';
import { blockedFits } from '../cases/blocked-fits.ts';
import type { FitCase } from '../cases/fit-case.ts';
import { keywayPair } from '../cases/keyway-pairs.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { clipper2InnerFit, loadClipper2 } from '../kit/engines/clipper2-inner-fit.ts';
import { type CoreAnswer, coreAnswer } from '../kit/engines/core-answer.ts';
import { knownFaults, PROMISE, witnessFaults } from '../kit/engines/disagreements.ts';
import type { InnerFitEngine } from '../kit/engines/inner-fit-result.ts';
import { jstsInnerFit } from '../kit/engines/jsts-inner-fit.ts';
import { ARC_SHORTFALL, DepthMeter, grownOpening, leastDepthOnGrid } from '../kit/engines/jsts-interference.ts';
import { loadManifold, manifoldInnerFit } from '../kit/engines/manifold-inner-fit.ts';

// Two slow cores shared with other work must not fail a correct answer.
vi.setConfig({ testTimeout: 120_000 });

beforeAll(async () => {
  await Promise.all([loadManifold(), loadClipper2()]);
});

/** Rounding of the grown outline's vertices. */
const ROUNDING = 2;

/** Goes into the opening grown by less than the interference: then the interference is said too large. */
function saidTooLarge(fitCase: FitCase, { fit }: CoreAnswer, engine: InnerFitEngine): string[] {
  const least = -fit.clearance - fit.accuracy - ROUNDING;
  if (least <= 1) return [];
  const { area, radius } = engine(grownOpening(fitCase.opening, least), fitCase.blank);
  return area > 0 && radius > 1 ? [`${fitCase.name}: goes in when grown by ${least}, said ${-fit.clearance}`] : [];
}

function blockedOf(
  count: number,
  from: number,
  pairOf: (seed: number) => FitCase,
): { pair: FitCase; answer: CoreAnswer }[] {
  const pairs = Array.from({ length: count }, (_, i) => pairOf(from + i)).map((pair) => ({
    pair,
    answer: coreAnswer(pair),
  }));
  return pairs.filter(({ answer }) => answer.fit.verdict === 'blocked');
}

describe('closed forms', () => {
  test.each(blockedFits)('$name', (fitCase) => {
    const answer = coreAnswer(fitCase);
    expect(knownFaults(fitCase, answer)).toEqual([]);
    expect(witnessFaults(fitCase, answer)).toEqual([]);
    expect(saidTooLarge(fitCase, answer, jstsInnerFit)).toEqual([]);
    expect(saidTooLarge(fitCase, answer, clipper2InnerFit)).toEqual([]);
    expect(answer.fit.accuracy).toBeLessThanOrEqual(PROMISE);
  });
});

const classes: [string, () => { pair: FitCase; answer: CoreAnswer }[], string, InnerFitEngine][] = [
  [
    'keyways at 20 vertices',
    () => blockedOf(80, 3000, (seed) => keywayPair(seed, 20)),
    'manifold-3d',
    manifoldInnerFit,
  ],
  [
    'keyways at 60 vertices',
    () => blockedOf(30, 3000, (seed) => keywayPair(seed, 60)),
    'clipper2-wasm',
    clipper2InnerFit,
  ],
  ['polygons', () => blockedOf(60, 3000, polygonPair), 'manifold-3d', manifoldInnerFit],
];

describe.each(classes)('%s', (_, pairsOf, secondName, second) => {
  const pairs = pairsOf();

  test('enough of them are blocked', () => expect(pairs.length).toBeGreaterThan(10));

  test('stated within a micrometre', () => {
    expect(pairs.filter(({ answer }) => answer.fit.accuracy > PROMISE).map(({ pair }) => pair.name)).toEqual([]);
  });

  test('no less: the depth at the placement shown, by JSTS', () => {
    expect(pairs.flatMap(({ pair, answer }) => witnessFaults(pair, answer))).toEqual([]);
  });

  test('no more: blocked in the grown opening, by JSTS', () => {
    expect(pairs.flatMap(({ pair, answer }) => saidTooLarge(pair, answer, jstsInnerFit))).toEqual([]);
  });

  test(`no more: blocked in the grown opening, by ${secondName}`, () => {
    expect(pairs.slice(0, 12).flatMap(({ pair, answer }) => saidTooLarge(pair, answer, second))).toEqual([]);
  });
});

test('on a grid round the placement shown nothing is shallower', () => {
  for (const { pair, answer } of blockedOf(16, 4000, (seed) => keywayPair(seed, 20))) {
    const meter = new DepthMeter(pair.opening, pair.blank);
    const said = -answer.fit.clearance;
    for (const pitch of [20, said / 4]) {
      const least = leastDepthOnGrid(meter, answer.fit.placement, pitch, 5, 10);
      expect(least, pair.name).toBeGreaterThan(said - answer.fit.accuracy - 10);
      expect(least, pair.name).toBeLessThan(said + answer.fit.accuracy + 20 + ARC_SHORTFALL);
    }
  }
});
