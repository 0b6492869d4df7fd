import { expect, test } from 'vitest';
import { leastRise, slantingWeb } from '../../../src/plan/slanting-web.ts';
import { BLADE, mm } from './sample-blade.ts';

const UM = 1_000;

test('level grooves leave the thickness less both depths', () => {
  expect(slantingWeb(BLADE, mm(0.6), mm(0.3), 0)).toBe(mm(1.1));
});

test('square grooves apart in height leave the way from corner to corner', () => {
  expect(slantingWeb(BLADE, mm(0.9), mm(0.9), mm(1.05))).toBeCloseTo(Math.hypot(mm(0.2), mm(0.3)), 0);
});

test('past the middle they leave the height between their flanks', () => {
  expect(slantingWeb(BLADE, mm(1.2), mm(1.2), mm(1.25))).toBeCloseTo(mm(0.5), 0);
});

test('grooves that meet leave nothing', () => {
  expect(slantingWeb(BLADE, mm(1.2), mm(1.2), mm(0.5))).toBe(0);
  expect(slantingWeb(BLADE, mm(1.2), mm(1.2), 0)).toBe(0);
});

test('rounded roots leave the way between two arcs', () => {
  // Centres (0.9 - 0.2, 0.75 - 0.2) and (2 - 0.9 + 0.2, 1.05 + 0.2): 0.6 across and 0.7 up, less two radii.
  const web = slantingWeb({ ...BLADE, rootRadius: mm(0.2) }, mm(0.9), mm(0.9), mm(1.05));
  expect(Math.abs(web - (Math.hypot(mm(0.6), mm(0.7)) - mm(0.4)))).toBeLessThan(2 * UM);
});

test('the least rise leaves just the web', () => {
  const deep = { ...BLADE, grooveDepth: mm(0.9) };
  const rise = leastRise(deep, mm(0.5));
  expect(Math.abs(rise - (mm(0.75) + Math.sqrt(mm(0.5) ** 2 - mm(0.2) ** 2)))).toBeLessThan(2 * UM);
  expect(slantingWeb(deep, mm(0.9), mm(0.9), rise)).toBeGreaterThanOrEqual(mm(0.5));
  expect(leastRise(BLADE, mm(0.8))).toBe(0);
});
