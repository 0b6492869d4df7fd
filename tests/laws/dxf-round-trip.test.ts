// What is written as DXF is read back as it was: every whole nanometre, every bulge, a layer for each profile.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxOf } from '../../src/geom/point.ts';
import { edgePoints } from '../../src/geom/vertex.ts';
import { readDxf } from '../../src/interchange/dxf/read.ts';
import { writeDxf } from '../../src/interchange/dxf/write.ts';
import { drawnProfiles, fromFirst } from './drawn-profiles.ts';

describe.each(['mm', 'in'] as const)('a drawing in %s', (units) => {
  test('comes back to the nanometre', () => {
    fc.assert(
      fc.property(drawnProfiles, (profiles) => {
        const read = readDxf(writeDxf(profiles, { units }));
        if (!read.ok) throw new Error(JSON.stringify(read.faults));
        const { paths, notes, unitsStated, nmPerUnit } = read.drawing;
        expect(notes).toEqual([]);
        expect([unitsStated, nmPerUnit]).toEqual([true, units === 'mm' ? 1e6 : 25.4e6]);
        expect(paths.map(({ closed }) => closed)).toEqual(profiles.map(() => true));
        expect(new Set(paths.map(({ label }) => label.toLowerCase())).size).toBe(profiles.length);
        for (const [i, { vertices }] of paths.entries()) {
          expect(fromFirst(vertices)).toEqual(fromFirst(profiles[i].drawn ?? []));
          // Not only differences: each coordinate is a whole nanometre to within what a double in inches can hold.
          for (const { x, y } of vertices)
            expect(Math.abs(x - Math.round(x)) + Math.abs(y - Math.round(y))).toBeLessThan(0.01);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('has its outlines side by side on one line, none over another', () => {
    fc.assert(
      fc.property(drawnProfiles, fc.integer({ min: 0, max: 20_000_000 }), (profiles, gap) => {
        const read = readDxf(writeDxf(profiles, { units, gap }));
        const boxes = (read.ok ? read.drawing.paths : []).map(({ vertices }) =>
          boxOf(vertices.flatMap((v, i) => edgePoints(v, vertices[(i + 1) % vertices.length]))),
        );
        expect(Math.abs(boxes[0].minX)).toBeLessThanOrEqual(1);
        for (const [i, { minX, minY }] of boxes.entries()) {
          expect(Math.abs(minY)).toBeLessThanOrEqual(1);
          if (i > 0) expect(Math.abs(minX - boxes[i - 1].maxX - gap)).toBeLessThanOrEqual(2);
        }
      }),
      { numRuns: 30 },
    );
  });
});
