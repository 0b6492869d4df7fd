// The one file that imports d3-contour.
import { contours } from 'd3-contour';
import { type GrayPicture, WHITE } from './gray-picture.ts';
import type { PicturePoint } from './picture-scale.ts';

/** Which side of the threshold is outlined. */
export type Shade = 'dark' | 'light';

/** A closed line between dark and light, in pixels; the last point is not the first again. */
export interface Contour {
  readonly points: readonly PicturePoint[];
  /** True where the line goes round a hole of the outlined shade. */
  readonly hole: boolean;
  /** Part of the picture's edge is part of the line: it was cut off. */
  readonly touchesEdge: boolean;
  /** Number of the outlined patch: an outer line and its holes share it. */
  readonly patch: number;
}

/**
 * The closed lines round all that is darker (or lighter) than a threshold, linear between the middles of pixels.
 *
 * @accuracy an evenly blurred straight edge is met to a few hundredths of a pixel; corners are rounded off by up to a pixel.
 * @source marching squares, by the library d3-contour.
 * @check tests/outside/trace-outline.test.ts
 */
export function findContours(picture: GrayPicture, threshold: number, shade: Shade): Contour[] {
  const { width, height, light } = picture;
  const dark = shade === 'dark';
  const values = dark ? light.map((value) => WHITE - value) : light;
  // A pixel exactly at the threshold counts as light.
  const level = dark ? WHITE - threshold + 1e-6 : threshold;
  // The library reads by index only, although it asks for an array of numbers.
  const { coordinates } = contours()
    .size([width, height])
    .contour(values as unknown as number[], level);
  return coordinates.flatMap((rings, patch) =>
    rings.map((ring, i) => {
      const points = openRing(ring);
      return { points, hole: i > 0, touchesEdge: points.some((p) => isAtEdge(p, width, height)), patch };
    }),
  );
}

/** A ring of number pairs as points, without the first one repeated at the end or any twice in a row. */
function openRing(ring: readonly number[][]): PicturePoint[] {
  const points: PicturePoint[] = [];
  for (const [x, y] of ring) {
    const last = points.at(-1);
    if (!last || last.x !== x || last.y !== y) points.push({ x, y });
  }
  const [first, last] = [points[0], points[points.length - 1]];
  if (points.length > 1 && first.x === last.x && first.y === last.y) points.pop();
  return points;
}

function isAtEdge({ x, y }: PicturePoint, width: number, height: number): boolean {
  return x <= 0 || y <= 0 || x >= width || y >= height;
}
