import { expect, test } from 'vitest';
import { headlineOf, rowOf, tallyOf } from '../../../src/app/state/fits-lookup.ts';
import { pairLine } from '../../../src/app/state/pair-words.ts';
import { marginText } from '../../../src/family/margin-text.ts';
import type { Fit, Verdict } from '../../../src/fit/fit.ts';

function fitOf(verdict: Verdict, clearance: number): Fit {
  const placement = { x: 0, y: 0, tilt: 0 };
  return { verdict, clearance, accuracy: 0, placement, seated: placement, play: { lateral: 0, vertical: 0 } };
}

const matrix = {
  openings: ['a', 'b', 'c'],
  profiles: ['p', 'q'],
  fits: [
    [fitOf('enters', 52_000), fitOf('blocked', -210_000), fitOf('tight', 0)],
    [fitOf('blocked', -1000), fitOf('blocked', -1000), fitOf('blocked', -1000)],
  ],
};

test('a row is the answers of one blank by keyway, in the order of the block', () => {
  expect([...rowOf(matrix, 'p').keys()]).toEqual(['a', 'b', 'c']);
  expect(rowOf(matrix, 'q').get('c')?.clearance).toBe(-1000);
});

test('what has not been judged has no row', () => {
  expect(rowOf(null, 'p').size).toBe(0);
  expect(rowOf(matrix, 'nobody').size).toBe(0);
  expect(rowOf(matrix, null).size).toBe(0);
});

test('a tally counts every verdict once', () => {
  expect(tallyOf(rowOf(matrix, 'p'))).toEqual({ enters: 1, tight: 1, blocked: 1, of: 3 });
});

test('the headline says what goes in, and tight by a word of its own', () => {
  const say = (enters: number, tight: number, of: number) =>
    headlineOf('Reed group blank', { enters, tight, blocked: of - enters - tight, of });
  expect(say(3, 0, 10)).toBe('Reed group blank enters 3 of 10 keyways');
  expect(say(0, 0, 1)).toBe('Reed group blank enters 0 of 1 keyway');
  expect(say(0, 2, 10)).toBe('Reed group blank is tight in 2 of 10 keyways');
  expect(say(1, 2, 10)).toBe('Reed group blank enters 1 and is tight in 2 of 10 keyways');
});

test('a margin says how much room there is, or how much too deep', () => {
  expect(marginText(fitOf('enters', 52_000), 'mm')).toBe('+0.052 mm');
  expect(marginText(fitOf('tight', 0), 'mm')).toBe('touching');
  expect(marginText(fitOf('blocked', -210_000), 'mm')).toBe('0.21 mm too deep');
  expect(pairLine('Heron blank', 'Bittern keyway', fitOf('blocked', -210_000), 'mm')).toBe(
    'Heron blank in Bittern keyway: blocked, 0.21 mm too deep',
  );
  expect(pairLine('Heron blank', 'Bittern keyway', undefined, 'mm')).toContain('not judged yet');
});
