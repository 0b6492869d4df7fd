import {
  type AnswerOf,
  type CheckedClaim,
  type ClaimPair,
  checkClaims,
  claimsSummary,
} from '../claims/check-claims.ts';
import { claimMargin, claimSentence, oppositeSentence } from '../claims/claim-sentence.ts';
import { makeNameFinder, type ResolvedClaim, resolveClaims } from '../claims/resolve-claims.ts';
import type { Claim } from '../family/claim.ts';
import { bandsOf, type Family } from '../family/family.ts';
import { orRefuse, PairRefused } from '../family/pair-refused.ts';
import { plainConditions } from '../fit/conditions.ts';
import { explainPlacement } from '../fit/explain-placement.ts';
import { blockedWords } from '../fit/fit-sentence.ts';
import { blankUnder, judgePair, openingUnder } from '../fit/judge-pair.ts';
import { judgeTolerance, keptParts } from '../fit/judge-tolerance.ts';
import { registerOf } from '../names/register.ts';
import type { Profile } from '../profile/profile.ts';
import { type Job, JobRefused, runInSlices } from './job.ts';

/** Claims of a family to be checked. */
export interface ClaimsInput {
  readonly family: Family;
  /** In place of those of the family. */
  readonly claims?: readonly Claim[];
}

/** A checked claim with its reason in words. */
export interface ToldClaim {
  readonly checked: CheckedClaim;
  /** Such as "+0.052 mm"; empty where it is not known. */
  readonly margin: string;
  readonly reason: string;
}

/** All claims checked, with how many stand how in words. */
export interface ClaimsReport {
  readonly claims: readonly ToldClaim[];
  readonly summary: string;
}

/**
 * Every claim checked against new parts held upright, within the tolerances of the family. Only the pairs that claims
 * speak of are judged. Refused where a pair cannot be judged.
 *
 * @check tests/unit/jobs/claims-jobs.test.ts
 */
export const checkFamilyClaims: Job<ClaimsInput, ClaimsReport> = async (input, context) => {
  try {
    return await runInSlices(reported(input), context);
  } catch (error) {
    if (error instanceof PairRefused) throw new JobRefused(error.message);
    throw error;
  }
};

function* reported({ family, claims = family.claims ?? [] }: ClaimsInput) {
  const resolved = resolveClaims(makeNameFinder(family, registerOf(family)), claims);
  const pairs = pairsOf(resolved);
  const judge = makeJudge(family);
  const answers = new Map<string, ReturnType<typeof judge>>();
  for (const [key, [entrantId, openingId]] of pairs) {
    answers.set(key, judge(entrantId, openingId));
    yield { done: answers.size, total: pairs.size };
  }
  const answerOf: AnswerOf = (entrantId, openingId) =>
    answers.get(keyOf(entrantId, openingId)) ?? { fit: undefined, parts: undefined };
  const checked = checkClaims(resolved, answerOf);
  return { claims: checked.map((one) => tell(one, family, claims)), summary: claimsSummary(checked) };
}

/** The pairs that claims speak of, each once. */
function pairsOf(resolved: readonly ResolvedClaim[]): Map<string, readonly [string, string]> {
  const pairs = new Map<string, readonly [string, string]>();
  for (const { blank, opening } of resolved)
    for (const entrantId of blank.ids)
      for (const openingId of opening.ids) pairs.set(keyOf(entrantId, openingId), [entrantId, openingId]);
  return pairs;
}

function keyOf(entrantId: string, openingId: string): string {
  return `${entrantId}\n${openingId}`;
}

/** Judges pairs of a family new and upright; what belongs to one profile is made once. */
function makeJudge(family: Family) {
  const conditions = plainConditions(family.runningClearance);
  const byId = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const openings = once((p: Profile) => openingUnder(p.ring, conditions));
  const blanks = once((p: Profile) => blankUnder(p.ring, conditions));
  const easiest = keptParts();
  return (entrantId: string, openingId: string) => {
    const [entrant, opening] = [byId.get(entrantId), byId.get(openingId)];
    if (!entrant || !opening) return { fit: undefined, parts: undefined };
    return orRefuse(entrantId, openingId, () => {
      const fit = judgePair(openings(opening), blanks(entrant), conditions);
      const bands = bandsOf(family, entrant, opening);
      return { fit, parts: judgeTolerance(openings(opening), blanks(entrant), fit, bands, 0, easiest) };
    });
  };
}

function once<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const value = known.get(key) ?? make(key);
    known.set(key, value);
    return value;
  };
}

function tell(checked: CheckedClaim, family: Family, claims: readonly Claim[]): ToldClaim {
  const length = (nm: number) => `${(Math.abs(nm) / 1e6).toFixed(3)} mm`;
  const band = (from: number, to: number) => `${(from / 1e6).toFixed(1)}-${(to / 1e6).toFixed(1)} mm`;
  const find = (id: string) => family.profiles.find((profile) => profile.id === id);
  const both = ({ entrantId, openingId }: ClaimPair) => [find(entrantId), find(openingId)] as const;
  const words = {
    length,
    bands: (pair: ClaimPair) => {
      const [entrant, opening] = both(pair);
      return entrant && opening && bandsOf(family, entrant, opening);
    },
    obstacle: (pair: ClaimPair) => {
      const [entrant, opening] = both(pair);
      if (!entrant || !opening || !pair.fit) return '';
      return blockedWords(explainPlacement(opening.ring, entrant.ring, pair.fit.placement).collisions, length, band);
    },
  };
  const opposite = oppositeSentence(checked, claims);
  const reason = [claimSentence(checked, words), opposite].filter(Boolean).join(' ');
  return { checked, margin: claimMargin(checked, words), reason };
}
