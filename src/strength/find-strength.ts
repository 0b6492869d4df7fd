import { NM_PER_MM, type Point } from '../geom/point.ts';
import { type FlatOutline, flattenOutline } from './flatten-outline.ts';
import { type OutlineShear, outlineShear, shearAtNodes } from './outline-shear.ts';
import { type Peak, peakShear, type ShunnedCorner } from './peak-shear.ts';
import { SandHeap } from './plastic-torque.ts';
import { meshSection, refineMesh, type SectionMesh } from './section-mesh.ts';
import { type SectionOutline, type SectionShape, sectionOutline } from './section-outline.ts';
import { type SectionProperties, sectionProperties } from './section-properties.ts';
import { bluntCorners, leastRootRadius, type NumberedCorner, sharpCorners } from './sharp-corners.ts';
import type { SectionStrength, ShearField, TorsionStep } from './strength.ts';
import { type TorsionFields, torsionFields } from './torsion-fields.ts';

/** What is asked of a section. */
export interface StrengthQuestion extends SectionShape {
  /** How close the bounds of the torsion constant are to come, as a share of it; 0.2 % unless given. */
  readonly gap?: number;
  /** Triangles at most; 20,000 unless given. */
  readonly mostTriangles?: number;
}

/** How far the work is; `part` is the answer so far. */
export interface StrengthStep {
  readonly done: number;
  readonly total: number;
  readonly part?: SectionStrength;
}

/** Distance of the bounds at which the torsion constant is known well enough. */
const GAP = 2e-3;

/** Distance of the bounds of the fully plastic torque in the first answers, and in the last one. */
const FIRST_PLASTIC_GAP = 2e-2;
const PLASTIC_GAP = 2e-3;

const MOST_TRIANGLES = 20_000;

/** Steps of refinement at most. */
const MOST_STEPS = 25;

/** Steps at most for the peak alone, when the bounds are close enough. */
const MOST_LATE = 4;

/** Sharp corners are kept out of the search for the peak by this share of the section's mean thickness. */
const KEEP_OUT = 0.1;

/** First piece of outline beside a sharp corner, as a share of the mean thickness. */
const CORNER_PIECE = 0.02;

/** The first mesh's triangles have a circumradius of at most this share of the mean thickness. */
const FIRST_RADIUS = 0.45;

/** How far chords may stand off arcs, as a share of the gap asked for and of the mean thickness: about half the gap. */
const CHORD_SHARE = 0.1;

/** How far the two solutions may differ at the peak, as a share of it. */
const PEAK_APART = 0.02;

/** How far the peak may move in the last step where there are sharp corners, as a share of it. */
const PEAK_STEP = 0.01;

/** What does not change from step to step. */
interface Frame {
  readonly outline: SectionOutline;
  readonly properties: SectionProperties;
  readonly flat: FlatOutline;
  readonly sharp: readonly NumberedCorner[];
  /** Corners that the search for the peak keeps away from. */
  readonly shunned: readonly ShunnedCorner[];
  /** Numbers of the flat outline's sides that stand for parts of arcs, or are chords of a rounding. */
  readonly chords: ReadonlySet<number>;
  /** Twice the area over the outline's length, mm: the thickness of a thin section. */
  readonly thickness: number;
  readonly heap: SandHeap;
  readonly gap: number;
}

/**
 * What a section bears by its shape: its properties, the torsion constant from both sides, the greatest shear stress and
 * the fully plastic torque. Works step by step; the first answer comes with the first mesh, each further one is closer.
 *
 * @yields after each step how far it is, with the answer so far where the bounds came closer.
 * @returns the last answer; `converged` tells whether the bounds came as close as asked.
 * @accuracy torsion and plastic torque lie between their bounds: exact for the polygon given, and for the true arcs of a
 *   milled or drawn section. The peak shear is an estimate, about 1 %; where a
 *   rounding is drawn as chords, up to 7 % too low, see `peakOnChords`.
 * @check tests/outside/torsion.test.ts
 */
