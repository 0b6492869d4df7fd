import type { Arrow } from '../../src/order/transitive-reduction.ts';
import { askPython } from './ask-python.ts';

/** A relation between the numbers below `size`. */
export interface Relation {
  readonly size: number;
  readonly arrows: readonly Arrow[];
}

/** What networkx finds: nothing but a circle, or the reduction, the closure and how high each stands. */
export type Reduced =
  | { readonly circle: true }
  | {
      readonly circle: false;
      /** Sorted by start, then end. */
      readonly reduction: readonly Arrow[];
      /** Sorted by start, then end. */
      readonly closure: readonly Arrow[];
      /** One more than the highest that leads to it: `topological_generations`. */
      readonly heights: readonly number[];
    };

/** Relations as networkx sees them. @throws with what to do where it is missing */
export function reduceWithNetworkx(relations: readonly Relation[]): Reduced[] {
  const input = JSON.stringify(relations);
  return askPython({ library: 'networkx', script: 'reduce-with-networkx.py', input }) as Reduced[];
}
