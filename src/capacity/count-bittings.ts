import { allowedDepths, type BittingRules } from './bitting-rules.ts';

/** How far a count has come. */
export interface CountProgress {
  readonly done: number;
  readonly total: number;
}

/** How many bittings keep the rules, and how each beginning can go on: what counts can also name one. */
export interface BittingCount {
  readonly bittings: bigint;
  /** The first chamber, from the bow on, that no beginning of a key lets be cut, from 0; null where there is none. */
  readonly endsAt: number | null;
  /** The bitting with a number from 0 to `bittings - 1`, in the order of their depths. */
  nth(number: bigint): readonly number[];
}

/**
 * Counts the bittings that keep the rules, exactly.
 *
 * Transfer matrix: what may follow depends on the last depth, on how often it was repeated, and on which depths were
 * used so far, as long as more different ones are wanted. States that can be reached are found from the bow on, ways to
 * go on are added up from the tip back.
 *
 * @param rules sound ones ({@link ruleFaults} is empty).
 * @yields how far it has come.
 * @source R. P. Stanley, Enumerative Combinatorics I, section 4.7, transfer-matrix method (from memory)
 * @check tests/outside/key-changes.test.ts, tests/laws/key-changes.test.ts
 */
export function* countingBittings(rules: BittingRules): Generator<CountProgress, BittingCount, void> {
  const next = follower(rules);
  const total = 2 * rules.chambers;
  const layers: number[][] = [[START]];
  for (let chamber = 0; chamber < rules.chambers; chamber++) {
    const reached = new Set<number>();
    let seen = 0;
    for (const state of layers[chamber]) {
      for (const [, after] of next(state, chamber)) reached.add(after);
      if (++seen % STRIDE === 0) yield { done: chamber, total };
    }
    layers.push([...reached]);
    yield { done: chamber + 1, total };
  }
  let ways = new Map(layers[rules.chambers].map((state) => [state, isEnough(state) ? 1n : 0n]));
  const kept = [ways];
  for (let chamber = rules.chambers - 1; chamber >= 0; chamber--) {
    const here = new Map<number, bigint>();
    let seen = 0;
    for (const state of layers[chamber]) {
      let sum = 0n;
      for (const [, after] of next(state, chamber)) sum += ways.get(after) ?? 0n;
      here.set(state, sum);
      if (++seen % STRIDE === 0) yield { done: total - chamber - 1, total };
    }
    ways = here;
    kept.unshift(here);
    yield { done: total - chamber, total };
  }
  const bittings = ways.get(START) ?? 0n;
  return { bittings, endsAt: endOf(layers), nth: (number) => nthBitting(number, bittings, kept, next) };
}

/** The chamber that no state before it leads into; null where all can be cut. */
function endOf(layers: readonly (readonly number[])[]): number | null {
  const empty = layers.findIndex((layer) => layer.length === 0);
  return empty < 0 ? null : empty - 1;
}

/** States between two looks of whoever runs the count. */
const STRIDE = 4096;

// A state is one whole number: used depths (or ENOUGH of them), last depth, length of the run that it ends. Twelve
// depths and chambers leave all of it far below 2 ** 31.
const LASTS = 13;
const RUNS = 13;
/** Stands for the depths used once enough different ones were. */
const ENOUGH = 1 << 12;
/** Before the first cut: nothing used, the last depth none. */
const START = (LASTS - 1) * RUNS;

const lastOf = (state: number) => Math.floor(state / RUNS) % LASTS;
const usedOf = (state: number) => Math.floor(state / (RUNS * LASTS));
const isEnough = (state: number) => usedOf(state) === ENOUGH;

/** Where each depth of a chamber leads from a state. */
type Follow = (state: number, chamber: number) => readonly (readonly [depth: number, after: number])[];

function follower(rules: BittingRules): Follow {
  const { mostAlike, leastDifferent } = rules;
  const most = rules.maximumAdjacent ?? rules.depths;
  const allowed = allowedDepths(rules);
  // Without a rule on runs their length is no part of the state.
  const counted = mostAlike !== null;
  const used = (before: number, depth: number) => {
    if (before === ENOUGH) return ENOUGH;
    const now = before | (1 << depth);
    return countBits(now) >= leastDifferent ? ENOUGH : now;
  };
  return (state, chamber) => {
    const last = lastOf(state);
    const begins = last === LASTS - 1;
    return allowed[chamber].flatMap((depth) => {
      if (!begins && Math.abs(depth - last) > most) return [];
      const run = !begins && depth === last ? (state % RUNS) + 1 : 1;
      if (mostAlike !== null && run > mostAlike) return [];
      return [[depth, (used(usedOf(state), depth) * LASTS + depth) * RUNS + (counted ? run : 0)] as const];
    });
  };
}

function countBits(mask: number): number {
  let bits = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) bits++;
  return bits;
}

function nthBitting(
  number: bigint,
  bittings: bigint,
  kept: readonly ReadonlyMap<number, bigint>[],
  next: Follow,
): readonly number[] {
  if (number < 0n || number >= bittings) throw new RangeError(`There is no bitting ${number} of ${bittings}`);
  const cuts: number[] = [];
  let rest = number;
  let state = START;
  for (let chamber = 0; chamber + 1 < kept.length; chamber++) {
    for (const [depth, after] of next(state, chamber)) {
      const ways = kept[chamber + 1].get(after) ?? 0n;
      if (rest < ways) {
        cuts.push(depth);
        state = after;
        break;
      }
      rest -= ways;
    }
  }
  return cuts;
}
