import { expect, test } from 'vitest';
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

test('a step and a slanting floor are wall, not wards', () => {
  const stepped = ringOfMm([[0.4, 0], [1.7, 0], [2, 1], [2, 8], [0, 8], [0, 3], [0.4, 3]]); // biome-ignore format: one outline
  expect(sightOf(stepped)).toMatchObject({ strip: 2 * MM, leftTip: null, rightTip: null });
});

test('it starts anywhere on the outline', () => {
  const ring = wardedKeyway(1.2);
  for (let k = 0; k < ring.length; k++) expect(sightOf([...ring.slice(k), ...ring.slice(0, k)])).toEqual(sightOf(ring));
});
