import { describe, expect, test } from 'vitest';
import { countCrossings, type Layers, orderLayers } from '../../../src/order/order-layers.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

function randomLayers(seed: number, sizes: readonly number[], density: number): Layers {
  const random = randomNumbers(seed);
  const lines = sizes
    .slice(0, -1)
    .map((size, layer) =>
      Array.from({ length: size * sizes[layer + 1] }, (_, i) => [i % size, Math.floor(i / size)] as const).filter(() =>
        random.chance(density),
      ),
    );
  return { sizes, lines };
}

/** For each place of each layer, where its lines go up to. */
function endsAbove({ sizes, lines }: Layers): number[][][] {
  return sizes.map((size, layer) =>
    Array.from({ length: size }, (_, i) => (lines[layer] ?? []).filter(([below]) => below === i).map(([, up]) => up)),
  );
}

/** Crossings by looking at every pair of lines. */
function crossingsByPairs(orders: readonly (readonly number[])[], { lines }: Layers): number {
  let crossings = 0;
  for (const [layer, between] of lines.entries()) {
    const placed = between.map(([a, b]) => [orders[layer].indexOf(a), orders[layer + 1].indexOf(b)]);
    for (const [i, [a, b]] of placed.entries())
      for (const [c, d] of placed.slice(i + 1)) if ((a - c) * (b - d) < 0) crossings++;
  }
  return crossings;
}

const asGiven = ({ sizes }: Layers) => sizes.map((size) => [...Array(size).keys()]);

describe('crossings of lines between layers', () => {
  test.each([1, 2, 3, 4, 5, 6])('counted as by looking at every pair, seed %i', (seed) => {
    const layers = randomLayers(seed, [9, 12, 7, 10], 0.3);
    const random = randomNumbers(seed);
    const orders = asGiven(layers).map((order) => random.shuffled(order));
    expect(countCrossings(orders, endsAbove(layers))).toBe(crossingsByPairs(orders, layers));
  });
});

describe('the order within layers', () => {
  test('holds each place once, and crosses no more than as given', () => {
    for (let seed = 0; seed < 30; seed++) {
      const layers = randomLayers(seed, [8, 11, 6, 9], 0.25);
      const orders = orderLayers(layers);
      expect(orders.map((order) => [...order].sort((a, b) => a - b))).toEqual(asGiven(layers));
      expect(crossingsByPairs(orders, layers)).toBeLessThanOrEqual(crossingsByPairs(asGiven(layers), layers));
    }
  });

  test('takes all crossings out of a tree that was shuffled', () => {
    // Eight leaves, four, two, one: below[i] hangs on above[floor(i / 2)], leaves in a mixed order.
    const mixed = [0, 4, 2, 6, 1, 5, 3, 7];
    const lines = [
      mixed.map((leaf, i) => [i, leaf >> 1] as const),
      [0, 1, 2, 3].map((i) => [i, i >> 1] as const),
      [
        [0, 0],
        [1, 0],
      ] as const,
    ];
    const layers = { sizes: [8, 4, 2, 1], lines };
    expect(crossingsByPairs(asGiven(layers), layers)).toBeGreaterThan(5);
    expect(crossingsByPairs(orderLayers(layers), layers)).toBe(0);
  });

  test('comes near the fewest: all orders of two small layers tried', () => {
    const over = Array.from({ length: 20 }, (_, seed) => {
      const layers = randomLayers(seed + 50, [5, 5], 0.4);
      const best = Math.min(
        ...permutations(5).flatMap((a) => permutations(5).map((b) => crossingsByPairs([a, b], layers))),
      );
      return crossingsByPairs(orderLayers(layers), layers) - best;
    });
    expect(Math.min(...over)).toBe(0);
    expect(over.reduce((sum, n) => sum + n, 0)).toBeLessThanOrEqual(8);
  });

  test('leaves a chart without crossings as it is', () => {
    const layers = { sizes: [6, 2], lines: [[0, 1, 2, 3, 4, 5].map((i) => [i, i < 3 ? 0 : 1] as const)] };
    expect(orderLayers(layers)).toEqual(asGiven(layers));
  });
});

function permutations(size: number): number[][] {
  if (size === 0) return [[]];
  return permutations(size - 1).flatMap((rest) =>
    Array.from({ length: size }, (_, at) => [...rest.slice(0, at), size - 1, ...rest.slice(at)]),
  );
}
