import { describe, expect, test } from 'vitest';
import type { Ring } from '../../../src/geom/ring.ts';
import { flattenOutline } from '../../../src/strength/flatten-outline.ts';
import { meshSection, refineMesh, type SectionMesh } from '../../../src/strength/section-mesh.ts';
import { sectionOutline } from '../../../src/strength/section-outline.ts';
import { sectionProperties } from '../../../src/strength/section-properties.ts';
import { keywayPair } from '../../cases/keyway-pairs.ts';
import { milledRing, rootedBlade } from '../../cases/strength-blades.ts';
import { polygonOfMm } from '../../cases/torsion-shapes.ts';
import { boxOfMm, ringOfMm, soundRing, turned } from '../../kit/shapes.ts';

function meshOf(ring: Ring, radius = 1): SectionMesh {
  return meshSection(flattenOutline(sectionOutline({ ring }), 1e-4), new Map(), radius);
}

/** Areas of all triangles, and the least angle of all, degrees. */
function shapeOf({ points, corners }: SectionMesh): { areas: number[]; leastAngle: number } {
  const areas: number[] = [];
  let leastAngle = 180;
  for (let t = 0; t < corners.length; t += 3) {
    const at = [0, 1, 2].map((i) => points[corners[t + i]]);
    at.forEach((p, i) => {
      const [q, r] = [at[(i + 1) % 3], at[(i + 2) % 3]];
      const [ux, uy, vx, vy] = [q.x - p.x, q.y - p.y, r.x - p.x, r.y - p.y];
      if (i === 0) areas.push((ux * vy - uy * vx) / 2);
      leastAngle = Math.min(leastAngle, (Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI);
    });
  }
  return { areas, leastAngle };
}

/** Counter-clockwise triangles that fill the section, whose neighbours know each other. */
function expectSound(mesh: SectionMesh, ring: Ring): void {
  const { areas } = shapeOf(mesh);
  const { area } = sectionProperties(sectionOutline({ ring }));
  expect(Math.min(...areas)).toBeGreaterThan(0);
  expect(areas.reduce((a, b) => a + b) / area).toBeCloseTo(1, 9);
  let walls = 0;
  mesh.beyond.forEach((other, e) => {
    if (other < 0) walls++;
    else expect([0, 1, 2].map((i) => mesh.beyond[3 * other + i])).toContain(Math.floor(e / 3));
  });
  expect(walls).toBe(mesh.pieces.length);
}

const web = ringOfMm([
  ...([
    [0, 0],
    [2, 0],
    [2, 3],
    [1.1, 3],
    [1.1, 3.6],
    [2, 3.6],
    [2, 8],
  ] as const),
  ...([
    [0, 8],
    [0, 3.6],
    [0.9, 3.6],
    [0.9, 3],
    [0, 3],
  ] as const),
]);

describe('meshes', () => {
  test.each([
    ['a web of 0.2 mm', web],
    ['a web of 0.2 mm, turned', turned(web, 37)],
    ['a sliver of 20 x 0.05 mm', boxOfMm(20, 0.05)],
    ['a rounded blade', milledRing(rootedBlade(0.06))],
    ['a turned box, whose points are in line to the last digit only', turned(boxOfMm(1.5, 6), -60)],
  ])('%s: sound, and no angle below 24 degrees but for the corners', (_, ring) => {
    const mesh = meshOf(ring);
    expectSound(mesh, ring);
    expect(shapeOf(mesh).leastAngle).toBeGreaterThan(23.9);
  });

  test('an acute corner of 5 degrees: its own angle is the least one', () => {
    const { ring } = polygonOfMm([
      [0, 0],
      [8, 0],
      [8 * Math.cos(Math.PI / 36), 8 * Math.sin(Math.PI / 36)],
    ]);
    const mesh = meshOf(ring);
    expectSound(mesh, ring);
    expect(shapeOf(mesh).leastAngle).toBeGreaterThan(4.9);
    expect(mesh.corners.length / 3).toBeLessThan(500);
  });

  test.each([1, 2, 3, 4, 5])('generated keyway %i, turned: sound', (seed) => {
    const ring = turned(soundRing(keywayPair(seed + 900, 20).opening.outer), 17 * seed);
    expectSound(meshOf(ring), ring);
  });

  test('marked triangles are refined, and the mesh stays sound', () => {
    const mesh = meshOf(web);
    const first = mesh.corners[0];
    const finer = refineMesh(mesh, (t) => [0, 1, 2].some((i) => mesh.corners[3 * t + i] === first));
    expect(finer.corners.length).toBeGreaterThan(mesh.corners.length);
    expectSound(finer, web);
    expect(shapeOf(finer).leastAngle).toBeGreaterThan(23.9);
    // Nothing was asked for: nothing happens.
    expect(refineMesh(mesh, () => false).corners).toEqual(mesh.corners);
  });

  test('sides have short pieces where a corner asks for them', () => {
    const { ring } = polygonOfMm([
      [0, 0],
      [4, 0],
      [4, 1],
      [1, 1],
      [1, 4],
      [0, 4],
    ]);
    const flat = flattenOutline(sectionOutline({ ring }), 1e-4);
    const mesh = meshSection(flat, new Map([[3, 0.01]]), 1);
    const lengths = mesh.pieces
      .filter(({ a, b }) => a === 3 || b === 3)
      .map(({ a, b }) => Math.hypot(mesh.points[a].x - mesh.points[b].x, mesh.points[a].y - mesh.points[b].y));
    for (const length of lengths) expect(length).toBeLessThan(0.0101);
    expectSound(mesh, ring);
  });
});
