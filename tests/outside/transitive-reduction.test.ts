// Outside truth: networkx (A. Hagberg, D. Schult, P. Swart and contributors, BSD-3-Clause; 2.8.8 in Debian 12), a library
// of graphs: transitive reduction, transitive closure, topological generations of hundreds of random relations.

import { describe, expect, test } from 'vitest';
import { tiersOf } from '../../src/family/tiers.ts';
import { membersOf } from '../../src/order/bit-set.ts';
import { type Arrow, heightsOf, transitiveClosure, transitiveReduction } from '../../src/order/transitive-reduction.ts';
import { largeFamily } from '../cases/large-families.ts';
import { type RandomNumbers, randomNumbers } from '../cases/random-numbers.ts';
import { type Relation, reduceWithNetworkx } from '../kit/reduce-with-networkx.ts';

/** Arrows without circles between numbers in no order, each with some probability, as they come. */
function randomRelation(seed: number): Relation {
  const random = randomNumbers(seed);
  const size = random.whole(1, 40);
  const names = random.shuffled(Array.from({ length: size }, (_, i) => i));
  const density = random.pick([0.03, 0.1, 0.3, 0.8]);
  const arrows = allPairs(size)
    .filter(([a, b]) => a < b && random.chance(density))
    .map(([a, b]): Arrow => [names[a], names[b]]);
  return { size, arrows: random.shuffled(arrows) };
}

/** The whole order of random sets by inclusion, every pair of it. */
function randomInclusions(seed: number): Relation {
  const random = randomNumbers(seed);
  const room = random.whole(1, 9);
  const sets = [...new Set(Array.from({ length: random.whole(1, 60) }, () => randomBits(room, random)))];
  const arrows = allPairs(sets.length).filter(([a, b]) => a !== b && (sets[a] & ~sets[b]) === 0);
  return { size: sets.length, arrows };
}

function randomBits(room: number, random: RandomNumbers): number {
  const density = random.pick([0.2, 0.5, 0.8]);
  return Array.from({ length: room }, (_, i) => (random.chance(density) ? 2 ** i : 0)).reduce(
    (sum, bit) => sum + bit,
    0,
  );
}

function allPairs(size: number): Arrow[] {
  return Array.from({ length: size * size }, (_, i) => [Math.floor(i / size), i % size] as const);
}

/** What we find, in the words of the other side. */
function ours({ size, arrows }: Relation) {
  const closure = transitiveClosure(size, arrows).flatMap((ends, from) => membersOf(ends).map((to) => [from, to]));
  return { circle: false, reduction: transitiveReduction(size, arrows), closure, heights: heightsOf(size, arrows) };
}

describe('orders as networkx sees them', () => {
  test('300 random relations without circles: the same reduction, closure and heights', () => {
    const relations = Array.from({ length: 300 }, (_, seed) => randomRelation(seed));
    const theirs = reduceWithNetworkx(relations);
    expect(relations.map(ours)).toEqual(theirs);
    const counts = theirs.map((answer, i) =>
      answer.circle ? 0 : relations[i].arrows.length - answer.reduction.length,
    );
    expect(counts.filter((left) => left > 0).length).toBeGreaterThan(150);
  });

  test('200 orders of random sets by inclusion', () => {
    const relations = Array.from({ length: 200 }, (_, seed) => randomInclusions(seed));
    expect(relations.map(ours)).toEqual(reduceWithNetworkx(relations));
  });

  test('one of 200 numbers with every second arrow', () => {
    const random = randomNumbers(9);
    const relation = { size: 200, arrows: allPairs(200).filter(([a, b]) => a < b && random.chance(0.5)) };
    expect([ours(relation)]).toEqual(reduceWithNetworkx([relation]));
  });

  test('100 relations with arrows both ways: a circle is found where networkx finds one', () => {
    const relations = Array.from({ length: 100 }, (_, seed): Relation => {
      const random = randomNumbers(seed);
      const arrows = allPairs(8).filter(([a, b]) => a !== b && random.chance(0.12));
      return { size: 8, arrows };
    });
    const circles = reduceWithNetworkx(relations).map(({ circle }) => circle);
    expect(new Set(circles).size).toBe(2);
    for (const [i, { size, arrows }] of relations.entries()) {
      if (circles[i]) expect(() => transitiveReduction(size, arrows)).toThrow('round in a circle');
      else expect(() => transitiveReduction(size, arrows)).not.toThrow();
    }
  });

  test('the tiers of a family of 120 blanks: covers and tiers from the rows alone', () => {
    const { goesIn, family } = largeFamily(60, 120);
    const openings = family.profiles.filter(({ kind }) => kind === 'opening').map(({ id }) => id);
    const entrants = family.profiles.filter(({ kind }) => kind === 'blank').map(({ id }) => id);
    const { nodes, covers } = tiersOf({ entrants, openings, goesIn });
    const rows = goesIn.map((row) => new Set(row.flatMap((cell, k) => (cell ? [k] : []))));
    const within = (a: Set<number>, b: Set<number>) => a.size < b.size && [...a].every((k) => b.has(k));
    const arrows = allPairs(120).filter(([a, b]) => within(rows[a], rows[b]));
    const [theirs] = reduceWithNetworkx([{ size: 120, arrows }]);
    expect({ circle: false, reduction: covers, heights: nodes.map(({ tier }) => tier) }).toEqual({
      ...theirs,
      closure: undefined,
    });
  });
});
