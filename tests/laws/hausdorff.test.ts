import fc from 'fast-check';
import { expect, test } from 'vitest';
import { directedHausdorff, hausdorff } from '../../src/geom/hausdorff.ts';
import type { Point } from '../../src/geom/point.ts';
import { squaredDistance } from '../../src/geom/segment-distance.ts';
import { meanApart } from '../../src/profile/measure-apart.ts';
import { bladePair } from './blade-pairs.ts';

/** Outlines of blades and keyways. */
const outline: fc.Arbitrary<readonly Point[]> = fc
  .tuple(bladePair, fc.boolean())
  .map(([{ opening, blank }, first]) => (first ? opening : blank));

/** To half a nanometre each. */
const SLACK = 1.1;

test('the distance is the same either way round, and one of the directed ones', () => {
  fc.assert(
    fc.property(outline, outline, (a, b) => {
      const [there, back] = [directedHausdorff(a, b).distance, directedHausdorff(b, a).distance];
      expect(hausdorff(a, b).distance).toBe(Math.max(there, back));
      expect(hausdorff(b, a).distance).toBe(hausdorff(a, b).distance);
    }),
    { numRuns: 60 },
  );
});

test('it is 0 for one and the same line however its corners are told, and for no two others', () => {
  fc.assert(
    fc.property(outline, fc.nat(60), fc.nat(60), fc.integer({ min: 2, max: 100_000 }), (line, first, moved, by) => {
      const from = first % line.length;
      const told = [...line.slice(from), ...line.slice(0, from)].reverse();
      expect(hausdorff(line, told).distance).toBe(0);
      const other = line.map((p, i) => (i === moved % line.length ? { x: p.x + by, y: p.y + by } : p));
      expect(hausdorff(line, other).distance).toBeGreaterThan(0);
    }),
    { numRuns: 60 },
  );
});

test('the way over a third line is never shorter', () => {
  fc.assert(
    fc.property(outline, outline, outline, (a, b, c) => {
      const [ab, bc, ac] = [hausdorff(a, b), hausdorff(b, c), hausdorff(a, c)].map(({ distance }) => distance);
      expect(ac).toBeLessThanOrEqual(ab + bc + SLACK);
    }),
    { numRuns: 60 },
  );
});

test('turning, moving and mirroring both changes nothing', () => {
  const pose = fc.record({
    angle: fc.double({ min: -3, max: 3, noNaN: true }),
    x: fc.integer({ min: -9_000_000, max: 9_000_000 }),
    mirrored: fc.boolean(),
  });
  fc.assert(
    fc.property(outline, outline, pose, (a, b, { angle, x, mirrored }) => {
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      const laid = (line: readonly Point[]) =>
        line.map((p) => {
          const across = mirrored ? -p.x : p.x;
          return { x: across * cos - p.y * sin + x, y: across * sin + p.y * cos - x };
        });
      expect(Math.abs(hausdorff(laid(a), laid(b)).distance - hausdorff(a, b).distance)).toBeLessThan(SLACK);
    }),
    { numRuns: 60 },
  );
});

test('moving one line moves the distance by no more than the way', () => {
  fc.assert(
    fc.property(
      outline,
      fc.integer({ min: -900_000, max: 900_000 }),
      fc.integer({ min: -900_000, max: 900_000 }),
      (a, x, y) => {
        const moved = a.map((p) => ({ x: p.x + x, y: p.y + y }));
        expect(hausdorff(a, moved).distance).toBeLessThanOrEqual(Math.hypot(x, y) + SLACK);
      },
    ),
    { numRuns: 60 },
  );
});

test('no place of either line is further from the other than it says, and the mean is no more', () => {
  fc.assert(
    fc.property(
      outline,
      outline,
      fc.array(fc.tuple(fc.nat(200), fc.double({ min: 0, max: 1, noNaN: true })), { maxLength: 40 }),
      (a, b, places) => {
        const { distance } = directedHausdorff(a, b);
        for (const [edge, share] of places) {
          const [p, q] = [a[edge % a.length], a[(edge + 1) % a.length]];
          const [x, y] = [p.x + (q.x - p.x) * share, p.y + (q.y - p.y) * share];
          const off = Math.min(
            ...b.map((from, i) => {
              const to = b[(i + 1) % b.length];
              return squaredDistance(x, y, from.x, from.y, to.x, to.y);
            }),
          );
          expect(Math.sqrt(off)).toBeLessThanOrEqual(distance + SLACK);
        }
        const { mean, rms } = meanApart(a, b);
        expect(mean).toBeLessThanOrEqual(rms + 1e-6);
        expect(rms).toBeLessThanOrEqual(hausdorff(a, b).distance + SLACK);
      },
    ),
    { numRuns: 60 },
  );
});
