// Outside truth: shapes whose area, place and size are known in closed form, drawn by exact coverage of pixels. A disk's
// coverage is worked out from the areas of its caps, which is no polygon at all.

import { describe, expect, test } from 'vitest';
import { signedArea } from '../../src/geom/signed-area.ts';
import { type GrayPicture, WHITE } from '../../src/trace/gray-picture.ts';
import type { TracedLoop } from '../../src/trace/trace-picture.ts';
import { coverage } from '../kit/coverage.ts';
import { moved, outlineDistance } from '../kit/outline-distance.ts';
import { traced } from '../kit/traced.ts';

/** 600 dots an inch. */
const PIXEL = 25_400_000 / 600;

/** Dark at 0.1 and light at 0.9 of the light: half way is half a pixel covered. */
function picture(covered: Float64Array, width: number, height: number): GrayPicture {
  return { width, height, light: Uint16Array.from(covered, (c) => Math.round(WHITE * (0.9 - 0.8 * c))) };
}

function outline(shown: GrayPicture, tolerance = 0.1 * PIXEL): TracedLoop {
  const settings = { threshold: WHITE / 2, shade: 'dark', blur: 0, leastArea: 1e10, tolerance, sharpen: true } as const;
  const { loops } = traced(shown, [PIXEL, 0, 0, 0, -PIXEL, 0, 0, 0, 1], settings);
  expect(loops).toHaveLength(1);
  return loops[0];
}

const placed = ({ vertices, at }: TracedLoop) => moved(vertices, at.x, at.y, 0);

/** The area of a disk of radius r about the origin that lies left of x and below y (the integral of its chords). */
function partOfDisk(r: number, x: number, y: number): number {
  const to = Math.min(r, Math.max(-r, x));
  const chord = (t: number) =>
    (t * Math.sqrt(Math.max(0, r * r - t * t)) + r * r * Math.asin(Math.min(1, Math.max(-1, t / r)))) / 2;
  const upTo = (t: number) => chord(t) - chord(-r);
  if (y >= r) return 2 * upTo(to);
  if (y <= -r) return 0;
  // Between -s and s the chord is cut at y; outside of it the chord lies wholly below y, or wholly above.
  const s = Math.sqrt(r * r - y * y);
  const cut = Math.max(-s, Math.min(s, to));
  const inner = upTo(cut) - upTo(-s) + y * (cut + s);
  const outer = 2 * (upTo(Math.min(to, -s)) + Math.max(0, upTo(to) - upTo(s)));
  return inner + (y > 0 ? outer : 0);
}

/** Coverage of a disk, from four parts a pixel. */
function disk(cx: number, cy: number, r: number, width: number, height: number): Float64Array {
  return Float64Array.from({ length: width * height }, (_, i) => {
    const [x, y] = [(i % width) - cx, Math.floor(i / width) - cy];
    return partOfDisk(r, x + 1, y + 1) - partOfDisk(r, x, y + 1) - partOfDisk(r, x + 1, y) + partOfDisk(r, x, y);
  });
}

describe('a disk', () => {
  test('its coverage adds up to pi r^2', () => {
    const covered = disk(40.3, 39.6, 30.25, 80, 80);
    expect(covered.reduce((sum, c) => sum + c, 0)).toBeCloseTo(Math.PI * 30.25 ** 2, 6);
    expect(Math.min(...covered)).toBeGreaterThan(-1e-9);
    expect(Math.max(...covered)).toBeLessThan(1 + 1e-9);
  });

  test.each([12.25, 47.3, 118.75])('of radius %d pixels is traced to a fifth of a pixel, its area to 1 in 100', (r) => {
    const size = Math.ceil(2 * r + 8);
    const found = outline(picture(disk(size / 2 + 0.3, size / 2 - 0.2, r, size, size), size, size));
    const centre = { x: (size / 2 + 0.3) * PIXEL, y: -(size / 2 - 0.2) * PIXEL };
    const off = placed(found).map((p) => Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - r * PIXEL));
    expect(Math.max(...off)).toBeLessThan(0.2 * PIXEL);
    expect(Math.abs(found.area / (Math.PI * (r * PIXEL) ** 2) - 1)).toBeLessThan(0.01);
  });
});

/** A convex polygon and a notched one, pixels, counter-clockwise as seen. */
const SHAPES: Record<string, [number, number][]> = {
  hexagon: [0, 1, 2, 3, 4, 5].map((k) => [
    90 + 70 * Math.cos(-k * (Math.PI / 3) - 0.11),
    90 + 70 * Math.sin(-k * (Math.PI / 3) - 0.11),
  ]),
  'right-angled triangle': [
    [20.4, 30.7],
    [22.1, 160.2],
    [150.9, 158.5],
  ],
  'notched blade': [
    [60.2, 12.6],
    [58.4, 70.3],
    [84.9, 77.8],
    [84.2, 101.6],
    [57.1, 107.4],
    [55.3, 168.8],
    [118.7, 170.6],
    [123.4, 14.1],
  ],
};

test.each(Object.keys(SHAPES))(
  'a %s is traced to a third of a pixel, corners and all, its area to 1 in 500',
  (name) => {
    const corners = SHAPES[name].map(([x, y]) => ({ x, y }));
    const found = outline(picture(coverage([corners], 180, 180), 180, 180));
    const truth = corners.map(({ x, y }) => ({ x: x * PIXEL, y: -y * PIXEL }));
    expect(Math.abs(found.area / Math.abs(signedArea(truth)) - 1)).toBeLessThan(0.002);
    expect(outlineDistance(placed(found), truth, 4_000)).toBeLessThan(0.34 * PIXEL);
  },
);
