import { entrantsOf, openingsOf } from '../family/family.ts';
import type { Fit, Verdict } from '../fit/fit.ts';
import { randomFrom, shuffled } from '../fit/monte-carlo.ts';
import { outlineKey } from '../profile/outline-key.ts';
import type { TeachingKnowledge } from './teaching-knowledge.ts';

/** One pair that is asked about. Its answer is not in it: that is asked of the core when it is given. */
export interface QuizQuestion {
  readonly entrantId: string;
  readonly openingId: string;
}

/** Questions of a round where not told otherwise. */
export const ROUND_LENGTH = 10;

/** A pair that may be asked, with what decides how good a question it is. */
interface Candidate extends QuizQuestion {
  readonly fit: Fit;
  /** Equal outlines have equal names, so that a blank that is only longer is not asked twice. */
  readonly shape: string;
}

/** Of the blocked pairs this share, those that fail by least, counts as near misses. */
const NEAR_SHARE = 1 / 3;

/**
 * The questions of a round: about half of them go in, tight ones among them where there are any; of those that do not,
 * at least half fail by little. No pair of shapes comes twice, and no section comes again before others had a turn. Only
 * pairs whose margin is known are asked.
 *
 * @param seed the same seed gives the same round.
 * @returns fewer than `count` where the family has fewer pairs; none where nothing is judged.
 * @check tests/unit/teach/quiz.test.ts
 */
export function makeQuiz(knowledge: TeachingKnowledge, seed: number, count = ROUND_LENGTH): QuizQuestion[] {
  const random = randomFrom(seed);
  const all = shuffled(candidatesOf(knowledge), random);
  const goesIn = all.filter(({ fit }) => fit.verdict !== 'blocked');
  const blocked = all.filter(({ fit }) => fit.verdict === 'blocked');
  const half = Math.floor(count / 2);
  // Not always the same number of each, or the last answers could be counted out.
  const wantedIn = half + Math.floor(random() * 3) - 1;
  const inCount = Math.min(goesIn.length, Math.max(wantedIn, count - blocked.length, 0));
  const outCount = Math.min(blocked.length, count - inCount);
  const near = nearMisses(blocked);
  const chosen: Candidate[] = [];
  take(chosen, goesIn.filter(isTight), Math.min(2, inCount));
  take(chosen, goesIn, inCount - chosen.length);
  take(chosen, near, Math.min(near.length, Math.ceil(outCount / 2)));
  take(chosen, blocked, inCount + outCount - chosen.length);
  return shuffled(chosen, random).map(({ entrantId, openingId }) => ({ entrantId, openingId }));
}

/**
 * The blocked pairs of a family that fail by least, the closest first; pairs of equal shapes once.
 */
export function nearMissesOf(knowledge: TeachingKnowledge): QuizQuestion[] {
  const blocked = candidatesOf(knowledge).filter(({ fit }) => fit.verdict === 'blocked');
  return nearMisses(blocked).map(({ entrantId, openingId }) => ({ entrantId, openingId }));
}

function candidatesOf({ family, fitOf }: TeachingKnowledge): Candidate[] {
  const seen = new Set<string>();
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, shape: outlineKey(ring) }));
  const candidates: Candidate[] = [];
  for (const { id: entrantId, ring } of entrantsOf(family)) {
    const content = outlineKey(ring);
    for (const { id: openingId, shape: openingShape } of openings) {
      const fit = fitOf(entrantId, openingId);
      const shape = `${content}|${openingShape}`;
      if (!fit || !Number.isFinite(fit.clearance) || seen.has(shape)) continue;
      seen.add(shape);
      candidates.push({ entrantId, openingId, fit, shape: content });
    }
  }
  return candidates;
}

function isTight({ fit }: Candidate): boolean {
  return fit.verdict === 'tight';
}

function nearMisses(blocked: readonly Candidate[]): Candidate[] {
  const byDepth = [...blocked].sort((a, b) => b.fit.clearance - a.fit.clearance);
  return byDepth.slice(0, Math.ceil(byDepth.length * NEAR_SHARE));
}

/** Takes `count` of `from` into `chosen`, each time one whose blank and keyway were taken least so far. */
function take(chosen: Candidate[], from: readonly Candidate[], count: number): void {
  const left = from.filter((candidate) => !chosen.includes(candidate));
  for (let n = 0; n < count && left.length > 0; n++) {
    const uses = (c: Candidate) =>
      2 * chosen.filter(({ shape }) => shape === c.shape).length +
      chosen.filter(({ openingId }) => openingId === c.openingId).length;
    const least = Math.min(...left.map(uses));
    const at = left.findIndex((candidate) => uses(candidate) === least);
    chosen.push(...left.splice(at, 1));
  }
}

/** What was answered; one that says "enters" of a tight pair is right, since it goes in. */
export type Said = Verdict;

/** An answer that was looked at. */
export interface MarkedAnswer {
  readonly right: boolean;
  readonly verdict: Verdict;
  /** Why, in a sentence. */
  readonly sentence: string;
}

/**
 * Whether an answer is right by what the core says now, and why; null where the pair is not known any more. "Tight" and
 * "enters" both say that it goes in, so "tight" of a pair with room is counted as right as well.
 */
export function markAnswer(
  knowledge: TeachingKnowledge,
  { entrantId, openingId }: QuizQuestion,
  said: Said,
): MarkedAnswer | null {
  const fit = knowledge.fitOf(entrantId, openingId);
  if (!fit) return null;
  const right = (said === 'blocked') === (fit.verdict === 'blocked');
  return { right, verdict: fit.verdict, sentence: knowledge.sentence(entrantId, openingId) };
}

/** How a round stands. */
export interface QuizScore {
  readonly right: number;
  /** Answers that could be marked. */
  readonly of: number;
  /** Right answers in a row, up to the last one, and the longest such row. */
  readonly streak: number;
  readonly longest: number;
}

/** The score of the answers given so far, in order; those that could not be marked (null) neither count nor break a row. */
export function scoreOf(answers: readonly (MarkedAnswer | null)[]): QuizScore {
  let right = 0;
  let of = 0;
  let streak = 0;
  let longest = 0;
  for (const answer of answers) {
    if (!answer) continue;
    of++;
    streak = answer.right ? streak + 1 : 0;
    if (answer.right) right++;
    longest = Math.max(longest, streak);
  }
  return { right, of, streak, longest };
}
