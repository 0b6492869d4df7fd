// What is written as a table of points is read back as it was: every whole nanometre, every bulge, every name.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPoints } from '../../src/interchange/csv/read.ts';
import { writePoints } from '../../src/interchange/csv/write.ts';
import { drawnProfiles } from './drawn-profiles.ts';

const whole = (list: readonly { x: number; y: number; bulge?: number }[]) =>
  list.map(({ x, y, bulge = 0 }) => [Math.round(x) + 0, Math.round(y) + 0, bulge]);

describe.each(['mm', 'in'] as const)('a table in %s', (units) => {
  test.each([',', ';', '\t'] as const)('parted by "%s" comes back to the nanometre', (separator) => {
    fc.assert(
      fc.property(drawnProfiles, (profiles) => {
        const text = writePoints(profiles, { units, separator });
        const read = readPoints(text);
        if (!read.ok) throw new Error(`${JSON.stringify(read.faults)}\n${text}`);
        const { paths, notes, unitsStated } = read.drawing;
        expect(notes).toEqual([]);
        expect(unitsStated).toBe(true);
        expect(paths.map(({ vertices }) => whole(vertices))).toEqual(profiles.map(({ drawn = [] }) => whole(drawn)));
        expect(new Set(paths.map(({ label }) => label)).size).toBe(profiles.length);
      }),
      { numRuns: 40 },
    );
  });

  test('holds no cell that a spreadsheet would take for a formula, numbers aside', () => {
    fc.assert(
      fc.property(drawnProfiles, (profiles) => {
        for (const row of writePoints(profiles, { units }).split('\r\n').slice(1, -1))
          expect(row).not.toMatch(/^"?\s*[=+\-@]/);
      }),
      { numRuns: 40 },
    );
  });
});
