// Outside truth:
// - "Living beings and water", B. Ganter, R. Wille, Formal Concept Analysis, Springer 1999, chapter 1: 8 objects, 9
//   attributes. 19 concepts (seen in three independent test suites of public libraries), 91 pairs of them incomparable
//   (seen once). The 32 lines of its diagram are our own count, checked here by networkx, not a published one.
// - The standard scales of the same book: nominal, ordinal, contranominal (the Boolean lattice), by their formulas.
// - Small contexts, counted by brute force over all subsets of attributes. This is our own second method, no one else's:
//   it shares neither sets of bits nor lectic order with the code under test.
// - networkx (BSD-3-Clause; 2.8.8 in Debian 12) for the lines between concepts.

import { describe, expect, test } from 'vitest';
import { countConcepts } from '../../src/family/tiers.ts';
import { membersOf } from '../../src/order/bit-set.ts';
import { type Concept, type Context, countLowerCovers, formalConcepts } from '../../src/order/formal-concepts.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { contextOf } from '../kit/context-of.ts';
import { type Relation, reduceWithNetworkx } from '../kit/reduce-with-networkx.ts';

type Table = readonly (readonly boolean[])[];

const LIVING_BEINGS = ['abg', 'abgh', 'abcgh', 'acghi', 'abdf', 'abcdf', 'acde', 'acdf'];

const livingBeings: Table = LIVING_BEINGS.map((letters) => [...'abcdefghi'].map((letter) => letters.includes(letter)));

const scale = (size: number, has: (object: number, attribute: number) => boolean): Table =>
  Array.from({ length: size }, (_, g) => Array.from({ length: size }, (_, m) => has(g, m)));

/** Objects are keyways, attributes blanks: a table of the family has the blanks as rows. */
function counted(table: Table, limit = 1e6) {
  const attributes = table[0].length;
  return countConcepts(
    {
      openings: table.map((_, g) => `g${g}`),
      entrants: table[0].map((_, m) => `m${m}`),
      goesIn: Array.from({ length: attributes }, (_, m) => table.map((row) => row[m])),
    },
    limit,
  );
}

function conceptsOf(context: Context): Concept[] {
  return [...formalConcepts(context)];
}

/** Extents as sorted numbers, in a text. */
const extentText = ({ extent }: Concept) => membersOf(extent).join();

/** All extents, found by trying every subset of the attributes. */
function extentsByTrying(table: Table): Set<string> {
  const attributes = table[0].length;
  const found = new Set<string>();
  for (let chosen = 0; chosen < 2 ** attributes; chosen++) {
    const wanted = table[0].map((_, m) => Math.floor(chosen / 2 ** m) % 2 === 1);
    const objects = table.flatMap((row, g) => (row.every((has, m) => has || !wanted[m]) ? [g] : []));
    found.add(objects.join());
  }
  return found;
}

/** The order of concepts by their extents, every pair of it. */
function orderOf(concepts: readonly Concept[]): Relation {
  const extents = concepts.map(({ extent }) => new Set(membersOf(extent)));
  const arrows = extents.flatMap((a, i) =>
    extents.flatMap((b, k) => (a.size < b.size && [...a].every((g) => b.has(g)) ? [[i, k] as const] : [])),
  );
  return { size: concepts.length, arrows };
}

function randomTable(seed: number): Table {
  const random = randomNumbers(seed);
  const attributes = random.whole(1, 9);
  const density = random.pick([0.2, 0.5, 0.7, 0.9]);
  return Array.from({ length: random.whole(1, 12) }, () =>
    Array.from({ length: attributes }, () => random.chance(density)),
  );
}

describe('living beings and water', () => {
  test('has 19 concepts', () => {
    expect(counted(livingBeings)).toMatchObject({ concepts: 19, capped: false });
  });

  test('has 91 pairs of incomparable concepts', () => {
    const { size, arrows } = orderOf(conceptsOf(contextOf(livingBeings, 9)));
    expect((size * (size - 1)) / 2 - arrows.length).toBe(91);
  });

  test('has 32 lines in its diagram (our own count, and that of networkx)', () => {
    expect(counted(livingBeings).edges).toBe(32);
    const [theirs] = reduceWithNetworkx([orderOf(conceptsOf(contextOf(livingBeings, 9)))]);
    expect(theirs).toMatchObject({ circle: false });
    expect(theirs.circle ? [] : theirs.reduction).toHaveLength(32);
  });

  test('read the other way, attributes as objects, has as many concepts and lines', () => {
    const turned = livingBeings[0].map((_, m) => livingBeings.map((row) => row[m]));
    expect(counted(turned)).toMatchObject({ concepts: 19, edges: 32 });
  });

  test('is counted up to a limit, which is told', () => {
    expect(counted(livingBeings, 10)).toMatchObject({ concepts: 10, capped: true });
    expect(counted(livingBeings, 18)).toMatchObject({ concepts: 18, capped: true });
    expect(counted(livingBeings, 19)).toMatchObject({ concepts: 19, capped: false });
  });
});

describe('the standard scales', () => {
  test.each([2, 3, 5, 8, 12])('of %i: contranominal 2^n, nominal n + 2, ordinal n', (n) => {
    expect(counted(scale(n, (g, m) => g !== m))).toEqual({ concepts: 2 ** n, edges: n * 2 ** (n - 1), capped: false });
    expect(counted(scale(n, (g, m) => g === m))).toEqual({ concepts: n + 2, edges: 2 * n, capped: false });
    expect(counted(scale(n, (g, m) => g <= m))).toEqual({ concepts: n, edges: n - 1, capped: false });
  });

  test('with all or nothing filled in', () => {
    expect(counted(scale(4, () => true))).toMatchObject({ concepts: 1, edges: 0 });
    expect(counted(scale(4, () => false))).toMatchObject({ concepts: 2, edges: 1 });
  });
});

describe('random contexts', () => {
  test('200 small ones: the concepts found by trying all subsets of attributes, each once', () => {
    for (let seed = 0; seed < 200; seed++) {
      const table = randomTable(seed);
      const extents = conceptsOf(contextOf(table, table[0].length)).map(extentText);
      expect(new Set(extents).size, `seed ${seed}`).toBe(extents.length);
      expect(new Set(extents), `seed ${seed}`).toEqual(extentsByTrying(table));
    }
  });

  test('60 of them: the lines of the diagram as networkx reduces the order', () => {
    const tables = Array.from({ length: 60 }, (_, seed) => randomTable(seed + 1000));
    const lattices = tables.map((table) => {
      const context = contextOf(table, table[0].length);
      return { context, concepts: conceptsOf(context) };
    });
    const theirs = reduceWithNetworkx(lattices.map(({ concepts }) => orderOf(concepts)));
    for (const [i, { context, concepts }] of lattices.entries()) {
      const answer = theirs[i];
      const below = concepts.map((_, k) => (answer.circle ? [] : answer.reduction.filter(([, upper]) => upper === k)));
      expect(concepts.map((concept) => countLowerCovers(context, concept))).toEqual(below.map((lines) => lines.length));
    }
  });
});
