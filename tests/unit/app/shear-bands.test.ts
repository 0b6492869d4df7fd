import { expect, test } from 'vitest';
import { roundLevels, shearBands } from '../../../src/app/state/plan/strength/shear-bands.ts';
import { scaleColour, shearScale } from '../../../src/app/state/plan/strength/shear-scale.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { findingStrength } from '../../../src/strength/find-strength.ts';
import { USUAL_MATERIAL } from '../../../src/strength/materials.ts';
import type { SectionStrength } from '../../../src/strength/strength.ts';
import { demoProfile } from '../../kit/demo-family.ts';

function areaOf(part: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < part.length; i += 2) {
    const k = (i + 2) % part.length;
    sum += part[i] * part[k + 1] - part[k] * part[i + 1];
  }
  return sum / 2;
}

/** A coarse answer for a blade. */
function coarse({ ring }: Profile): SectionStrength {
  const steps = findingStrength({ ring, gap: 0.1, mostTriangles: 500 });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

test('one triangle is cut at its levels: areas by hand', () => {
  // Shear rises evenly from 0 at x = 0 to 4 at x = 4.
  const field = {
    points: Float64Array.from([0, 0, 4, 0, 0, 4]),
    triangles: Uint32Array.from([0, 1, 2]),
    shear: Float64Array.from([0, 4, 0]),
  };
  const { bands, lines } = shearBands(field, [0, 1, 3]);
  const areas = bands.map((parts) => parts.reduce((sum, part) => sum + areaOf(part), 0));
  expect(areas).toEqual([3.5, 4, 0.5]);
  expect([...lines[1][0]].sort()).toEqual([0, 1, 1, 3]);
});

test('the bands of a blade cover all of it, each place once', () => {
  const section = coarse(demoProfile('strip-175'));
  const scale = shearScale(section, USUAL_MATERIAL, 2.5, 'mm');
  const { bands } = shearBands(section.field, scale.levels);
  const area = bands.flat().reduce((sum, part) => sum + areaOf(part), 0) / 1e12;
  expect(area).toBeCloseTo(section.area, 2);
  for (const part of bands.flat()) expect(areaOf(part)).toBeGreaterThanOrEqual(0);
  expect(scale.texts[0]).toBe('0 MPa');
  expect(shearScale(section, USUAL_MATERIAL, 2.5, 'in').texts[1]).toMatch(/ ksi$/);
  // The strip yields below 2.5 N m in this metal, not below a tenth of it.
  expect(scale.yieldLevel).toBeGreaterThan(0);
  expect(shearScale(section, USUAL_MATERIAL, 0.25, 'mm').yieldLevel).toBeNull();
});

test('levels are round figures up to the greatest stress', () => {
  expect(roundLevels(480, 7)).toEqual([0, 100, 200, 300, 400]);
  expect(roundLevels(0.7, 7)[1]).toBeCloseTo(0.1);
  expect(roundLevels(350, 7)).toEqual([0, 50, 100, 150, 200, 250, 300]);
});

test('the scale grows darker all the way, so that it can be read in grey', () => {
  const light = Array.from({ length: 21 }, (_, i) => {
    const [r, g, b] = (scaleColour(i / 20).match(/\d+/g) ?? []).map(Number);
    return 0.299 * r + 0.587 * g + 0.114 * b;
  });
  for (let i = 1; i < light.length; i++) expect(light[i]).toBeLessThan(light[i - 1] - 4);
});
