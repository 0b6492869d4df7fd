/** A place in a plane; which plane and unit, the holder says. */
export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

/** A projective map of the plane, a 3 x 3 matrix by rows: (x, y) goes to ((m0 x + m1 y + m2) / w, (m3 x + m4 y + m5) / w). */
export type PlaneMap = readonly [number, number, number, number, number, number, number, number, number];

/** Where a map takes a point. Beyond the horizon ({@link depthAt} not above 0) the answer has no meaning. */
export function mapPoint(map: PlaneMap, { x, y }: PlanePoint): PlanePoint {
  const w = depthAt(map, { x, y });
  return { x: (map[0] * x + map[1] * y + map[2]) / w, y: (map[3] * x + map[4] * y + map[5]) / w };
}

/** The divisor w of a map at a point: its sign changes at the horizon, where straight lines meet that were parallel. */
export function depthAt(map: PlaneMap, { x, y }: PlanePoint): number {
  return map[6] * x + map[7] * y + map[8];
}

/** How much larger a map makes lengths at a point: the square root of its change of area there. */
export function magnificationAt(map: PlaneMap, point: PlanePoint): number {
  return Math.sqrt(Math.abs(determinant(map) / depthAt(map, point) ** 3));
}

/** The map that does `first` and then `then`. */
export function followedBy(first: PlaneMap, then: PlaneMap): PlaneMap {
  const cell = (row: number, column: number) =>
    then[3 * row] * first[column] + then[3 * row + 1] * first[3 + column] + then[3 * row + 2] * first[6 + column];
  return [cell(0, 0), cell(0, 1), cell(0, 2), cell(1, 0), cell(1, 1), cell(1, 2), cell(2, 0), cell(2, 1), cell(2, 2)];
}

/** The way back, scaled so that its divisor is positive where the map's was; null for a map that has none. */
export function inverseMap(map: PlaneMap): PlaneMap | null {
  const [a, b, c, d, e, f, g, h, i] = map;
  const whole = determinant(map);
  if (!Number.isFinite(whole) || whole === 0) return null;
  const k = 1 / whole;
  return [
    (e * i - f * h) * k,
    (c * h - b * i) * k,
    (b * f - c * e) * k,
    (f * g - d * i) * k,
    (a * i - c * g) * k,
    (c * d - a * f) * k,
    (d * h - e * g) * k,
    (b * g - a * h) * k,
    (a * e - b * d) * k,
  ];
}

/** The map times a number, which takes every point to the same place. */
export function rescaled(map: PlaneMap, by: number): PlaneMap {
  const [a, b, c, d, e, f, g, h, i] = map;
  return [a * by, b * by, c * by, d * by, e * by, f * by, g * by, h * by, i * by];
}

function determinant([a, b, c, d, e, f, g, h, i]: PlaneMap): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

/** Four places, in an order that both planes share. */
export type FourPoints = readonly [PlanePoint, PlanePoint, PlanePoint, PlanePoint];

/**
 * The map that takes four points to four others, no three of either in line.
 *
 * @returns null where the equations have no single solution.
 * @accuracy about 1e-13 of the size of the figure for figures that are not nearly in line.
 * @source R. Hartley & A. Zisserman, Multiple View Geometry, 2003, sections 4.1 and 4.4.4 (from memory).
 * @check tests/outside/perspective.test.ts
 */
export function mapOfFourPoints(from: FourPoints, to: FourPoints): PlaneMap | null {
  const [near, far] = [toUnitSize(from), toUnitSize(to)];
  const rows = from.flatMap((point, k) => equationsOf(mapPoint(near, point), mapPoint(far, to[k])));
  const solved = solve(rows);
  const back = inverseMap(far);
  if (!solved || !back) return null;
  const [a, b, c, d, e, f, g, h] = solved;
  return followedBy(followedBy(near, [a, b, c, d, e, f, g, h, 1]), back);
}

/** The similarity that brings points to the origin and to a mean distance of root two: it keeps the equations well posed. */
function toUnitSize(points: FourPoints): PlaneMap {
  const x = points.reduce((sum, p) => sum + p.x, 0) / 4;
  const y = points.reduce((sum, p) => sum + p.y, 0) / 4;
  const mean = points.reduce((sum, p) => sum + Math.hypot(p.x - x, p.y - y), 0) / 4;
  const k = mean > 0 ? Math.SQRT2 / mean : 1;
  return [k, 0, -k * x, 0, k, -k * y, 0, 0, 1];
}

/** Two equations for the eight unknowns of a map, the ninth being 1; the last number of each is the right-hand side. */
function equationsOf({ x, y }: PlanePoint, to: PlanePoint): number[][] {
  return [
    [x, y, 1, 0, 0, 0, -to.x * x, -to.x * y, to.x],
    [0, 0, 0, x, y, 1, -to.y * x, -to.y * y, to.y],
  ];
}

/** Gauss elimination with row pivots on equations whose last number is the right-hand side; null where they are singular. */
function solve(rows: number[][]): number[] | null {
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let r = k + 1; r < n; r++) if (Math.abs(rows[r][k]) > Math.abs(rows[best][k])) best = r;
    [rows[k], rows[best]] = [rows[best], rows[k]];
    if (!(Math.abs(rows[k][k]) > 1e-12)) return null;
    for (let r = k + 1; r < n; r++) {
      const share = rows[r][k] / rows[k][k];
      for (let c = k; c <= n; c++) rows[r][c] -= share * rows[k][c];
    }
  }
  const answer = new Array<number>(n).fill(0);
  for (let k = n - 1; k >= 0; k--) {
    let rest = rows[k][n];
    for (let c = k + 1; c < n; c++) rest -= rows[k][c] * answer[c];
    answer[k] = rest / rows[k][k];
  }
  return answer;
}
