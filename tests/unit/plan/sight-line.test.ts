import { expect, test } from 'vitest';
import { sightLine } from '../../../src/plan/sight-line.ts';
import type { Groove } from '../../../src/profile/profile.ts';

const MM = 1_000_000;
const ward = (side: Groove['side'], depth: number): Groove => {
  return { side, bottom: 2 * MM, width: 0.6 * MM, depth: depth * MM, flank: 0, rootRadius: 0 };
};
const keyway = (...grooves: Groove[]) => ({ thickness: 2.2 * MM, height: 8.6 * MM, backRadius: 0, grooves });

test('short wards leave a strip between them', () => {
  const sight = sightLine('k', keyway(ward('left', 0.6), ward('left', 0.3), ward('right', 0.5)));
  expect(sight).toEqual({ id: 'k', left: -0.5 * MM, right: -0.6 * MM, paracentric: false, strip: 1.1 * MM });
});

test('a ward past the centre line makes a keyway paracentric', () => {
  const sight = sightLine('k', keyway(ward('left', 1.2), ward('right', 0.8)));
  expect(sight.paracentric).toBe(true);
  expect(sight.left).toBeCloseTo(0.1 * MM, 3);
  expect(sight.strip).toBeCloseTo(0.2 * MM, 3);
});

test('wards that pass each other leave no line of sight', () => {
  expect(sightLine('k', keyway(ward('left', 1.2), ward('right', 1.3))).strip).toBeCloseTo(-0.3 * MM, 3);
});

test('without a ward the whole width is seen', () => {
  expect(sightLine('k', keyway()).strip).toBe(2.2 * MM);
});
