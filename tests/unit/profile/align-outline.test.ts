import { expect, test } from 'vitest';
import type { Vertex } from '../../../src/geom/vertex.ts';
import { alignByBox, alignByOverlap } from '../../../src/profile/align-outline.ts';
import { mirrorOutline } from '../../../src/profile/mirror-outline.ts';
import { moveOutline } from '../../../src/profile/move-outline.ts';
import { offsetOutline } from '../../../src/profile/offset-outline.ts';
import { outlineBox } from '../../../src/profile/outline-box.ts';
import { turnOutline } from '../../../src/profile/turn-outline.ts';

const MM = 1e6;

/** A keyway with a ward on each side, no two alike, and a round back. */
const keyway: Vertex[] = [
  { x: 0, y: 0, bulge: 0.4 },
  { x: 2.1 * MM, y: 0 },
  { x: 2.1 * MM, y: 2 * MM },
  { x: 1.2 * MM, y: 2 * MM },
  { x: 1.2 * MM, y: 2.9 * MM },
  { x: 2.1 * MM, y: 2.9 * MM },
  { x: 2.1 * MM, y: 8 * MM },
  { x: 0, y: 8 * MM },
  { x: 0, y: 6.1 * MM },
  { x: 0.6 * MM, y: 5.8 * MM },
  { x: 0.6 * MM, y: 5 * MM },
  { x: 0, y: 4.8 * MM },
];

/** The furthest that a vertex is from where it should be, nanometres. */
const furthest = (got: readonly Vertex[], wanted: readonly Vertex[]) =>
  Math.max(...got.map((v, i) => Math.hypot(v.x - wanted[i].x, v.y - wanted[i].y)));

test('by boxes: edges and middles', () => {
  const slot = moveOutline(keyway, { x: 5 * MM, y: -3 * MM });
  const other = alignByBox(slot, keyway, { x: 'right', y: null });
  expect(outlineBox(other).maxX).toBe(2.1 * MM);
  expect(outlineBox(other).minY).toBe(outlineBox(slot).minY);
  expect(alignByBox(slot, keyway, { x: 'middle', y: 'top' })).toEqual(keyway);
  expect(alignByBox(slot, keyway, { x: 'left', y: 'bottom' })).toEqual(keyway);
  expect(alignByBox(slot, keyway, { x: null, y: null })).toEqual(slot);
});

test('the same outline moved away comes back to itself', () => {
  const away = moveOutline(keyway, { x: 3.3 * MM, y: 1.234_567 * MM });
  const { vertices, apart, mirrored } = alignByOverlap(away, keyway, { turn: false, mirror: true });
  expect(furthest(vertices, keyway)).toBeLessThanOrEqual(2);
  expect(mirrored).toBe(false);
  expect(apart).toBeLessThan(1e-5);
});

test('turned by any angle and mirrored it comes back too, and is told so', () => {
  for (const angle of [0.1, -0.4, 1.4, 2.9]) {
    const away = moveOutline(turnOutline(keyway, angle, { x: MM, y: 4 * MM }), { x: -9 * MM, y: 2 * MM });
    const back = alignByOverlap(away, keyway, { turn: true, mirror: false });
    expect(furthest(back.vertices, keyway)).toBeLessThanOrEqual(3);
    expect(back.turned).toBeCloseTo(-angle, 5);
    const mirrored = alignByOverlap(mirrorOutline(away, 'left-right'), keyway, { turn: true, mirror: true });
    expect(mirrored.mirrored).toBe(true);
    expect(mirrored.apart).toBeLessThan(1e-4);
  }
});

test('a blank cut for a keyway comes to lie in its middle', () => {
  const cut = offsetOutline(keyway, -0.06 * MM, 'sharp');
  if (!cut.ok) throw new Error(cut.fault.what);
  const away = moveOutline(cut.vertices, { x: 1.7 * MM, y: -0.9 * MM });
  const { vertices } = alignByOverlap(away, keyway, { turn: false, mirror: false });
  expect(furthest(vertices, cut.vertices)).toBeLessThan(3_000);
});
