import {
  AT_MIDDLES,
  assemble,
  gradientOf,
  MIDDLES,
  type QuadraticMesh,
  quadraticMesh,
  type Side,
  triangleShape,
} from './quadratic-elements.ts';
import type { SectionMesh } from './section-mesh.ts';
import { dot, solveByGradients, times } from './sparse-matrix.ts';

/** The two solutions of torsion on one mesh, and what follows from them. Millimetres. */
export interface TorsionFields {
  readonly mesh: SectionMesh;
  readonly quadratic: QuadraticMesh;
  /** Prandtl's stress function at the nodes for a twist of one and a shear modulus of one, mm^2; 0 on the outline. */
  readonly stress: Float64Array;
  /** Saint-Venant's warping at the nodes for a twist of one, mm^2, about the origin. */
  readonly warping: Float64Array;
  /** Bounds of the torsion constant, mm^4. */
  readonly below: number;
  readonly above: number;
  /** Of each triangle, its share in the distance of the two bounds, mm^4; without the part that arcs add. */
  readonly gaps: Float64Array;
}

/** Residual, relative, at which the equations count as solved; the bounds hold for any. */
const TOLERANCE = 1e-5;

/**
 * The torsion constant from both sides, by finite elements of second degree.
 *
 * From below, on the polygon inside the section: for every function f that is 0 on the outline, J >= 4 integral(f) -
 * integral(grad f ^ 2), with equality for Prandtl's stress function. From above, on the polygon outside: for every function
 * w, J <= integral((w_x - y)^2 + (w_y + x)^2), with equality for Saint-Venant's warping function. J grows with the section.
 * So the bounds hold whatever the mesh and however far the equations were solved; rounding is the only thing they leave
 * out. On one and the same polygon their distance is the integral of the squared difference of the two shear stresses,
 * which tells where the mesh is too coarse.
 *
 * @accuracy rounding, about 1e-12 of J.
 * @source S. P. Timoshenko, J. N. Goodier, "Theory of Elasticity", 3rd ed. 1970, torsion (energy bounds); W. Prager,
 *   J. L. Synge 1947 (the distance), from memory.
 * @check tests/outside/torsion.test.ts
 */
export function torsionFields(mesh: SectionMesh): TorsionFields {
  const quadratic = quadraticMesh(mesh);
  const { stress, below } = solveStress(mesh, quadratic);
  const { warping, above } = solveWarping(mesh, quadratic);
  return { mesh, quadratic, stress, warping, below, above, gaps: gapsOf(mesh, quadratic, stress, warping) };
}

/** Prandtl's function: -laplacian = 2 inside, 0 on the outline. */
function solveStress(mesh: SectionMesh, quadratic: QuadraticMesh): { stress: Float64Array; below: number } {
  const { numbers, rows } = numbered(mesh, quadratic, false);
  const load = new Float64Array(rows);
  for (let t = 0; 6 * t < quadratic.nodes.length; t++) {
    // A third of the area at each middle, nothing at the corners: the integrals of the six functions.
    const share = (2 * triangleShape(mesh, t, 'inner').twice) / 6;
    for (let i = 3; i < 6; i++) {
      const row = numbers[quadratic.nodes[6 * t + i]];
      if (row >= 0) load[row] += share;
    }
  }
  const matrix = assemble(mesh, quadratic, 'inner', numbers, rows);
  const { x } = solveByGradients(matrix, load, TOLERANCE);
  const product = new Float64Array(rows);
  times(matrix, x, product);
  const stress = new Float64Array(quadratic.size);
  numbers.forEach((row, node) => {
    stress[node] = row < 0 ? 0 : x[row];
  });
  return { stress, below: 2 * dot(load, x) - dot(x, product) };
}

