import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitBox, panBy, toDrawing, toPixels, wheelFactor, zoomAbout } from '../../../src/app/tools/drawing-view.ts';
import { NM_OF_UNIT, rulerSteps, scaleBarLength } from '../../../src/app/tools/ruler-steps.ts';
import { holdOf, pinchTo } from '../../../src/app/tools/two-fingers.ts';
import { pointInside } from '../../../src/profile/point-inside.ts';

const view = { scale: 6e-5, x: 400, y: 500 };

test('a point goes to the canvas and back, with y turned over', () => {
  expect(toPixels(view, { x: 1e6, y: 1e6 })).toEqual({ px: 460, py: 440 });
  expect(toDrawing(view, { px: 460, py: 440 }).x).toBeCloseTo(1e6, 3);
  expect(toDrawing(view, { px: 460, py: 440 }).y).toBeCloseTo(1e6, 3);
});

test('zooming keeps the point under the pointer where it is, at the limits too', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(number(0, 900), number(0, 700), number(1e-4, 1e4), (px, py, factor) => {
      const before = toDrawing(view, { px, py });
      const after = toPixels(zoomAbout(view, { px, py }, factor), before);
      expect(after.px).toBeCloseTo(px, 6);
      expect(after.py).toBeCloseTo(py, 6);
    }),
  );
});

test('a fitted box lies in the middle and touches the margin on one axis', () => {
  const fitted = fitBox({ minX: 0, maxX: 2e6, minY: 0, maxY: 8e6 }, { width: 500, height: 440 }, 20);
  const low = toPixels(fitted, { x: 0, y: 0 });
  const high = toPixels(fitted, { x: 2e6, y: 8e6 });
  expect(high.py).toBeCloseTo(20);
  expect(low.py).toBeCloseTo(420);
  expect((low.px + high.px) / 2).toBeCloseTo(250);
});

test('what two fingers lie on stays under them, as they go apart and away; one finger moves the sheet alone', () => {
  const fingers = [
    { px: 100, py: 300 },
    { px: 300, py: 400 },
  ];
  const moved = fingers.map(({ px, py }) => ({ px: px * 1.5 - 20, py: py * 1.5 + 40 }));
  const [before, now] = [holdOf(fingers), holdOf(moved)];
  if (!before || !now) throw new Error('Two fingers hold.');
  const pinched = pinchTo(view, before, now);
  for (const [i, finger] of fingers.entries()) {
    const after = toPixels(pinched, toDrawing(view, finger));
    expect(after.px).toBeCloseTo(moved[i].px, 6);
    expect(after.py).toBeCloseTo(moved[i].py, 6);
  }
  const [one, on] = [holdOf([fingers[0]]), holdOf([fingers[1]])];
  expect(one && on && pinchTo(view, one, on)).toEqual(panBy(view, 200, 100));
  expect(holdOf([])).toBeNull();
});

test('panning moves every point by as many pixels', () => {
  expect(toPixels(panBy(view, 30, -12), { x: 0, y: 0 })).toEqual({ px: 430, py: 488 });
});

test('a wheel turned forth and back leaves the scale as it was, in lines as in pixels', () => {
  expect(wheelFactor(100, 0) * wheelFactor(-100, 0)).toBeCloseTo(1);
  expect(wheelFactor(-3, 1)).toBeGreaterThan(1);
  expect(wheelFactor(1e9, 0)).toBeGreaterThan(0.5);
});

test('a ruler is divided by 1, 2 or 5, its numbers far enough apart', () => {
  expect(rulerSteps(6e-5, NM_OF_UNIT.mm, 44)).toEqual({ major: 1e6, minor: 2e5 });
  expect(rulerSteps(3e-5, NM_OF_UNIT.mm, 44)).toEqual({ major: 2e6, minor: 5e5 });
  const inch = rulerSteps(6e-5, NM_OF_UNIT.in, 44);
  expect(inch.major / NM_OF_UNIT.in).toBeCloseTo(0.05);
});

test('a scale bar is the longest round length that has room', () => {
  expect(scaleBarLength(6e-5, NM_OF_UNIT.mm, 150)).toBe(2e6);
  expect(scaleBarLength(6e-5, NM_OF_UNIT.mm, 119)).toBe(1e6);
});

test('the point inside of a hollow outline lies in its metal', () => {
  // A bracket open to the right: the middle of its box is air.
  const bracket = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 2 },
    { x: 2, y: 2 },
    { x: 2, y: 8 },
    { x: 10, y: 8 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ];
  const { x, y } = pointInside(bracket);
  expect(x).toBeCloseTo(1);
  expect(y).toBeCloseTo(5, 1);
});
