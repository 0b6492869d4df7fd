import type { Point } from '../geom/point.ts';
import { AT_MIDDLES, gradientFactors, gradientOf, triangleShape } from './quadratic-elements.ts';
import { middlesOf, type TorsionFields } from './torsion-fields.ts';

/** The shear stress along a short stretch of the outline: a piece of a straight side, or a chord of an arc. */
export interface OutlineShear {
  /** Its middle, millimetres. */
  readonly at: Point;
  /** Its two ends; of a chord in several pieces, those of one of them. */
  readonly ends: readonly [Point, Point];
  /** Mean shear over twist and shear modulus, mm: the mean of what the two solutions say. */
  readonly shear: number;
  /** How far the two solutions differ, mm. */
  readonly apart: number;
  /** A triangle at it. */
  readonly triangle: number;
  /** Whether it is a chord of an arc. */
  readonly isChord: boolean;
}

/** Sums over the pieces of one chord. */
interface Stretch {
  length: number;
  x: number;
  y: number;
  stress: number;
  warping: number;
  triangle: number;
  isChord: boolean;
  ends: readonly [Point, Point];
}

/**
 * The shear stress along the outline, where it is greatest: the square of the stress has no peak inside (subharmonic).
 *
 * On a chord of an arc the mean over the chord is told. The chords' own corners would show false peaks and dips, while the
 * flow of stress through a chord is that through its arc.
 *
 * @param chords numbers of the flat outline's sides that stand for parts of arcs.
 * @accuracy about the square of the pieces' length over the radius; `apart` tells.
 * @check tests/outside/torsion.test.ts, the peaks of section 1
 */
export function outlineShear(
  { mesh, quadratic, stress, warping }: TorsionFields,
  chords: ReadonlySet<number>,
): OutlineShear[] {
  const sideOf = new Map(mesh.pieces.map(({ a, b, side }) => [a * mesh.points.length + b, side]));
  const stretches = new Map<number, Stretch>();
  for (let e = 0; e < mesh.beyond.length; e++) {
    if (mesh.beyond[e] >= 0) continue;
    const t = Math.floor(e / 3);
    const [a, b] = [mesh.corners[e], mesh.corners[e % 3 === 2 ? e - 2 : e + 1]];
    const [p, q] = [mesh.points[a], mesh.points[b]];
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    const factors = AT_MIDDLES[e % 3];
    const [fx, fy] = gradientOf(stress, quadratic.nodes, t, triangleShape(mesh, t, 'inner'), factors);
    const [wx, wy] = gradientOf(warping, quadratic.nodes, t, triangleShape(mesh, t, 'outer'), factors);
    const { x, y } = middlesOf(mesh, t, 'outer')[e % 3];
    const along = ((wx - y) * (q.x - p.x) + (wy + x) * (q.y - p.y)) / length;
    const side = sideOf.get(a * mesh.points.length + b) ?? -1;
    const chord = chords.has(side);
    // Pieces of a chord come together under its number, pieces of a straight side stay apart.
    add(stretches, chord ? side : mesh.corners0 + e, {
      ...{ length, triangle: t, isChord: chord, ends: [p, q], stress: Math.hypot(fx, fy), warping: along },
      ...{ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 },
    });
  }
  return [...stretches.values()].map((s) => ({
    at: { x: s.x, y: s.y },
    ends: s.ends,
    isChord: s.isChord,
    shear: Math.abs(s.stress + s.warping) / 2,
    apart: Math.abs(s.stress - s.warping),
    triangle: s.triangle,
  }));
}

/** Adds a piece to its stretch, weighted by length. */
function add(stretches: Map<number, Stretch>, key: number, piece: Stretch): void {
  const other = stretches.get(key);
  if (!other) {
    stretches.set(key, piece);
    return;
  }
  const length = other.length + piece.length;
  const mean = (p: number, q: number) => (p * other.length + q * piece.length) / length;
  stretches.set(key, {
    ...{
      length,
      triangle: piece.triangle,
      isChord: true,
      ends: piece.ends,
      x: mean(other.x, piece.x),
      y: mean(other.y, piece.y),
    },
    ...{ stress: mean(other.stress, piece.stress), warping: mean(other.warping, piece.warping) },
  });
}

/** The factors at the six nodes of a triangle. */
const AT_NODES = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [0.5, 0.5, 0],
  [0, 0.5, 0.5],
  [0.5, 0, 0.5],
].map(([a, b, c]) => gradientFactors([a, b, c]));

/**
 * The size of the shear stress at every node, over twist and shear modulus, mm: the mean over the triangles round it of
 * what the two solutions say there.
 *
 * @accuracy for a picture; the peak is told by {@link outlineShear}.
 */
export function shearAtNodes({ mesh, quadratic, stress, warping }: TorsionFields): Float64Array {
  const { nodes, size } = quadratic;
  const sums = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
  for (let t = 0; 6 * t < nodes.length; t++) {
    const shape = triangleShape(mesh, t, 'inner');
    const middles = middlesOf(mesh, t, 'inner');
    for (let i = 0; i < 6; i++) {
      const node = nodes[6 * t + i];
      const { x, y } = i < 3 ? mesh.points[node] : middles[i - 3];
      const [fx, fy] = gradientOf(stress, nodes, t, shape, AT_NODES[i]);
      const [wx, wy] = gradientOf(warping, nodes, t, shape, AT_NODES[i]);
      sums[0][node] += shape.twice;
      sums[1][node] += (shape.twice * (fy + wx - y)) / 2;
      sums[2][node] += (shape.twice * (wy + x - fx)) / 2;
    }
  }
  return sums[0].map((weight, node) => Math.hypot(sums[1][node], sums[2][node]) / weight);
}
