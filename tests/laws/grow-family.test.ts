import fc from 'fast-check';
import { expect, test } from 'vitest';
import { areApart } from '../../src/plan/free-codes.ts';
import { type RandomNumbers, randomNumbers } from '../cases/random-numbers.ts';
import { jstsInnerFit } from '../kit/engines/jsts-inner-fit.ts';
import { FOUR_SITES_GAP as GAP, planned, SITES } from '../kit/four-site-blades.ts';
import { roomOf } from '../kit/room-of.ts';

/** Codes that exclude each other, at random. */
function someCodes(random: RandomNumbers): number[][] {
  const codes: number[][] = [];
  for (let tries = 0; tries < 8; tries++) {
    const code = Array.from({ length: SITES }, () => random.whole(0, 1));
    if (codes.every((other) => areApart(code, other, 1))) codes.push(code);
  }
  return codes.slice(0, 4);
}

/** The most codes beside the given ones of which none is below another, by trying every set. */
function mostByTrying(free: readonly (readonly number[])[]): number {
  const [first, ...rest] = free;
  if (!first) return 0;
  const beside = rest.filter((code) => areApart(first, code, 1));
  return Math.max(1 + mostByTrying(beside), mostByTrying(rest));
}

const EVERY = Array.from({ length: 2 ** SITES }, (_, n) => Array.from({ length: SITES }, (_, site) => (n >> site) & 1));

test('planned families have as much room as trying every set of codes finds, and another engine confirms each proposal', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
      const codes = someCodes(randomNumbers(seed));
      if (codes.length < 2) return;
      const family = planned(codes);
      const room = roomOf({ family });
      const free = EVERY.filter((code) => codes.every((other) => areApart(code, other, 1)));
      expect(room.none).toBeNull();
      expect(room.places).toHaveLength(SITES);
      expect(room.count).toEqual({
        confirmed: mostByTrying(free),
        atMost: mostByTrying(free),
        single: free.length,
      });
      const blanks = family.profiles.filter(({ kind }) => kind === 'blank');
      for (const proposal of room.proposals) {
        const opening = { outer: proposal.keyway.ring, islands: [] };
        for (const { id, ring } of blanks) expect(jstsInnerFit(opening, ring).area > 0).toBe(id === 'all');
        expect(jstsInnerFit(opening, proposal.blank.ring).radius).toBeGreaterThanOrEqual(GAP - 1_000);
        for (const other of family.profiles.filter(({ kind }) => kind === 'opening'))
          expect(jstsInnerFit({ outer: other.ring, islands: [] }, proposal.blank.ring).area).toBe(0);
      }
    }),
    { numRuns: 5, seed: 3 },
  );
}, 240_000);
