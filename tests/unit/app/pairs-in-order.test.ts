import { expect, test } from 'vitest';
import { goingFirst } from '../../../src/app/state/pairs-in-order.ts';
import type { Fit, Verdict } from '../../../src/fit/fit.ts';

const pair = (name: string, verdict: Verdict | null) => ({
  name,
  fit: verdict ? ({ verdict } as Fit) : undefined,
});

test('what goes in comes first, what is blocked last, each in the order of the chart', () => {
  const chart = [
    pair('a', 'blocked'),
    pair('b', 'tight'),
    pair('c', null),
    pair('d', 'enters'),
    pair('e', 'blocked'),
    pair('f', 'tight'),
  ];
  expect(goingFirst(chart).map(({ name }) => name)).toEqual(['b', 'd', 'f', 'c', 'a', 'e']);
  expect(chart[0].name).toBe('a');
});
