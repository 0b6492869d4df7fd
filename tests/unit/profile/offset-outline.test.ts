import { expect, test } from 'vitest';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { arcOf, makeDrawn, type Vertex } from '../../../src/geom/vertex.ts';
import { offsetOutline } from '../../../src/profile/offset-outline.ts';

const MM = 1e6;

const rectangle = (w: number, h: number): Vertex[] => [
  { x: 0, y: 0 },
  { x: w * MM, y: 0 },
  { x: w * MM, y: h * MM },
  { x: 0, y: h * MM },
];

function grown(vertices: readonly Vertex[], gap: number, corners: 'round' | 'sharp'): readonly Vertex[] {
  const change = offsetOutline(vertices, gap * MM, corners);
  if (!change.ok) throw new Error(change.fault.what);
  return change.vertices;
}

function areaOf(vertices: readonly Vertex[]): number {
  const made = makeDrawn(vertices);
  return made.ok ? signedArea(made.ring) / MM ** 2 : Number.NaN;
}

test('sharp corners: a rectangle larger all round, beginning at the same corner', () => {
  expect(grown(rectangle(2, 6), 0.05, 'sharp')).toEqual([
    { x: -0.05 * MM, y: -0.05 * MM },
    { x: 2_050_000, y: -0.05 * MM },
    { x: 2_050_000, y: 6.05 * MM },
    { x: -0.05 * MM, y: 6.05 * MM },
  ]);
});

test('round corners are arcs of the gap; the area is that of Steiner: A + L d + pi d^2', () => {
  const round = grown(rectangle(2, 6), 0.5, 'round');
  expect(round).toHaveLength(8);
  const radii = round.flatMap((v, i) => arcOf(v, round[(i + 1) % 8])?.radius ?? []);
  expect(radii).toHaveLength(4);
  for (const radius of radii) expect(radius / MM).toBeCloseTo(0.5, 3);
  expect(areaOf(round)).toBeCloseTo(12 + 16 * 0.5 + Math.PI * 0.25, 2);
});

test('an arc grows into an arc of a larger radius, and shrinks into a smaller one', () => {
  const arch = rectangle(2, 4).with(2, { x: 2 * MM, y: 4 * MM, bulge: 1 });
  for (const [gap, radius] of [
    [0.2, 1.2],
    [-0.2, 0.8],
  ]) {
    const change = grown(arch, gap, 'sharp');
    const radii = change.flatMap((v, i) => arcOf(v, change[(i + 1) % change.length])?.radius ?? []);
    expect(radii).toHaveLength(1);
    expect(radii[0] / MM).toBeCloseTo(radius, 2);
  }
});

test('says when nothing is left, when it falls apart, and when a slot closes', () => {
  const says = (vertices: readonly Vertex[], gap: number) => {
    const change = offsetOutline(vertices, gap * MM, 'sharp');
    return change.ok ? 'done' : change.fault.what;
  };
  expect(says(rectangle(2, 6), -1.01)).toBe('Nothing would be left of the outline');
  expect(says(rectangle(2, 6), 0)).toBe('The gap must not be 0');
  const waist: Vertex[] = [
    [0, 0],
    [2, 0],
    [2, 2],
    [1.2, 3],
    [2, 4],
    [2, 6],
    [0, 6],
    [0, 4],
    [0.8, 3],
    [0, 2],
  ].map(([x, y]) => ({ x: x * MM, y: y * MM }));
  expect(says(waist, -0.3)).toBe('The outline would fall into 2 parts');
  expect(says(waist, -0.1)).toBe('done');
  const slot: Vertex[] = [
    [0, 0],
    [4, 0],
    [4, 4],
    [0, 4],
    [0, 2.1],
    [2, 2.1],
    [2, 3],
    [3, 3],
    [3, 1],
    [2, 1],
    [2, 2],
    [0, 2],
  ].map(([x, y]) => ({ x: x * MM, y: y * MM }));
  expect(says(slot, 0.06)).toBe('A slot of the outline would close and leave a hole inside');
});
