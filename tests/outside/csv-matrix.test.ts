// The matrix as CSV, read by the csv module of Python's standard library (strict), which is no code of ours.
import { expect, test } from 'vitest';
import { entryMatrix } from '../../src/family/entry-matrix.ts';
import { writeMatrix } from '../../src/interchange/csv/write-matrix.ts';
import { slotFamily } from '../cases/slot-family.ts';
import { askPython } from '../kit/ask-python.ts';
import { demoFamily } from '../kit/demo-family.ts';
import { finish } from '../kit/traced.ts';

/** Any Python will do: that with networkx is there for other tests. */
function readByPython(input: string, delimiter: string): string[][] {
  return askPython({ library: 'networkx', script: 'read-csv.py', words: [delimiter], input }) as string[][];
}

test("Python's csv module reads every verdict and every margin of the demo family", () => {
  const family = demoFamily();
  const matrix = finish(entryMatrix(family));
  const [head, ...rows] = readByPython(writeMatrix(family, matrix, { units: 'mm' }), ',');
  expect(head).toHaveLength(4 + 2 * matrix.openings.length);
  expect(rows.map((row) => row.length)).toEqual(matrix.profiles.map(() => head.length));
  for (const [i, row] of rows.entries())
    for (const [k, { verdict, clearance }] of matrix.fits[i].entries()) {
      expect(row[4 + 2 * k]).toBe(verdict);
      expect(Math.abs(Number(row[5 + 2 * k]) * 1e6 - clearance)).toBeLessThanOrEqual(50);
    }
});

test.each([',', ';', '\t'] as const)(
  'names with quotes, line ends, cell marks and formulas stay whole (%j)',
  (separator) => {
    const names = ['=1+1', '+2', '-3', '@SUM(A1)', '\t=4', 'a,b;c\td', 'say "ten"', 'two\nlines', 'Größe 測 é'];
    const family = slotFamily(
      [{ id: 'slot', name: '=HYPERLINK("x")', width: 2.2 }],
      names.map((name, i) => ({ id: `t${i}`, name, section: name, width: 2 })),
    );
    const [head, ...rows] = readByPython(
      writeMatrix(family, finish(entryMatrix(family)), { units: 'mm', separator }),
      separator,
    );
    expect(head[4]).toBe('\'=HYPERLINK("x"): verdict');
    const told = ["'=1+1", "'+2", "'-3", "'@SUM(A1)", "'=4", 'a,b;c d', 'say "ten"', 'two lines', 'Größe 測 é'];
    expect(rows.map(([name]) => name)).toEqual(told);
    // Numbers stay numbers: no apostrophe before one, a negative one too.
    expect(rows.map((row) => Number(row[5]))).toEqual(names.map(() => 0.1));
  },
);
