// What a fit claims can be looked at: the placement it names, and that no other one does better.

import { describe, expect, test } from 'vitest';
import { containsExactly, rationalOf } from '../../src/fit/contain-exactly.ts';
import { explainPlacement } from '../../src/fit/explain-placement.ts';
import type { Placement } from '../../src/fit/fit.ts';
import { verifyFit } from '../../src/fit/verify-fit.ts';
import { boxOf } from '../../src/geom/point.ts';
import { type BladePair, fitOf, holds } from './blade-pairs.ts';

const GRID = 14;

/** Placements on a grid over all that the boxes allow, or round the middle where they allow none. */
function gridOf({ opening, blank }: BladePair): Placement[] {
  const [o, b] = [boxOf(opening), boxOf(blank)];
  const line = (low: number, high: number) => {
    const [from, to] = low <= high ? [low, high] : [high, low];
    return Array.from({ length: GRID + 1 }, (_, i) => Math.round(from + ((to - from) * i) / GRID));
  };
  const xs = line(o.minX - b.minX, o.maxX - b.maxX);
  return line(o.minY - b.minY, o.maxY - b.maxY).flatMap((y) => xs.map((x) => ({ x, y, tilt: 0 })));
}

describe('the placement of a fit', () => {
  test('is inside, by exact arithmetic, with the stated gap all round', () => {
    holds(({ opening, blank }) => {
      const { verdict, clearance, placement } = fitOf(opening, blank);
      if (verdict === 'blocked' || clearance === 0) return;
      expect(containsExactly([opening], blank, rationalOf(placement))).toBe(true);
      const { gap, collisions } = explainPlacement(opening, blank, placement);
      expect(collisions).toEqual([]);
      expect(Math.abs(gap - clearance)).toBeLessThan(0.01);
    }, 120);
  });

  test('seated, it is inside too, and not higher than the best one', () => {
    holds(({ opening, blank }) => {
      const { verdict, placement, seated } = fitOf(opening, blank);
      if (verdict === 'blocked') return;
      expect(seated.y).toBeLessThanOrEqual(placement.y + 1e-6);
      expect(explainPlacement(opening, blank, seated).gap).toBeGreaterThan(-5);
    }, 120);
  });

  test('of a blocked pair collides by the interference and no more', () => {
    holds(({ opening, blank }) => {
      const { verdict, clearance, accuracy, placement } = fitOf(opening, blank);
      if (verdict !== 'blocked') return;
      const { gap } = explainPlacement(opening, blank, placement);
      expect(-gap).toBeLessThanOrEqual(-clearance + accuracy + 5);
    }, 120);
  });
});

describe('no other placement on a grid', () => {
  test('lets a blocked blank in, or collides less', () => {
    holds((pair) => {
      const { verdict, clearance, accuracy } = fitOf(pair.opening, pair.blank);
      if (verdict !== 'blocked') return;
      const grid = gridOf(pair);
      for (const t of grid) expect(containsExactly([pair.opening], pair.blank, rationalOf(t))).toBe(false);
      for (const t of grid.filter((_, i) => i % 23 === 0))
        expect(-explainPlacement(pair.opening, pair.blank, t).gap).toBeGreaterThanOrEqual(-clearance - accuracy - 5);
    }, 40);
  });

  test('has a wider gap than the clearance', () => {
    holds((pair) => {
      const { verdict, clearance, accuracy } = fitOf(pair.opening, pair.blank);
      if (verdict === 'blocked') return;
      for (const t of gridOf(pair).filter((_, i) => i % 5 === 0))
        expect(explainPlacement(pair.opening, pair.blank, t).gap).toBeLessThanOrEqual(clearance + accuracy + 5);
    }, 40);
  });
});

describe('the second way', () => {
  test('confirms every fit', () => {
    holds(({ opening, blank }) => {
      expect(verifyFit(opening, blank, fitOf(opening, blank))).toEqual([]);
    }, 40);
  });
});
