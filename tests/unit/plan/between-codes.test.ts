import { expect, test } from 'vitest';
import { betweenOf, orderBetween } from '../../../src/plan/between-codes.ts';

const FIRST = [1, 1, 1, 0, 0];
const SECOND = [1, 0, 0, 1, 0];

test('wards are told by the neighbour that has them', () => {
  expect(betweenOf([1, 1, 0, 1, 0], FIRST, SECOND)).toEqual({ first: 1, second: 1, neither: 0, dropped: 0 });
  expect(betweenOf([0, 0, 1, 1, 1], FIRST, SECOND)).toEqual({ first: 1, second: 1, neither: 1, dropped: 1 });
});

test('a ward of another depth than a neighbour has is none of its', () => {
  expect(betweenOf([2, 1], [1, 1], [0, 0])).toEqual({ first: 1, second: 0, neither: 0, dropped: 0 });
});

test('what takes a ward of each comes first, then what brings the fewest strange ones', () => {
  const codes = [
    [1, 0, 0, 0, 1],
    [1, 1, 0, 1, 1],
    [1, 0, 1, 1, 0],
  ];
  expect(orderBetween(codes, FIRST, SECOND).map(({ code }) => code.join(''))).toEqual(['10110', '11011', '10001']);
});
