import { expect, test } from 'vitest';
import type { Vertex } from '../../../src/geom/vertex.ts';
import { mirrorAbout, mirrorOutline } from '../../../src/profile/mirror-outline.ts';
import { moveOutline, standOnOrigin } from '../../../src/profile/move-outline.ts';
import { outlineBox } from '../../../src/profile/outline-box.ts';
import { scaleOutline } from '../../../src/profile/scale-outline.ts';
import { turnOutline } from '../../../src/profile/turn-outline.ts';

const MM = 1e6;

/** A square of 2 mm with a half circle bowed out on its right side: 3 mm wide. */
const bowed: Vertex[] = [
  { x: MM, y: MM },
  { x: 3 * MM, y: MM, bulge: 1 },
  { x: 3 * MM, y: 3 * MM },
  { x: MM, y: 3 * MM },
];

test('the box takes in what an arc stands out, and not the rest of its circle', () => {
  expect(outlineBox(bowed)).toEqual({ minX: MM, minY: MM, maxX: 4 * MM, maxY: 3 * MM });
  const inwards = bowed.with(1, { ...bowed[1], bulge: -1 });
  expect(outlineBox(inwards)).toEqual({ minX: MM, minY: MM, maxX: 3 * MM, maxY: 3 * MM });
  const beyondHalf = bowed.with(1, { ...bowed[1], bulge: 2 });
  const { minY, maxY, maxX } = outlineBox(beyondHalf);
  // Radius 2 (1 + 4) / 8 = 1.25 mm, centre 0.75 mm right of the chord.
  expect([minY, maxY, maxX].map((nm) => nm / MM)).toEqual([0.75, 3.25, 5]);
});

test('mirrored left to right in its own box the arc is on the left, bowed out as before', () => {
  const mirrored = mirrorOutline(bowed, 'left-right');
  expect(outlineBox(mirrored)).toEqual(outlineBox(bowed));
  expect(mirrored).toEqual([
    { x: 4 * MM, y: MM },
    { x: 4 * MM, y: 3 * MM },
    { x: 2 * MM, y: 3 * MM, bulge: 1 },
    { x: 2 * MM, y: MM },
  ]);
  expect(mirrorAbout(bowed, 'top-bottom', 0)[0]).toEqual({ x: MM, y: -MM });
});

test('quarter turns are exact', () => {
  const turned = turnOutline(bowed, Math.PI / 2, { x: 0, y: 0 });
  expect(turned[1]).toEqual({ x: -MM, y: 3 * MM, bulge: 1 });
});

test('standing on the origin', () => {
  const side = (at: 'left' | 'middle' | 'right') => {
    const { minX, maxX, minY } = outlineBox(standOnOrigin(bowed, at));
    return [minX / MM, maxX / MM, minY / MM];
  };
  expect(side('left')).toEqual([0, 3, 0]);
  expect(side('middle')).toEqual([-1.5, 1.5, 0]);
  expect(side('right')).toEqual([-3, 0, 0]);
  expect(moveOutline(bowed, { x: 1, y: -1 })[1]).toEqual({ x: 3 * MM + 1, y: MM - 1, bulge: 1 });
});

test('inches that were taken for millimetres, and sizes that make no sense', () => {
  const scaled = scaleOutline(bowed, 1 / 25.4, { x: 0, y: 0 });
  expect(scaled.ok && scaled.vertices[1]).toEqual({ x: 118_110, y: 39_370, bulge: 1 });
  for (const factor of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 25.4])
    expect(scaleOutline(bowed, factor, { x: 0, y: 0 }).ok).toBe(false);
  expect(scaleOutline(bowed, 15, { x: 0, y: 0 }).ok).toBe(true);
});
