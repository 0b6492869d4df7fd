import { expect, test } from 'vitest';
import { openingsOf } from '../../../src/family/family.ts';
import { curvingFamily } from '../../../src/gauge/family-curves.ts';
import { straightTool } from '../../../src/gauge/straight-tool.ts';
import type { ThicknessCurve } from '../../../src/gauge/thickness-curve.ts';
import { countEntered, type ToolTable, tablingTools } from '../../../src/gauge/tool-table.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { judge } from '../../kit/judge.ts';
import { boxOfMm, ringOfMm, turned } from '../../kit/shapes.ts';

const MM = 1e6;

function ended<T>(steps: Generator<unknown, T, void>): T {
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

const family = demoFamily();
const openings = openingsOf(family);
const tools = family.profiles.filter(({ kind }) => kind === 'tool');
const curvesAt = (tiltLimit: number): readonly ThicknessCurve[] => ended(curvingFamily(openings, tiltLimit)).curves;
const table = (of: readonly Profile[], tiltLimit = 0): ToolTable =>
  ended(tablingTools(of, openings, curvesAt(tiltLimit), family.runningClearance));

test('a plain upright rectangle is a straight tool, corners on its sides or not', () => {
  expect(straightTool(boxOfMm(0.55, 6))).toEqual({ thickness: 0.55 * MM, height: 6 * MM });
  const withCorner = ringOfMm([[0, 0], [1, 0], [1, 3], [1, 6], [0, 6]]); // biome-ignore format: one outline
  expect(straightTool(withCorner)).toEqual({ thickness: 1 * MM, height: 6 * MM });
  expect(straightTool(turned(boxOfMm(0.55, 6), 1))).toBeNull();
  expect(straightTool(ringOfMm([[0, 0], [1, 0], [1, 6], [0.5, 6], [0.5, 5], [0, 5]]))).toBeNull(); // biome-ignore format: one outline
});

test('verdicts and clearances are those of the fit; spare thickness says the same', () => {
  const { rows, openings: columns } = table(tools);
  expect(columns).toEqual(openings.map(({ id }) => id));
  for (const [i, { cells, strip }] of rows.entries())
    for (const [k, cell] of cells.entries()) {
      const fit = judge(openings[k].ring, tools[i].ring, family.runningClearance);
      expect(cell.verdict).toBe(fit.verdict);
      if (cell.verdict !== 'blocked' || !strip) expect(cell.clearance).toBe(fit.clearance);
      if (strip) expect((cell.spare ?? 0) >= 0).toBe(fit.verdict !== 'blocked');
      else expect(cell.spare).toBeNull();
    }
  const counts = new Map(rows.map((row) => [row.toolId, countEntered(row)]));
  expect(counts.get('strip-055')).toBe(10);
  expect(counts.get('strip-175')).toBe(0);
});

test('tilt lets in no fewer', () => {
  const [upright, tilted] = [table(tools), table(tools.slice(0, 3), 0.01)];
  for (const [i, row] of tilted.rows.entries())
    expect(countEntered(row)).toBeGreaterThanOrEqual(countEntered(upright.rows[i]));
});

test('no tools, no openings', () => {
  expect(table([]).rows).toEqual([]);
  expect(ended(tablingTools(tools, [], [], 0)).rows.every(({ cells }) => cells.length === 0)).toBe(true);
});
