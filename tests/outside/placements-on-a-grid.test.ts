// Brute force: the blank set down at every point of a grid over all translations that keep its box in the opening's
// box, corners and edges of that window included, and each placement decided by exact containment from the definition
// (tests/kit/engines/exact-containment.ts). The inner-fit region must hold exactly those that fit; and where any fits,
// the pair may not be called blocked.

import { describe, expect, test, vi } from 'vitest';
import type { ConvexCell } from '../../src/geom/convex-cell.ts';
import { boxOf, type Point } from '../../src/geom/point.ts';
import { contactFits } from '../cases/contact-fits.ts';
import type { FitCase } from '../cases/fit-case.ts';
import { keywayPair, nearContactPair } from '../cases/keyway-pairs.ts';
import { plainFits } from '../cases/plain-fits.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { type CoreAnswer, coreAnswer } from '../kit/engines/core-answer.ts';
import { liesInside } from '../kit/engines/exact-containment.ts';

// Two slow cores shared with other work must not fail a correct answer.
vi.setConfig({ testTimeout: 120_000 });

/** Placements that close to an edge of the region may be drawn on either side of it. */
const ROUNDING = 1;

function seeds(from: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => from + i);
}

const classes: readonly { name: string; steps: number; cases: readonly FitCase[] }[] = [
  { name: 'named fits', steps: 17, cases: [...plainFits, ...contactFits] },
  { name: 'keyways at 20 vertices', steps: 11, cases: seeds(2000, 60).map((seed) => keywayPair(seed, 20)) },
  { name: 'keyways at 60 vertices', steps: 7, cases: seeds(2000, 25).map((seed) => keywayPair(seed, 60)) },
  { name: 'near contact', steps: 5, cases: seeds(2000, 80).map((seed) => nearContactPair(seed, 20)) },
  { name: 'polygons', steps: 15, cases: seeds(2000, 50).map(polygonPair) },
];

describe.each(classes)('$name', ({ cases, steps }) => {
  test('the region holds the placements that fit and no others', () => {
    let fitting = 0;
    const faults: string[] = [];
    for (const fitCase of cases) {
      const answer = coreAnswer(fitCase);
      for (const at of gridOver(fitCase, steps)) {
        const fits = liesInside(fitCase.opening, fitCase.blank, at);
        if (fits) fitting++;
        if (fits && !isInRegion(answer, at, ROUNDING))
          faults.push(`${fitCase.name}: ${at.x}, ${at.y} fits and is not in the region`);
        if (!fits && isInRegion(answer, at, -ROUNDING))
          faults.push(`${fitCase.name}: ${at.x}, ${at.y} collides and is in the region`);
        if (fits && answer.fit.verdict === 'blocked')
          faults.push(`${fitCase.name}: blocked, though ${at.x}, ${at.y} fits`);
      }
    }
    expect(faults).toEqual([]);
    expect(fitting).toBeGreaterThan(cases.length / 4);
  });
});

/** Whole-nanometre placements over the window, its middle and ends included; none where the blank is larger than the opening. */
function gridOver({ opening, blank }: FitCase, steps: number): Point[] {
  const [o, b] = [boxOf(opening.outer), boxOf(blank)];
  const across = stops(o.minX - b.minX, o.maxX - b.maxX, steps);
  const upwards = stops(o.minY - b.minY, o.maxY - b.maxY, steps);
  return across.flatMap((x) => upwards.map((y) => ({ x, y })));
}

function stops(low: number, high: number, steps: number): number[] {
  if (low > high) return [];
  return [...new Set(Array.from({ length: steps }, (_, i) => Math.round(low + ((high - low) * i) / (steps - 1))))];
}

/** Whether a cell or a corner of the contact comes within `slack` of the point; negative: holds it with that much to spare. */
function isInRegion({ region, fit }: CoreAnswer, at: Point, slack: number): boolean {
  if (region.cells.some((cell) => cellHolds(cell, at, slack))) return true;
  if (slack < 0) return false;
  if (region.cells.length > 0) return fit.verdict !== 'blocked' && isOnThread(region.cells, at);
  return onHullOf(region.contacts, at, slack);
}

function cellHolds(cell: ConvexCell, at: Point, slack: number): boolean {
  for (let i = 0, j = cell.length - 2; i < cell.length; j = i, i += 2) {
    const [ex, ey] = [cell[i] - cell[j], cell[i + 1] - cell[j + 1]];
    const length = Math.hypot(ex, ey);
    if (length > 0 && ex * (at.y - cell[j + 1]) - ey * (at.x - cell[j]) < -slack * length) return false;
  }
  return true;
}

/** Contact threads that hang on a region with area (a channel exactly as wide as the blank) are not part of its cells. */
function isOnThread(cells: readonly ConvexCell[], at: Point): boolean {
  return cells.every((cell) => !cellHolds(cell, at, ROUNDING));
}

/** Between two corners of the contact, or at one. */
function onHullOf(corners: readonly Point[], at: Point, slack: number): boolean {
  return corners.some((p) => corners.some((q) => distanceToSegment(at, p, q) <= slack));
}

function distanceToSegment(at: Point, p: Point, q: Point): number {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const squared = dx * dx + dy * dy;
  const share = squared === 0 ? 0 : Math.max(0, Math.min(1, ((at.x - p.x) * dx + (at.y - p.y) * dy) / squared));
  return Math.hypot(at.x - p.x - share * dx, at.y - p.y - share * dy);
}
