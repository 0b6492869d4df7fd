import { expect, test } from 'vitest';
import { makeRing } from '../../../src/geom/ring.ts';
import { bladeLoops, holeLoop } from '../../../src/print3d/section-loops.ts';

const made = makeRing([
  { x: 0, y: 0 },
  { x: 2e6, y: 0 },
  { x: 2e6, y: 8e6 },
  { x: 1e6, y: 8e6 },
]);
if (!made.ok) throw new Error('not a ring');
const ring = made.ring;

function areaOf(loop: readonly (readonly [number, number])[]): number {
  return loop.reduce((sum, [x, y], i) => {
    const [u, v] = loop[(i + 1) % loop.length];
    return sum + (x * v - u * y) / 2;
  }, 0);
}

test('a hole runs clockwise, as large as the scale says', () => {
  const hole = holeLoop(ring, 4, [10, 20]);
  expect(areaOf(hole)).toBeCloseTo(-12 * 16, 9);
  expect(hole).toContainEqual([18, 52]);
});

test('a blade runs counter-clockwise with its top down, the gap off', () => {
  const [blade] = bladeLoops(ring, 4, 0, [10, 50]);
  expect(areaOf(blade)).toBeCloseTo(12 * 16, 9);
  expect(blade).toContainEqual([18, 18]);
  const [lean] = bladeLoops(ring, 4, 0.4, [10, 50]);
  const xs = lean.map(([x]) => x);
  expect(Math.max(...xs)).toBeCloseTo(17.6, 6);
});

test('a gap wider than half the blade leaves nothing', () => {
  expect(bladeLoops(ring, 1, 1, [0, 0])).toEqual([]);
});
