/** A problem of fitting: how far each observation is from a model with the given parameters. */
export interface FitProblem {
  /** Signed distances for parameters within their bounds; the same number of them every time. */
  residuals(parameters: readonly number[]): readonly number[];
  /** Brings parameters back to where the model makes sense. */
  clamp(parameters: readonly number[]): number[];
  /** A small step of each parameter, for the slopes. */
  readonly steps: readonly number[];
}

/** Parameters found and the sum of the squares of what is left. */
export interface FitFound {
  readonly parameters: readonly number[];
  readonly misfit: number;
}

const MOST_ROUNDS = 40;

/**
 * Parameters near `start` with the least sum of squared residuals, by damped least squares.
 *
 * @source K. Levenberg, Quart. Appl. Math. 2 (1944) 164-168; D. Marquardt, J. SIAM 11 (1963) 431-441 (from memory).
 * @check tests/unit/profile/fit-least-squares.test.ts
 */
export function fitLeastSquares(problem: FitProblem, start: readonly number[]): FitFound {
  let parameters = problem.clamp(start);
  let left = problem.residuals(parameters);
  let misfit = squares(left);
  let damping = 1e-3;
  for (let round = 0; round < MOST_ROUNDS && damping < 1e9; round++) {
    const slopes = slopesAt(problem, parameters, left);
    const step = dampedStep(slopes, left, damping);
    if (!step) break;
    const next = problem.clamp(parameters.map((p, i) => p + step[i] * problem.steps[i]));
    const nextLeft = problem.residuals(next);
    const nextMisfit = squares(nextLeft);
    if (nextMisfit < misfit) {
      const gain = misfit - nextMisfit;
      [parameters, left, misfit, damping] = [next, nextLeft, nextMisfit, Math.max(1e-9, damping / 5)];
      if (gain <= 1e-9 * misfit) break;
    } else damping *= 6;
  }
  return { parameters, misfit };
}

/** How the residuals change with one step of each parameter, taken to the side that stays in bounds. */
function slopesAt(problem: FitProblem, parameters: readonly number[], left: readonly number[]): number[][] {
  return problem.steps.map((step, i) => {
    const forth = problem.clamp(parameters.with(i, parameters[i] + step));
    const by = forth[i] - parameters[i] === step ? step : -step;
    const moved = by === step ? forth : parameters.with(i, parameters[i] + by);
    return problem.residuals(moved).map((r, k) => ((r - left[k]) * step) / by);
  });
}

/** The step, in units of each parameter's own step, that the damped normal equations ask for. */
function dampedStep(slopes: readonly number[][], left: readonly number[], damping: number): number[] | null {
  const rows = slopes.map((a, i) => {
    const row = slopes.map((b) => dot(a, b));
    row[i] = row[i] * (1 + damping) + 1e-12;
    return [...row, -dot(a, left)];
  });
  return solve(rows);
}

/** Gauss elimination with row pivots; each row ends with its right side. Null where the rows depend on each other. */
function solve(rows: number[][]): number[] | null {
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    const pivot = rows.reduce((best, _, i) => (i >= k && Math.abs(rows[i][k]) > Math.abs(rows[best][k]) ? i : best), k);
    [rows[k], rows[pivot]] = [rows[pivot], rows[k]];
    if (Math.abs(rows[k][k]) < 1e-30) return null;
    for (let i = k + 1; i < n; i++) {
      const share = rows[i][k] / rows[k][k];
      for (let j = k; j <= n; j++) rows[i][j] -= share * rows[k][j];
    }
  }
  const found = new Array<number>(n).fill(0);
  for (let k = n - 1; k >= 0; k--) {
    const known = found.reduce((sum, x, j) => (j > k ? sum + rows[k][j] * x : sum), 0);
    found[k] = (rows[k][n] - known) / rows[k][k];
  }
  return found;
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, x, i) => sum + x * b[i], 0);
}

function squares(values: readonly number[]): number {
  return dot(values, values);
}
