import { allowedDepths, type BittingRules } from './bitting-rules.ts';
import { type BittingCount, type CountProgress, countingBittings } from './count-bittings.ts';

/** Why no bitting keeps the rules. */
export interface WhyNone {
  /** Chambers that have no depth left at all, from 0. */
  readonly empty: readonly number[];
  /** The first chamber, from the bow on, that no cut before it lets be cut; null where keys can be cut to the tip. */
  readonly endsAt: number | null;
  /** Rules of which one alone, taken away, would leave some bittings. */
  readonly by: readonly LooseRule[];
}

/** A rule that may be taken away. */
export type LooseRule = 'maximumAdjacent' | 'excluded' | 'mostAlike' | 'leastDifferent' | 'progression' | 'master';

/**
 * Why no bitting keeps some rules: where a key from the bow on ends, and which rules, one alone taken away, would do.
 *
 * @param rules sound ones that no bitting keeps.
 * @param endsAt what counting them told ({@link BittingCount.endsAt}).
 * @yields how far it has come.
 * @check tests/unit/capacity/why-none.test.ts
 */
export function* findingWhyNone(
  rules: BittingRules,
  endsAt: BittingCount['endsAt'],
): Generator<CountProgress, WhyNone, void> {
  const allowed = allowedDepths(rules);
  const empty = allowed.flatMap((depths, chamber) => (depths.length === 0 ? [chamber] : []));
  const by: LooseRule[] = [];
  for (const [rule, looser] of loosened(rules)) if ((yield* countingBittings(looser)).bittings > 0n) by.push(rule);
  return { empty, endsAt, by };
}

/** The rules without each one that says anything. */
function loosened(rules: BittingRules): (readonly [LooseRule, BittingRules])[] {
  const { maximumAdjacent, excluded, mostAlike, leastDifferent, progression, master } = rules;
  const all: (readonly [boolean, LooseRule, Partial<BittingRules>])[] = [
    [maximumAdjacent !== null, 'maximumAdjacent', { maximumAdjacent: null }],
    [excluded.some((depths) => depths.length > 0), 'excluded', { excluded: [] }],
    [mostAlike !== null, 'mostAlike', { mostAlike: null }],
    [leastDifferent > 1, 'leastDifferent', { leastDifferent: 1 }],
    [progression === 'two-step', 'progression', { progression: 'one-step' }],
    [master !== null, 'master', { master: null }],
  ];
  return all.flatMap(([set, rule, without]) => (set ? [[rule, { ...rules, ...without }] as const] : []));
}
