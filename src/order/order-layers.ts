/** Layers of a drawing, bottom first: how many places each has, and the lines from each to the next, as places. */
export interface Layers {
  readonly sizes: readonly number[];
  /** `lines[layer]`: from a place of the layer to a place of the one above it. */
  readonly lines: readonly (readonly (readonly [below: number, above: number])[])[];
}

/** Sweeps up and down; more change little. */
const SWEEPS = 24;

/** Rounds of swapping neighbours; most end sooner, when no swap helps. */
const SWAP_ROUNDS = 12;

/** For each place of each layer, where its lines end in a neighbouring layer. */
type Ends = number[][][];

/**
 * An order of the places in each layer so that few lines cross: sweeps up and down that put each place at the mean of
 * its ends in the layer before, the best of them kept, then swaps of neighbours for as long as they help.
 *
 * The bottom layer is left as given where nothing better is found, so a chart's order shows through.
 *
 * @returns for each layer its places, left to right. The same layers always give the same order.
 * @accuracy no least number of crossings: that is NP-hard already for two layers.
 * @source K. Sugiyama, S. Tagawa, M. Toda, IEEE Trans. SMC 11 (1981) 109-125 (means); E. R. Gansner et al., A technique
 *   for drawing directed graphs, IEEE Trans. Softw. Eng. 19 (1993) 214-230 (best sweep kept, swaps); both from memory
 * @check tests/unit/order/order-layers.test.ts
 */
export function orderLayers({ sizes, lines }: Layers): number[][] {
  const above: Ends = sizes.map((size, i) => endsOf(size, lines[i] ?? []));
  const below: Ends = sizes.map((size, i) =>
    endsOf(
      size,
      (lines[i - 1] ?? []).map(([b, a]) => [a, b] as const),
    ),
  );
  const given = sizes.map((size) => Array.from({ length: size }, (_, i) => i));
  let best = given;
  let fewest = countCrossings(given, above);
  for (const upFirst of [true, false]) {
    if (fewest === 0) break;
    const found = sweepForFewest(given, above, below, upFirst);
    swapNeighbours(found, above, below);
    const crossings = countCrossings(found, above);
    if (crossings >= fewest) continue;
    fewest = crossings;
    best = found;
  }
  return best;
}

/** The best of some sweeps up and down by turns. */
function sweepForFewest(given: readonly number[][], above: Ends, below: Ends, upFirst: boolean): number[][] {
  let orders = given.map((order) => order.slice());
  let best = orders;
  let fewest = Number.POSITIVE_INFINITY;
  for (let sweep = 0; sweep < SWEEPS && fewest > 0; sweep++) {
    const up = (sweep % 2 === 0) === upFirst;
    orders = sweepLayers(orders, up ? below : above, up);
    const crossings = countCrossings(orders, above);
    if (crossings >= fewest) continue;
    fewest = crossings;
    best = orders;
  }
  return best.map((order) => order.slice());
}

function endsOf(size: number, lines: readonly (readonly [number, number])[]): number[][] {
  const ends: number[][] = Array.from({ length: size }, () => []);
  for (const [from, to] of lines) ends[from].push(to);
  return ends;
}

/** One sweep: every layer after the first by the means of its ends in the one before. */
function sweepLayers(orders: readonly number[][], ends: Ends, up: boolean): number[][] {
  const swept = orders.map((order) => order.slice());
  const last = swept.length - 1;
  for (let step = 1; step <= last; step++) {
    const layer = up ? step : last - step;
    const before = placesOf(swept[up ? layer - 1 : layer + 1]);
    const keys = new Map(swept[layer].map((node, place) => [node, meanOf(ends[layer][node], before, place)]));
    swept[layer].sort((a, b) => (keys.get(a) ?? 0) - (keys.get(b) ?? 0));
  }
  return swept;
}

/** Where each node of an order stands. */
function placesOf(order: readonly number[]): number[] {
  const places: number[] = [];
  for (const [place, node] of order.entries()) places[node] = place;
  return places;
}

/** The mean place of the ends, or the node's own place where it has none. */
function meanOf(ends: readonly number[], places: readonly number[], own: number): number {
  if (ends.length === 0) return own;
  return ends.reduce((sum, end) => sum + places[end], 0) / ends.length;
}

/**
 * How many pairs of lines cross between neighbouring layers.
 *
 * @param above for each node of each layer the nodes above it that it has lines to.
 * @source W. Barth, P. Mutzel, M. Juenger, Simple and efficient bilayer cross counting, J. Graph Algorithms Appl. 8
 *   (2004) 179-194: inversions, counted in a tree of sums (from memory)
 * @check tests/unit/order/order-layers.test.ts, against all pairs
 */
export function countCrossings(orders: readonly (readonly number[])[], above: Ends): number {
  let crossings = 0;
  for (let layer = 0; layer + 1 < orders.length; layer++) {
    const places = placesOf(orders[layer + 1]);
    const sums = new Uint32Array(orders[layer + 1].length + 1);
    let seen = 0;
    for (const node of orders[layer]) {
      const ends = above[layer][node].map((end) => places[end]);
      for (const end of ends) crossings += seen - sumUpTo(sums, end + 1);
      for (const end of ends) addAt(sums, end + 1);
      seen += ends.length;
    }
  }
  return crossings;
}

/** How many were added at 1 up to `at`, in a tree of sums (Fenwick). */
function sumUpTo(sums: Uint32Array, at: number): number {
  let sum = 0;
  for (let i = at; i > 0; i -= i & -i) sum += sums[i];
  return sum;
}

function addAt(sums: Uint32Array, at: number): void {
  for (let i = at; i < sums.length; i += i & -i) sums[i]++;
}

/** Swaps neighbours where that takes crossings away, in place. */
function swapNeighbours(orders: number[][], above: Ends, below: Ends): void {
  for (let round = 0; round < SWAP_ROUNDS; round++) {
    let helped = false;
    for (const [layer, order] of orders.entries()) {
      const sorted = [sortedEnds(below[layer], orders[layer - 1]), sortedEnds(above[layer], orders[layer + 1])];
      const crossings = (left: number, right: number) =>
        sorted.reduce((sum, ends) => sum + crossingsOf(ends[left], ends[right]), 0);
      for (let i = 0; i + 1 < order.length; i++) {
        const [left, right] = [order[i], order[i + 1]];
        if (crossings(right, left) >= crossings(left, right)) continue;
        order[i] = right;
        order[i + 1] = left;
        helped = true;
      }
    }
    if (!helped) return;
  }
}

/** The places of each node's ends, least first. */
function sortedEnds(ends: readonly (readonly number[])[], order: readonly number[] = []): number[][] {
  const places = placesOf(order);
  return ends.map((nodes) => nodes.map((node) => places[node]).sort((a, b) => a - b));
}

/** How many lines of two neighbours cross, the first standing left: pairs with the first's end further right. */
function crossingsOf(left: readonly number[], right: readonly number[]): number {
  let crossings = 0;
  let before = 0;
  for (const end of left) {
    while (before < right.length && right[before] < end) before++;
    crossings += before;
  }
  return crossings;
}
