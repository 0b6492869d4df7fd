import { expect, test } from 'vitest';
import { quarterTurn } from '../../../src/geom/quarter-turn.ts';

test('quarter turns go to the left, come round after four, and leave no negative 0', () => {
  const all = [-1, 0, 1, 2, 3, 4].map((quarters) => quarterTurn({ x: 3, y: 0 }, quarters));
  expect(all).toEqual([
    { x: 0, y: -3 },
    { x: 3, y: 0 },
    { x: 0, y: 3 },
    { x: -3, y: 0 },
    { x: 0, y: -3 },
    { x: 3, y: 0 },
  ]);
});
