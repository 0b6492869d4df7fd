// Laws of orders and concepts, as any textbook has them (B. A. Davey, H. A. Priestley, Introduction to Lattices and Order;
// B. Ganter, R. Wille, Formal Concept Analysis, section 1.1), held against random tables and relations.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryTable } from '../../src/family/entry-table.ts';
import { countConcepts, type Tiers, tiersOf } from '../../src/family/tiers.ts';
import { hasMember, isSameSet, isSubset, membersOf, setOf } from '../../src/order/bit-set.ts';
import { type Context, formalConcepts, intentOf } from '../../src/order/formal-concepts.ts';
import { type Arrow, heightsOf, transitiveClosure, transitiveReduction } from '../../src/order/transitive-reduction.ts';
import { contextOf, extentOf } from '../kit/context-of.ts';

/** Rows of yes and no, all equally long, denser or less so. */
const tables = fc
  .tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 24 }), fc.constantFrom(1, 2, 3, 4))
  .chain(([columns, rows, odds]) => {
    const cell = fc.integer({ min: 0, max: 4 }).map((draw) => draw < odds);
    const row = fc.array(cell, { minLength: columns, maxLength: columns });
    return fc.array(row, { minLength: rows, maxLength: rows }).map((has) => ({ has, columns }));
  });

/** Arrows from lower numbers to higher ones, so without circles. */
const relations = fc.integer({ min: 1, max: 24 }).chain((size) => {
  const arrow = fc
    .tuple(fc.nat(size - 1), fc.nat(size - 1))
    .filter(([a, b]) => a < b)
    .map(([a, b]): Arrow => [a, b]);
  return fc.array(arrow, { maxLength: size < 2 ? 0 : 60 }).map((arrows) => ({ size, arrows }));
});

function entryTable(goesIn: readonly (readonly boolean[])[], columns: number): EntryTable {
  return {
    entrants: goesIn.map((_, i) => `blank ${i}`),
    openings: Array.from({ length: columns }, (_, k) => `keyway ${k}`),
    goesIn,
  };
}

/** Tiers as facts about ids, whatever the order of the chart. */
function factsOf({ nodes, covers, tierOfEntrant, tierOfOpening }: Tiers) {
  const nameOf = (i: number) => [...nodes[i].entrants].sort().join();
  return {
    nodes: nodes
      .map(({ openings, tier, rank }, i) => `${nameOf(i)} | ${[...openings].sort().join()} | ${tier} | ${rank}`)
      .sort(),
    covers: covers.map(([lower, upper]) => `${nameOf(lower)} < ${nameOf(upper)}`).sort(),
    entrants: [...tierOfEntrant].sort(),
    openings: [...tierOfOpening].sort(),
  };
}

