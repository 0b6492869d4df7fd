// The samples for users, measured against the sizes that their makers (we) meant.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeDrawn } from '../../../src/geom/vertex.ts';
import type { Drawing } from '../../../src/interchange/drawing.ts';
import { readSvg } from '../../../src/interchange/svg/read.ts';
import { drawnBox } from '../../kit/measure-drawn.ts';

function sample(file: string): Drawing {
  const read = readSvg(readFileSync(new URL(`../../../profiles-demo/imports/${file}`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.drawing;
}

test.each([
  ['godwit-blank-mm.svg', ['godwit-blank'], [[2.1, 8.5]]],
  ['snipe-blank-inches.svg', ['snipe-blank'], [[0.082 * 25.4, 0.33 * 25.4]]],
  ['crake-blank-curves.svg', ['crake-blank'], [[2.08, 8.4]]],
  [
    'sheet-of-three-from-the-tip.svg',
    ['redshank', 'greenshank', 'spoonbill', 'base-line'],
    [
      [2.1, 8.5],
      [2.12, 8.5],
      [2.08, 8.4],
      [52, 0],
    ],
  ],
])('%s', (file, labels, sizes) => {
  const { paths, unitsStated } = sample(file);
  expect(unitsStated).toBe(true);
  expect(paths.map(({ label }) => label)).toEqual(labels);
  for (const [i, path] of paths.entries()) {
    const { minX, maxX, minY, maxY } = drawnBox(path);
    expect((maxX - minX) / 1e6).toBeCloseTo(sizes[i][0], 6);
    expect((maxY - minY) / 1e6).toBeCloseTo(sizes[i][1], 6);
    const own = path.vertices.map((vertex) => ({ ...vertex, x: vertex.x - minX, y: vertex.y - minY }));
    if (path.closed) expect(makeDrawn(own).ok, path.label).toBe(true);
  }
  expect(readFileSync(new URL(`../../../profiles-demo/imports/${file}`, import.meta.url), 'utf8')).toMatch(
    /[Ii]nvented/,
  );
});
