import { expect, test } from 'vitest';
import { dot, type SparseMatrix, solveByGradients, times } from '../../../src/strength/sparse-matrix.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

/** A matrix of rows. */
function sparse(rows: readonly (readonly number[])[]): SparseMatrix {
  const [starts, columns, values]: number[][] = [[0], [], []];
  rows.forEach((row, i) => {
    row.forEach((value, j) => {
      if (value === 0 && i !== j) return;
      columns.push(j);
      values.push(value);
    });
    starts.push(columns.length);
  });
  return {
    size: rows.length,
    starts: Int32Array.from(starts),
    columns: Int32Array.from(columns),
    values: Float64Array.from(values),
    diagonal: Float64Array.from(rows.map((row, i) => row[i])),
  };
}

// I. S. Duff and others, any text: the second difference matrix of n unknowns, whose solution for a load of one is a parabola.
test('the second difference: a parabola', () => {
  const n = 50;
  const rows = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => [2, -1][Math.abs(i - j)] ?? 0));
  const { x, residual } = solveByGradients(sparse(rows), new Float64Array(n).fill(1), 1e-12);
  expect(residual).toBeLessThan(1e-12);
  x.forEach((value, i) => {
    expect(value).toBeCloseTo(((i + 1) * (n - i)) / 2, 7);
  });
});

test('a matrix with constants in its kernel: one of the solutions', () => {
  const rows = [
    [1, -1, 0, 0],
    [-1, 3, -2, 0],
    [0, -2, 5, -3],
    [0, 0, -3, 3],
  ];
  const { x } = solveByGradients(sparse(rows), Float64Array.from([1, 0, 0, -1]), 1e-12);
  expect(x[0] - x[1]).toBeCloseTo(1, 9);
  expect(x[1] - x[2]).toBeCloseTo(1 / 2, 9);
  expect(x[2] - x[3]).toBeCloseTo(1 / 3, 9);
});

test('random positive matrices: what was multiplied comes back, also from a guess', () => {
  const random = randomNumbers(5);
  for (let round = 0; round < 10; round++) {
    const n = 12;
    const half = Array.from({ length: n }, () => Array.from({ length: n }, () => random.whole(-9, 9)));
    const rows = Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (_, j) => half.reduce((sum, row) => sum + row[i] * row[j], i === j ? 50 : 0)),
    );
    const a = sparse(rows);
    const x = Float64Array.from({ length: n }, () => random.whole(-100, 100));
    const b = new Float64Array(n);
    times(a, x, b);
    const found = solveByGradients(
      a,
      b,
      1e-12,
      Float64Array.from({ length: n }, () => 7),
    );
    found.x.forEach((value, i) => {
      expect(value).toBeCloseTo(x[i], 6);
    });
    expect(dot(x, b)).toBeGreaterThan(0);
  }
});

test('no load: no answer but zero, at once', () => {
  const { x, iterations } = solveByGradients(
    sparse([
      [2, 1],
      [1, 2],
    ]),
    new Float64Array(2),
    1e-9,
  );
  expect([...x]).toEqual([0, 0]);
  expect(iterations).toBe(0);
});
