import type { FlatOutline } from './flatten-outline.ts';
import { type BoundaryPiece, type MeshPoint, type Triangulation, triangulateSection } from './triangulate-section.ts';

/** A section cut into triangles. Millimetres. */
export interface SectionMesh extends Triangulation {
  readonly points: readonly MeshPoint[];
  readonly pieces: readonly BoundaryPiece[];
  /** How many of the first points are the outline's own corners. */
  readonly corners0: number;
  /** Of each corner of the outline, whether it is acute, less than 60 degrees. */
  readonly acute: readonly boolean[];
  /** Greatest circumradius of a triangle. */
  readonly mostRadius: number;
}

/** A triangle whose circumradius is more than this many shortest edges is flat: its least angle is under 24 degrees. */
const MOST_RATIO = 1 / (2 * Math.sin((24 * Math.PI) / 180));

/** Points are never set closer than this, millimetres: one nanometre is what outlines are made of. */
const LEAST_PIECE = 4e-6;

/** Triangles walked through at most on the way to a circumcentre. */
const MOST_STEPS = 200;

/** Rounds of one refinement at most; each mends all flat triangles that do not touch. */
const MOST_ROUNDS = 80;

/**
 * The first mesh of a section: well-shaped triangles, as few as the outline's detail allows, with short pieces of outline
 * next to sharp re-entrant corners.
 *
 * Points are set as J. Ruppert does: where a piece of outline has a point in the circle over it, it is halved, and where a
 * triangle is flat, its circumcentre becomes a point, unless that would come into the circle over a piece, which is then
 * halved in its place. So the mesh is fine where the outline's parts are close together, as in a thin web or at a root,
 * and coarse elsewhere. At acute corners pieces are cut at equal distances, so that halving ends.
 *
 * @param nearCorners lengths, millimetres, of the first piece to either side of some corners of the outline.
 * @param mostRadius greatest circumradius of a triangle, millimetres.
 * @source J. Ruppert, "A Delaunay refinement algorithm for quality 2-dimensional mesh generation", J. Algorithms 18 (1995)
 *   548-585 (from memory).
 * @check tests/unit/strength/section-mesh.test.ts
 */
export function meshSection(
  flat: FlatOutline,
  nearCorners: ReadonlyMap<number, number>,
  mostRadius: number,
): SectionMesh {
  const n = flat.corners.length;
  const points: MeshPoint[] = flat.corners.map(({ inner, outer }) => ({
    ...{ x: inner.x, y: inner.y },
    ...{ outerX: outer.x, outerY: outer.y },
  }));
  const pieces = flat.corners.flatMap((_, side) =>
    cutNearCorners(points, { a: side, b: (side + 1) % n, side }, nearCorners),
  );
  const acute = Array.from({ length: n }, (_, i) => isAcute(points[(i + n - 1) % n], points[i], points[(i + 1) % n]));
  return mended({ points, pieces, corners0: n, acute, mostRadius }, () => false);
}

/** The mesh with further points in some triangles, at about half the distance between its points there. */
export function refineMesh(mesh: SectionMesh, marked: (triangle: number) => boolean): SectionMesh {
  return mended(mesh, marked, mesh);
}

type Draft = Pick<SectionMesh, 'points' | 'pieces' | 'corners0' | 'acute' | 'mostRadius'>;

/** A side with points near those of its ends that ask for short pieces. */
function cutNearCorners(
  points: MeshPoint[],
  side: BoundaryPiece,
  nearCorners: ReadonlyMap<number, number>,
): BoundaryPiece[] {
  const length = distance(points[side.a], points[side.b]);
  const shares: number[] = [];
  const [atStart, atEnd] = [nearCorners.get(side.a), nearCorners.get(side.b)];
  for (let at = atStart ?? length; at < length / 3; at *= 3) shares.push(at / length);
  const fromEnd: number[] = [];
  for (let at = atEnd ?? length; at < length / 3; at *= 3) fromEnd.push(1 - at / length);
  return cutAt(points, side, [...shares, ...fromEnd.reverse()]);
}

/** A piece cut at some shares of its length, ascending. */
function cutAt(points: MeshPoint[], piece: BoundaryPiece, shares: readonly number[]): BoundaryPiece[] {
  const { a, b, side } = piece;
  const [from, to] = [points[a], points[b]];
  const first = points.length;
  for (const share of shares)
    points.push({
      x: from.x + share * (to.x - from.x),
      y: from.y + share * (to.y - from.y),
      outerX: from.outerX + share * (to.outerX - from.outerX),
      outerY: from.outerY + share * (to.outerY - from.outerY),
    });
  const stops = [a, ...shares.map((_, k) => first + k), b];
  return stops.slice(1).map((stop, k) => ({ a: stops[k], b: stop, side }));
}

