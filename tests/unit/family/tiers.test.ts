import { describe, expect, test } from 'vitest';
import { countUnjudged, type EntryTable, entryTable, withEntrants } from '../../../src/family/entry-table.ts';
import { countConcepts, neighboursOf, tiersOf } from '../../../src/family/tiers.ts';
import type { Fit, Verdict } from '../../../src/fit/fit.ts';

/** A table of rows such as "110": 1 goes in, 0 does not, ? is not judged; blanks a, b, c ..., keyways A, B, C ... */
function tableOf(...rows: string[]): EntryTable {
  return {
    entrants: rows.map((_, i) => 'abcdefghij'[i]),
    openings: [...(rows[0] ?? '')].map((_, k) => 'ABCDEFGHIJ'[k]),
    goesIn: rows.map((row) => [...row].map((cell) => (cell === '?' ? null : cell === '1'))),
  };
}

const summary = (table: EntryTable) => tiersOf(table).nodes.map(({ id, tier, rank }) => `${id}${tier} ${rank}`);

describe('an entry table', () => {
  const judged = (verdict: Verdict): Fit => {
    const placement = { x: 0, y: 0, tilt: 0 };
    return { verdict, clearance: 0, accuracy: 0, placement, play: { lateral: 0, vertical: 0 }, seated: placement };
  };

  test('takes what is tight as going in, and what is not judged as not known', () => {
    const fits = [[judged('enters'), judged('tight'), judged('blocked'), undefined]];
    const table = entryTable({ profiles: ['a'], openings: ['A', 'B', 'C', 'D'], fits });
    expect(table).toEqual({ entrants: ['a'], openings: ['A', 'B', 'C', 'D'], goesIn: [[true, true, false, null]] });
    expect(countUnjudged(table)).toBe(1);
  });

  test('gives some of its rows, in its own order', () => {
    const some = withEntrants(tableOf('10', '01', '11'), (id) => id !== 'b');
    expect(some).toEqual({
      entrants: ['a', 'c'],
      openings: ['A', 'B'],
      goesIn: [
        [true, false],
        [true, true],
      ],
    });
  });
});

describe('the tiers of a table', () => {
  test('put base, groups and all one above the other, equal rows together', () => {
    const tiers = tiersOf(tableOf('1000', '0100', '0010', '1100', '1110', '1111', '1000', '0000'));
    expect(tiers.nodes.map(({ id, tier, rank }) => [id, tier, rank])).toEqual([
      ['a', 0, 'base'],
      ['b', 0, 'base'],
      ['c', 0, 'base'],
      ['d', 1, 'group'],
      ['e', 2, 'group'],
      ['f', 3, 'all'],
      ['h', 0, 'nothing'],
    ]);
    expect(tiers.nodes[0].entrants).toEqual(['a', 'g']);
    expect(tiers.nodes[4].openings).toEqual(['A', 'B', 'C']);
    expect(tiers.covers).toEqual([
      [0, 3],
      [1, 3],
      [2, 4],
      [3, 4],
      [4, 5],
    ]);
    expect(neighboursOf(tiers)[4]).toEqual({ below: [2, 3], above: [5] });
    expect(tiers.tierOfEntrant.get('g')).toBe(0);
  });

  test('tell of each keyway the lowest tier that enters it, and of one that nothing enters nothing', () => {
    const { tierOfOpening } = tiersOf(tableOf('1000', '1100', '1110'));
    expect([...tierOfOpening]).toEqual([
      ['A', 0],
      ['B', 1],
      ['C', 2],
    ]);
  });

  test('take a pair that is not judged yet as one that does not go in', () => {
    expect(summary(tableOf('1?', '11'))).toEqual(['a0 base', 'b1 all']);
    expect(summary(tableOf('??', '11'))).toEqual(['a0 nothing', 'b0 all']);
  });

  test('of one keyway are base, of no keyway nothing, of no blank empty', () => {
    expect(summary(tableOf('1', '0'))).toEqual(['a0 base', 'b0 nothing']);
    expect(summary({ entrants: ['a', 'b'], openings: [], goesIn: [[], []] })).toEqual(['a0 nothing']);
    expect(tiersOf({ entrants: [], openings: ['A'], goesIn: [] })).toMatchObject({ nodes: [], covers: [] });
  });

  test('counting concepts: of nothing there is one, at a limit it stops', () => {
    expect(countConcepts({ entrants: [], openings: [], goesIn: [] }, 10)).toEqual({
      concepts: 1,
      edges: 0,
      capped: false,
    });
    expect(countConcepts(tableOf('10', '01'), 0)).toMatchObject({ concepts: 0, capped: true });
    expect(countConcepts(tableOf('10', '01'), 4)).toEqual({ concepts: 4, edges: 4, capped: false });
  });
});
