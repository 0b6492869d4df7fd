import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { askMeshProgram } from './ask-mesh-program.ts';
import type { ReadSolid } from './read-with-assimp.ts';

type Corner = readonly number[];

/** What a cut square to z lays open, as well-known text: the lines in which it meets triangles, put together by GEOS. */
export function cutAt({ corners, triangles }: ReadSolid, height: number): string {
  const lines = triangles.flatMap((triangle) => {
    const [a, b, c] = triangle.map((i) => corners[i]);
    const ends = [
      [a, b],
      [b, c],
      [c, a],
    ].flatMap(([p, q]) => (p[2] > height !== q[2] > height ? [meet(p, q, height)] : []));
    return ends.length === 2 && ends[0] !== ends[1] ? [`(${ends.join(',')})`] : [];
  });
  if (lines.length === 0) return 'POLYGON EMPTY';
  return ask(['buildArea'], [`MULTILINESTRING(${lines.join(',')})`]);
}

/** Where an edge meets the height; the same for both triangles that share it, and to 0.1 nm. */
function meet(p: Corner, q: Corner, height: number): string {
  const [low, high] = p[2] < q[2] ? [p, q] : [q, p];
  const part = (height - low[2]) / (high[2] - low[2]);
  return [0, 1].map((axis) => (low[axis] + part * (high[axis] - low[axis])).toFixed(7)).join(' ');
}

/** The area that two cuts share, by GEOS. */
export function sharedArea(one: string, other: string): number {
  return areaOf(ask(['intersection'], [one, other]));
}

/** The area of polygons in well-known text: a ring after two brackets is a shell, any other a hole. GEOS prints six digits only. */
export function areaOf(text: string): number {
  const rings = [...text.matchAll(/(\(?)\(([^()]+)\)/g)];
  return rings.reduce((sum, [, shell, ring]) => {
    const points = ring.split(',').map((point) => point.trim().split(' ').map(Number));
    return sum + (shell ? 1 : -1) * Math.abs(shoelace(points));
  }, 0);
}

/** Of a closed ring, from its first point, which keeps digits. */
function shoelace(points: readonly Corner[]): number {
  const [x0, y0] = points[0];
  const twice = points.slice(1).reduce((total, [x, y], i) => {
    const [px, py] = points[i];
    return total + (px - x0) * (y - y0) - (x - x0) * (py - y0);
  }, 0);
  return twice / 2;
}

function ask(words: readonly string[], shapes: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'geos-'));
  try {
    const given = shapes.flatMap((shape, i) => {
      const file = join(folder, `${i}.wkt`);
      writeFileSync(file, `${shape}\n`);
      return [`-${'ab'[i]}`, file];
    });
    const said = askMeshProgram('geosop', [...given, '-f', 'wkt', '-p', '12', ...words]).trim();
    if (!/POLYGON|EMPTY/.test(said)) throw new Error(`GEOS says "${said.slice(0, 200)}"`);
    return said;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
