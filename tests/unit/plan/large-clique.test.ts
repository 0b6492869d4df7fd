import { expect, test } from 'vitest';
import { largeClique } from '../../../src/plan/large-clique.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

/** The most numbers that are all joined, by trying all sets. */
function mostByTrying(count: number, joined: (a: number, b: number) => boolean): number {
  let most = 0;
  for (let set = 0; set < 2 ** count; set++) {
    const members = Array.from({ length: count }, (_, i) => i).filter((i) => (set >> i) & 1);
    if (members.length > most && members.every((a) => members.every((b) => a <= b || joined(a, b))))
      most = members.length;
  }
  return most;
}

test('small random graphs: a clique, and none is larger', () => {
  for (let seed = 0; seed < 60; seed++) {
    const numbers = randomNumbers(seed);
    const count = numbers.whole(0, 11);
    const density = numbers.between(0.2, 0.9);
    const edges = Array.from({ length: count }, () => Array.from({ length: count }, () => numbers.chance(density)));
    const joined = (a: number, b: number) => edges[Math.max(a, b)][Math.min(a, b)];
    const clique = largeClique(count, joined);
    for (const a of clique) for (const b of clique) if (a !== b) expect(joined(a, b)).toBe(true);
    expect(new Set(clique).size).toBe(clique.length);
    expect(clique.length).toBe(mostByTrying(count, joined));
  }
});

test('a clique of 40 is found among 300 with few other edges', () => {
  const numbers = randomNumbers(5);
  const hidden = new Set(numbers.shuffled(Array.from({ length: 300 }, (_, i) => i)).slice(0, 40));
  const edges = Array.from({ length: 300 }, () => Array.from({ length: 300 }, () => numbers.chance(0.2)));
  const joined = (a: number, b: number) => edges[Math.max(a, b)][Math.min(a, b)] || (hidden.has(a) && hidden.has(b));
  expect(largeClique(300, joined).length).toBeGreaterThanOrEqual(40);
});
