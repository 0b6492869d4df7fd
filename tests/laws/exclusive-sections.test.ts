import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findingExclusiveSections } from '../../src/capacity/exclusive-sections.ts';
import { finish } from '../kit/traced.ts';

const tables = fc
  .record({ blanks: fc.integer({ min: 1, max: 6 }), keyways: fc.integer({ min: 1, max: 6 }) })
  .chain(({ blanks, keyways }) =>
    fc.array(fc.array(fc.boolean(), { minLength: keyways, maxLength: keyways }), {
      minLength: blanks,
      maxLength: blanks,
    }),
  );

/** The largest number of keyways that exclude each other, by trying every choice of blanks for every set of keyways. */
function largest(goesIn: readonly (readonly boolean[])[]): number {
  const keyways = goesIn[0].length;
  const go = (keyway: number, chosen: readonly (readonly [number, number])[]): number => {
    if (keyway === keyways) return chosen.length;
    let best = go(keyway + 1, chosen);
    for (const [blank, row] of goesIn.entries()) {
      const fits = row[keyway] && chosen.every(([other, its]) => !row[its] && !goesIn[other][keyway]);
      if (fits) best = Math.max(best, go(keyway + 1, [...chosen, [blank, keyway]]));
    }
    return best;
  };
  return go(0, []);
}

test('no choice of keyways and blanks is larger, and the one told is one', () => {
  fc.assert(
    fc.property(tables, (goesIn) => {
      const { pairs, atMost } = finish(findingExclusiveSections(goesIn));
      expect(pairs.length).toBe(largest(goesIn));
      expect(atMost).toBe(pairs.length);
      for (const a of pairs) for (const b of pairs) expect(goesIn[a.blank][b.keyway]).toBe(a.keyway === b.keyway);
    }),
    { numRuns: 400 },
  );
});
