import { describe, expect, test } from 'vitest';
import { INTERFERENCE_BRACKET, measureInterference } from '../../../src/fit/measure-interference.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const measured = (opening: Ring, blank: Ring) => measureInterference(prepareOpening(opening), prepareBlank(blank));

/** The truth lies in the bracket, and the bracket is as narrow as promised. */
function expectBracket(opening: Ring, blank: Ring, truth: number): void {
  const { above, atMost } = measured(opening, blank);
  expect(above).toBeLessThanOrEqual(truth + 2);
  expect(atMost).toBeGreaterThanOrEqual(truth - 2);
  expect(atMost - above).toBeLessThanOrEqual(INTERFERENCE_BRACKET + 2);
}

const regular = (count: number, radius: number): Ring =>
  soundRing(
    Array.from({ length: count }, (_, i) => ({
      x: radius * Math.cos((2 * Math.PI * i) / count),
      y: radius * Math.sin((2 * Math.PI * i) / count),
    })),
  );

describe('interference in closed form', () => {
  test.each([1, 10, 500, 60_000, 420_000, 900_000])('too wide by twice %i nm: half stands in either wall', (h) => {
    expectBracket(boxOfMm(2, 8.5), boxOfMm(2 + (2 * h) / 1e6, 8.4), h);
  });

  test('a square in a smaller square: each corner is out both ways', () => {
    expectBracket(boxOfMm(2, 2), boxOfMm(2.1, 2.1), 50_000 * Math.SQRT2);
  });

  test.each([3, 5, 6, 7, 8, 12])('regular polygons of %i sides: the difference of their radii', (count) => {
    for (const h of [4_988, 58_826, 103_691, 114_658, 127_000, 260_000])
      expectBracket(regular(count, 2e6), regular(count, 2e6 + h), h);
  });

  test('a ward covered whole counts by the depth of its head, not of its outline', () => {
    const opening = ringOfMm([
      [0, 0],
      [3, 0],
      [3, 8.5],
      [0, 8.5],
      [0, 4.3],
      [0.5, 4.3],
      [0.5, 4.5],
      [0.9, 4.5],
      [0.9, 4],
      [0.5, 4],
      [0.5, 4.2],
      [0, 4.2],
    ]);
    // The head is 0.4 wide; its deepest point is as far from its face as from the corners beside the stem, 0.1 apart:
    // 0.4 - u = sqrt(u^2 + 0.05^2) gives u = 0.196875.
    expectBracket(opening, boxOfMm(2.9, 8.4), 203_125);
  });

  test('a thin ward counts by half its height', () => {
    const opening = ringOfMm([
      [0, 0],
      [2.1, 0],
      [2.1, 8.5],
      [0, 8.5],
      [0, 5],
      [0.5, 5],
      [0.5, 4.9],
      [0, 4.9],
    ]);
    expectBracket(opening, boxOfMm(2, 8.4), 50_000);
  });

  test.each([
    [127_000, 127_900],
    [126_600, 127_990],
    [90_000, 60_000],
  ])('two chambers, one short in its corners by %i, one across by %i: at most the lesser counts', (corners, across) => {
    const side = 2 - (corners * Math.SQRT2) / 1e6;
    const width = 2 - (2 * across) / 1e6;
    const x = side + 1;
    const opening = ringOfMm([
      [0, 0],
      [side, 0],
      [side, 0.0001],
      [x, 0.0001],
      [x, -2],
      [x + width, -2],
      [x + width, 3],
      [x, 3],
      [x, 0.0003],
      [side, 0.0003],
      [side, side],
      [0, side],
    ]);
    expect(measured(opening, boxOfMm(2, 2)).above).toBeLessThanOrEqual(Math.min(corners, across) + 2);
    expect(measured(opening, boxOfMm(2, 2)).atMost).toBeGreaterThan(Math.min(corners, across) - 5_000);
  });
});

describe('the placement of least depth', () => {
  test('lies half way between the walls', () => {
    const { x, y } = measured(boxOfMm(2, 8.5), boxOfMm(2.2, 8.4));
    expect(Math.abs(x + 100_000)).toBeLessThan(INTERFERENCE_BRACKET);
    expect(y).toBeGreaterThan(-INTERFERENCE_BRACKET);
    expect(y).toBeLessThan(100_000 + INTERFERENCE_BRACKET);
  });

  test('moves with the opening and against the blank', () => {
    const moved = (ring: Ring, x: number, y: number) => soundRing(ring.map((p) => ({ x: p.x + x, y: p.y + y })));
    const [opening, blank] = [boxOfMm(2, 2), boxOfMm(2.2, 2.2)];
    const here = measured(opening, blank);
    const there = measured(moved(opening, 7e6, -3e6), moved(blank, -5e6, 1e6));
    expect(there.x - here.x).toBeCloseTo(12e6, -1);
    expect(there.y - here.y).toBeCloseTo(-4e6, -1);
    // Corners of grown openings are rounded to whole nanometres where they lie, which shifts a bracket by a few.
    expect(Math.abs(there.atMost - here.atMost)).toBeLessThan(100);
  });
});
