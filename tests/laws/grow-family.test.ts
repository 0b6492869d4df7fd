import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Family } from '../../src/family/family.ts';
import { areApart } from '../../src/plan/free-codes.ts';
import { millOutline } from '../../src/profile/mill-outline.ts';
import { openingFromBlank } from '../../src/profile/opening-from-blank.ts';
import type { Milled, Profile, ProfileKind } from '../../src/profile/profile.ts';
import { type RandomNumbers, randomNumbers } from '../cases/random-numbers.ts';
import { jstsInnerFit } from '../kit/engines/jsts-inner-fit.ts';
import { roomOf } from '../kit/room-of.ts';
import { soundRing } from '../kit/shapes.ts';

const UM = 1_000;
const GAP = 40 * UM;
const SITES = 4;

/** A planned blade: at each site a groove or none, by turns left and right. */
function blade(code: readonly number[]): Milled {
  const grooves = code.flatMap((digit, site) =>
    digit === 0
      ? []
      : [
          {
            side: site % 2 === 0 ? ('left' as const) : ('right' as const),
            bottom: (700 + site * 900) * UM,
            width: 800 * UM,
            depth: 600 * UM,
            flank: 0,
            rootRadius: 0,
          },
        ],
  );
  return { thickness: 2_000 * UM, height: 8_000 * UM, backRadius: 300 * UM, grooves };
}

function profile(id: string, kind: ProfileKind, milled: Milled): Profile {
  const points = millOutline(milled);
  if (!Array.isArray(points)) throw new Error('not to be milled');
  return { id, kind, name: id, milled, ring: soundRing(points) };
}

function keyway(id: string, code: readonly number[]): Profile {
  const made = openingFromBlank(profile(id, 'blank', blade(code)), GAP);
  if (!made.ok || !made.made.milled) throw new Error('no keyway');
  return profile(id, 'opening', made.made.milled);
}

/** Codes that exclude each other, at random. */
function someCodes(random: RandomNumbers): number[][] {
  const codes: number[][] = [];
  for (let tries = 0; tries < 8; tries++) {
    const code = Array.from({ length: SITES }, () => random.whole(0, 1));
    if (codes.every((other) => areApart(code, other, 1))) codes.push(code);
  }
  return codes.slice(0, 4);
}

function planned(codes: readonly (readonly number[])[]): Family {
  const sections = codes.flatMap((code, i) => [keyway(`k${i}`, code), profile(`b${i}`, 'blank', blade(code))]);
  const all = profile('all', 'blank', blade(new Array(SITES).fill(1)));
  return {
    name: 'Planned',
    units: 'mm',
    runningClearance: GAP,
    tolerance: 15 * UM,
    tiltLimit: 0,
    profiles: [...sections, all],
  };
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
        expect(jstsInnerFit(opening, proposal.blank.ring).radius).toBeGreaterThanOrEqual(GAP - UM);
        for (const other of family.profiles.filter(({ kind }) => kind === 'opening'))
          expect(jstsInnerFit({ outer: other.ring, islands: [] }, proposal.blank.ring).area).toBe(0);
      }
    }),
    { numRuns: 5, seed: 3 },
  );
}, 240_000);
