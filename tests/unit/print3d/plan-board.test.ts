import { expect, test } from 'vitest';
import { usualSetup } from '../../../src/print3d/display-setup.ts';
import { planBoard } from '../../../src/print3d/plan-board.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const setup = { ...usualSetup(demoFamily()), gap: 0.3, wall: 5 };
const THINGS = [{ width: 80, depth: 100 }, ...Array.from({ length: 20 }, () => ({ width: 12, depth: 36 }))];

test('each thing has a slot with the gap round it and walls between', () => {
  const pieces = planBoard(THINGS, setup);
  const slots = pieces.flatMap((piece) => piece.slots);
  expect(slots.map(({ holds }) => holds)).toEqual(THINGS.map((_, i) => i));
  for (const { holds, width, depth } of slots) {
    expect(width).toBeCloseTo(THINGS[holds].width + 0.6, 9);
    expect(depth).toBeCloseTo(THINGS[holds].depth + 0.6, 9);
  }
  for (const piece of pieces) {
    for (const { x, y, width, depth } of piece.slots) {
      expect(Math.min(x, piece.width - x - width, piece.depth - y - depth)).toBeGreaterThanOrEqual(5 - 1e-9);
      expect(y).toBeGreaterThanOrEqual(5 + piece.strip);
    }
    expect(piece.width <= setup.bed[0] && piece.depth <= setup.bed[1]).toBe(true);
  }
});

test('a small bed makes several pieces, nothing makes none', () => {
  expect(planBoard(THINGS, { ...setup, bed: [120, 130] }).length).toBeGreaterThan(1);
  expect(planBoard([], setup)).toEqual([]);
});
