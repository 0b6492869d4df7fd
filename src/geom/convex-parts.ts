import type { Point } from './point.ts';
import { turn } from './predicates.ts';
import type { Region } from './region.ts';
import { triangulate } from './triangulate.ts';

/** A convex polygon by its vertices, counter-clockwise. */
type Part = readonly Point[];

/**
 * Cuts a region into convex parts: triangles, of which neighbours are joined wherever the result stays convex.
 *
 * @source Hertel & Mehlhorn 1983 (at most four times as many parts as needed; from memory).
 */
export function convexParts(region: Region): Part[] {
  const parts = new Set<Part>();
  const owner = new Map<string, Part>();
  const enter = (part: Part) => {
    parts.add(part);
    for (const [i, p] of part.entries()) owner.set(keyOf(p, part[(i + 1) % part.length]), part);
  };
  for (const t of triangulate(region)) enter([0, 2, 4].map((i) => ({ x: t[i], y: t[i + 1] })));
  for (const [key] of [...owner]) {
    const part = owner.get(key);
    const joined = part && joinAcross(part, key, owner);
    if (!joined) continue;
    for (const gone of [key, joined.twin]) owner.delete(gone);
    for (const old of joined.from) parts.delete(old);
    enter(joined.part);
  }
  return [...parts];
}

/** Two parts as one, and the name of the edge between them as the second part runs it. */
interface Joined {
  readonly part: Part;
  readonly from: readonly Part[];
  readonly twin: string;
}

/** The part and its neighbour across the edge named by `key`, as one, where that is convex. */
function joinAcross(part: Part, key: string, owner: Map<string, Part>): Joined | null {
  const i = part.findIndex((p, k) => keyOf(p, part[(k + 1) % part.length]) === key);
  if (i < 0) return null;
  const [a, b] = [part[i], part[(i + 1) % part.length]];
  const other = owner.get(keyOf(b, a));
  if (!other || other === part) return null;
  const k = other.findIndex((p, n) => p.x === b.x && p.y === b.y && isAt(other[(n + 1) % other.length], a));
  if (k < 0) return null;
  const whole = [...rotate(part, i + 1), ...rotate(other, k + 1).slice(1, -1)];
  const convex = whole.every(
    (p, n) => turn(whole[(n + whole.length - 1) % whole.length], p, whole[(n + 1) % whole.length]) >= 0,
  );
  return convex ? { part: whole, from: [part, other], twin: keyOf(b, a) } : null;
}

function rotate(part: Part, by: number): Point[] {
  const k = by % part.length;
  return [...part.slice(k), ...part.slice(0, k)];
}

function isAt(p: Point, q: Point): boolean {
  return p.x === q.x && p.y === q.y;
}

function keyOf(a: Point, b: Point): string {
  return `${a.x},${a.y}>${b.x},${b.y}`;
}
