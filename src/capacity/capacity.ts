import { type BittingRules, MOST_CHAMBERS, MOST_DEPTHS } from './bitting-rules.ts';
import { type BittingCount, type CountProgress, countingBittings } from './count-bittings.ts';
import { type ExclusiveSections, findingExclusiveSections } from './exclusive-sections.ts';
import { findingWhyNone, type WhyNone } from './why-none.ts';

/** What may be counted one more of. */
export type Grown = 'chambers' | 'depths' | 'sections';

/** The keys of a system that is like the asked one but for one number. */
export interface Variant {
  readonly of: Grown;
  /** How many chambers, depths or sections it has. */
  readonly count: number;
  readonly bittings: bigint;
  /** Bittings times sections. */
  readonly keys: bigint;
  /** Whether it is the asked one. */
  readonly now: boolean;
}

/** How many keys a family of sections has. */
export interface Capacity {
  /** Bittings of one section that keep the rules. */
  readonly bittings: bigint;
  /** Bittings without any rule: depths to the power of chambers. */
  readonly without: bigint;
  /** Which sections exclude each other; null without a family. */
  readonly sections: ExclusiveSections | null;
  /** How many sections are counted. */
  readonly count: number;
  /** Bittings times sections that exclude each other. */
  readonly keys: bigint;
  /** One of the bittings, to be shown in every section; null where no bitting keeps the rules. */
  readonly example: readonly number[] | null;
  /** Number of the example, from 0. */
  readonly exampleNumber: bigint;
  /** One less, as asked, one more: of chambers, of depths, of sections. */
  readonly variants: readonly Variant[];
  /** Why no bitting keeps the rules; null where some do. */
  readonly whyNone: WhyNone | null;
}

/** What is counted. */
export interface CapacityInput {
  readonly rules: BittingRules;
  /** `goesIn[blank][keyway]`; null where there is no family. */
  readonly goesIn: readonly (readonly boolean[])[] | null;
  /** Without a family: so many sections are taken to exclude each other; 1 where not given. */
  readonly sections?: number;
  /** Which bitting is the example, from 0; taken round where there are fewer. One on the way where not given. */
  readonly example?: bigint;
}

/**
 * Counts bittings, sections that exclude each other, and what one more or one less of each would bring.
 *
 * A chamber more takes the depths of the last rule on: nothing excluded, and under a master the depth of the master (or
 * of a two-step progression the parity) that leaves the most.
 *
 * @yields how far it has come.
 * @check tests/unit/capacity/capacity.test.ts, tests/outside/key-changes.test.ts
 */
export function* countingCapacity(input: CapacityInput): Generator<CountProgress, Capacity, void> {
  const { rules, goesIn } = input;
  const sections = goesIn && (yield* findingExclusiveSections(goesIn));
  const count = sections?.pairs.length ?? input.sections ?? 1;
  const counted = yield* countingBittings(rules);
  const { bittings } = counted;
  const variants: Variant[] = [];
  for (const of of ['chambers', 'depths'] as const)
    for (const step of [-1, 0, 1]) {
      const its = step === 0 ? bittings : yield* countingVariant(rules, of, step);
      if (its === null) continue;
      variants.push({ of, count: rules[of] + step, bittings: its, keys: its * BigInt(count), now: step === 0 });
    }
  for (const step of [-1, 0, 1])
    if (count + step > 0)
      variants.push({
        of: 'sections',
        count: count + step,
        bittings,
        keys: bittings * BigInt(count + step),
        now: step === 0,
      });
  return {
    bittings,
    without: BigInt(rules.depths) ** BigInt(rules.chambers),
    sections,
    count,
    keys: bittings * BigInt(count),
    ...exampleOf(counted, input.example),
    variants,
    whyNone: bittings === 0n ? yield* findingWhyNone(rules, counted.endsAt) : null,
  };
}

/** Part of all bittings, in millionths, at which the first example stands: far from round numbers, so it looks like a key. */
const GOLDEN = 381_966n;

function exampleOf({ bittings, nth }: BittingCount, wanted: bigint | undefined) {
  if (bittings === 0n) return { example: null, exampleNumber: 0n };
  const number = wanted === undefined ? (bittings * GOLDEN) / 1_000_000n : ((wanted % bittings) + bittings) % bittings;
  return { example: nth(number), exampleNumber: number };
}

/** Bittings with one chamber or depth less or more; null where there is no such system. */
function* countingVariant(
  rules: BittingRules,
  of: 'chambers' | 'depths',
  step: number,
): Generator<CountProgress, bigint | null, void> {
  const systems = of === 'depths' ? otherDepths(rules, step) : otherChambers(rules, step);
  let most: bigint | null = null;
  for (const system of systems) {
    const { bittings } = yield* countingBittings(system);
    if (most === null || bittings > most) most = bittings;
  }
  return most;
}

/** The system with another number of depths; none where the master uses the one that goes. */
function otherDepths(rules: BittingRules, step: number): BittingRules[] {
  const depths = rules.depths + step;
  if (depths < 2 || depths > MOST_DEPTHS || rules.leastDifferent > depths) return [];
  if (rules.master?.some((depth) => depth >= depths)) return [];
  const excluded = rules.excluded.map((list) => list.filter((depth) => depth < depths));
  return [{ ...rules, depths, excluded }];
}

/** The systems with another number of chambers at the tip: where one is added, with each depth or parity it may have. */
function otherChambers(rules: BittingRules, step: number): BittingRules[] {
  const chambers = rules.chambers + step;
  if (chambers < 1 || chambers > MOST_CHAMBERS || rules.leastDifferent > chambers) return [];
  const excluded = rules.excluded.slice(0, chambers);
  const { master, parity, depths } = rules;
  if (step < 0) return [{ ...rules, chambers, excluded, master: master?.slice(0, chambers) ?? null }];
  if (master)
    return Array.from({ length: depths }, (_, depth) => ({ ...rules, chambers, excluded, master: [...master, depth] }));
  if (rules.progression === 'one-step') return [{ ...rules, chambers, excluded }];
  const known = Array.from({ length: rules.chambers }, (_, i) => parity[i] ?? 'even');
  return (['even', 'odd'] as const).map((one) => ({ ...rules, chambers, excluded, parity: [...known, one] }));
}
