import type { Conditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { blankUnder, judgePair, judgePairEntry, openingUnder } from '../fit/judge-pair.ts';
import type { Opening } from '../fit/prepare-opening.ts';
import type { Ring } from '../geom/ring.ts';
import { type Job, runInSlices } from './job.ts';
import { type PackedOutline, unpackOutline } from './packed-outline.ts';

/** Which pairs to judge, in the order in which the answers are wanted. */
export interface PairsInput {
  readonly openings: readonly PackedOutline[];
  readonly entrants: readonly PackedOutline[];
  /** Pairs as entrant and opening numbers, two numbers a pair. */
  readonly pairs: Uint32Array;
  readonly conditions: Conditions;
  /** False: blocked pairs come back unmeasured, at a small part of the cost. */
  readonly measured: boolean;
}

/** Answers to some pairs, from the pair numbered `first` on. */
export interface PairsPart {
  readonly first: number;
  readonly fits: readonly Fit[];
}

/** Prepared shapes of earlier jobs are kept up to this many each. */
const MOST_KEPT = 1024;

const openingsKept = new Map<string, Opening>();
const blanksKept = new Map<string, readonly Ring[]>();

/**
 * Judges the given pairs and hands the answers over in parts as they come, at most one part a slice.
 *
 * @returns how many pairs were judged.
 */
export const judgePairs: Job<PairsInput, number> = async (input, context) => {
  let sent = 0;
  const fits: Fit[] = [];
  const send = () => {
    if (fits.length > sent) context.part?.({ first: sent, fits: fits.slice(sent) } satisfies PairsPart);
    sent = fits.length;
  };
  const telling = {
    ...context,
    progress: (done: number, total: number) => {
      send();
      context.progress(done, total);
    },
  };
  await runInSlices(judged(input, fits), telling);
  send();
  return fits.length;
};

function* judged(input: PairsInput, fits: Fit[]): Generator<{ done: number; total: number }, void, void> {
  const { pairs, conditions } = input;
  const judge = input.measured ? judgePair : judgePairEntry;
  for (let i = 0; i < pairs.length; i += 2) {
    const opening = keptOpening(input.openings[pairs[i + 1]], conditions);
    fits.push(judge(opening, keptBlank(input.entrants[pairs[i]], conditions), conditions));
    yield { done: fits.length, total: pairs.length / 2 };
  }
}

function keptOpening(packed: PackedOutline, conditions: Conditions): Opening {
  return keep(openingsKept, `${packed.key} ${conditions.wear}`, () => openingUnder(unpackOutline(packed), conditions));
}

function keptBlank(packed: PackedOutline, conditions: Conditions): readonly Ring[] {
  return keep(blanksKept, `${packed.key} ${conditions.wear}`, () => blankUnder(unpackOutline(packed), conditions));
}

/** The kept value, or a new one; the least recently used one makes room. */
function keep<Value>(kept: Map<string, Value>, key: string, make: () => Value): Value {
  const known = kept.get(key);
  const value = known ?? make();
  if (known !== undefined) kept.delete(key);
  kept.set(key, value);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value as string);
  return value;
}
