import type { PlanePoint } from '../../src/trace/plane-map.ts';

/**
 * How much of each pixel lies inside some closed polygons, exactly: areas of polygons cut by the pixel grid, in closed
 * form. Rings that run the other way round are holes.
 *
 * @param rings in pixels, x right, y down, all inside the picture; counter-clockwise as seen counts positive.
 * @source signed areas of trapezoids (Green's theorem), the way scan converters of fonts work (from memory).
 * @returns row by row from the top, 0 to 1.
 */
export function coverage(rings: readonly (readonly PlanePoint[])[], width: number, height: number): Float64Array {
  // `cells` holds for each pixel what the pixel itself gains, and what all pixels to its right gain.
  const area = new Float64Array((width + 1) * height);
  for (const ring of rings) {
    for (const [i, to] of ring.entries()) addEdge(area, width, ring.at(i - 1) ?? to, to);
  }
  const out = new Float64Array(width * height);
  for (let y = 0; y < height; y++) {
    let sum = 0;
    for (let x = 0; x < width; x++) {
      sum += area[y * (width + 1) + x];
      out[y * width + x] = Math.min(1, Math.max(0, sum));
    }
  }
  return out;
}

/** Adds an edge row by row: what lies to its right gains or loses the height that it crosses. */
function addEdge(area: Float64Array, width: number, from: PlanePoint, to: PlanePoint): void {
  if (from.y === to.y) return;
  const down = from.y < to.y;
  const [a, b] = down ? [from, to] : [to, from];
  const sign = down ? 1 : -1;
  const slope = (b.x - a.x) / (b.y - a.y);
  for (let row = Math.floor(a.y); row < b.y; row++) {
    const top = Math.max(a.y, row);
    const bottom = Math.min(b.y, row + 1);
    if (bottom <= top) continue;
    addInRow(area, row * (width + 1), sign, a.x + (top - a.y) * slope, a.x + (bottom - a.y) * slope, bottom - top);
  }
}

/** One row of an edge, from x = p to q over `tall`: split where it passes from pixel to pixel. */
function addInRow(area: Float64Array, start: number, sign: number, p: number, q: number, tall: number): void {
  const [low, high] = p < q ? [p, q] : [q, p];
  for (let column = Math.floor(low); column <= high; column++) {
    const left = Math.max(low, column);
    const right = Math.min(high, column + 1);
    const share = high > low ? ((right - left) / (high - low)) * tall : tall;
    if (share <= 0) continue;
    const middle = (left + right) / 2 - column;
    area[start + column] += sign * share * (1 - middle);
    area[start + column + 1] += sign * share * middle;
    if (high === low) break;
  }
}
