import { addTo, type BitSet, emptySet, membersOf, takeFrom, uniteWith } from './bit-set.ts';

/** An arrow from one number to another. */
export type Arrow = readonly [from: number, to: number];

/**
 * Everything that each of `size` things reaches by one arrow or more.
 *
 * @returns `reached[from]` holds every `to`.
 * @throws RangeError where arrows go round in a circle: then they are no order.
 * @check tests/outside/transitive-reduction.test.ts, tests/laws/orders.test.ts
 */
export function transitiveClosure(size: number, arrows: readonly Arrow[]): BitSet[] {
  const next = rowsOf(size, arrows);
  const reached = next.map(() => emptySet(size));
  for (const from of fromTheEnds(size, next)) {
    for (const to of membersOf(next[from])) {
      addTo(reached[from], to);
      uniteWith(reached[from], reached[to]);
    }
  }
  return reached;
}

/**
 * The fewest arrows by which everything reaches the same: those of which none can be left out. For an order these are
 * its covers, the lines of its diagram.
 *
 * An arrow stays where nothing that its start reaches leads on to its end. Arrows that nobody needs may be given; so
 * the whole of an order may be, or any part with the same closure.
 *
 * @returns the arrows, by their start, then their end.
 * @throws RangeError where arrows go round in a circle: then the fewest are not one set.
 * @source A. V. Aho, M. R. Garey, J. D. Ullman, The transitive reduction of a directed graph, SIAM J. Comput. 1
 *   (1972) 131-137: without circles it is unique, and part of the graph itself
 * @check tests/outside/transitive-reduction.test.ts, tests/laws/orders.test.ts
 */
export function transitiveReduction(size: number, arrows: readonly Arrow[]): Arrow[] {
  const next = rowsOf(size, arrows);
  const reached = transitiveClosure(size, arrows);
  return next.flatMap((ends, from) => {
    const direct = ends.slice();
    for (const to of membersOf(ends)) takeFrom(direct, reached[to]);
    return membersOf(direct).map((to): Arrow => [from, to]);
  });
}

/**
 * How high each thing stands: 0 where nothing leads to it, else one more than the highest that does.
 *
 * @throws RangeError where arrows go round in a circle.
 */
export function heightsOf(size: number, arrows: readonly Arrow[]): number[] {
  const next = rowsOf(size, arrows);
  const heights = new Array<number>(size).fill(0);
  for (const from of fromTheEnds(size, next).reverse())
    for (const to of membersOf(next[from])) heights[to] = Math.max(heights[to], heights[from] + 1);
  return heights;
}

function rowsOf(size: number, arrows: readonly Arrow[]): BitSet[] {
  const rows = Array.from({ length: size }, () => emptySet(size));
  for (const [from, to] of arrows) addTo(rows[from], to);
  return rows;
}

/** All things, each after everything that it leads to (Kahn's way, backwards). */
function fromTheEnds(size: number, next: readonly BitSet[]): number[] {
  const leadingOn = next.map((ends) => membersOf(ends));
  const before: number[][] = Array.from({ length: size }, () => []);
  for (const [from, ends] of leadingOn.entries()) for (const to of ends) before[to].push(from);
  const open = leadingOn.map((ends) => ends.length);
  const order: number[] = [];
  for (let i = 0; i < size; i++) if (open[i] === 0) order.push(i);
  for (let at = 0; at < order.length; at++)
    for (const from of before[order[at]]) if (--open[from] === 0) order.push(from);
  if (order.length < size) throw new RangeError('the arrows go round in a circle, so they are no order');
  return order;
}
