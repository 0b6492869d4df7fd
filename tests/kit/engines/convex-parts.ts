import type { Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';

/*
 * Convex decomposition for the engines: ears cut off one by one (Meisters, "Polygons have ears", 1975), then
 * triangles joined over shared diagonals while the result stays convex (Hertel & Mehlhorn 1983). Exact for whole
 * numbers whose differences stay below 6.7e7.
 */

/** Convex polygons, counter-clockwise, that together make up the simple polygon `outline` (counter-clockwise). */
export function convexParts(outline: readonly Point[]): Point[][] {
  return joinTriangles(outline, trianglesOf(outline)).map((part) => part.map((i) => outline[i]));
}

/** Triangles of vertex numbers, counter-clockwise. */
function trianglesOf(outline: readonly Point[]): number[][] {
  const left = outline.map((_, i) => i);
  const triangles: number[][] = [];
  while (left.length > 3) {
    const at = left.findIndex((_, k) => isEar(outline, left, k));
    if (at < 0) throw new Error('no ear: the outline is not a simple counter-clockwise polygon');
    const ear = [left[(at + left.length - 1) % left.length], left[at], left[(at + 1) % left.length]];
    if (turn(outline[ear[0]], outline[ear[1]], outline[ear[2]]) > 0) triangles.push(ear);
    left.splice(at, 1);
  }
  if (turn(outline[left[0]], outline[left[1]], outline[left[2]]) > 0) triangles.push(left);
  return triangles;
}

/** A corner whose triangle holds no other vertex; a straight corner is an ear without area unless its edges fold back. */
function isEar(outline: readonly Point[], left: readonly number[], k: number): boolean {
  const [i, j, n] = [left[(k + left.length - 1) % left.length], left[k], left[(k + 1) % left.length]];
  const [a, b, c] = [outline[i], outline[j], outline[n]];
  const bend = turn(a, b, c);
  if (bend < 0) return false;
  return left.every((m) => {
    if (m === i || m === j || m === n) return true;
    const p = outline[m];
    return turn(a, b, p) < 0 || turn(b, c, p) < 0 || turn(c, a, p) < 0;
  });
}

/** Parts merged over the edges they share, as long as the union is convex. */
function joinTriangles(outline: readonly Point[], triangles: readonly number[][]): number[][] {
  const parts = triangles.map((t) => [...t]);
  for (let i = 0; i < parts.length; i++) {
    for (let j = i + 1; j < parts.length; j++) {
      const joined = joinedOver(outline, parts[i], parts[j]);
      if (!joined) continue;
      parts[i] = joined;
      parts.splice(j, 1);
      j = i;
    }
  }
  return parts;
}

function joinedOver(outline: readonly Point[], a: readonly number[], b: readonly number[]): number[] | null {
  for (let i = 0; i < a.length; i++) {
    const [from, to] = [a[i], a[(i + 1) % a.length]];
    const j = b.findIndex((v, k) => v === to && b[(k + 1) % b.length] === from);
    if (j < 0) continue;
    const restOfB = Array.from({ length: b.length - 2 }, (_, k) => b[(j + 2 + k) % b.length]);
    const joined = [...a.slice(0, i + 1), ...restOfB, ...a.slice(i + 1)];
    return isConvex(outline, joined) ? joined : null;
  }
  return null;
}

function isConvex(outline: readonly Point[], part: readonly number[]): boolean {
  return part.every(
    (v, k) => turn(outline[v], outline[part[(k + 1) % part.length]], outline[part[(k + 2) % part.length]]) >= 0,
  );
}

/**
 * Convex polygons that together cover everything within `reach` of the opening that is not opening: a slab outside
 * every side of its convex hull, the pockets between hull and outline, and the islands.
 */
export function convexPartsOutside(opening: OpeningShape, reach: number): Point[][] {
  const parts = opening.islands.flatMap(convexParts);
  const outline = opening.outer;
  const hull = hullOf(outline);
  for (let h = 0; h < hull.length; h++) {
    const [from, to] = [hull[h], hull[(h + 1) % hull.length]];
    parts.push(slabOutside(outline[from], outline[to], reach));
    const pocket = verticesBetween(outline, from, to);
    if (pocket.length >= 3) parts.push(...convexParts(pocket.reverse()));
  }
  return parts;
}

/** A rectangle on the outer side of a hull edge, whole multiples of the edge longer and deeper than `reach`. */
function slabOutside(from: Point, to: Point, reach: number): Point[] {
  const d = { x: to.x - from.x, y: to.y - from.y };
  const times = Math.ceil(reach / Math.hypot(d.x, d.y));
  const long = { x: d.x * times, y: d.y * times };
  const a = { x: from.x - long.x, y: from.y - long.y };
  const b = { x: to.x + long.x, y: to.y + long.y };
  const out = { x: long.y, y: -long.x };
  return [b, a, { x: a.x + out.x, y: a.y + out.y }, { x: b.x + out.x, y: b.y + out.y }];
}

/** The outline from one hull vertex on to the next, both included. */
function verticesBetween(outline: readonly Point[], from: number, to: number): Point[] {
  const count = ((to - from + outline.length) % outline.length) + 1;
  return Array.from({ length: count }, (_, k) => outline[(from + k) % outline.length]);
}

/**
 * Vertex numbers of the convex hull, those on its sides included, so that every pocket is a simple polygon.
 * For a simple counter-clockwise outline the hull's order is the outline's own.
 */
function hullOf(outline: readonly Point[]): number[] {
  const order = outline.map((_, i) => i).sort((i, j) => outline[i].x - outline[j].x || outline[i].y - outline[j].y);
  const chain = (sorted: readonly number[]): number[] => {
    const kept: number[] = [];
    for (const i of sorted) {
      while (kept.length > 1 && turn(outline[kept[kept.length - 2]], outline[kept[kept.length - 1]], outline[i]) < 0)
        kept.pop();
      kept.push(i);
    }
    return kept.slice(0, -1);
  };
  return [...chain(order), ...chain([...order].reverse())];
}

function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
