import { expect, test } from 'vitest';
import { cornerUnderPointer } from '../../../src/app/tools/compare/corner-under-pointer.ts';
import { dragCornerTo, holdCorner } from '../../../src/app/tools/compare/dragging-corner.ts';
import { mapView, markOf } from '../../../src/app/tools/compare/map-view.ts';
import { toPixels } from '../../../src/app/tools/drawing-view.ts';
import { placed, unplaced } from '../../../src/app/tools/placed-points.ts';

const view = { scale: 5e-5, x: 100, y: 400 };

test('the nearest corner in reach is taken, the chosen one before others that are hardly nearer', () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 200_000, y: 0 },
    { x: 2e6, y: 0 },
  ];
  expect(cornerUnderPointer(corners, 2, view, { px: 101, py: 401 })).toBe(0);
  expect(cornerUnderPointer(corners, 2, view, { px: 108, py: 400 })).toBe(1);
  expect(cornerUnderPointer(corners, 0, view, { px: 106, py: 400 })).toBe(0);
  expect(cornerUnderPointer(corners, 0, view, { px: 150, py: 400 })).toBeNull();
});

test('a held corner follows the pointer in the frame of its own outline, turned and moved as the blank is', () => {
  const stand = { x: 300_000, y: -200_000, tilt: 0.02 };
  const own = { x: 1_000_000, y: 500_000 };
  const [at] = placed([own], stand);
  const pixel = toPixels(view, at);
  const gesture = holdCorner(3, at, view, { px: pixel.px + 2, py: pixel.py - 1 });
  expect(dragCornerTo(gesture, { px: pixel.px + 2, py: pixel.py - 1 }, view, stand, 'mm').corner).toEqual(own);
  const moved = dragCornerTo(gesture, { px: pixel.px + 7, py: pixel.py - 1 }, view, null, 'mm').corner;
  expect(moved?.x).toBe(Math.round((at.x + 100_000) / 1000) * 1000);
});

test('a dragged corner rests on whole micrometres, or on twentieths of a thou', () => {
  // One pixel is 20 um; 123.87855 pixels are 2.477571 mm, or 97.542 thou.
  const from = { x: 0, y: 0 };
  const gesture = holdCorner(0, from, view, toPixels(view, from));
  const to = { px: 100 + 123.87855, py: 400 };
  expect(dragCornerTo(gesture, to, view, null, 'mm').corner).toEqual({ x: 2_478_000, y: 0 });
  expect(dragCornerTo(gesture, to, view, null, 'in').corner).toEqual({ x: 97.55 * 25_400, y: 0 });
});

test('taking a point back undoes placing it', () => {
  const stand = { x: 1e6, y: -3e5, tilt: -0.05 };
  const back = unplaced(placed([{ x: 7e5, y: 4e6 }], stand)[0], stand);
  expect(back.x).toBeCloseTo(7e5, 6);
  expect(back.y).toBeCloseTo(4e6, 6);
});

test('a map shows the whole region whatever its shape, also where it has no area', () => {
  const cell = [-50_000, -50_000, 50_000, -50_000, 50_000, 900_000, -50_000, 900_000];
  const best = { x: 0, y: 0, tilt: 0 };
  const tall = mapView({ cells: [cell], contacts: [], window: cell }, best, 240);
  for (const point of [
    { x: -50_000, y: -50_000 },
    { x: 50_000, y: 900_000 },
  ]) {
    const { px, py } = toPixels(tall, point);
    expect(Math.min(px, py, 240 - px, 240 - py)).toBeGreaterThan(20);
  }
  expect(tall.scale * 950_000).toBeGreaterThan(120);
  const dot = mapView({ cells: [], contacts: [{ x: 5, y: 7 }], window: null }, best, 240);
  expect(toPixels(dot, { x: 5, y: 7 }).px).toBeCloseTo(120, 3);
});

test('a placement beyond the edge of the map is held there and told so', () => {
  const map = { scale: 1e-3, x: 120, y: 120 };
  expect(markOf(map, { x: 10_000, y: 0 }, 240, 12)).toEqual({ px: 130, py: 120, off: false });
  expect(markOf(map, { x: 1e6, y: -1e6 }, 240, 12)).toEqual({ px: 228, py: 228, off: true });
});
