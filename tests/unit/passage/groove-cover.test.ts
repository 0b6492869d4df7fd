import { expect, test } from 'vitest';
import { type Cutter, coverNeeds, type Need } from '../../../src/passage/groove-cover.ts';

const UM = 1_000;
const HEIGHT = 8_000 * UM;
const SQUARE: Cutter = { flank: 0, rootRadius: 0, leastWidth: 0, depthStep: 50 * UM };

const need = (low: number, high: number, depth: number): Need => ({
  low: low * UM,
  high: high * UM,
  depth: depth * UM,
});
const grooves = (needs: readonly Need[], cutter: Partial<Cutter> = {}) =>
  coverNeeds(needs, HEIGHT, { ...SQUARE, ...cutter })?.map(({ bottom, top, depth }) => [
    bottom / UM,
    top / UM,
    depth / UM,
  ]);

test('a need is taken off by a groove of its own size, its depth rounded up to a step', () => {
  expect(grooves([need(1_000, 1_600, 510)])).toEqual([[1_000, 1_600, 550]]);
  expect(grooves([need(1_000, 1_600, 0)])).toEqual([]);
});

test('two needs far apart are two grooves; nearer than the narrowest groove allows they are one', () => {
  const two = [need(1_000, 1_400, 500), need(1_400, 2_000, 0), need(2_000, 2_400, 500)];
  expect(grooves(two)).toEqual([
    [1_000, 1_400, 500],
    [2_000, 2_400, 500],
  ]);
  expect(grooves(two, { leastWidth: 1_200 * UM })).toEqual([[1_000, 2_400, 500]]);
});

test('a deeper part in the middle makes the whole groove as deep', () => {
  expect(grooves([need(1_000, 1_200, 300), need(1_200, 1_400, 600), need(1_400, 1_600, 300)])).toEqual([
    [1_000, 1_600, 600],
  ]);
});

test('leaning flanks begin further out: by the depth times the tangent where the need is as deep as the groove', () => {
  // tan 45 degrees is 1: 0.5 mm further out on either side, and to the nearest micrometre outwards.
  const [[bottom, top]] = grooves([need(2_000, 2_400, 500)], { flank: Math.PI / 4 }) ?? [];
  expect(Math.abs(bottom - 1_500)).toBeLessThanOrEqual(1);
  expect(Math.abs(top - 2_900)).toBeLessThanOrEqual(1);
});

test('a root radius keeps its corners clear of the need: a square groove begins a radius further out', () => {
  expect(grooves([need(2_000, 2_400, 500)], { rootRadius: 100 * UM })).toEqual([[1_900, 2_500, 500]]);
});

test('what comes near an end of the blade runs out there as a step', () => {
  expect(grooves([need(0, 400, 300)])).toEqual([[0, 400, 300]]);
  expect(grooves([need(7_700, 8_000, 300)], { flank: 0.2 })?.[0][1]).toBe(8_000);
});
