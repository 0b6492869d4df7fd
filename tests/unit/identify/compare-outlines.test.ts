import { expect, test } from 'vitest';
import { areaApart, partsApart } from '../../../src/identify/compare-outlines.ts';
import { poseOutline } from '../../../src/identify/outline-pose.ts';
import { compareOnce } from '../../kit/compare-once.ts';
import { demoProfile } from '../../kit/demo-family.ts';
import { boxOfMm, ringOfMm, turned, wardedKeyway } from '../../kit/shapes.ts';

const MM = 1e6;

test('a box a little larger all round: the corners are furthest, the area is that of the frame', () => {
  // 2 x 8 in 2.2 x 8.2, middle on middle: a frame of 0.1.
  const { most, mean, areaApart: area, pose } = compareOnce(boxOfMm(2.2, 8.2), boxOfMm(2, 8));
  // The pose of least squares is found over places along both: it is a few micrometres off the middle.
  expect(Math.abs(most / MM - 0.1 * Math.SQRT2)).toBeLessThan(0.004);
  expect(mean / MM).toBeGreaterThan(0.1);
  expect(mean / MM).toBeLessThan(0.103);
  expect(area / 1e12).toBeCloseTo(2.2 * 8.2 - 2 * 8, 4);
  expect(pose).toMatchObject({ mirrored: false });
  expect(Math.abs(pose.turned)).toBeLessThan(0.002);
});

test('a slot that only one has is seen at its floor', () => {
  const plain = ringOfMm([
    [0, 0],
    [2.1, 0],
    [2.1, 8.5],
    [0, 8.5],
  ]);
  const { most, at, areaApart: area, laid } = compareOnce(wardedKeyway(0.6), plain);
  // The keyway has a ward of 0.6 x 0.8 on the left; least squares moves the whole a little to share it out.
  expect(most / MM).toBeGreaterThan(0.5);
  expect(most / MM).toBeLessThanOrEqual(0.61);
  expect(at.y / MM).toBeGreaterThan(3);
  expect(at.y / MM).toBeLessThan(4);
  expect(area / 1e12).toBeGreaterThan(0.4);
  const { onlyUnknown, onlyKnown } = partsApart(laid, plain);
  expect(onlyKnown.length).toBeGreaterThan(0);
  expect(areaApart(laid, plain)).toBe(area);
  expect(onlyUnknown.length + onlyKnown.length).toBeGreaterThan(0);
});

test.each([0, 17, 90, 135, 180, -60, 271])('turned by %i degrees it is found again', (degrees) => {
  const { ring } = demoProfile('bittern-blank');
  const { most, pose } = compareOnce(turned(ring, degrees), ring);
  // Vertices were rounded to whole nanometres when they were turned.
  expect(most).toBeLessThan(12);
  expect(pose.mirrored).toBe(false);
  expect(Math.cos(pose.turned + (degrees * Math.PI) / 180)).toBeCloseTo(1, 8);
});

test('the pose brings the outline where it is said to lie', () => {
  const { ring } = demoProfile('bittern-blank');
  const unknown = turned(ring, 200);
  const { pose, laid } = compareOnce(unknown, demoProfile('smew-blank').ring);
  expect(poseOutline(unknown, pose)).toEqual(laid);
});

test('where turning is not allowed it is only moved', () => {
  const { ring } = demoProfile('bittern-blank');
  const { pose, most } = compareOnce(turned(ring, 30), ring, { mirrored: true, turned: false });
  expect(pose.turned).toBe(0);
  expect(most).toBeGreaterThan(0.5 * MM);
});