describe('the closure of a context', () => {
  /** A context and two sets of its attributes, the first within the second. */
  const chosen = tables.chain(({ has, columns }) =>
    fc.tuple(fc.subarray([...Array(columns).keys()]), fc.subarray([...Array(columns).keys()])).map(([some, more]) => ({
      context: contextOf(has, columns),
      small: setOf(columns, some),
      large: setOf(columns, [...some, ...more]),
    })),
  );
  const close = (context: Context, set: ReturnType<typeof setOf>) =>
    intentOf(context, extentOf(context, membersOf(set)));

  test('holds what it closes, keeps order, and closes once for all', () => {
    fc.assert(
      fc.property(chosen, ({ context, small, large }) => {
        expect(isSubset(small, close(context, small))).toBe(true);
        expect(isSubset(close(context, small), close(context, large))).toBe(true);
        expect(isSameSet(close(context, close(context, small)), close(context, small))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test('goes with the other one as a Galois connection: A in B-prime exactly where B in A-prime', () => {
    fc.assert(
      fc.property(chosen, fc.infiniteStream(fc.boolean()), ({ context, small }, draws) => {
        const objects = setOf(
          context.objects,
          [...Array(context.objects).keys()].filter(() => draws.next().value),
        );
        const left = isSubset(objects, extentOf(context, membersOf(small)));
        expect(left).toBe(isSubset(small, intentOf(context, objects)));
      }),
      { numRuns: 300 },
    );
  });

  test('concepts are the closed sets in lectic order, each once; whole and smallest among them', () => {
    fc.assert(
      fc.property(tables, ({ has, columns }) => {
        const context = contextOf(has, columns);
        const concepts = [...take(formalConcepts(context), 300)];
        for (const { extent, intent } of concepts) {
          expect(isSameSet(intentOf(context, extent), intent)).toBe(true);
          expect(isSameSet(extentOf(context, membersOf(intent)), extent)).toBe(true);
        }
        for (const [i, { intent }] of concepts.entries())
          if (i > 0) expect(comesBefore(concepts[i - 1].intent, intent, columns)).toBe(true);
        expect(membersOf(concepts[0].extent)).toHaveLength(has.length);
      }),
      { numRuns: 100 },
    );
  });

  /** Lectic order: at the least number in which two sets differ, the later one has it. */
  function comesBefore(a: ReturnType<typeof setOf>, b: ReturnType<typeof setOf>, size: number): boolean {
    const differs = [...Array(size).keys()].find((i) => hasMember(a, i) !== hasMember(b, i));
    return differs !== undefined && hasMember(b, differs);
  }

  function* take<Value>(values: Iterable<Value>, most: number): Generator<Value> {
    let left = most;
    for (const value of values) {
      if (left-- === 0) return;
      yield value;
    }
  }

  test('a table turned round has as many concepts and as many lines', () => {
    fc.assert(
      fc.property(tables, ({ has, columns }) => {
        const turned = Array.from({ length: columns }, (_, k) => has.map((row) => row[k]));
        const most = 2000;
        const there = countConcepts(entryTable(has, columns), most);
        fc.pre(!there.capped);
        expect(countConcepts(entryTable(turned, has.length), most)).toEqual(there);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the reduction of an order', () => {
  const reachedBy = (size: number, arrows: readonly Arrow[]) => transitiveClosure(size, arrows).map(membersOf);

  test('reaches the same, and no arrow of it can be left out', () => {
    fc.assert(
      fc.property(relations, ({ size, arrows }) => {
        const reduced = transitiveReduction(size, arrows);
        const whole = reachedBy(size, arrows);
        expect(reachedBy(size, reduced)).toEqual(whole);
        for (const left of reduced)
          expect(
            reachedBy(
              size,
              reduced.filter((arrow) => arrow !== left),
            ),
          ).not.toEqual(whole);
      }),
      { numRuns: 200 },
    );
  });

  test('is the same for any arrows that reach the same, and its own reduction', () => {
    fc.assert(
      fc.property(relations, ({ size, arrows }) => {
        const reduced = transitiveReduction(size, arrows);
        const all = reachedBy(size, arrows).flatMap((ends, from) => ends.map((to): Arrow => [from, to]));
        expect(transitiveReduction(size, all)).toEqual(reduced);
        expect(transitiveReduction(size, reduced)).toEqual(reduced);
        expect(heightsOf(size, all)).toEqual(heightsOf(size, reduced));
      }),
      { numRuns: 200 },
    );
  });
});

describe('the tiers of a family', () => {
  test('go up along every line by one at least, and by exactly one along some line from below', () => {
    fc.assert(
      fc.property(tables, ({ has, columns }) => {
        const { nodes, covers } = tiersOf(entryTable(has, columns));
        for (const [lower, upper] of covers) expect(nodes[lower].tier).toBeLessThan(nodes[upper].tier);
        for (const [i, { tier }] of nodes.entries()) {
          const below = covers.filter(([, upper]) => upper === i).map(([lower]) => nodes[lower].tier);
          expect(tier).toBe(below.length === 0 ? 0 : Math.max(...below) + 1);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('lines lead from each node to exactly those that enter all it enters, and more', () => {
    fc.assert(
      fc.property(tables, ({ has, columns }) => {
        const { nodes, covers } = tiersOf(entryTable(has, columns));
        const reached = transitiveClosure(nodes.length, covers);
        for (const [i, a] of nodes.entries())
          for (const [k, b] of nodes.entries()) {
            const within = a.openings.every((id) => b.openings.includes(id)) && b.openings.length > a.openings.length;
            expect(hasMember(reached[i], k)).toBe(a.openings.length > 0 && within);
          }
      }),
      { numRuns: 60 },
    );
  });

  test('blanks with the same keyways are one node: a copy of a row changes nothing else', () => {
    fc.assert(
      fc.property(tables, fc.nat(), ({ has, columns }, pick) => {
        fc.pre(has.length > 0);
        const plain = tiersOf(entryTable(has, columns));
        const copied = tiersOf(entryTable([...has, has[pick % has.length]], columns));
        expect(copied.nodes.map(({ entrants, ...rest }) => rest)).toEqual(
          plain.nodes.map(({ entrants, ...rest }) => rest),
        );
        expect(copied.covers).toEqual(plain.covers);
        const sets = plain.nodes.map(({ openings }) => openings.join());
        expect(new Set(sets).size).toBe(sets.length);
        expect(plain.nodes.flatMap(({ entrants }) => entrants).sort()).toEqual(has.map((_, i) => `blank ${i}`).sort());
      }),
      { numRuns: 200 },
    );
  });

  test('do not depend on the order of the chart', () => {
    const shuffledTables = tables.chain(({ has, columns }) =>
      fc.tuple(
        fc.constant(entryTable(has, columns)),
        fc.shuffledSubarray([...has.keys()], { minLength: has.length }),
        fc.shuffledSubarray([...Array(columns).keys()], { minLength: columns }),
      ),
    );
    fc.assert(
      fc.property(shuffledTables, ([table, rows, columns]) => {
        const mixed: EntryTable = {
          entrants: rows.map((i) => table.entrants[i]),
          openings: columns.map((k) => table.openings[k]),
          goesIn: rows.map((i) => columns.map((k) => table.goesIn[i][k])),
        };
        expect(factsOf(tiersOf(mixed))).toEqual(factsOf(tiersOf(table)));
      }),
      { numRuns: 200 },
    );
  });
});