export function* findingStrength(question: StrengthQuestion): Generator<StrengthStep, SectionStrength, void> {
  const { frame, mesh: first } = framed(question);
  const steps: TorsionStep[] = [];
  let mesh = first;
  let before = Number.NaN;
  let late = 0;
  for (let step = 0; ; step++) {
    const fields = torsionFields(mesh);
    const along = outlineShear(fields, frame.chords);
    const peak = peakShear(along, frame.shunned);
    steps.push(closer(steps.at(-1), fields));
    const answer = answerOf(frame, fields, steps, peak);
    // Beside sharp corners both solutions may err alike, so the peak must stand still as well.
    const still = frame.shunned.length === 0 || Math.abs(peak.shear - before) <= PEAK_STEP * peak.shear;
    before = peak.shear;
    const known = answer.converged && still && peak.apart <= PEAK_APART * peak.shear;
    const full =
      mesh.corners.length / 3 > (question.mostTriangles ?? MOST_TRIANGLES) ||
      step >= MOST_STEPS ||
      (answer.converged && ++late > MOST_LATE);
    if (known || full) return yield* withPlastic(answer, frame);
    const marked = marks(fields, answer, along, peak, frame);
    if (marked.size === 0) return yield* withPlastic(answer, frame);
    yield { ...howFar(steps, frame.gap), part: answer };
    mesh = refineMesh(mesh, (t) => marked.has(t));
  }
}

/** The answer with the fully plastic torque closed in on, which no step of the mesh waits for. */
function* withPlastic(answer: SectionStrength, frame: Frame): Generator<StrengthStep, SectionStrength, void> {
  while (frame.heap.refine(PLASTIC_GAP)) yield howFar(answer.steps, frame.gap);
  return { ...answer, plasticTorque: frame.heap.torque };
}

