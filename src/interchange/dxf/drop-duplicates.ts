import type { Point } from '../../geom/point.ts';
import type { Vertex } from '../../geom/vertex.ts';
import { type Chain, reverseChain } from './chain.ts';

/**
 * Chains without those that lie exactly on an earlier one, whichever way they run and wherever a loop begins.
 *
 * @returns the first of each, and those dropped.
 * @accuracy the same to the nanometre, and to a millionth in the bulge.
 * @check tests/unit/interchange/dxf-join.test.ts
 */
export function dropDuplicates(chains: readonly Chain[]): { kept: Chain[]; dropped: Chain[] } {
  const seen = new Set<string>();
  const kept: Chain[] = [];
  const dropped: Chain[] = [];
  for (const chain of chains) {
    const key = placeKey(chain);
    (seen.has(key) ? dropped : kept).push(chain);
    seen.add(key);
  }
  return { kept, dropped };
}

/** The same text for all chains that cover the same line. */
function placeKey(chain: Chain): string {
  const turned = chain.closed ? turnLoop(chain.vertices) : reverseChain(chain).vertices;
  const keys = [chain.vertices, turned].map((vertices) => {
    const words = vertices.map(sayVertex);
    const start = chain.closed ? leastRotation(words) : 0;
    return [...words.slice(start), ...words.slice(0, start)].join(' ');
  });
  return `${chain.closed}:${keys[0] < keys[1] ? keys[0] : keys[1]}`;
}

function turnLoop(vertices: readonly Vertex[]): Vertex[] {
  const n = vertices.length;
  return vertices.map((_, i) => {
    const { x, y } = vertices[n - 1 - i];
    return { x, y, bulge: -(vertices[(2 * n - 2 - i) % n].bulge ?? 0) };
  });
}

function sayVertex({ x, y, bulge = 0 }: Vertex): string {
  return [x, y, bulge * 1e6].map((v) => Math.round(v) + 0).join(',');
}

/** Where the least of all rotations of a list begins. @source Booth's idea in the two-pointer form (from memory) */
function leastRotation(words: readonly string[]): number {
  const n = words.length;
  let [i, k, length] = [0, 1, 0];
  while (i < n && k < n && length < n) {
    const a = words[(i + length) % n];
    const b = words[(k + length) % n];
    if (a === b) {
      length += 1;
      continue;
    }
    if (a > b) i += length + 1;
    else k += length + 1;
    if (i === k) k += 1;
    length = 0;
  }
  return Math.min(i, k);
}

/** The vertices without those that repeat the one before to a thousandth of a nanometre. */
export function dropRepeats({ vertices, closed }: Pick<Chain, 'vertices' | 'closed'>): Vertex[] {
  const kept = vertices.filter((vertex, i) => i === vertices.length - 1 || !isSame(vertex, vertices[i + 1]));
  while (closed && kept.length > 1 && isSame(kept[0], kept[kept.length - 1])) kept.pop();
  return kept;
}

function isSame(a: Point, b: Point): boolean {
  return Math.abs(a.x - b.x) <= 1e-3 && Math.abs(a.y - b.y) <= 1e-3;
}
