import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packShelves } from '../../../src/print3d/pack-shelves.ts';

const size = fc.integer({ min: 1, max: 60 });
const footprint = fc.record({ width: size, depth: size });

test('no footprints overlap, and each lies on its sheet', () => {
  fc.assert(
    fc.property(fc.array(footprint, { maxLength: 25 }), fc.integer({ min: 0, max: 5 }), (footprints, apart) => {
      const sheet = { width: 100, depth: 80 };
      const spots = packShelves(footprints, sheet, apart);
      spots.forEach(({ sheet: number, x, y }, i) => {
        const { width, depth } = footprints[i];
        expect(x >= 0 && y >= 0 && x + width <= sheet.width && y + depth <= sheet.depth).toBe(true);
        spots.slice(i + 1).forEach((other, k) => {
          const { width: w, depth: d } = footprints[i + 1 + k];
          const beside = other.x >= x + width + apart || other.x + w + apart <= x;
          const behind = other.y >= y + depth + apart || other.y + d + apart <= y;
          expect(other.sheet !== number || beside || behind).toBe(true);
        });
      });
    }),
  );
});

test('small ones stand behind each other beside a deep one', () => {
  const small = { width: 10, depth: 30 };
  const spots = packShelves([{ width: 40, depth: 70 }, small, small, small], { width: 60, depth: 100 }, 5);
  expect(spots.map(({ x, y }) => [x, y])).toEqual([
    [0, 0],
    [45, 0],
    [45, 35],
    [0, 0],
  ]);
  expect(spots.map(({ sheet }) => sheet)).toEqual([0, 0, 0, 1]);
});

test('one that is larger than a sheet has a sheet of its own', () => {
  const spots = packShelves(
    [
      { width: 5, depth: 5 },
      { width: 50, depth: 200 },
      { width: 5, depth: 5 },
    ],
    { width: 40, depth: 40 },
    1,
  );
  expect(spots.map(({ sheet }) => sheet)).toEqual([0, 1, 2]);
});
