import { expect, test } from 'vitest';
import { thicknessAt, uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { boxOf } from '../../../src/geom/point.ts';
import { asTrustedRing } from '../../../src/geom/ring.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import { sightOf } from '../../../src/profile/sight-line.ts';
import { boxOfMm, ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

const MM = 1e6;

test('a plain slot is seen through over its whole width', () => {
  expect(sightOf(boxOfMm(2, 8))).toMatchObject({ strip: 2 * MM, paracentric: false, leftTip: null, rightTip: null });
});

test('one ward short of the centre line', () => {
  const sight = sightOf(wardedKeyway(0.7));
  expect(sight.left).toBeCloseTo(-0.35 * MM, 3);
  expect(sight).toMatchObject({ strip: 1.4 * MM, paracentric: false, from: 0.7 * MM, to: 2.1 * MM });
  expect(sight.leftTip).toEqual({ x: 0.7 * MM, y: 3.5 * MM });
});

test('wards that pass each other, one of them undercut like a hook', () => {
  const keyway = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 5],
    [1.1, 5],
    [1.1, 4.6],
    [0.8, 4.6],
    [0.8, 5.6],
    [2, 5.6],
    [2, 8],
    [0, 8],
    [0, 3],
    [1.2, 3],
    [1.2, 2],
    [0, 2],
  ]);
  const sight = sightOf(keyway);
  expect(sight.left).toBeCloseTo(0.2 * MM, 3);
  expect(sight.right).toBeCloseTo(0.2 * MM, 3);
  expect(sight.strip).toBeCloseTo(-0.4 * MM, 3);
  expect(sight.paracentric).toBe(true);
});

test('a step and a chamfered floor are wall, not wards, and bound the strip all the same', () => {
  const stepped = ringOfMm([[0.4, 0], [1.7, 0], [2, 1], [2, 8], [0, 8], [0, 3], [0.4, 3]]); // biome-ignore format: one outline
  expect(sightOf(stepped)).toMatchObject({ leftTip: null, rightTip: null, from: 0.4 * MM, to: 1.7 * MM });
  const narrowed = ringOfMm([[0, 0], [0.8, 0], [0.8, 4], [0.5, 4], [0.5, 8], [0, 8]]); // biome-ignore format: one outline
  expect(sightOf(narrowed)).toMatchObject({ strip: 0.5 * MM, paracentric: false });
  const floored = ringOfMm([[1.5, 0], [2, 0], [2, 8], [0, 8], [0, 3], [1.5, 3]]); // biome-ignore format: one outline
  expect(sightOf(floored).strip).toBe(0.5 * MM);
});

test('a keyway that leans by more than its width is not seen through', () => {
  const leaning = ringOfMm([[0, 0], [1, 0], [4, 8], [3, 8]]); // biome-ignore format: one outline
  expect(sightOf(leaning)).toMatchObject({ strip: 0, paracentric: false, leftTip: null, rightTip: null });
  const little = ringOfMm([[0, 0], [1, 0], [1.3, 8], [0.3, 8]]); // biome-ignore format: one outline
  expect(sightOf(little).strip).toBeCloseTo(0.7 * MM, 3);
});

test('halves beside each other share a narrow strip', () => {
  const halves = ringOfMm([[0, 0], [1, 0], [1, 4], [2, 4], [2, 8], [0.9, 8], [0.9, 4.2], [0, 4.2]]); // biome-ignore format: one outline
  expect(sightOf(halves).strip).toBeCloseTo(0.1 * MM, 3);
});

test('a strip stands on either side of what rises from the floor', () => {
  const ridged = ringOfMm([[0, 0], [0.5, 0], [0.5, 2], [0.8, 2], [0.8, 0], [2, 0], [2, 8], [0, 8]]); // biome-ignore format: one outline
  expect(sightOf(ridged).strip).toBeCloseTo(1.2 * MM, 3);
});

test('it is the thickest strip of the full height where ends are level and sharp', () => {
  for (const ring of [wardedKeyway(0.7), wardedKeyway(1.2), boxOfMm(2, 8)]) {
    const { minY, maxY } = boxOf(ring);
    expect(sightOf(ring).strip).toBeCloseTo(thicknessAt(uprightCurve('k', ring), maxY - minY), 2);
  }
});

test('it is seen above a rounded back, whatever its radius, and past a floor that is a hair off level', () => {
  for (const backRadius of [0, 0.1, 0.5, 1]) {
    const ring = millOutline({ thickness: 2 * MM, height: 8 * MM, backRadius: backRadius * MM, grooves: [] });
    expect(Array.isArray(ring) && Math.abs(sightOf(ring).strip - 2 * MM)).toBeLessThan(3);
  }
  const off = asTrustedRing([[0, 0], [2e6, 1], [2e6, 8e6], [0, 8e6 - 1]].map(([x, y]) => ({ x, y }))); // biome-ignore format: one outline
  expect(sightOf(off).strip).toBe(2 * MM);
});

test('it starts anywhere on the outline', () => {
  const ring = wardedKeyway(1.2);
  for (let k = 0; k < ring.length; k++) expect(sightOf([...ring.slice(k), ...ring.slice(0, k)])).toEqual(sightOf(ring));
});
