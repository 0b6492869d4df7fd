import { describe, expect, test } from 'vitest';
import { findContacts } from '../../../src/fit/find-contacts.ts';
import { groupCells } from '../../../src/fit/group-cells.ts';
import { limitSegments } from '../../../src/fit/limit-segments.ts';
import { placeBlank } from '../../../src/fit/place-blank.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { subtractWindows } from '../../../src/fit/subtract-windows.ts';
import { boxOfCells, middleOf } from '../../../src/geom/convex-cell.ts';
import { depthAt } from '../../../src/geom/deepest-point.ts';
import { keywayPair } from '../../cases/keyway-pairs.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { boxOfMm, soundRing } from '../../kit/shapes.ts';

const wide = (box: { minX: number; minY: number; maxX: number; maxY: number }) => {
  const by = box.maxX - box.minX + box.maxY - box.minY;
  return { minX: box.minX - by, minY: box.minY - by, maxX: box.maxX + by, maxY: box.maxY + by };
};

describe('the segments of first contact', () => {
  test('of a rectangle in a rectangle: four corners against four walls, as far as they can touch', () => {
    const walls = limitSegments(prepareOpening(boxOfMm(3, 5)), prepareBlank(boxOfMm(1, 1)), {
      minX: -9e6,
      minY: -9e6,
      maxX: 9e6,
      maxY: 9e6,
    });
    expect(depthAt(walls, 1e6, 2e6)).toBe(1e6);
    expect(depthAt(walls, 0, 1e6)).toBe(0);
    expect(walls.length / 4).toBe(8);
  });

  test('are as far from every placement as the blank is from the plug there', () => {
    let looked = 0;
    for (let seed = 0; seed < 120; seed++)
      for (const pair of [keywayPair(seed, 60), polygonPair(seed)]) {
        const [ring, blade] = [soundRing(pair.opening.outer), soundRing(pair.blank)];
        const [opening, blank] = [prepareOpening(ring), prepareBlank(blade)];
        const cells = subtractWindows(opening, blank);
        if (cells.length === 0) continue;
        const walls = limitSegments(opening, blank, wide(boxOfCells(cells)));
        for (const cell of groupCells(cells).flat().slice(0, 12)) {
          const t = middleOf(cell);
          const placed = placeBlank(blade, { ...t, tilt: 0 });
          const [nearest] = findContacts(opening.region, [placed]);
          expect(Math.abs(depthAt(walls, t.x, t.y) - nearest.gap)).toBeLessThan(1e-3);
          looked++;
        }
      }
    expect(looked).toBeGreaterThan(300);
  });
});
