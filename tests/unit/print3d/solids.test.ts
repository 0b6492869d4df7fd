import { expect, test } from 'vitest';
import { isClosed, sizeOf, volumeOf } from '../../../src/print3d/measure-surface.ts';
import { type Loop, openWorkshop } from '../../../src/print3d/solids.ts';

const workshop = await openWorkshop();

function square(x: number, y: number, side: number): Loop {
  return [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
}

test('a prism with a hole, a tip cut off and letters joined are closed, with the volumes of school', () => {
  const hole = [...square(2, 2, 4)].reverse();
  const plate = workshop.prism([square(0, 0, 10), hole], 0, 3);
  expect(volumeOf(workshop.surface(plate))).toBeCloseTo((100 - 16) * 3, 4);
  const cut = workshop.within(plate, workshop.prism([square(0, 0, 8)], -1, 2));
  expect(volumeOf(workshop.surface(cut))).toBeCloseTo((64 - 16) * 2, 4);
  const slot = workshop.without(workshop.prism([square(0, 0, 10)], 0, 3), [workshop.prism([square(2, 2, 4)], 1, 4)]);
  expect(volumeOf(workshop.surface(slot))).toBeCloseTo(300 - 16 * 2, 4);
  for (const solid of [plate, cut, slot]) expect(isClosed(workshop.surface(solid))).toBe(true);
  workshop.clear();
});

test('letters are filled whichever way round they run, and are the last triangles', () => {
  const base = workshop.prism([square(0, 0, 10)], 0, 3);
  // As in a typeface: the outer outline clockwise, the hole the other way.
  const letter = workshop.letters([[...square(2, 2, 6)].reverse(), square(4, 4, 2)], 2, 4);
  const surface = workshop.surface(workshop.joined([base, letter]));
  expect(volumeOf(surface)).toBeCloseTo(300 + (36 - 4), 4);
  expect(isClosed(surface)).toBe(true);
  const heights = [...surface.triangles].map((corner) => surface.positions[3 * corner + 2]);
  const raised = heights.slice(3 * surface.lettersFrom);
  expect(Math.max(...heights.slice(0, 3 * surface.lettersFrom))).toBeCloseTo(3, 6);
  expect([Math.min(...raised), Math.max(...raised)]).toEqual([3, 4]);
  workshop.clear();
});

test('what lay flat stands on its edge and is read from the right', () => {
  const flat: Loop = [
    [0, 0],
    [5, 0],
    [0, 2],
  ];
  const surface = workshop.surface(workshop.stood(workshop.prism([flat], 0, 1)));
  expect(sizeOf(surface)).toEqual([1, 5, 2]);
  expect(volumeOf(surface)).toBeCloseTo(5, 6);
  workshop.clear();
});
