import { entersWorn, measureWear, WEAR_ACCURACY } from '../fit/measure-wear.ts';
import { type Opening, prepareOpening } from '../fit/prepare-opening.ts';
import { countWord } from './count-word.ts';
import type { EntryMatrix } from './entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from './family.ts';

/** A pair and the length that it sets, nanometres. */
export interface SettingPair {
  readonly profile: string;
  readonly opening: string;
  readonly length: number;
  /** How many other pairs set the same length, as far as it is measured; absent where none does. */
  readonly alike?: number;
}

/** How much room a family has on either side of its verdicts. */
export interface GuardMargins {
  /**
   * The guard margin: the least wear, taken off a blank and as much off the keyway, at which a blank first goes into a
   * keyway that now stops it. Null where no blank is stopped, or no wear up to 4 mm lets one in.
   */
  readonly guard: SettingPair | null;
  /** The smallest clearance of a blank in a keyway that it enters. Null where none enters any. */
  readonly clearance: SettingPair | null;
}

/**
 * The guard margin and the smallest clearance of a family, with the pairs that set them. Tools are left out: what
 * must stay out, and what must go in, are blanks.
 *
 * A pair is only measured when it would already go in at the best figure so far; those that collide least come first,
 * so that most pairs cost one look. Pairs that set the same figure are counted: the first of them is named.
 *
 * @param matrix the family judged new and upright, interferences measured.
 * @yields how many pairs are done, of how many.
 * @accuracy guard 0.5 um.
 */
export function* guardMargins(
  family: Family,
  matrix: EntryMatrix,
): Generator<{ done: number; total: number }, GuardMargins, void> {
  const pairs = blankPairs(family, matrix);
  const blocked = pairs.filter(({ fit }) => fit.verdict === 'blocked');
  blocked.sort((a, b) => b.fit.clearance - a.fit.clearance);
  const prepared = new Map<string, Opening>();
  let guard: SettingPair | null = null;
  let least = Number.POSITIVE_INFINITY;
  let alike = 0;
  for (const [i, { profile, opening }] of blocked.entries()) {
    const shape = prepared.get(opening.id) ?? prepareOpening(opening.ring);
    prepared.set(opening.id, shape);
    const entersAt = (wear: number) => entersWorn(shape, profile.ring, 'both', wear);
    if (least === Number.POSITIVE_INFINITY || entersAt(least)) {
      const isAlike = least < Number.POSITIVE_INFINITY && !entersAt(Math.max(0, least - STEP));
      const length = isAlike ? least : measureWear(shape, profile.ring, 'both');
      if (length < least) {
        guard = { profile: profile.id, opening: opening.id, length };
        least = length;
        alike = 0;
      } else if (least < Number.POSITIVE_INFINITY) alike++;
    }
    yield { done: i + 1, total: blocked.length };
  }
  return { guard: guard && withAlike(guard, alike), clearance: leastClearance(pairs) };
}

/** Figures of wear lie on a grid this wide: whatever first goes in within one step of it has the same figure. */
const STEP = 2 * WEAR_ACCURACY;

function withAlike(pair: SettingPair, alike: number): SettingPair {
  return alike > 0 ? { ...pair, alike } : pair;
}

/** What is said of other pairs that set the same: ", the same for 3 other pairs"; empty where none does. */
export function alikeWords({ alike = 0 }: Pick<SettingPair, 'alike'>): string {
  return alike > 0 ? `, the same for ${countWord(alike, 'other pair')}` : '';
}

/** Every blank in every opening with its fit. */
function blankPairs(family: Family, { fits }: EntryMatrix) {
  const openings = openingsOf(family);
  return entrantsOf(family).flatMap((profile, i) =>
    profile.kind === 'blank' ? openings.map((opening, k) => ({ profile, opening, fit: fits[i][k] })) : [],
  );
}

/** Clearances nearer to each other than this are the same, nanometres: each is found to half of it. */
const SAME_CLEARANCE = 100;

function leastClearance(pairs: ReturnType<typeof blankPairs>): SettingPair | null {
  const going = pairs.filter(({ fit }) => fit.verdict !== 'blocked');
  if (going.length === 0) return null;
  const { profile, opening, fit } = going.reduce((a, b) => (b.fit.clearance < a.fit.clearance ? b : a));
  const alike = going.filter((other) => other.fit.clearance - fit.clearance <= SAME_CLEARANCE).length - 1;
  return withAlike({ profile: profile.id, opening: opening.id, length: fit.clearance }, alike);
}