/** The answer at once, to the end. */
export function findStrength(question: StrengthQuestion): SectionStrength {
  const steps = findingStrength(question);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The section made ready, with its first mesh. */
function framed(question: StrengthQuestion): { frame: Frame; mesh: SectionMesh } {
  const outline = sectionOutline(question);
  const properties = sectionProperties(outline);
  const gap = question.gap ?? GAP;
  const thickness = (2 * properties.area) / properties.length;
  const flat = flattenOutline(outline, CHORD_SHARE * gap * thickness);
  const sharp = sharpCorners(outline);
  const blunt = bluntCorners(outline, sharp);
  const shunned = [
    ...sharp.map(({ edge }) => ({ ...outline.edges[edge].from, keepOut: KEEP_OUT * thickness })),
    ...blunt.map(({ edge, keepOut }) => ({ ...outline.edges[edge].from, keepOut })),
  ];
  const starts = new Map(flat.corners.flatMap(({ edge, onArc }, i) => (onArc ? [] : [[edge, i] as const])));
  const near = new Map(sharp.map(({ edge }) => [starts.get(edge) ?? -1, CORNER_PIECE * thickness]));
  const chords = new Set([
    ...arcSides(flat),
    ...blunt.flatMap((corner) => corner.chords.map((k) => starts.get(k) ?? -1)),
  ]);
  const mesh = meshSection(flat, near, FIRST_RADIUS * thickness);
  const heap = new SandHeap(mesh, flat.hasArcs);
  while (heap.refine(FIRST_PLASTIC_GAP));
  return { frame: { outline, properties, flat, sharp, shunned, chords, thickness, heap, gap }, mesh };
}

/** The sides of the flat outline that stand for parts of arcs. */
function arcSides({ corners }: FlatOutline): number[] {
  return corners.flatMap(({ onArc }, i) => (onArc || corners[(i + 1) % corners.length].onArc ? [i] : []));
}

/** The bounds of a step: both hold for every mesh, so the closer ones are kept. */
function closer(before: TorsionStep | undefined, { below, above, mesh }: TorsionFields): TorsionStep {
  const triangles = mesh.corners.length / 3;
  if (!before) return { below, above, triangles };
  return { below: Math.max(below, before.below), above: Math.min(above, before.above), triangles };
}

/** The answer after a step. */
function answerOf(frame: Frame, fields: TorsionFields, steps: readonly TorsionStep[], peak: Peak): SectionStrength {
  const { properties, outline, sharp, heap, gap } = frame;
  const { below, above } = steps[steps.length - 1];
  const best = (below + above) / 2;
  const inNm = ({ x, y }: Point): Point => ({
    x: outline.origin.x + x * NM_PER_MM,
    y: outline.origin.y + y * NM_PER_MM,
  });
  const { area, ix, iy, ixy, weakest, weakAxis, weakModulus } = properties;
  return {
    ...{ area, centroid: inNm(properties.centroid), ix, iy, ixy, weakest, weakAxis, weakModulus },
    torsion: { below, above, best },
    steps: [...steps],
    converged: above - below <= gap * below,
    ...{
      peakShear: peak.shear / best,
      peakAt: inNm(peak.at),
      peakOnChords: peak.isChord && !outline.edges.some(({ arc }) => arc),
      keepOut: sharp.length > 0 ? KEEP_OUT * frame.thickness * peak.share * NM_PER_MM : 0,
    },
    plasticTorque: heap.torque,
    sharpCorners: sharp.map(({ x, y, angle }) => ({ x, y, angle })),
    leastRootRadius: leastRootRadius(outline),
    field: fieldOf(fields, best, inNm),
  };
}

/** The shear at the nodes, each triangle cut in four by its middles. */
function fieldOf(fields: TorsionFields, torsion: number, inNm: (p: Point) => Point): ShearField {
  const { mesh, quadratic } = fields;
  const { nodes, size } = quadratic;
  const [points, triangles] = [new Float64Array(2 * size), new Uint32Array(2 * nodes.length)];
  const put = (node: number, p: Point) => {
    const { x, y } = inNm(p);
    points.set([x, y], 2 * node);
  };
  mesh.points.forEach((p, i) => {
    put(i, p);
  });
  for (let t = 0; 6 * t < nodes.length; t++) {
    const [a, b, c, ab, bc, ca] = nodes.subarray(6 * t, 6 * t + 6);
    triangles.set([a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca], 12 * t);
    for (const [middle, p, q] of [
      [ab, a, b],
      [bc, b, c],
      [ca, c, a],
    ])
      put(middle, {
        x: (mesh.points[p].x + mesh.points[q].x) / 2,
        y: (mesh.points[p].y + mesh.points[q].y) / 2,
      });
  }
  return { points, triangles, shear: shearAtNodes(fields).map((shear) => shear / torsion) };
}

/** The triangles to be refined: those with the largest shares in the gap, and those at an uncertain peak. */
function marks(
  { gaps }: TorsionFields,
  { torsion }: SectionStrength,
  along: readonly OutlineShear[],
  peak: Peak,
  { gap }: Frame,
): Set<number> {
  // Evenly spread, the aim would leave each triangle this much.
  const fair = (0.3 * gap * torsion.below) / gaps.length;
  const marked = new Set([peak.triangle]);
  gaps.forEach((share, t) => {
    if (share > fair) marked.add(t);
  });
  for (const { shear, apart, triangle } of along)
    if (shear > 0.85 * peak.shear && apart > 0.5 * PEAK_APART * peak.shear) marked.add(triangle);
  return marked;
}

/** How far the gap has come on its way, on a scale of its logarithm. */
function howFar(steps: readonly TorsionStep[], gap: number): { done: number; total: number } {
  const of = ({ below, above }: TorsionStep) => Math.max(gap, (above - below) / below);
  const [first, last] = [of(steps[0]), of(steps[steps.length - 1])];
  const share = first > gap ? Math.log(first / last) / Math.log(first / gap) : 1;
  return { done: Math.round(95 * share), total: 100 };
}