/** Sets points until no piece has a point in its circle and no triangle is flat; marked ones are taken for flat at first. */
function mended(draft: Draft, marked: (triangle: number) => boolean, from?: SectionMesh): SectionMesh {
  const points = [...draft.points];
  let pieces = draft.pieces;
  let now: Triangulation = from ?? triangulateSection(points, pieces);
  let asked = marked;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const mesh = { ...draft, ...now, points, pieces };
    const cuts = crowdedPieces(mesh);
    const before = points.length;
    if (cuts.size === 0) placeCentres(mesh, asked, cuts, points);
    if (cuts.size === 0 && points.length === before) return mesh;
    asked = () => false;
    pieces = pieces.flatMap((piece, k) => (cuts.has(k) ? cutPiece(draft, points, piece) : [piece]));
    now = triangulateSection(points, pieces);
  }
  return { ...draft, ...now, points, pieces };
}

/** Cuts a piece in two: halved, or at an acute corner at a distance that is a power of two. */
function cutPiece({ corners0, acute }: Draft, points: MeshPoint[], piece: BoundaryPiece): BoundaryPiece[] {
  const length = distance(points[piece.a], points[piece.b]);
  const [sharpA, sharpB] = [piece.a, piece.b].map((p) => p < corners0 && acute[p]);
  if (sharpA === sharpB) return cutAt(points, piece, [0.5]);
  const share = 2 ** Math.round(Math.log2(length / 2)) / length;
  return cutAt(points, piece, [sharpA ? share : 1 - share]);
}

/** Pieces with a point in the circle over them: in a constrained triangulation, the tip of the triangle at the piece. */
function crowdedPieces(mesh: SectionMesh): Set<number> {
  const { points, corners } = mesh;
  const byEnds = numbersOf(mesh);
  const crowded = new Set<number>();
  forEachWall(mesh, (edge, a, b) => {
    const tip = corners[edge - (edge % 3) + ((edge + 2) % 3)];
    const k = byEnds(a, b);
    if (k === undefined || !isInCircle(points[tip], points[a], points[b])) return;
    if (distance(points[a], points[b]) > 2 * LEAST_PIECE && !atAcuteCorner(mesh, a, b, tip)) crowded.add(k);
  });
  return crowded;
}

/** Whether three points are an acute corner of the outline and points on its two sides, equally far from it. */
function atAcuteCorner({ points, corners0, acute }: Draft, a: number, b: number, tip: number): boolean {
  const corner = [a, b].find((p) => p < corners0 && acute[p]);
  if (corner === undefined) return false;
  const [one, two] = [distance(points[corner], points[corner === a ? b : a]), distance(points[corner], points[tip])];
  return Math.abs(one - two) < 1e-3 * one;
}

/** Visits the edges of triangles that are pieces of the outline. */
function forEachWall({ corners, beyond }: Triangulation, visit: (edge: number, a: number, b: number) => void): void {
  for (let e = 0; e < beyond.length; e++) if (beyond[e] < 0) visit(e, corners[e], corners[e % 3 === 2 ? e - 2 : e + 1]);
}

