// Families of plain milled blades with four places for a groove: quick to judge, and their room is plain.

import type { Family } from '../../src/family/family.ts';
import { millOutline } from '../../src/profile/mill-outline.ts';
import { openingFromBlank } from '../../src/profile/opening-from-blank.ts';
import type { Milled, Profile, ProfileKind } from '../../src/profile/profile.ts';
import { soundRing } from './shapes.ts';

const UM = 1_000;
export const FOUR_SITES_GAP = 40 * UM;
export const SITES = 4;

/** A planned blade: at each site a groove or none, by turns left and right. */
export function blade(code: readonly number[]): Milled {
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

export function profile(id: string, kind: ProfileKind, milled: Milled): Profile {
  const points = millOutline(milled);
  if (!Array.isArray(points)) throw new Error('not to be milled');
  return { id, kind, name: id, milled, ring: soundRing(points) };
}

function keyway(id: string, code: readonly number[]): Profile {
  const made = openingFromBlank(profile(id, 'blank', blade(code)), FOUR_SITES_GAP);
  if (!made.ok || !made.made.milled) throw new Error('no keyway');
  return profile(id, 'opening', made.made.milled);
}

/** A keyway and a blank for each code, and a blank that enters all. */
export function planned(codes: readonly (readonly number[])[]): Family {
  const sections = codes.flatMap((code, i) => [keyway(`k${i}`, code), profile(`b${i}`, 'blank', blade(code))]);
  const all = profile('all', 'blank', blade(new Array(SITES).fill(1)));
  return {
    name: 'Planned',
    units: 'mm',
    runningClearance: FOUR_SITES_GAP,
    tolerance: 15 * UM,
    tiltLimit: 0,
    profiles: [...sections, all],
  };
}