/** Saint-Venant's function: no traction on the outline. */
function solveWarping(mesh: SectionMesh, quadratic: QuadraticMesh): { warping: Float64Array; above: number } {
  const { numbers, rows } = numbered(mesh, quadratic, true);
  const load = new Float64Array(rows);
  let polar = 0;
  for (let t = 0; 6 * t < quadratic.nodes.length; t++) {
    const shape = triangleShape(mesh, t, 'outer');
    const middles = middlesOf(mesh, t, 'outer');
    middles.forEach(({ x, y }, m) => {
      polar += ((x * x + y * y) * shape.twice) / 6;
      for (let i = 0; i < 6; i++) {
        const [f0, f1, f2] = AT_MIDDLES[m][i];
        const gx = f0 * shape.gx[0] + f1 * shape.gx[1] + f2 * shape.gx[2];
        const gy = f0 * shape.gy[0] + f1 * shape.gy[1] + f2 * shape.gy[2];
        load[numbers[quadratic.nodes[6 * t + i]]] += ((gx * y - gy * x) * shape.twice) / 6;
      }
    });
  }
  const matrix = assemble(mesh, quadratic, 'outer', numbers, rows);
  const { x } = solveByGradients(matrix, load, TOLERANCE);
  const product = new Float64Array(rows);
  times(matrix, x, product);
  const warping = new Float64Array(quadratic.size);
  numbers.forEach((row, node) => {
    warping[node] = x[row];
  });
  return { warping, above: polar - 2 * dot(load, x) + dot(x, product) };
}

/** Rows for the nodes, those on the outline only where asked; from one end of the section to the other. */
function numbered(
  mesh: SectionMesh,
  { nodes, size, onOutline }: QuadraticMesh,
  withOutline: boolean,
): { numbers: Int32Array; rows: number } {
  const place = new Float64Array(2 * size);
  mesh.points.forEach(({ x, y }, i) => {
    place.set([x, y], 2 * i);
  });
  for (let t = 0; 6 * t < nodes.length; t++)
    for (let i = 0; i < 3; i++) {
      const [a, b, middle] = [nodes[6 * t + i], nodes[6 * t + ((i + 1) % 3)], nodes[6 * t + 3 + i]];
      place[2 * middle] = (place[2 * a] + place[2 * b]) / 2;
      place[2 * middle + 1] = (place[2 * a + 1] + place[2 * b + 1]) / 2;
    }
  const asked = Array.from({ length: size }, (_, node) => node).filter((node) => withOutline || !onOutline[node]);
  const axis = isWide(mesh) ? 0 : 1;
  asked.sort((a, b) => place[2 * a + axis] - place[2 * b + axis] || a - b);
  const numbers = new Int32Array(size).fill(-1);
  asked.forEach((node, row) => {
    numbers[node] = row;
  });
  return { numbers, rows: asked.length };
}

/** Whether the section is wider than high. */
function isWide({ points, corners0 }: SectionMesh): boolean {
  const outline = points.slice(0, corners0);
  const range = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return range(outline.map(({ x }) => x)) > range(outline.map(({ y }) => y));
}

/** The middles of a triangle's edges, in the order of their nodes. */
export function middlesOf({ points, corners }: SectionMesh, t: number, side: Side): { x: number; y: number }[] {
  return MIDDLES.map((share) => {
    let [x, y] = [0, 0];
    for (let i = 0; i < 3; i++) {
      const p = points[corners[3 * t + i]];
      x += share[i] * (side === 'inner' ? p.x : p.outerX);
      y += share[i] * (side === 'inner' ? p.y : p.outerY);
    }
    return { x, y };
  });
}

/** The squared difference of the two shear stresses over each triangle. */
function gapsOf(
  mesh: SectionMesh,
  { nodes }: QuadraticMesh,
  stress: Float64Array,
  warping: Float64Array,
): Float64Array {
  return Float64Array.from({ length: nodes.length / 6 }, (_, t) => {
    const [inner, outer] = [triangleShape(mesh, t, 'inner'), triangleShape(mesh, t, 'outer')];
    let sum = 0;
    middlesOf(mesh, t, 'outer').forEach(({ x, y }, m) => {
      const [fx, fy] = gradientOf(stress, nodes, t, inner, AT_MIDDLES[m]);
      const [wx, wy] = gradientOf(warping, nodes, t, outer, AT_MIDDLES[m]);
      sum += (wx - y - fy) ** 2 + (wy + x + fx) ** 2;
    });
    return (sum * outer.twice) / 6;
  });
}
