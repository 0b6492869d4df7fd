import { expect, test } from 'vitest';
import { keepApart } from '../../../src/teach/keep-apart.ts';

test('places with room enough stay where they are', () => {
  expect(keepApart([10, 30, 70], 20, 100)).toEqual([10, 30, 70]);
  expect(keepApart([], 20, 100)).toEqual([]);
});

test('places that are too near move on, and back from the end of the room', () => {
  expect(keepApart([20, 22, 60], 10, 100)).toEqual([20, 30, 60]);
  expect(keepApart([96, 97], 10, 100)).toEqual([85, 95]);
  expect(keepApart([-5], 10, 100)).toEqual([5]);
});

test('each takes its own size', () => {
  expect(keepApart([5, 6, 7], [10, 20, 4], 100)).toEqual([5, 20, 32]);
  expect(keepApart([95, 96], [10, 20], 100)).toEqual([75, 90]);
});

test('where there is too little room, the first stand out', () => {
  expect(keepApart([5, 5, 5], 10, 20)).toEqual([-5, 5, 15]);
});
