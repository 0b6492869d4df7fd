import { expect, test } from 'vitest';
import { measureApart } from '../../../src/profile/measure-apart.ts';

const MM = 1e6;
const box = (x: number, y: number, w: number, h: number) => [
  { x: x * MM, y: y * MM },
  { x: (x + w) * MM, y: y * MM },
  { x: (x + w) * MM, y: (y + h) * MM },
  { x: x * MM, y: (y + h) * MM },
];

test('an outline is nowhere apart from itself', () => {
  expect(measureApart(box(0, 0, 2, 8), box(0, 0, 2, 8))).toMatchObject({ most: 0, mean: 0 });
});

test('a box in a box: the corners are the furthest, by the diagonal of the gap; the mean is between', () => {
  const { most, at, mean } = measureApart(box(0, 0, 2, 8), box(-0.03, -0.03, 2.06, 8.06));
  expect(most).toBeCloseTo(0.03 * Math.SQRT2 * MM, -1);
  expect([-0.03, 2.03]).toContain(Math.round(at.x / 1e4) / 100);
  expect(mean).toBeGreaterThan(0.0299 * MM);
  expect(mean).toBeLessThan(0.0305 * MM);
});

test('a dent that only one of them has is seen from either side, and where it is', () => {
  const dented = [
    ...box(0, 0, 2, 8).slice(0, 2),
    ...[
      [2, 3],
      [1.4, 3.2],
      [2, 3.4],
    ].map(([x, y]) => ({ x: x * MM, y: y * MM })),
    ...box(0, 0, 2, 8).slice(2),
  ];
  for (const [a, b] of [
    [dented, box(0, 0, 2, 8)],
    [box(0, 0, 2, 8), dented],
  ]) {
    const { most, at } = measureApart(a, b);
    expect(most).toBeCloseTo(0.6 * MM, -3);
    expect(at).toEqual({ x: 1.4 * MM, y: 3.2 * MM });
  }
});

test('the furthest place may lie between vertices: a long edge bowed away', () => {
  const bowed = [...box(0, 0, 2, 8), { x: -0.2 * MM, y: 4 * MM }];
  expect(measureApart(box(0, 0, 2, 8), bowed).most).toBeCloseTo(0.2 * MM, -3);
});
