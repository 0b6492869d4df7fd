// How fast the two bounds close in. For elements of second degree the energy error falls with the mesh width to the fourth
// power where the solution is smooth, so with triangles^-2; beside a re-entrant corner of 270 degrees the stress function
// goes with r^(2/3), and on evenly refined meshes the error falls with h^(4/3) only, so with triangles^(-2/3). Refined where
// the gap is, the rate is that of smooth solutions again. G. Strang, G. J. Fix, "An Analysis of the Finite Element Method",
// 1973 (from memory). The identity of W. Prager and J. L. Synge 1947: the gap is the squared difference of the two stresses.

import { describe, expect, test, vi } from 'vitest';
import { flattenOutline } from '../../src/strength/flatten-outline.ts';
import { meshSection, refineMesh, type SectionMesh } from '../../src/strength/section-mesh.ts';
import { sectionOutline } from '../../src/strength/section-outline.ts';
import { type TorsionFields, torsionFields } from '../../src/strength/torsion-fields.ts';
import { angleSection, type DrawnSection, polygonOfMm, sector } from '../cases/torsion-shapes.ts';

// A busy machine must not fail a correct answer.
vi.setConfig({ testTimeout: 180_000 });

const rectangle = polygonOfMm([
  [0, 0],
  [4, 0],
  [4, 2],
  [0, 2],
]);
const sharpL = angleSection(4, 1, 4, 1, 0);

function firstMesh(section: DrawnSection, radius: number): SectionMesh {
  return meshSection(flattenOutline(sectionOutline(section), 1e-4), new Map(), radius);
}

/** Solutions on meshes of ever smaller circumradius, each half the one before. */
function evenly(section: DrawnSection, radius: number, steps: number): TorsionFields[] {
  return Array.from({ length: steps }, (_, k) => torsionFields(firstMesh(section, radius / 2 ** k)));
}

/** Solutions on meshes refined where the gap is. */
function whereTheGapIs(section: DrawnSection, radius: number, steps: number): TorsionFields[] {
  const found = [torsionFields(firstMesh(section, radius))];
  while (found.length < steps) {
    const { mesh, gaps } = found[found.length - 1];
    const most = gaps.reduce((a, b) => Math.max(a, b));
    found.push(torsionFields(refineMesh(mesh, (t) => gaps[t] > 0.1 * most)));
  }
  return found;
}

/** The power of the number of triangles with which the gap falls, from the first solution to the last. */
function rate(found: readonly TorsionFields[]): number {
  const [first, last] = [found[0], found[found.length - 1]];
  const more = last.gaps.length / first.gaps.length;
  return -Math.log((last.above - last.below) / (first.above - first.below)) / Math.log(more);
}

/** Each solution by itself, not only the best so far. */
function expectClosingIn(found: readonly TorsionFields[], value: number): void {
  found.forEach(({ below, above }, k) => {
    expect(below).toBeLessThan(value);
    expect(above).toBeGreaterThan(value);
    if (k === 0) return;
    expect(below, `step ${k} from below`).toBeGreaterThan(found[k - 1].below);
    expect(above, `step ${k} from above`).toBeLessThan(found[k - 1].above);
  });
}

describe('the bounds close in', () => {
  test('rectangle, evenly refined: about triangles^-2', () => {
    const found = evenly(rectangle, 0.5, 4);
    // Timoshenko & Goodier, Art. 109: 0.228682 b t^3 for b/t = 2.
    expectClosingIn(found, 0.228682 * 4 * 8);
    const power = rate(found);
    expect(power, `the gap falls with triangles^-${power.toFixed(2)}`).toBeGreaterThan(1.6);
    expect(power).toBeLessThan(2.6);
  });

  test('sharp L, evenly refined: about triangles^(-2/3), held up by the corner', () => {
    const found = evenly(sharpL, 0.3, 4);
    expectClosingIn(found, found[found.length - 1].below / 2 + found[found.length - 1].above / 2);
    const power = rate(found);
    expect(power, `the gap falls with triangles^-${power.toFixed(2)}`).toBeGreaterThan(0.5);
    expect(power).toBeLessThan(1.1);
  });

  test('sharp L, refined where the gap is: about triangles^-2 again', () => {
    const found = whereTheGapIs(sharpL, 0.3, 14);
    const power = rate(found);
    expect(power, `the gap falls with triangles^-${power.toFixed(2)}`).toBeGreaterThan(1.6);
  });
});

describe('the gap', () => {
  test.each([
    ['rectangle', rectangle],
    ['sharp L', sharpL],
    [
      'triangle',
      polygonOfMm([
        [0, 0],
        [5, 0],
        [1, 3],
      ]),
    ],
  ])("%s: the triangles' shares make it up", (_, section) => {
    const { below, above, gaps } = torsionFields(firstMesh(section, 0.4));
    expect(gaps.reduce((a, b) => a + b) / (above - below)).toBeCloseTo(1, 5);
  });

  test('three quarters of a circle: arcs add to it what lies between the two polygons', () => {
    const { below, above, gaps } = torsionFields(firstMesh(sector(3, 270), 0.5));
    expect(gaps.reduce((a, b) => a + b)).toBeLessThan(above - below);
  });
});
