import { expect, test } from 'vitest';
import { bandShapes, innerFitNow, judgeNow, shapesUnder, toleranceNow } from '../../../src/app/doors/pair-now.ts';
import { boxOf, type Point } from '../../../src/geom/point.ts';
import { makeRing, type Ring } from '../../../src/geom/ring.ts';

const DEGREE = Math.PI / 180;
const plain = { runningClearance: 40_000, wear: 0, tiltLimit: 0 };

/** A rectangle in nanometres, turned about the origin. */
function bar(wide: number, tall: number, degrees = 0): Ring {
  const c = Math.cos(degrees * DEGREE);
  const s = Math.sin(degrees * DEGREE);
  const corners = [
    [0, 0],
    [wide, 0],
    [wide, tall],
    [0, tall],
  ];
  const made = makeRing(corners.map(([x, y]): Point => ({ x: x * c - y * s, y: x * s + y * c })));
  if (!made.ok) throw new Error(made.fault.message);
  return made.ring;
}

/** True where a point lies in a convex cell, its edge included. */
function holds(cell: readonly number[], { x, y }: Point): boolean {
  for (let i = 0; i < cell.length; i += 2) {
    const [ax, ay, bx, by] = [cell[i], cell[i + 1], cell[(i + 2) % cell.length], cell[(i + 3) % cell.length]];
    if ((bx - ax) * (y - ay) - (by - ay) * (x - ax) < -1e-3 * Math.hypot(bx - ax, by - ay)) return false;
  }
  return true;
}

test('the map at the tilt of a placement counts as placements do: the best one lies in it', () => {
  // A slot 1.1 x 6.1 mm that leans by 2 degrees: a bar 1 x 6 goes in leaning, never upright.
  const slot = bar(1.1e6, 6.1e6, 2);
  const strip = bar(1e6, 6e6);
  expect(innerFitNow(slot, strip, plain).cells).toEqual([]);
  const tilted = { ...plain, tiltLimit: 3 * DEGREE };
  const fit = judgeNow(slot, strip, tilted);
  expect(fit.placement.tilt / DEGREE).toBeCloseTo(2, 1);
  expect(fit.clearance / 1000).toBeCloseTo(50, -0.4);
  const { cells } = innerFitNow(slot, strip, tilted, fit.placement.tilt);
  expect(cells.some((cell) => holds(cell, fit.placement))).toBe(true);
  expect(cells.some((cell) => holds(cell, { x: fit.placement.x + 80_000, y: fit.placement.y }))).toBe(false);
});

test('bands grow and shrink both parts by just their width', () => {
  const blank = bar(2e6, 6e6);
  const slot = bar(2.1e6, 6.6e6);
  const { fullest, leanest, widest, narrowest } = bandShapes(slot, blank, { blank: 20_000, opening: 30_000 }, plain);
  const near = (box: ReturnType<typeof boxOf>, grown: number, wide: number) => {
    expect(Math.abs(box.minX + grown)).toBeLessThanOrEqual(42);
    expect(Math.abs(box.maxX - wide - grown)).toBeLessThanOrEqual(42);
  };
  near(boxOf(fullest.flat()), 20_000, 2e6);
  near(boxOf(leanest.flat()), -20_000, 2e6);
  near(boxOf(widest[0].outer), 30_000, 2.1e6);
  near(boxOf(narrowest[0].outer), -30_000, 2.1e6);
});

test('a question asked twice has one answer; another one has its own', () => {
  const blank = bar(2e6, 6e6);
  const slot = bar(2.1e6, 6.6e6);
  const fit = judgeNow(slot, blank, plain);
  expect(judgeNow(slot, blank, { ...plain })).toBe(fit);
  expect(fit.clearance).toBeCloseTo(50_000, -2);
  expect(toleranceNow(slot, blank, fit, { blank: 20_000, opening: 30_000 }, plain)).toBe('always');
  expect(toleranceNow(slot, blank, fit, { blank: 20_000, opening: 30_200 }, plain)).toBe('depends');
  const worn = { ...plain, wear: 10_000 };
  expect(judgeNow(slot, blank, worn).clearance).toBeCloseTo(70_000, -2.5);
  expect(Math.abs(boxOf(shapesUnder(slot, blank, worn).entrant.flat()).minX - 10_000)).toBeLessThanOrEqual(42);
  expect(judgeNow(slot, blank, plain).clearance).toBe(fit.clearance);
});
