// Outside truth: shapes drawn by Chromium's own rasteriser (Skia), which is no part of the project. It mixes paint into
// stored values, so that a stored value is the covered share of a pixel (in steps: it looks at some places of each pixel only)
// and is taken as light here.

import { expect, test } from 'vitest';
import { WHITE } from '../../src/trace/gray-picture.ts';
import { browserOfThisLane } from '../kit/open-app.ts';
import { moved, outlineDistance } from '../kit/outline-distance.ts';
import { traced } from '../kit/traced.ts';

const SIZE = 360;

/** 600 dots an inch. */
const PIXEL = 25_400_000 / 600;

/** What Chromium makes of a path on white, the red of each pixel. */
async function painted(path: string): Promise<number[]> {
  const page = await (await browserOfThisLane()).newPage();
  const red = await page.evaluate(
    ({ path: d, size }) => {
      const context = new OffscreenCanvas(size, size).getContext('2d');
      if (!context) throw new Error('no canvas');
      context.fillStyle = 'white';
      context.fillRect(0, 0, size, size);
      context.fillStyle = 'black';
      context.fill(new Path2D(d));
      const { data } = context.getImageData(0, 0, size, size);
      return Array.from({ length: size * size }, (_, i) => data[4 * i]);
    },
    { path, size: SIZE },
  );
  await page.close();
  return red;
}

/** The one outline of a painted path, pixels, y down. */
async function outline(path: string) {
  const light = Uint16Array.from(await painted(path), (red) => Math.round((WHITE * red) / 255));
  const settings = {
    ...({ threshold: WHITE / 2, shade: 'dark', blur: 0, leastArea: 1e10, sharpen: true } as const),
    tolerance: 0.1 * PIXEL,
  };
  const { loops } = traced({ width: SIZE, height: SIZE, light }, [PIXEL, 0, 0, 0, -PIXEL, 0, 0, 0, 1], settings);
  expect(loops).toHaveLength(1);
  const [{ vertices, at }] = loops;
  return moved(vertices, at.x, at.y, 0).map(({ x, y }) => ({ x: x / PIXEL, y: -y / PIXEL }));
}

test('a disk is traced to a quarter of a pixel', async () => {
  const points = await outline('M 60.3 180.6 a 120.25 120.25 0 1 0 240.5 0 a 120.25 120.25 0 1 0 -240.5 0 Z');
  const off = points.map(({ x, y }) => Math.abs(Math.hypot(x - 180.55, y - 180.6) - 120.25));
  expect(Math.max(...off)).toBeLessThan(0.25);
});

test('a notched blade is traced to a third of a pixel, corners and all', async () => {
  const corners = [
    [110.2, 22.6],
    [106.4, 130.3],
    [154.9, 141.8],
    [152.2, 192.6],
    [103.1, 201.4],
    [99.3, 330.8],
    [217.7, 334.6],
    [229.4, 26.1],
  ].map(([x, y]) => ({ x, y }));
  const points = await outline(`M ${corners.map(({ x, y }) => `${x} ${y}`).join(' L ')} Z`);
  expect(points.length).toBeLessThan(16);
  expect(outlineDistance(points, corners, 0.05)).toBeLessThan(0.34);
});
