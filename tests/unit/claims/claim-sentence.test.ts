import { describe, expect, test } from 'vitest';
import type { CheckedClaim } from '../../../src/claims/check-claims.ts';
import { claimMargin, claimSentence, oppositeSentence } from '../../../src/claims/claim-sentence.ts';
import type { NamedSide } from '../../../src/claims/resolve-claims.ts';
import type { Fit } from '../../../src/fit/fit.ts';

const words = {
  length: (nm: number) => `${Math.abs(nm) / 1e3} um`,
  bands: () => ({ blank: 20_000, opening: 30_000 }),
  obstacle: () => '',
};
const found = (side: NamedSide['side']): NamedSide => ({
  side,
  text: side,
  standing: 'found',
  ids: [side],
  candidates: [],
});
const fitOf = (clearance: number): Fit => ({
  ...{ verdict: clearance < 0 ? 'blocked' : 'enters', clearance, accuracy: 0, play: { lateral: 0, vertical: 0 } },
  ...{ placement: { x: 0, y: 0, tilt: 0 }, seated: { x: 0, y: 0, tilt: 0 } },
});

/** A claim on a pair with a known margin. */
function checked(
  enters: boolean,
  clearance: number,
  parts: 'always' | 'depends' | 'never',
  standing: CheckedClaim['standing'],
) {
  return {
    ...{
      index: 0,
      claim: { blank: 'a', opening: 'b', enters },
      blank: found('blank'),
      opening: found('opening'),
      standing,
    },
    ...{ pair: { entrantId: 'a', openingId: 'b', fit: fitOf(clearance), parts }, against: [] },
  } satisfies CheckedClaim;
}

describe('why a claim stands as it does', () => {
  test.each([
    [checked(true, 52_000, 'always', 'confirmed'), 'Goes in with 52 um all round.'],
    [checked(true, 0, 'always', 'confirmed'), 'Goes in, touching on both sides.'],
    [checked(false, -210_000, 'never', 'confirmed'), 'Blocked, 210 um too deep.'],
    [
      checked(true, -210_000, 'never', 'contradicted'),
      'It does not go in: blocked, 210 um too deep. No parts within their tolerance go together.',
    ],
    [
      checked(false, 52_000, 'always', 'contradicted'),
      'It does go in with 52 um all round, whatever the parts within their tolerance.',
    ],
    [
      checked(true, 45_000, 'depends', 'too close to call'),
      'As drawn it goes in with 45 um all round; within the tolerances of 50 um together some parts go in and some do not.',
    ],
    [
      checked(true, -5_000, 'depends', 'too close to call'),
      'As drawn it is blocked, 5 um too deep; within the tolerances of 50 um together some parts go in and some do not.',
    ],
    [
      checked(true, 45_000, 'always', 'too close to call'),
      'As drawn it goes in with 45 um all round, but the parts of that name have different tolerances: it depends on which.',
    ],
    [
      checked(true, Number.NEGATIVE_INFINITY, 'never', 'contradicted'),
      'It does not go in: blocked. No parts within their tolerance go together.',
    ],
    [{ ...checked(true, 1, 'always', 'not judged yet'), pair: null }, 'Not judged yet.'],
  ])('%#', (claim, sentence) => {
    expect(claimSentence(claim, words)).toBe(sentence);
  });

  test('what is in the way is named where it is known', () => {
    const known = { ...words, obstacle: () => 'blocked by the left ward at 2-3 mm, 210 um too deep' };
    expect(claimSentence(checked(false, -210_000, 'never', 'confirmed'), known)).toBe(
      'Blocked by the left ward at 2-3 mm, 210 um too deep.',
    );
  });

  test('names that are not known are told with those that may be meant', () => {
    const base = { ...checked(true, 1, 'always', 'name not found'), pair: null };
    const blank = { ...found('blank'), text: 'Hern', standing: 'not found', candidates: ['Heron', 'Tern'] } as const;
    const opening = { ...found('opening'), text: 'K9', standing: 'other kind', candidates: [] } as const;
    expect(claimSentence({ ...base, blank, opening }, words)).toBe(
      'No blank or tool is called “Hern”. Perhaps Heron or Tern. “K9” names no keyway.',
    );
    const ambiguous = { ...found('blank'), text: 'Reed', standing: 'ambiguous', candidates: ['a', 'b', 'c'] } as const;
    expect(claimSentence({ ...base, standing: 'name ambiguous', blank: ambiguous }, words)).toBe(
      '“Reed” stands for different outlines: a, b and c.',
    );
  });
});

test('who says the opposite', () => {
  const claims = ['a', 'b', undefined, 'c', 'a'].map((by) => ({ blank: '', opening: '', enters: true, by }));
  const say = (...against: number[]) => oppositeSentence({ against }, claims);
  expect(say()).toBe('');
  expect(say(0)).toBe('A says the opposite.');
  expect(say(0, 4)).toBe('A says the opposite.');
  expect(say(1, 2)).toBe('B and somebody unnamed say the opposite.');
  expect(say(0, 1, 2, 3)).toBe('A, b and 2 more say the opposite.');
});

test('the margin in short', () => {
  const margin = (clearance: number) => claimMargin(checked(true, clearance, 'always', 'confirmed'), words);
  expect([52_000, 0, -3_000, Number.NEGATIVE_INFINITY].map(margin)).toEqual([
    '+52 um',
    'touching',
    '3 um too deep',
    '',
  ]);
});
