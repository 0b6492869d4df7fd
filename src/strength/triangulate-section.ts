import Constrainautor from '@kninnug/constrainautor';
import Delaunator from 'delaunator';

/** A point of a mesh, millimetres; on the outline also its place on the polygon that the section lies in. */
export interface MeshPoint {
  readonly x: number;
  readonly y: number;
  readonly outerX: number;
  readonly outerY: number;
}

/** A piece of the outline from one point of the mesh to another, the inside to its left. */
export interface BoundaryPiece {
  readonly a: number;
  readonly b: number;
  /** Number of the flat outline's side that it is part of: the side that starts at that corner. */
  readonly side: number;
}

/** Triangles of a constrained triangulation that lie in the section. */
export interface Triangulation {
  /** Three numbers of points a triangle, counter-clockwise. */
  readonly corners: Int32Array;
  /** Number of the triangle beyond the edge that starts at each of `corners`; -1 at the outline. */
  readonly beyond: Int32Array;
}

/**
 * Triangulates the inside of a closed outline by Delaunay's rule, with every piece of the outline as an edge.
 *
 * @param points corners of the outline, points on it and points inside, no two the same.
 * @param pieces the outline in pieces, each from one of `points` to the next, the inside to its left.
 * @source B. Delaunay 1934; S. W. Sloan, "A fast algorithm for generating constrained Delaunay triangulations", 1993 (the
 *   two libraries' own references).
 * @check tests/unit/strength/section-mesh.test.ts
 */
export function triangulateSection(points: readonly MeshPoint[], pieces: readonly BoundaryPiece[]): Triangulation {
  const xy = new Float64Array(2 * points.length + 8);
  points.forEach((p, i) => {
    xy[2 * i] = p.x;
    xy[2 * i + 1] = p.y;
  });
  // Four points far off keep the outline away from the hull, where points in line to the last digit are badly told apart.
  const far = 3 * xy.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  xy.set([far, 0, 0, far, -far, 0, 0, -far], 2 * points.length);
  const whole = new Delaunator(xy);
  const constrained = new Constrainautor(whole);
  for (const { a, b } of pieces) constrained.constrainOne(a, b);
  return insideOf(whole, wallsOf(points.length + 4, pieces));
}

/** Pieces by their ends: from `a` to `b` as a * points + b. */
function wallsOf(count: number, pieces: readonly BoundaryPiece[]): Set<number> {
  return new Set(pieces.map(({ a, b }) => a * count + b));
}

/** The triangles on the inner side of the walls. The library's triangles run clockwise seen with y up or not: both are met. */
function insideOf(whole: Delaunator<Float64Array>, walls: ReadonlySet<number>): Triangulation {
  const { triangles, halfedges, coords } = whole;
  const count = coords.length / 2;
  const turned = isClockwise(coords, triangles);
  // Edge e of a triangle leads from its corner e to the next one; against the clock it is walked backwards.
  const next = (e: number) => (e % 3 === 2 ? e - 2 : e + 1);
  const isWall = (e: number) => {
    const [from, to] = [triangles[e], triangles[next(e)]];
    return walls.has(turned ? to * count + from : from * count + to);
  };
  const inside = new Int32Array(triangles.length / 3).fill(-1);
  const found: number[] = [];
  const take = (t: number) => {
    if (inside[t] >= 0) return;
    inside[t] = found.length;
    found.push(t);
  };
  for (let e = 0; e < triangles.length; e++) if (isWall(e)) take(Math.floor(e / 3));
  for (let k = 0; k < found.length; k++)
    for (let e = 3 * found[k]; e < 3 * found[k] + 3; e++)
      if (!isWall(e) && halfedges[e] >= 0) take(Math.floor(halfedges[e] / 3));
  return numbered({ triangles, halfedges, found, inside, turned, isWall });
}

/** A triangulation with the triangles that were found inside. */
interface Found {
  readonly triangles: Uint32Array;
  readonly halfedges: Int32Array;
  readonly found: readonly number[];
  readonly inside: Int32Array;
  readonly turned: boolean;
  readonly isWall: (edge: number) => boolean;
}

/** The triangles found, counter-clockwise, with their neighbours. */
function numbered({ triangles, halfedges, found, inside, turned, isWall }: Found): Triangulation {
  const corners = new Int32Array(3 * found.length);
  const beyond = new Int32Array(3 * found.length);
  found.forEach((t, k) => {
    for (let i = 0; i < 3; i++) {
      // Turned round, corners run 0, 2, 1 and the edges are those of the library from 2, 1, 0.
      const corner = 3 * t + (turned ? (3 - i) % 3 : i);
      const edge = 3 * t + (turned ? 2 - i : i);
      corners[3 * k + i] = triangles[corner];
      beyond[3 * k + i] = isWall(edge) || halfedges[edge] < 0 ? -1 : inside[Math.floor(halfedges[edge] / 3)];
    }
  });
  return { corners, beyond };
}

/** Whether the library's triangles run clockwise with y upwards; told by the sum of their areas. */
function isClockwise(xy: ArrayLike<number>, triangles: Uint32Array): boolean {
  let twice = 0;
  for (let e = 0; e < triangles.length; e += 3) {
    const [a, b, c] = [2 * triangles[e], 2 * triangles[e + 1], 2 * triangles[e + 2]];
    twice += (xy[b] - xy[a]) * (xy[c + 1] - xy[a + 1]) - (xy[c] - xy[a]) * (xy[b + 1] - xy[a + 1]);
  }
  return twice < 0;
}
