// The exact solver is asked for one of many plans that differ by an exchange of rows only. Such a question must be answered
// as the whole one would be: yes at the fewest sites and no at one less, both by brute force that shares no code with it.
// Tables with partly alike rows, where an exchange that is none would go unnoticed on random ones.

import { expect, test } from 'vitest';
import type { AccessTable } from '../../src/plan/access-table.ts';
import { askForSites } from '../../src/plan/prove-sites.ts';
import { runClingo } from '../../src/plan/run-clingo.ts';
import { startSolving } from '../../src/plan/solve.ts';
import { tableOf } from '../cases/access-tables.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { fewestByTrying } from '../kit/fewest-sites.ts';
import { solveOptions } from '../kit/solve-table.ts';

type Numbers = ReturnType<typeof randomNumbers>;

/** Stops and depths. */
const ONCE = [1, 1] as const;
const WAYS = [ONCE, [2, 1], [1, 2], ONCE] as const;

/** Tables whose rows are alike in part, so that few of their exchanges leave the table as it is. */
const TABLES: Readonly<Record<string, (numbers: Numbers) => AccessTable>> = {
  'sections in two unequal groups, each with its blank': (numbers) => {
    const [rows, cut] = [numbers.whole(4, 5), numbers.whole(1, 3)];
    return tableOf(rows, rows + 2, (i, j) => {
      if (j < rows) return i === j;
      if (j === rows) return i < cut;
      return numbers.chance(0.15) ? null : i >= cut;
    });
  },
  'two groups of one size, unlike inside': (numbers) => {
    const size = 2;
    return tableOf(2 * size, 2 * size + 3, (i, j) => {
      if (j < 2 * size) return i === j;
      if (j < 2 * size + 2) return Math.floor(i / size) === j - 2 * size;
      return numbers.chance(0.2) ? null : numbers.chance(0.5);
    });
  },
  'one blank kept out of each section, some cells free': (numbers) => {
    const rows = numbers.whole(4, 5);
    return tableOf(rows, rows, (i, j) => (i !== j && numbers.chance(0.12) ? null : i !== j));
  },
  'a pattern that goes round': (numbers) => {
    const rows = numbers.whole(4, 5);
    const pattern = Array.from({ length: rows }, () => numbers.chance(0.5));
    return tableOf(rows, rows, (i, j) => pattern[(i + j) % rows]);
  },
};

test.each(Object.entries(TABLES))('%s: yes at the fewest sites, no at one less', async (_, make) => {
  for (let seed = 0; seed < 12; seed++) {
    const numbers = randomNumbers(7_000 + seed);
    const table = make(numbers);
    const forbidden = table.flat().filter((cell) => cell === 0).length;
    // More than that takes the brute force too long.
    const [stops, depths] = forbidden > 14 ? ONCE : WAYS[seed % WAYS.length];
    const fewest = fewestByTrying(table, stops, depths);
    const start = startSolving(table, solveOptions({ stops, depths }));
    if (!start || fewest === 0) continue;
    for (const sites of [fewest, fewest - 1].filter((count) => count > 0)) {
      const { programme } = askForSites(start.setting, sites);
      const answer = await runClingo(
        programme,
        () => false,
        () => Promise.resolve(),
      );
      const kind = sites === fewest ? 'model' : 'none';
      expect({ seed, stops, depths, sites, kind: answer.kind, table }).toEqual({
        ...{ seed, stops, depths, sites },
        kind,
        table,
      });
    }
  }
});

/** All orders of some numbers. */
function* orders(numbers: readonly number[]): Generator<readonly number[], void> {
  if (numbers.length === 0) yield [];
  for (const [at, first] of numbers.entries())
    for (const rest of orders(numbers.toSpliced(at, 1))) yield [first, ...rest];
}

/** The columns of the table in a programme, with its rows in some order; sorted. */
function columnsOf(programme: string, order: readonly number[]): string {
  const cells = new Map<string, Map<number, string>>();
  for (const [, mark, row, column] of programme.matchAll(/\b([ez])\((\d+),(\d+)\)\./g)) {
    const known = cells.get(column) ?? new Map<number, string>();
    cells.set(column, known.set(Number(row), mark));
  }
  return [...cells.values()]
    .map((column) => order.map((row) => column.get(row) ?? '.').join(''))
    .sort()
    .join(' ');
}

test.each(Object.entries(TABLES))(
  '%s: only rows that some exchange carries into each other are put in order',
  (_, make) => {
    for (let seed = 0; seed < 25; seed++) {
      const start = startSolving(make(randomNumbers(8_000 + seed)), solveOptions());
      if (!start) continue;
      const { programme } = askForSites(start.setting, 3);
      const rows = Array.from({ length: start.kernel.rows }, (_, row) => row);
      const as = columnsOf(programme, rows);
      const kept = [...orders(rows)].filter((order) => columnsOf(programme, order) === as);
      for (const [, a, b] of programme.matchAll(/\bafter\((\d+),(\d+)\)\./g)) {
        const exchanged = kept.some((order) => order[Number(a)] === Number(b) && order[Number(b)] === Number(a));
        expect({ seed, a, b, exchanged }).toEqual({ seed, a, b, exchanged: true });
      }
    }
  },
);
