// What must not change a fit: where the outlines are drawn, seen in a mirror, turned a quarter, written otherwise.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fit } from '../../src/fit/fit.ts';
import { groupCells } from '../../src/fit/group-cells.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { subtractWindows } from '../../src/fit/subtract-windows.ts';
import type { Point } from '../../src/geom/point.ts';
import { asTrustedRing } from '../../src/geom/ring.ts';
import { type BladePair, fitOf, holds, holdsWith, mapped, RUNNING } from './blade-pairs.ts';

/** Two fits of the same pair: their clearances differ by no more than both may err. */
function expectSame(a: Fit, b: Fit): void {
  const err = a.accuracy + b.accuracy + 0.01;
  expect(Math.abs(a.clearance - b.clearance)).toBeLessThanOrEqual(err);
  expect(a.verdict === 'blocked').toBe(b.verdict === 'blocked');
  if (Math.abs(a.clearance - RUNNING) > err) expect(a.verdict).toBe(b.verdict);
}

function expectPlay(a: Fit, lateral: number, vertical: number): void {
  expect(Math.abs(a.play.lateral - lateral)).toBeLessThan(0.1);
  expect(Math.abs(a.play.vertical - vertical)).toBeLessThan(0.1);
}

/** Whether the region of placements is one piece: with several, equally good ones may swap. */
function isOnePiece({ opening, blank }: BladePair): boolean {
  return groupCells(subtractWindows(prepareOpening(opening), prepareBlank(blank))).length === 1;
}

const offsets = fc.record({
  opening: fc.record({ x: fc.integer({ min: -20e6, max: 20e6 }), y: fc.integer({ min: -20e6, max: 20e6 }) }),
  blank: fc.record({ x: fc.integer({ min: -20e6, max: 20e6 }), y: fc.integer({ min: -20e6, max: 20e6 }) }),
});

const moved = (by: Point) => (p: Point) => ({ x: p.x + by.x, y: p.y + by.y });

describe('the fit stays the same', () => {
  test('wherever either outline is drawn, and the placement moves along', () => {
    holdsWith(
      offsets,
      ({ opening, blank }, by) => {
        const here = fitOf(opening, blank);
        const there = fitOf(mapped(opening, moved(by.opening)), mapped(blank, moved(by.blank)));
        expectSame(here, there);
        const back = {
          x: there.placement.x - by.opening.x + by.blank.x,
          y: there.placement.y - by.opening.y + by.blank.y,
        };
        if (here.verdict !== 'blocked' && here.play.lateral > 0) {
          expect(Math.abs(back.x - here.placement.x)).toBeLessThanOrEqual(here.play.lateral + 1);
          expect(Math.abs(back.y - here.placement.y)).toBeLessThanOrEqual(here.play.vertical + 1);
        }
      },
      80,
    );
  });

  test('in a mirror, left for right', () => {
    holds((pair) => {
      const flip = (p: Point) => ({ x: -p.x, y: p.y });
      const here = fitOf(pair.opening, pair.blank);
      expectSame(here, fitOf(mapped(pair.opening, flip), mapped(pair.blank, flip)));
    }, 100);
  });

  test('upside down', () => {
    holds((pair) => {
      const flip = (p: Point) => ({ x: p.x, y: -p.y });
      const here = fitOf(pair.opening, pair.blank);
      expectSame(here, fitOf(mapped(pair.opening, flip), mapped(pair.blank, flip)));
    }, 60);
  });

  test.each([
    ['a quarter', (p: Point) => ({ x: -p.y, y: p.x }), true],
    ['half', (p: Point) => ({ x: -p.x, y: -p.y }), false],
    ['three quarters', (p: Point) => ({ x: p.y, y: -p.x }), true],
  ] as const)('both turned by %s of a turn; the play turns too', (_, turn, swaps) => {
    holds((pair) => {
      const here = fitOf(pair.opening, pair.blank);
      const there = fitOf(mapped(pair.opening, turn), mapped(pair.blank, turn));
      expectSame(here, there);
      const { lateral, vertical } = here.play;
      if (isOnePiece(pair)) expectPlay(there, swaps ? vertical : lateral, swaps ? lateral : vertical);
    }, 60);
  });

  test('from whichever vertex the outlines start, and whichever way round they were given', () => {
    holdsWith(
      fc.tuple(fc.nat(300), fc.nat(300), fc.boolean()),
      ({ opening, blank }, [a, b, reversed]) => {
        const from = (ring: readonly Point[], k: number) => [
          ...ring.slice(k % ring.length),
          ...ring.slice(0, k % ring.length),
        ];
        const written = (ring: readonly Point[], k: number) => (reversed ? from(ring, k).reverse() : from(ring, k));
        const other = fitOf(
          mapped(asTrustedRing(written(opening, a)), (p) => p),
          mapped(asTrustedRing(written(blank, b)), (p) => p),
        );
        expectSame(fitOf(opening, blank), other);
      },
      80,
    );
  });

  test('with more vertices along the edges', () => {
    holds(({ opening, blank }) => {
      const withMiddles = (ring: readonly Point[]) =>
        ring.flatMap((p, i) => {
          const q = ring[(i + 1) % ring.length];
          const m = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
          return Number.isInteger(m.x) && Number.isInteger(m.y) ? [p, m] : [p];
        });
      const other = fitOf(asTrustedRing(withMiddles(opening)), asTrustedRing(withMiddles(blank)));
      expectSame(fitOf(opening, blank), other);
    }, 60);
  });
});
