import { expect, test } from 'vitest';
import { directedHausdorff, hausdorff } from '../../../src/geom/hausdorff.ts';

const MM = 1e6;
const box = (x: number, y: number, w: number, h: number) => [
  { x: x * MM, y: y * MM },
  { x: (x + w) * MM, y: y * MM },
  { x: (x + w) * MM, y: (y + h) * MM },
  { x: x * MM, y: (y + h) * MM },
];

test('lines, not areas: the box in the middle of another is as far from it as its walls are', () => {
  const [small, large] = [box(-1, -1, 2, 2), box(-3, -3, 6, 6)];
  expect(directedHausdorff(small, large).distance).toBe(2 * MM);
  // The corners of the large one, by the diagonal.
  expect(hausdorff(small, large).distance).toBeCloseTo(2 * Math.SQRT2 * MM, 0);
  expect(hausdorff(small, large).of).toBe('other');
});

test('one way is not the other way: a long box over a short one', () => {
  const [short, long] = [box(0, 0, 2, 4), box(0, 0, 2, 9)];
  // The short box's upper edge is furthest in its middle, from the long one's walls; the vertices of it touch.
  const there = directedHausdorff(short, long);
  expect(there.distance).toBeCloseTo(1 * MM, 0);
  expect(there.at.x).toBeCloseTo(1 * MM, 0);
  expect(there.at.y).toBeCloseTo(4 * MM, 0);
  expect(directedHausdorff(long, short).distance).toBe(5 * MM);
});

test('between vertices: a straight edge over a slot is furthest half way between the slot’s corners', () => {
  // Square slot, 0.8 wide and 3 deep, in the right side of a box; the plain box's side spans its mouth.
  const slotted = [
    ...box(0, 0, 4, 8).slice(0, 2),
    { x: 4 * MM, y: 3 * MM },
    { x: 1 * MM, y: 3 * MM },
    { x: 1 * MM, y: 3.8 * MM },
    { x: 4 * MM, y: 3.8 * MM },
    ...box(0, 0, 4, 8).slice(2),
  ];
  const mouth = directedHausdorff(box(0, 0, 4, 8), slotted);
  expect(mouth.distance).toBeCloseTo(0.4 * MM, 0);
  expect(mouth.at.y).toBeCloseTo(3.4 * MM, 0);
  // And from the slot's floor the left wall is nearer than the right one.
  const floor = directedHausdorff(slotted, box(0, 0, 4, 8));
  expect(floor.distance).toBeCloseTo(2 * MM, 0);
  expect(floor.at.x).toBeCloseTo(2 * MM, 0);
});

test('the place and what is nearest to it are so far apart as it says', () => {
  const { at, nearest, distance } = hausdorff(box(0, 0, 2, 8), [...box(0.1, 0, 2, 8), { x: -0.3 * MM, y: 4 * MM }]);
  expect(Math.hypot(at.x - nearest.x, at.y - nearest.y)).toBeCloseTo(distance, 3);
});
