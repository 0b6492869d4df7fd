import { describe, expect, test } from 'vitest';
import { coveringTools } from '../../../src/gauge/cover-tools.ts';
import type { ToolTable } from '../../../src/gauge/tool-table.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { finish } from '../../kit/traced.ts';

const coverTools = (...asked: Parameters<typeof coveringTools>) => finish(coveringTools(...asked));

/** A table from clearances in um; null is blocked. Tools A, B, ..., openings 1, 2, ... */
function tableOf(rows: readonly (readonly (number | null)[])[], columns = rows[0]?.length ?? 0): ToolTable {
  const openings = Array.from({ length: columns }, (_, k) => `${k + 1}`);
  return {
    openings,
    rows: rows.map((cells, i) => ({
      toolId: String.fromCharCode(65 + i),
      strip: null,
      cells: cells.map((um, k) => ({
        openingId: openings[k],
        verdict: um === null ? 'blocked' : 'enters',
        clearance: um === null ? -1e3 : um * 1e3,
        spare: null,
      })),
    })),
  };
}

test('two do where none does alone; of two such pairs the one with more room', () => {
  const table = tableOf([
    [50, 50, null, null],
    [null, null, 40, 40],
    [null, 90, null, 5],
    [60, null, 60, null],
  ]);
  const cover = coverTools(table, table.openings);
  expect(cover.tools).toEqual(['A', 'B']);
  expect(cover.clearance).toBe(40_000);
  expect(cover.sets).toEqual([
    ['A', 'B'],
    ['C', 'D'],
  ]);
  expect(cover).toMatchObject({ uncovered: [], more: false, proved: true });
  expect(cover.uses.map(({ toolId }) => toolId)).toEqual(['A', 'A', 'B', 'B']);
});

test('greed would take three', () => {
  // D enters four of six and leaves two that need a tool each; E and F together enter all.
  const table = tableOf([
    [9, null, null, null, null, null],
    [null, 9, null, null, null, null],
    [null, null, 9, null, null, null],
    [9, 9, null, 9, 9, null],
    [9, null, 9, 9, null, null],
    [null, 9, null, null, 9, 9],
  ]);
  expect(coverTools(table, table.openings).tools).toEqual(['E', 'F']);
});

test('what nothing enters is said, and the rest is covered', () => {
  const table = tableOf([
    [10, null, null],
    [null, null, 10],
  ]);
  expect(coverTools(table, table.openings)).toMatchObject({ tools: ['A', 'B'], uncovered: ['2'] });
  expect(coverTools(table, ['1'])).toMatchObject({ tools: ['A'], uncovered: [] });
  expect(coverTools(table, ['1', '3'], ['B'])).toMatchObject({ tools: ['B'], uncovered: ['1'] });
});

test('nothing to cover, nothing to cover it with', () => {
  expect(coverTools(tableOf([[1]]), [])).toMatchObject({ tools: [], uncovered: [], sets: [], clearance: Infinity });
  expect(coverTools(tableOf([], 2), ['1', '2'])).toMatchObject({ tools: [], uncovered: ['1', '2'] });
});

describe('against every set of tools', () => {
  for (let seed = 0; seed < 60; seed++)
    test(`table ${seed}`, () => {
      const random = randomNumbers(seed);
      const [tools, openings] = [random.whole(1, 9), random.whole(1, 9)];
      const share = random.between(0.2, 0.7);
      const table = tableOf(
        Array.from({ length: tools }, () =>
          Array.from({ length: openings }, () => (random.chance(share) ? random.whole(0, 20) : null)),
        ),
      );
      const { size, best, count } = everySet(table);
      const cover = coverTools(table, table.openings);
      expect(cover.tools.length).toBe(size);
      expect(cover.clearance).toBe(best);
      expect(cover.proved).toBe(true);
      if (size > 0) {
        expect(cover.more).toBe(count > 12);
        expect(cover.sets.length).toBe(Math.min(12, count));
        expect(new Set(cover.sets.map(String)).size).toBe(cover.sets.length);
      }
    });
});

/** The least size, the most clearance of that size, and how many sets there are, by trying all. */
function everySet({ rows, openings }: ToolTable) {
  const needed = openings.flatMap((_, k) => (rows.some(({ cells }) => cells[k].verdict !== 'blocked') ? [k] : []));
  let [size, best, count] = [Infinity, -Infinity, 0];
  for (let set = 0; set < 2 ** rows.length; set++) {
    const taken = rows.filter((_, i) => (set >> i) & 1);
    const rooms = needed.map((k) =>
      Math.max(...taken.map(({ cells }) => (cells[k].verdict === 'blocked' ? -Infinity : cells[k].clearance))),
    );
    const room = Math.min(Infinity, ...rooms);
    if (room === -Infinity || taken.length > size) continue;
    if (taken.length < size) [size, best, count] = [taken.length, -Infinity, 0];
    best = Math.max(best, room);
    count++;
  }
  return { size, best, count };
}

test('forty tools in thirty keyways: proved, and no smaller set of them all does', () => {
  for (const seed of [1, 2, 3]) {
    const random = randomNumbers(seed);
    const table = tableOf(
      Array.from({ length: 40 }, () =>
        Array.from({ length: 30 }, () => (random.chance(0.3) ? random.whole(0, 60) : null)),
      ),
    );
    const cover = coverTools(table, table.openings);
    expect(cover).toMatchObject({ proved: true, uncovered: [] });
    // As bits of one number, so that every smaller set can be tried.
    const masks = table.rows.map(({ cells }) =>
      cells.reduce((bits, { verdict }, k) => (verdict === 'blocked' ? bits : bits | (1 << k)), 0),
    );
    expect(isCovered(masks, cover.tools.length - 1, 0, 0)).toBe(false);
    expect(isCovered(masks, cover.tools.length, 0, 0)).toBe(true);
  }
});

/** Whether so many more of the masks from `from` on complete the thirty bits. */
function isCovered(masks: readonly number[], more: number, from: number, bits: number): boolean {
  if (bits === 2 ** 30 - 1) return true;
  if (more === 0) return false;
  for (let i = from; i < masks.length; i++) if (isCovered(masks, more - 1, i + 1, bits | masks[i])) return true;
  return false;
}
