import { expect, test } from 'vitest';
import { regionOf } from '../../../src/geom/region.ts';
import { climbOverlap } from '../../../src/passage/climb-overlap.ts';
import { leanTogether } from '../../../src/passage/lean-together.ts';
import { largestArea, sharedBy } from '../../../src/passage/overlap-regions.ts';
import { boxOfMm } from '../../kit/shapes.ts';

/*
 * Closed form: slots of 2 x 8 mm, two of them 1 mm aside. Each holds its twin: alone none gains anything.
 */

const MM = 1e6;
const slot = regionOf(boxOfMm(2, 8));

test('slots that lie on each other in pairs are moved in pairs, where alone none would gain', () => {
  const slots = [slot, slot, slot, slot];
  const moves = [0, 0, 1, 1].map((x) => ({ x: x * MM, y: 0 }));
  for (const [i, move] of moves.entries()) {
    const rest = sharedBy(slots.slice(1), [...moves.slice(0, i), ...moves.slice(i + 1)]);
    expect(climbOverlap(rest, slot, move, { first: 20_000, least: 1_000 }).area / 1e12).toBeCloseTo(8, 3);
  }
  expect(leanTogether(slots, moves) / 1e12).toBeCloseTo(16, 1);
  expect(moves[0]).toEqual(moves[1]);
  expect(moves[2]).toEqual(moves[3]);
  expect(Math.abs(moves[0].x - moves[2].x)).toBeLessThan(3_000);
});

test('what lies best is left alone, and what it says is what is shared', () => {
  const slots = [slot, regionOf(boxOfMm(3, 9))];
  const moves = [
    { x: 0, y: 0 },
    { x: -0.5 * MM, y: -0.5 * MM },
  ];
  const before = [...moves];
  expect(leanTogether(slots, moves)).toBe(largestArea(sharedBy(slots, before)));
  expect(moves).toEqual(before);
});
