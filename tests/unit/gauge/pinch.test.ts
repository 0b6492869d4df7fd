import { expect, test } from 'vitest';
import { pinchAtTilt, pinchOnCurve, tiltAt } from '../../../src/gauge/pinch.ts';
import { findingCurve, type ThicknessCurve, thicknessAt, uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { sideOf } from '../../../src/geom/contains-point.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

const MM = 1e6;

test('between a ward on the left and the right wall', () => {
  const pinch = pinchAtTilt(wardedKeyway(0.7), 6 * MM, 0);
  expect(pinch?.thickness).toBe(1.4 * MM);
  expect(pinch?.strip[0].x).toBe(0.7 * MM);
  expect(pinch?.strip[1].x).toBe(2.1 * MM);
  // It slides from 0 to 2.5 mm and stands in the middle of that.
  expect(pinch?.strip[0].y).toBe(1.25 * MM);
  expect(pinch?.across.map(({ x, y }) => [x / MM, y / MM])).toEqual([
    [0.7, 3.5],
    [2.1, 3.5],
  ]);
  expect(pinch?.touches.map(({ side }) => side).sort()).toEqual(['left', 'right']);
});

test('between two wards at different heights: their nearest ends', () => {
  const stepped = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 5],
    [1.5, 5],
    [1.5, 5.5],
    [2, 5.5],
    [2, 8],
    [0, 8],
    [0, 3],
    [0.5, 3],
    [0.5, 2],
    [0, 2],
  ]);
  const pinch = pinchAtTilt(stepped, 7 * MM, 0);
  expect(pinch?.thickness).toBe(1 * MM);
  expect(pinch?.across.map(({ x, y }) => [x / MM, y / MM])).toEqual([
    [0.5, 3],
    [1.5, 5],
  ]);
});

test('nothing so tall goes in', () => {
  expect(pinchAtTilt(wardedKeyway(0.7), 8.6 * MM, 0)).toBeNull();
});

test('a tilted strip of the curve stands inside, and its thickness is that of the curve', () => {
  const opening = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 5],
    [1.2, 5],
    [1.2, 5.5],
    [2, 5.5],
    [2, 8],
    [0, 8],
    [0, 3],
    [0.8, 3],
    [0.8, 2],
    [0, 2],
  ]);
  const curve = tilted(opening, 0.05);
  const upright = thicknessAt(uprightCurve('k', opening), 6 * MM);
  const pinch = pinchOnCurve(curve, opening, 6 * MM);
  expect(tiltAt(curve, 6 * MM)).not.toBe(0);
  expect(pinch?.tilt).toBe(tiltAt(curve, 6 * MM));
  expect(pinch?.thickness).toBeGreaterThan(upright + 0.05 * MM);
  expect(Math.abs((pinch?.thickness ?? 0) - thicknessAt(curve, 6 * MM))).toBeLessThan(1_000);
  for (const { from, to } of pinch?.touches ?? []) for (const p of [from, to]) expect(isNear(opening, p)).toBe(true);
});

test('right at a jump of a tilted curve the strip is as thick as the curve', () => {
  const opening = ringOfMm([[2.3, 0], [2.3, 0.4], [2.5, 0.4], [2.5, 2], [2.4, 2.2], [2.4, 2.9], [1.7, 2.7], [1.7, 3.3], [2.5, 3.4], [2.5, 4.2], [2.3, 4.2], [2.3, 4.8], [1.3, 5.1], [1.3, 6.6], [2, 6.4], [2, 6.5], [2.5, 6.7], [2.5, 7.7], [1.4, 7.6], [1.4, 8], [0, 8], [0, 7.5], [1.1, 7.6], [1.1, 6.5], [0, 6.6], [0, 6], [0, 4.4], [0, 3.1], [0, 2], [0.2, 2.1], [0.2, 1.4], [1, 1.5], [1, 0]]); // biome-ignore format: one outline
  const curve = tilted(opening, Math.PI / 30);
  const jumps = curve.knots.filter(({ height }, k) => curve.knots[k + 1]?.height === height);
  expect(jumps.length).toBeGreaterThan(2);
  for (const { height, thickness } of jumps)
    expect(Math.abs((pinchOnCurve(curve, opening, height)?.thickness ?? 0) - thickness)).toBeLessThan(0.1);
});

function tilted(ring: Ring, limit: number): ThicknessCurve {
  const steps = findingCurve('k', ring, limit);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** Whether the outline passes within 3 nm or so. */
function isNear(ring: Ring, { x, y }: { x: number; y: number }): boolean {
  const around = [-3, 3].flatMap((dx) => [-3, 3].map((dy) => sideOf([ring], { x: x + dx, y: y + dy })));
  return around.includes('inside') && around.includes('outside');
}
