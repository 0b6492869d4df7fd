import { expect, test } from 'vitest';
import { type FallingLine, isUnder } from '../../../src/gauge/falling-line.ts';
import { leaningBest } from '../../../src/gauge/leaning-stance.ts';
import { visitStances } from '../../../src/gauge/stances.ts';
import { trapezoidsOf } from '../../../src/gauge/trapezoids.ts';
import { turnedAbout } from '../../../src/gauge/turn-points.ts';
import { highest, uprightLine } from '../../../src/gauge/upright-line.ts';
import type { Point } from '../../../src/geom/point.ts';
import { keywayPair } from '../../cases/keyway-pairs.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { ringOfMm } from '../../kit/shapes.ts';

/** What strips that lean by up to an angle may be, over all stances; and the most that is told of what stands between ends. */
function bounds(outline: readonly Point[], angle: number): { line: FallingLine; between: number[] } {
  const [c, s, tangent] = [Math.cos(angle), Math.sin(angle), Math.tan(angle)];
  const lines: FallingLine[] = [];
  const between: number[] = [];
  visitStances(
    trapezoidsOf(outline),
    (foot, head, left, right, atLeft, atRight, most) => {
      between.push(most);
      const inner = foot === head ? null : { left, atLeft, right, atRight };
      const { heights, thicknesses, marks } = leaningBest(foot, head, inner, tangent);
      lines.push({ heights: heights.map((v, i) => (v + thicknesses[i] * s) / c), thicknesses, marks });
    },
    Infinity,
    tangent,
  );
  return { line: highest(lines), between };
}

test('between two points of wards the gap grows by their distance in height times the tangent', () => {
  const twoPoints = ringOfMm([
    [0, 0],
    [3, 0],
    [3, 5],
    [2, 6],
    [3, 7],
    [3, 10],
    [0, 10],
    [0, 5],
    [1, 4],
    [0, 3],
  ]);
  const angle = 0.01;
  const { line, between } = bounds(twoPoints, angle);
  const most = 1e6 + 2e6 * Math.tan(angle);
  expect(Math.min(...between)).toBeCloseTo(most, 3);
  // A strip taller than each half must pass between the two points, 1 mm apart across and 2 mm in height.
  expect(isUnder(line, 0.01, 7e6, most)).toBe(true);
  expect(isUnder(line, 0.01, 7e6, most + 1)).toBe(false);
});

test('no strip that goes in at a lean lies above the bounds of the outline as it stands', () => {
  const outlines = [
    ...Array.from({ length: 4 }, (_, seed) => keywayPair(seed, 20).opening.outer),
    ...Array.from({ length: 8 }, (_, seed) => polygonPair(seed).opening.outer),
  ];
  let looked = 0;
  for (const outline of outlines)
    for (const angle of [0.0005, 0.02]) {
      const { line } = bounds(outline, angle);
      for (const lean of [-angle, -angle / 3, 0, angle / 2, angle]) {
        const { heights, thicknesses } = uprightLine(turnedAbout(outline, -lean));
        for (const [i, height] of heights.entries()) {
          // Shorter strips have no height common to both their sides.
          if (height * Math.cos(lean) <= thicknesses[i] * Math.sin(Math.abs(lean))) continue;
          expect(isUnder(line, 1, height, thicknesses[i])).toBe(true);
          looked++;
        }
      }
    }
  expect(looked).toBeGreaterThan(1_000);
});
