import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hearCommand } from '../../kit/hearing-shell.ts';

const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

function run(line: string, text = LESSON) {
  return hearCommand(line.split(' '), text);
}

/** A plain blade of 8 x 2 mm: T = 2.5 N m gives 277.37 MPa, J = k1 b t^3 with k1(4) = 0.280813. */
const PLAIN = JSON.stringify({
  format: 'sectionary-family',
  version: 1,
  name: 'Plain blade',
  units: 'mm',
  runningClearance: 0.04,
  profiles: [
    {
      id: 'blade',
      kind: 'blank',
      name: 'Blade',
      outline: [
        [0, 0],
        [2, 0],
        [2, 8],
        [0, 8],
      ],
    },
  ],
});

test('a plain blade has the figures of the tables of torsion', async () => {
  const { code, out } = await run('strength blade.json --json --material c77000-h02-mill', PLAIN);
  expect(code).toBe(0);
  const told = JSON.parse(out);
  const [blade] = told.blades;
  // Timoshenko and Goodier's table of rectangular bars, side ratio 4 (see tests/outside/torsion.test.ts).
  expect(blade.torsionMm4.below).toBeLessThanOrEqual(0.280813 * 64);
  expect(blade.torsionMm4.above).toBeGreaterThanOrEqual(0.280813 * 64);
  expect(blade.peakShearPerTorque * 2500).toBeCloseTo(277.37, -1);
  // Yields by von Mises at 540 / sqrt 3 MPa, is fully plastic at 4.57 N m.
  expect(blade.yieldNm[0]).toBeCloseTo(2.81, 1);
  expect(blade.plasticNm[0]).toBeCloseTo(4.57, 1);
  expect(blade.verdict).toBe('elastic');
  expect(told.material.yieldBy).toBe('0.2 % offset');
  expect(told.torqueIs.sure).toMatch(/check the standard/);
});

test('a family is told as a table with its material, its source and the cautions', async () => {
  const { code, out } = await run('strength family.json --torque 1');
  expect(code).toBe(0);
  expect(out).toMatch(/^Nickel silver 55-18 C77000 H02: yield 540 MPa \(0\.2 % offset, nominal\); Mill data/);
  expect(out).toContain('Compared with 1 N m\n');
  expect(out).toMatch(/Reed group blank +\d+\.\d\d +\d\.\d{3}/);
  expect(out).toContain('confirm before metal is cut');
});

test.each([
  ['strength family.json --torque 0', /--torque is "0", must be newton metres above 0/],
  ['strength family.json --material brass', /there is no material "brass"; there are c77000-h02-mill, /],
  ['strength', /"strength" needs the name of a family file/],
  ['strength family.json --material a --material b', /--material is given 2 times/],
])('%s is refused in words', async (line, words) => {
  const { code, out, err } = await run(line);
  expect([code, out]).toEqual([2, '']);
  expect(err).toMatch(words);
});
