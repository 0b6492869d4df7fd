import { expect, test } from 'vitest';
import { blankUnderPointer } from '../../../src/app/tools/compare/blank-under-pointer.ts';
import { dragTo } from '../../../src/app/tools/compare/dragging-blank.ts';
import { beginGesture } from '../../../src/app/tools/compare/idle.ts';
import { nudgeOf } from '../../../src/app/tools/compare/nudging.ts';
import { stopAtWall } from '../../../src/app/tools/compare/stop-at-wall.ts';
import { panTo } from '../../../src/app/tools/panning.ts';

const view = { scale: 5e-5, x: 100, y: 400 };
const home = { x: 0, y: 0, tilt: 0 };
/** A wall at x = 1 mm: the gap is what is left to it. */
const gapAt = (p: { x: number }) => 1e6 - p.x;
const press = { at: { px: 120, py: 380 }, button: 0, spaceHeld: false, onBlank: true };

test('a press takes the blank, or the sheet beside it, with space, or with the middle button', () => {
  const kindOf = (change: object) => beginGesture({ ...press, ...change }, view, home).kind;
  expect(kindOf({})).toBe('dragging-blank');
  expect(kindOf({ onBlank: false })).toBe('panning');
  expect(kindOf({ spaceHeld: true })).toBe('panning');
  expect(kindOf({ button: 1 })).toBe('panning');
  expect(kindOf({ button: 2 })).toBe('idle');
});

test('a held sheet follows the pointer', () => {
  const gesture = beginGesture({ ...press, onBlank: false }, view, home);
  if (gesture.kind !== 'panning') throw new Error('expected panning');
  expect(panTo(gesture, { px: 150, py: 370 })).toEqual({ scale: 5e-5, x: 130, y: 390 });
});

test('a held blank follows the pointer from where it was taken', () => {
  const gesture = beginGesture(press, view, home);
  if (gesture.kind !== 'dragging-blank') throw new Error('expected dragging');
  const step = dragTo(gesture, { px: 130, py: 375 }, view, { placement: home, free: true }, gapAt);
  expect(step.placement).toEqual({ x: 200_000, y: 100_000, tilt: 0 });
});

test('a blank rests at the wall until the hand goes well past it, and is not held once inside', () => {
  const free = { placement: home, free: true };
  const atWall = stopAtWall(free, { x: 1_100_000, y: 0, tilt: 0 }, 280_000, gapAt);
  expect(atWall.x).toBeLessThanOrEqual(1e6);
  expect(atWall.x).toBeGreaterThan(0.99e6);
  expect(stopAtWall(free, { x: 1_400_000, y: 0, tilt: 0 }, 280_000, gapAt).x).toBe(1_400_000);
  const inside = { placement: { x: 1_400_000, y: 0, tilt: 0 }, free: false };
  expect(stopAtWall(inside, { x: 1_300_000, y: 0, tilt: 0 }, 280_000, gapAt).x).toBe(1_300_000);
});

test('a thin blade can be taken a little beside it, but not far from it', () => {
  const strip = [
    { x: 0, y: 0 },
    { x: 100_000, y: 0 },
    { x: 100_000, y: 6e6 },
    { x: 0, y: 6e6 },
  ];
  const at = (px: number) => blankUnderPointer(strip, home, view, { px, py: 300 });
  expect(at(102)).toBe(true);
  expect(at(112)).toBe(true);
  expect(at(130)).toBe(false);
});

test('arrow keys nudge by a hundredth, with shift by a tenth; half a thousandth in inch units', () => {
  expect(nudgeOf('ArrowLeft', false, 'mm')).toEqual({ x: -10_000, y: 0 });
  expect(nudgeOf('ArrowUp', true, 'mm')).toEqual({ x: 0, y: 100_000 });
  expect(nudgeOf('ArrowRight', false, 'in')?.x).toBeCloseTo(12_700, 6);
  expect(nudgeOf('a', false, 'mm')).toBeNull();
  expect(nudgeOf('constructor', false, 'mm')).toBeNull();
});
