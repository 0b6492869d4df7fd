import { type BitSet, countMembers, isSameSet, isSubset } from './bit-set.ts';
import { type Arrow, transitiveReduction } from './transitive-reduction.ts';

/** Sets that are equal, as one. */
export interface SetClass {
  readonly set: BitSet;
  /** Numbers of the given sets, least first. */
  readonly of: readonly number[];
}

/**
 * Equal sets put together, in the order of their first.
 *
 * @param sets all with room for the same numbers.
 */
export function mergeEqualSets(sets: readonly BitSet[]): SetClass[] {
  const classes: { set: BitSet; of: number[] }[] = [];
  const byText = new Map<string, { set: BitSet; of: number[] }>();
  for (const [i, set] of sets.entries()) {
    const text = set.join();
    const known = byText.get(text);
    if (known) {
      known.of.push(i);
      continue;
    }
    const made = { set, of: [i] };
    byText.set(text, made);
    classes.push(made);
  }
  return classes;
}

/**
 * The diagram of different sets ordered by inclusion: an arrow from a set to each one that holds it with nothing in
 * between.
 *
 * @param sets all different, with room for the same numbers.
 * @check tests/laws/orders.test.ts
 */
export function inclusionCovers(sets: readonly BitSet[]): Arrow[] {
  const sizes = sets.map(countMembers);
  const within: Arrow[] = [];
  for (const [i, set] of sets.entries())
    for (const [k, other] of sets.entries())
      if (sizes[i] < sizes[k] && isSubset(set, other)) within.push([i, k]);
      else if (i < k && isSameSet(set, other)) throw new RangeError(`sets ${i} and ${k} are equal`);
  return transitiveReduction(sets.length, within);
}
