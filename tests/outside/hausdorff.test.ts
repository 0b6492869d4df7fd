// Outside truth: JSTS (a translation of the JTS Topology Suite): its DiscreteHausdorffDistance over segments cut into
// parts, which is never too large and too small by half a part at most, and its overlay for the symmetric difference. And
// closed forms worked out by hand.

import { describe, expect, test } from 'vitest';
import { directedHausdorff, hausdorff } from '../../src/geom/hausdorff.ts';
import type { Point } from '../../src/geom/point.ts';
import { areaApart } from '../../src/identify/compare-outlines.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { compareOnce } from '../kit/compare-once.ts';
import { demoFamily } from '../kit/demo-family.ts';
import { jstsHausdorff, jstsPolygon, jstsSymmetricDifference } from '../kit/engines/jsts-shapes.ts';
import { boxOfMm, ringOfMm } from '../kit/shapes.ts';

const MM = 1e6;
const PARTS = 400;

/** The longest edge of either outline. */
function longestEdge(...outlines: (readonly Point[])[]): number {
  return Math.max(
    ...outlines.flatMap((line) =>
      line.map((a, i) => {
        const b = line[(i + 1) % line.length];
        return Math.hypot(b.x - a.x, b.y - a.y);
      }),
    ),
  );
}

const { profiles } = demoFamily();
const pairs = profiles.flatMap((one, i) => {
  const random = randomNumbers(i);
  const other = random.pick(profiles.filter((profile) => profile !== one));
  const by = { x: random.whole(-400_000, 400_000), y: random.whole(-400_000, 400_000) };
  const moved = other.ring.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
  return { name: `${one.id} and ${other.id}`, one: one.ring, other: moved };
});

describe.each(pairs)('$name', ({ one, other }) => {
  test('the Hausdorff distance of JSTS, short of at most half a part', () => {
    const ours = hausdorff(one, other).distance;
    const theirs = jstsHausdorff(jstsPolygon(one), jstsPolygon(other), PARTS);
    expect(theirs).toBeLessThanOrEqual(ours + 1);
    expect(theirs).toBeGreaterThanOrEqual(ours - longestEdge(one, other) / (2 * PARTS) - 1);
  });

  test('the area of the symmetric difference of JSTS, to a millionth of a square millimetre', () => {
    const theirs = jstsSymmetricDifference(jstsPolygon(one), jstsPolygon(other)).getArea();
    expect(Math.abs(areaApart(one, other) - theirs)).toBeLessThan(1e-6 * MM * MM);
  });
});

test('concentric squares: from the inner one the gap, from the outer one its diagonal', () => {
  const [inner, outer] = [at(boxOfMm(2, 2), -1, -1), at(boxOfMm(5, 5), -2.5, -2.5)];
  expect(directedHausdorff(inner, outer).distance).toBe(1.5 * MM);
  expect(directedHausdorff(outer, inner).distance).toBeCloseTo(1.5 * Math.SQRT2 * MM, 2);
});

test.each([3, 4, 5, 6, 8, 12])('concentric regular polygons of %i corners: the difference of their radii', (n) => {
  const polygon = (radius: number) =>
    Array.from({ length: n }, (_, k) => ({
      x: radius * Math.cos((2 * Math.PI * k) / n),
      y: radius * Math.sin((2 * Math.PI * k) / n),
    }));
  // The corner of the larger one is nearest to the corner of the smaller one, on one ray.
  expect(hausdorff(polygon(4 * MM), polygon(3 * MM)).distance).toBeCloseTo(MM, 2);
  // The other way: from a corner of the smaller one to the nearest edge of the larger one.
  const there = directedHausdorff(polygon(3 * MM), polygon(4 * MM)).distance;
  expect(there).toBeCloseTo(Math.max((4 - 3) * Math.cos(Math.PI / n), 4 * Math.cos(Math.PI / n) - 3) * MM, 2);
});

test.each([0.4, 0.9, 1.7])('a slot %f mm wide: the mouth is half of that off, in its middle', (wide) => {
  const slotted = ringOfMm([
    [0, 0],
    [6, 0],
    [6, 4 - wide / 2],
    [1, 4 - wide / 2],
    [1, 4 + wide / 2],
    [6, 4 + wide / 2],
    [6, 8],
    [0, 8],
  ]);
  const { distance, at: place } = directedHausdorff(boxOfMm(6, 8), slotted);
  expect(distance).toBeCloseTo((wide / 2) * MM, 0);
  expect(place).toMatchObject({ x: 6 * MM });
  expect(place.y).toBeCloseTo(4 * MM, 0);
  // From the slot back to the box: its flanks are furthest where left and right wall are as near.
  expect(directedHausdorff(slotted, boxOfMm(6, 8)).distance).toBeCloseTo(3 * MM, 0);
});

test('a comparison tells the figures of JSTS for the outlines as they were laid', () => {
  const [knot, rail] = ['knot-blank', 'rail-blank'].map(
    (id) => profiles.find((profile) => profile.id === id)?.ring ?? [],
  );
  const { laid, most, areaApart: area } = compareOnce(knot, rail);
  const [a, b] = [jstsPolygon(laid), jstsPolygon(rail)];
  expect(Math.abs(jstsHausdorff(a, b, PARTS) - most)).toBeLessThan(longestEdge(laid, rail) / (2 * PARTS) + 1);
  expect(Math.abs(jstsSymmetricDifference(a, b).getArea() - area)).toBeLessThan(1e-6 * MM * MM);
});

function at(line: readonly Point[], x: number, y: number): Point[] {
  return line.map((p) => ({ x: p.x + x * MM, y: p.y + y * MM }));
}
