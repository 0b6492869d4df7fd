/** A symmetric matrix of few entries, row by row, each row's columns with its values; the diagonal is stored apart too. */
export interface SparseMatrix {
  readonly size: number;
  /** Where each row starts in `columns` and `values`; one more than there are rows. */
  readonly starts: Int32Array;
  /** Ascending within a row. */
  readonly columns: Int32Array;
  readonly values: Float64Array;
  readonly diagonal: Float64Array;
}

/** A solution and how it was come by. */
export interface Solution {
  readonly x: Float64Array;
  readonly iterations: number;
  /** Norm of what is left over the norm of the right-hand side. */
  readonly residual: number;
}

/** Over-relaxation of the preconditioner; between 1 and 2, and not critical. */
const RELAXATION = 1.4;

/** Iterations at most, for each root of an unknown. */
const MOST_PER_ROOT = 60;

/** The product of a matrix and a vector. */
export function times({ size, starts, columns, values }: SparseMatrix, x: Float64Array, into: Float64Array): void {
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let k = starts[i]; k < starts[i + 1]; k++) sum += values[k] * x[columns[k]];
    into[i] = sum;
  }
}

/** The sum of the products of two vectors' entries. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/**
 * Solves A x = b by conjugate gradients, with a symmetric sweep of over-relaxation as preconditioner.
 *
 * A may have constants in its kernel where b sums to 0: one of the solutions comes back then.
 *
 * @param a symmetric and positive, or semidefinite as told.
 * @param tolerance residual, relative to b, at which it stops.
 * @param start a first guess; 0 unless given.
 * @source M. R. Hestenes, E. Stiefel 1952; O. Axelsson on the preconditioner; Y. Saad, "Iterative Methods for Sparse Linear
 *   Systems", 2nd ed. 2003 (from memory).
 * @check tests/unit/strength/sparse-matrix.test.ts
 */
export function solveByGradients(a: SparseMatrix, b: Float64Array, tolerance: number, start?: Float64Array): Solution {
  const n = a.size;
  const x = start ? start.slice() : new Float64Array(n);
  const r = new Float64Array(n);
  times(a, x, r);
  for (let i = 0; i < n; i++) r[i] = b[i] - r[i];
  const [z, ap] = [new Float64Array(n), new Float64Array(n)];
  sweep(a, r, z);
  const p = z.slice();
  const aim = tolerance * Math.sqrt(dot(b, b));
  let rz = dot(r, z);
  let iterations = 0;
  const most = MOST_PER_ROOT * Math.ceil(Math.sqrt(n));
  for (; Math.sqrt(dot(r, r)) > aim && iterations < most; iterations++) {
    times(a, p, ap);
    const step = rz / dot(p, ap);
    for (let i = 0; i < n; i++) {
      x[i] += step * p[i];
      r[i] -= step * ap[i];
    }
    sweep(a, r, z);
    const next = dot(r, z);
    const turn = next / rz;
    rz = next;
    for (let i = 0; i < n; i++) p[i] = z[i] + turn * p[i];
  }
  const scale = Math.sqrt(dot(b, b));
  return { x, iterations, residual: scale > 0 ? Math.sqrt(dot(r, r)) / scale : 0 };
}

/** One sweep of over-relaxation down and one up: z = (D/w + U)^-1 D/w (D/w + L)^-1 r, up to a factor. */
function sweep({ size, starts, columns, values, diagonal }: SparseMatrix, r: Float64Array, z: Float64Array): void {
  for (let i = 0; i < size; i++) {
    let sum = r[i];
    for (let k = starts[i]; k < starts[i + 1] && columns[k] < i; k++) sum -= values[k] * z[columns[k]];
    z[i] = (sum * RELAXATION) / diagonal[i];
  }
  for (let i = 0; i < size; i++) z[i] *= diagonal[i] / RELAXATION;
  for (let i = size - 1; i >= 0; i--) {
    let sum = z[i];
    for (let k = starts[i + 1] - 1; k >= starts[i] && columns[k] > i; k--) sum -= values[k] * z[columns[k]];
    z[i] = (sum * RELAXATION) / diagonal[i];
  }
}