/** A place that wants to be a point. */
interface Centre {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Adds the circumcentres of flat and marked triangles that do not disturb each other, or the cuts that take their place. */
function placeCentres(
  mesh: SectionMesh,
  marked: (triangle: number) => boolean,
  cuts: Set<number>,
  points: MeshPoint[],
): void {
  const wanted: { readonly t: number; readonly centre: Centre }[] = [];
  for (let t = 0; 3 * t < mesh.corners.length; t++) {
    const { radius, shortest, ...centre } = circleOf(mesh, t);
    const flat = radius > MOST_RATIO * shortest && shortest > LEAST_PIECE && !isBetweenSides(mesh, t);
    if (flat || radius > mesh.mostRadius || marked(t)) wanted.push({ t, centre: { ...centre, radius } });
  }
  wanted.sort((p, q) => q.centre.radius - p.centre.radius);
  const walls = wallsNear(mesh);
  const placed: Centre[] = [];
  for (const { t, centre } of wanted) {
    const hit = walls(centre, t);
    for (const k of hit) cuts.add(k);
    const apart = (other: Centre) =>
      Math.hypot(other.x - centre.x, other.y - centre.y) >= 0.9 * Math.min(centre.radius, other.radius);
    if (hit.length > 0 || !placed.every(apart)) continue;
    placed.push(centre);
    points.push({ x: centre.x, y: centre.y, outerX: centre.x, outerY: centre.y });
  }
}

/** Looks up the pieces in whose circles a triangle's centre lies, and the one that it lies beyond. */
function wallsNear(mesh: SectionMesh): (place: Centre, triangle: number) => number[] {
  const { points, pieces } = mesh;
  const byEnds = numbersOf(mesh);
  const circles = pieces.map(({ a, b }) => {
    const [p, q] = [points[a], points[b]];
    return { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2, r2: ((q.x - p.x) ** 2 + (q.y - p.y) ** 2) / 4 };
  });
  return ({ x, y, radius }, triangle) => {
    const hit: number[] = [];
    for (let k = 0; k < circles.length; k++) {
      const { x: cx, y: cy, r2 } = circles[k];
      if ((x - cx) ** 2 + (y - cy) ** 2 < r2 && r2 > LEAST_PIECE ** 2) hit.push(k);
    }
    if (hit.length > 0) return hit;
    const beyond = wallOnTheWay(mesh, triangle, { x, y, radius });
    const k = beyond && byEnds(beyond.a, beyond.b);
    return k === undefined || k === null ? hit : [k];
  };
}

/** Looks up a piece by its ends. */
function numbersOf({ points, pieces }: Draft): (a: number, b: number) => number | undefined {
  const count = points.length;
  const byEnds = new Map(pieces.map(({ a, b }, k) => [a * count + b, k]));
  return (a, b) => byEnds.get(a * count + b);
}

/** The piece of the outline that parts a triangle from a place, found by walking there; null where none does. */
function wallOnTheWay({ points, corners, beyond }: SectionMesh, start: number, place: Centre) {
  for (let t = start, step = 0; step < MOST_STEPS; step++) {
    const edge = [3 * t, 3 * t + 1, 3 * t + 2].find((e) => {
      const [p, q] = [points[corners[e]], points[corners[e % 3 === 2 ? e - 2 : e + 1]]];
      return (q.x - p.x) * (place.y - p.y) - (q.y - p.y) * (place.x - p.x) < 0;
    });
    if (edge === undefined) return null;
    if (beyond[edge] < 0) return { a: corners[edge], b: corners[edge % 3 === 2 ? edge - 2 : edge + 1] };
    t = beyond[edge];
  }
  return null;
}

/** Whether a flat triangle's shortest edge spans an acute corner of the outline, where no point can mend it. */
function isBetweenSides({ points, corners, corners0, acute }: SectionMesh, t: number): boolean {
  const at = [0, 1, 2].map((i) => corners[3 * t + i]);
  const sizes = at.map((_, i) => distance(points[at[(i + 1) % 3]], points[at[(i + 2) % 3]]));
  const tip = at[sizes.indexOf(Math.min(...sizes))];
  return tip < corners0 && acute[tip];
}

/** The circumcircle of a triangle and its shortest edge. */
function circleOf({ points, corners }: SectionMesh, t: number): Centre & { readonly shortest: number } {
  const [a, b, c] = [points[corners[3 * t]], points[corners[3 * t + 1]], points[corners[3 * t + 2]]];
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const [b2, c2] = [bx * bx + by * by, cx * cx + cy * cy];
  const twice = 2 * (bx * cy - by * cx);
  const [ux, uy] = [(cy * b2 - by * c2) / twice, (bx * c2 - cx * b2) / twice];
  const shortest = Math.sqrt(Math.min(b2, c2, (cx - bx) ** 2 + (cy - by) ** 2));
  return { x: a.x + ux, y: a.y + uy, radius: Math.hypot(ux, uy), shortest };
}

/** Whether a point lies in the circle over a-b. */
function isInCircle(p: MeshPoint, a: MeshPoint, b: MeshPoint): boolean {
  return (a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y) < -1e-12;
}

/** Whether an outward corner is less than 60 degrees. */
function isAcute(before: MeshPoint, at: MeshPoint, after: MeshPoint): boolean {
  const [ux, uy, vx, vy] = [before.x - at.x, before.y - at.y, after.x - at.x, after.y - at.y];
  return vx * uy - vy * ux > 0 && ux * vx + uy * vy > 0.5 * Math.hypot(ux, uy) * Math.hypot(vx, vy);
}

function distance(p: MeshPoint, q: MeshPoint): number {
  return Math.hypot(q.x - p.x, q.y - p.y);
}
