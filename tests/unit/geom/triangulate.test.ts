import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../src/geom/convex-cell.ts';
import { triangulate } from '../../../src/geom/triangulate.ts';
import { areaOfRegion, namedRegions } from '../../kit/regions.ts';

describe('cutting into triangles', () => {
  test.each(namedRegions)('%s: counter-clockwise triangles with the area of the whole', (_, region) => {
    const cells = triangulate(region);
    const areas = cells.map(areaOf);
    expect(cells.every((cell) => cell.length === 6)).toBe(true);
    expect(Math.min(...areas)).toBeGreaterThanOrEqual(0);
    const whole = areaOfRegion(region);
    expect(Math.abs(areas.reduce((sum, area) => sum + area, 0) - whole)).toBeLessThan(1e-12 * whole);
  });
});
