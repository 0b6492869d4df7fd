import type { Conditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { blankUnder, openingUnder } from '../fit/judge-pair.ts';
import { type Bands, judgeTolerance, keptParts, type ThreeWay } from '../fit/judge-tolerance.ts';
import type { Opening } from '../fit/prepare-opening.ts';
import type { Ring } from '../geom/ring.ts';
import { type Job, runInSlices } from './job.ts';
import { type PackedOutline, unpackOutline } from './packed-outline.ts';

/** Pairs whose fit is known, to be judged for all parts within their tolerance. */
export interface TolerancesInput {
  readonly openings: readonly PackedOutline[];
  readonly entrants: readonly PackedOutline[];
  /** Pairs as entrant and opening numbers, two numbers a pair. */
  readonly pairs: Uint32Array;
  /** One for each pair, under the conditions. */
  readonly fits: readonly Fit[];
  /** One for each pair. */
  readonly bands: readonly Bands[];
  readonly conditions: Conditions;
}

/** Answers to some pairs, from the pair numbered `first` on. */
export interface TolerancesPart {
  readonly first: number;
  readonly answers: readonly ThreeWay[];
}

/**
 * The answer for all parts of each pair, handed over in parts as they come. The parts at the ends of their bands are
 * made once for each outline, which costs most where pairs are looked at one by one.
 *
 * @returns how many pairs were judged.
 * @check tests/unit/jobs/claims-jobs.test.ts, tests/unit/app/claims-checking.test.ts
 */
export const judgeTolerances: Job<TolerancesInput, number> = async (input, context) => {
  const answers: ThreeWay[] = [];
  let sent = 0;
  const send = () => {
    if (answers.length > sent) context.part?.({ first: sent, answers: answers.slice(sent) } satisfies TolerancesPart);
    sent = answers.length;
  };
  const progress = (done: number, total: number) => {
    send();
    context.progress(done, total);
  };
  await runInSlices(judged(input, answers), { ...context, progress });
  send();
  return answers.length;
};

function* judged(input: TolerancesInput, answers: ThreeWay[]): Generator<{ done: number; total: number }, void, void> {
  const { pairs, fits, bands, conditions } = input;
  const openings = new Map<number, Opening>();
  const entrants = new Map<number, readonly Ring[]>();
  const easiest = keptParts();
  for (let n = 0; n < pairs.length / 2; n++) {
    const [i, k] = pairs.subarray(2 * n);
    const opening = openings.get(k) ?? openingUnder(unpackOutline(input.openings[k]), conditions);
    const entrant = entrants.get(i) ?? blankUnder(unpackOutline(input.entrants[i]), conditions);
    openings.set(k, opening);
    entrants.set(i, entrant);
    answers.push(judgeTolerance(opening, entrant, fits[n], bands[n], conditions.tiltLimit, easiest));
    yield { done: n + 1, total: pairs.length / 2 };
  }
}
