import { type BitSet, fullSet, intersection, setOf } from '../../src/order/bit-set.ts';
import type { Context } from '../../src/order/formal-concepts.ts';

/** The context of a table, `has[object][attribute]`; every row has as many cells as there are attributes. */
export function contextOf(has: readonly (readonly boolean[])[], attributes: number): Context {
  const numbers = Array.from({ length: has.length }, (_, object) => object);
  const extents = Array.from({ length: attributes }, (_, a) =>
    setOf(
      has.length,
      numbers.filter((object) => has[object][a]),
    ),
  );
  return { objects: has.length, attributes, extents };
}

/** The objects that have all of some attributes. */
export function extentOf({ objects, extents }: Context, attributes: Iterable<number>): BitSet {
  let extent = fullSet(objects);
  for (const a of attributes) extent = intersection(extent, extents[a]);
  return extent;
}
