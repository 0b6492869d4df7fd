import type { Fit } from '../fit/fit.ts';
import type { ThreeWay } from '../fit/judge-tolerance.ts';
import type { NamedSide, ResolvedClaim } from './resolve-claims.ts';

/** How a claim stands against the outlines. */
export type ClaimStanding =
  | 'contradicted'
  | 'too close to call'
  | 'name not found'
  | 'name ambiguous'
  | 'not judged yet'
  | 'confirmed';

/** Every standing, those that need a look first: the order in which claims are listed. */
export const CLAIM_STANDINGS: readonly ClaimStanding[] = [
  'contradicted',
  'too close to call',
  'name not found',
  'name ambiguous',
  'not judged yet',
  'confirmed',
];

/** What is known of a pair: the fit of the nominal parts, and the answer for all parts within their tolerance. */
export interface PairAnswer {
  readonly fit: Fit | undefined;
  readonly parts: ThreeWay | undefined;
}

/** What is known of a pair by the ids of a blank or tool and of a keyway. */
export type AnswerOf = (entrantId: string, openingId: string) => PairAnswer;

/** A claim compared with the outlines. */
export interface CheckedClaim extends ResolvedClaim {
  readonly standing: ClaimStanding;
  /** The pair that decided, where both names are found. */
  readonly pair: ClaimPair | null;
  /** Places of the claims that say the opposite of the same pair. */
  readonly against: readonly number[];
}

/** One blank or tool and one keyway with what is known of them. */
export interface ClaimPair extends PairAnswer {
  readonly entrantId: string;
  readonly openingId: string;
}

/**
 * Compares claims with what is known of the pairs.
 *
 * Too close to call holds exactly where the claim says "enters" or "does not enter" and within the tolerance bands of the
 * two parts some blank enters some keyway and some blank stays out of some keyway (`judgeTolerance`: depends); also
 * where a name stands for several profiles of one outline whose tolerances lead to different answers. It does not
 * matter which way the nominal parts go. With bands of 0 nothing is too close to call.
 *
 * @returns one for each claim, in their order.
 * @check tests/unit/claims/check-claims.test.ts, tests/laws/claims.test.ts
 */
export function checkClaims(resolved: readonly ResolvedClaim[], answerOf: AnswerOf): CheckedClaim[] {
  const against = oppositesOf(resolved);
  return resolved.map((one, i) => ({ ...one, ...standingOf(one, answerOf), against: against[i] }));
}

/** How many claims stand how. */
export function countStandings(checked: readonly CheckedClaim[]): Readonly<Record<ClaimStanding, number>> {
  const counts = Object.fromEntries(CLAIM_STANDINGS.map((standing) => [standing, 0])) as Record<ClaimStanding, number>;
  for (const { standing } of checked) counts[standing]++;
  return counts;
}

/** What several claims of one standing are called. */
const SEVERAL: Partial<Record<ClaimStanding, string>> = {
  'name not found': 'names not found',
  'name ambiguous': 'names ambiguous',
};

/** "43 claims: 39 confirmed, 3 contradicted, 1 too close to call". */
export function claimsSummary(checked: readonly CheckedClaim[]): string {
  const counts = countStandings(checked);
  const shown: readonly ClaimStanding[] = ['confirmed', ...CLAIM_STANDINGS.filter((s) => s !== 'confirmed')];
  const parts = shown
    .filter((standing) => counts[standing] > 0)
    .map((standing) => `${figure(counts[standing])} ${(counts[standing] > 1 && SEVERAL[standing]) || standing}`);
  const total = `${figure(checked.length)} ${checked.length === 1 ? 'claim' : 'claims'}`;
  return parts.length === 0 ? total : `${total}: ${parts.join(', ')}`;
}

function figure(count: number): string {
  return count.toLocaleString('en');
}

/** Whether a claim needs somebody's attention: it is wrong, undecided, or nobody knows what it speaks of. */
export function isFailing({ standing }: CheckedClaim): boolean {
  return standing !== 'confirmed' && standing !== 'not judged yet';
}

function standingOf(one: ResolvedClaim, answerOf: AnswerOf): Pick<CheckedClaim, 'standing' | 'pair'> {
  const sides = [one.blank, one.opening];
  if (sides.some(({ standing }) => standing === 'not found' || standing === 'other kind'))
    return { standing: 'name not found', pair: null };
  if (sides.some(({ standing }) => standing === 'ambiguous')) return { standing: 'name ambiguous', pair: null };
  const pairs = one.blank.ids.flatMap((entrantId) =>
    one.opening.ids.map((openingId) => ({ entrantId, openingId, ...answerOf(entrantId, openingId) })),
  );
  const standings = pairs.map((pair) => comparePair(one.claim.enters, pair));
  const open = standings.indexOf('not judged yet');
  if (open >= 0) return { standing: 'not judged yet', pair: pairs[open] };
  const apart = standings.findIndex((standing) => standing !== standings[0]);
  if (apart < 0) return { standing: standings[0], pair: pairs[0] };
  return { standing: 'too close to call', pair: pairs[apart] };
}

function comparePair(enters: boolean, { parts }: PairAnswer): ClaimStanding {
  if (parts === undefined) return 'not judged yet';
  if (parts === 'depends') return 'too close to call';
  return (parts === 'always') === enters ? 'confirmed' : 'contradicted';
}

const NONE: readonly number[] = [];

/** For each claim the places of those that say the opposite; claims on one pair share their lists. */
function oppositesOf(resolved: readonly ResolvedClaim[]): (readonly number[])[] {
  const groups = new Map<string, { yes: number[]; no: number[] }>();
  const keys = resolved.map(({ blank, opening }) => `${subjectOf(blank)}\n${subjectOf(opening)}`);
  for (const [i, { claim }] of resolved.entries()) {
    const group = groups.get(keys[i]) ?? { yes: [], no: [] };
    groups.set(keys[i], group);
    (claim.enters ? group.yes : group.no).push(i);
  }
  return resolved.map(({ claim }, i) => {
    const group = groups.get(keys[i]);
    if (!group) return NONE;
    return claim.enters ? group.no : group.yes;
  });
}

/** What a name speaks of, the same text for the same thing; by its letters where it is not known. */
function subjectOf({ ids, text }: NamedSide): string {
  return ids.length > 0 ? `id ${ids[0]}` : text.trim().toLowerCase();
}
