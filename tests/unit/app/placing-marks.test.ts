import { expect, test } from 'vitest';
import { markUnder, pictureUnder, placedMarks } from '../../../src/app/tools/draw/placing-marks.ts';
import { makePictureFrame, NO_MARKS } from '../../../src/trace/picture-scale.ts';

const SIZE = { width: 1000, height: 500 };
const made = makePictureFrame(SIZE, {
  ...NO_MARKS,
  scale: { from: { x: 0, y: 0 }, to: { x: 1000, y: 0 }, distance: 20e6 },
});
if (!made.ok) throw new Error(made.fault.what);
const { frame } = made;

/** 50 pixels a millimetre: a pixel of the picture is one of the canvas; its middle lies at (600, 300). */
const VIEW = { scale: 5e-5, x: 600, y: 300 };

const POINTS = { scaleFrom: { x: 500, y: 250 }, scaleTo: { x: 520, y: 250 }, corner1: { x: 0, y: 0 } };

test('the marks of the open step stand where they lie; one in hand where the hand has it', () => {
  const marks = placedMarks({ points: POINTS }, null, 'scale', frame, VIEW);
  expect(marks.map(({ name, pixel }) => [name, Math.round(pixel.px), Math.round(pixel.py)])).toEqual([
    ['scaleFrom', 600, 300],
    ['scaleTo', 620, 300],
  ]);
  const held = { name: 'scaleTo', at: { x: 530, y: 240 } } as const;
  const [, to] = placedMarks({ points: POINTS }, held, 'scale', frame, VIEW);
  expect([Math.round(to.pixel.px), Math.round(to.pixel.py)]).toEqual([630, 290]);
  expect(placedMarks({ points: POINTS }, null, 'outline', frame, VIEW)).toEqual([]);
  expect(placedMarks({ points: POINTS }, null, null, frame, VIEW)).toEqual([]);
});

test('the nearest mark within reach is taken', () => {
  const marks = placedMarks({ points: POINTS }, null, 'scale', frame, VIEW);
  expect(markUnder(marks, { px: 609, py: 300 })?.name).toBe('scaleFrom');
  expect(markUnder(marks, { px: 611, py: 300 })?.name).toBe('scaleTo');
  expect(markUnder(marks, { px: 600, py: 320 })).toBeNull();
});

test('a pixel of the canvas leads to the place of the picture under it', () => {
  const at = pictureUnder(frame, VIEW, { px: 650, py: 280 });
  expect(at?.x).toBeCloseTo(550, 6);
  expect(at?.y).toBeCloseTo(230, 6);
});
