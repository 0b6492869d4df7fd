import { describe, expect, test } from 'vitest';
import { convexParts } from '../../../src/geom/convex-parts.ts';
import type { Point } from '../../../src/geom/point.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { triangulate } from '../../../src/geom/triangulate.ts';
import { areaOfRegion, frame, namedRegions } from '../../kit/regions.ts';
import { boxOfMm } from '../../kit/shapes.ts';

function isConvex(part: readonly Point[]): boolean {
  return part.every((p, i) => {
    const [q, r] = [part[(i + 1) % part.length], part[(i + 2) % part.length]];
    return (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x) >= 0;
  });
}

describe('cutting into convex parts', () => {
  test.each(namedRegions)('%s: convex, with the area of the whole, fewer than triangles', (_, region) => {
    const parts = convexParts(region);
    expect(parts.every(isConvex)).toBe(true);
    const whole = areaOfRegion(region);
    expect(Math.abs(parts.reduce((sum, part) => sum + signedArea(part), 0) - whole)).toBeLessThan(1e-12 * whole);
    expect(parts.length).toBeLessThanOrEqual(triangulate(region).length);
  });

  test('a convex shape is one part', () => {
    expect(convexParts(regionOf(boxOfMm(2, 3)))).toHaveLength(1);
  });

  test('parts do not overlap: a frame needs at least four', () => {
    expect(convexParts(frame).length).toBeGreaterThanOrEqual(4);
  });
});
