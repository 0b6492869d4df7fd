import type { OutlineFaultKind } from '../geom/check-outline.ts';
import { sideOf } from '../geom/contains-point.ts';
import { type Box, boxOf, NM_PER_UM, type Point, translatePoints } from '../geom/point.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import { squaredDistance } from '../geom/segment-distance.ts';
import { signedArea } from '../geom/signed-area.ts';
import { simplifyOutline } from '../geom/simplify.ts';
import { edgePoints, makeDrawn, type Vertex } from '../geom/vertex.ts';
import type { Drawing, DrawnPath } from './drawing.ts';
import { type JoinedLoop, joinChains, MOST_CHAINS } from './join-chains.ts';
import type { FileFault } from './json/file-fault.ts';

/** Why a loop of a drawing cannot be an outline. */
export interface LoopFault {
  readonly kind: OutlineFaultKind;
  /** Where, measured as the loop's vertices are. */
  readonly at?: Point;
}

/** One loop of a drawing and what is to be known before it is taken as an outline. */
export interface DrawnLoop {
  readonly label: string;
  /** Whole nanometres, its box standing on 0, 0; counter-clockwise and sound where there is no fault. */
  readonly vertices: readonly Vertex[];
  /** The lower left corner of its box in the drawing, whole nanometres. */
  readonly corner: Point;
  readonly width: number;
  readonly height: number;
  /** Lengths of the straight lines that close it, the longest first; empty where it is closed in the drawing. */
  readonly gaps: readonly number[];
  /** The loop of the list that it lies in, the smallest; null where it lies in none. */
  readonly inside: number | null;
  /** How often more the drawing has the same loop, within 1 um. */
  readonly repeats: number;
  readonly fault: LoopFault | null;
  /** The same loop with fewer corners, at most {@link LIGHTER_WITHIN} off, where it has very many. */
  readonly lighter: readonly Vertex[] | null;
}

/** The loops of a drawing, and what of it was left out. */
export interface DrawnLoops {
  readonly loops: readonly DrawnLoop[];
  readonly notes: readonly FileFault[];
}

/** With more corners than this a lighter outline is offered. */
export const MANY_CORNERS = 1_000;

/** Greatest distance of a lighter outline from the loop, nanometres; with the chords of curves it stays within 1 um. */
const LIGHTER_WITHIN = 450;

/** Most loops of one drawing that are looked at. */
export const MOST_LOOPS = 500;

/** Loops no further apart than this are the same, nanometres. */
const SAME_LOOP = NM_PER_UM;

/** A loop with the ring that its vertices stand for, and its place in the drawing. */
interface Measured {
  readonly loop: DrawnLoop;
  /** In the drawing's place; null where the loop is not sound. */
  readonly ring: Ring | null;
  readonly area: number;
}

/**
 * The loops of a drawing that may be outlines: open chains joined, sizes measured, soundness checked, the same loop
 * twice told once, and which lies in which. Nothing is chosen here: a loop with gaps, inside another or with very many
 * corners says so and the user decides.
 *
 * @param apart whether each path stands in a frame of its own, as in a table of points: then none lies in another, and
 *   only what is called the same can be the same.
 * @accuracy whole nanometres; a lighter outline stays within {@link LIGHTER_WITHIN} of the loop.
 * @check tests/unit/interchange/take-outline.test.ts
 */
export function takeOutlines(drawing: Drawing, apart = false): DrawnLoops {
  const steps = takingOutlines(drawing, apart);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** {@link takeOutlines} in steps, so that it can be given up on the way. */
export function* takingOutlines(
  drawing: Drawing,
  apart: boolean,
): Generator<{ done: number; total: number }, DrawnLoops, void> {
  const sound = drawing.paths.filter(isFinitePath);
  const joined = joinChains(sound).filter(({ vertices }) => vertices.length > 0);
  const worth = joined.filter(enclosesSomething);
  const measured: Measured[] = [];
  for (const [i, loop] of worth.slice(0, MOST_LOOPS).entries()) {
    measured.push(measure(loop));
    yield { done: i + 1, total: worth.length };
  }
  const once = dropRepeats(measured, apart);
  yield { done: worth.length, total: worth.length };
  const loops = once.map(({ loop, ring }) => ({ ...loop, inside: ring && !apart ? holderOf(once, ring) : null }));
  const notes = leftOut(drawing.paths.length - sound.length, joined.length - worth.length, worth.length);
  const openOnes = sound.filter(({ closed }) => !closed).length;
  return { loops, notes: openOnes > MOST_CHAINS ? [...notes, tooManyChains(openOnes)] : notes };
}

function isFinitePath({ vertices }: DrawnPath): boolean {
  return vertices.every(({ x, y, bulge = 0 }) => Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(bulge));
}

/** A single line, or one that runs back along itself, is no outline and not worth a question. */
function enclosesSomething({ vertices }: JoinedLoop): boolean {
  if (vertices.some(({ bulge = 0 }) => bulge !== 0)) return vertices.length > 1;
  if (vertices.length < 3) return false;
  const { minX, minY, maxX, maxY } = boxOf(vertices);
  return Math.min(maxX - minX, maxY - minY) > 0;
}

function measure({ label, vertices, gaps }: JoinedLoop): Measured {
  const { minX, minY } = boxOf(vertices);
  const from = { x: Math.round(minX), y: Math.round(minY) };
  const near = vertices.map((v) => ({ ...v, x: Math.round(v.x) - from.x, y: Math.round(v.y) - from.y }));
  const made = makeDrawn(near);
  const outline = made.ok ? made.ring : flattened(near);
  const box = boxOf(outline);
  const foot = { x: -box.minX, y: -box.minY };
  const fault = made.ok ? sizeFault(box) : { kind: made.fault.kind, at: made.fault.at && moved(made.fault.at, foot) };
  const placed = (made.ok ? made.drawn : near).map((v) => moved(v, foot));
  const corner = { x: from.x + box.minX, y: from.y + box.minY };
  const loop: DrawnLoop = {
    label,
    vertices: placed,
    corner,
    width: box.maxX - box.minX,
    height: box.maxY - box.minY,
    gaps,
    inside: null,
    repeats: 0,
    fault,
    lighter: made.ok && !fault ? lighterThan(placed, translatePoints(made.ring, foot)) : null,
  };
  const ring = made.ok ? asTrustedRing(translatePoints(made.ring, from)) : null;
  return { loop, ring, area: ring ? signedArea(ring) : 0 };
}

/** An outline smaller than a hair's hundredth either way is a slip of the scale. */
function sizeFault({ minX, minY, maxX, maxY }: Box): LoopFault | null {
  return Math.min(maxX - minX, maxY - minY) < NM_PER_UM ? { kind: 'zero-area' } : null;
}

function lighterThan(vertices: readonly Vertex[], ring: readonly Point[]): readonly Vertex[] | null {
  if (vertices.length <= MANY_CORNERS) return null;
  const lighter = makeDrawn(simplifyOutline(ring, LIGHTER_WITHIN));
  return lighter.ok && lighter.drawn.length < vertices.length ? lighter.drawn : null;
}

function flattened(vertices: readonly Vertex[]): Point[] {
  return vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
}

function moved<P extends Point>(point: P, by: Point): P {
  return { ...point, x: point.x + by.x, y: point.y + by.y };
}

/** Of loops that are the same within 1 um only the first, which counts the others. */
function dropRepeats(measured: readonly Measured[], apart: boolean): Measured[] {
  const kept: Measured[] = [];
  for (const next of measured) {
    const first = kept.findIndex((other) => areSame(other, next) && !(apart && other.loop.label !== next.loop.label));
    if (first < 0) kept.push(next);
    else {
      const { loop, ...rest } = kept[first];
      kept[first] = { ...rest, loop: { ...loop, repeats: loop.repeats + 1 } };
    }
  }
  return kept;
}

function areSame(a: Measured, b: Measured): boolean {
  if (!a.ring || !b.ring) return false;
  const [p, q] = [a.loop, b.loop];
  const off = [p.corner.x - q.corner.x, p.corner.y - q.corner.y, p.width - q.width, p.height - q.height];
  if (off.some((length) => Math.abs(length) > 2 * SAME_LOOP)) return false;
  return liesAlong(a.ring, b.ring) && liesAlong(b.ring, a.ring);
}

function liesAlong(points: readonly Point[], line: readonly Point[]): boolean {
  const limit = SAME_LOOP * SAME_LOOP;
  return points.every(({ x, y }) =>
    line.some((a, i) => {
      const b = line[(i + 1) % line.length];
      return squaredDistance(x, y, a.x, a.y, b.x, b.y) <= limit;
    }),
  );
}

/** The smallest loop that holds the whole of another, by its number; null where none does. */
function holderOf(measured: readonly Measured[], ring: Ring): number | null {
  const box = boxOf(ring);
  let holder: number | null = null;
  for (const [i, other] of measured.entries()) {
    if (!other.ring || other.ring === ring || !boxHolds(boxOf(other.ring), box)) continue;
    if (holder !== null && other.area >= measured[holder].area) continue;
    const outer = other.ring;
    if (ring.every((point) => sideOf([outer], point) !== 'outside')) holder = i;
  }
  return holder;
}

function boxHolds(outer: Box, inner: Box): boolean {
  return outer.minX <= inner.minX && outer.minY <= inner.minY && outer.maxX >= inner.maxX && outer.maxY >= inner.maxY;
}

function leftOut(unfit: number, lines: number, loops: number): FileFault[] {
  const notes: FileFault[] = [];
  const note = (what: string, cure: string) => notes.push({ path: 'drawing', what, cure });
  if (unfit > 0) note(`${count(unfit, 'path has', 'paths have')} coordinates that are no numbers`, 'Draw them anew.');
  if (lines > 0)
    note(`${count(lines, 'line encloses', 'lines enclose')} nothing and ${lines === 1 ? 'is' : 'are'} left out`, '');
  if (loops > MOST_LOOPS)
    note(`has ${loops} loops; the first ${MOST_LOOPS} are shown`, 'Delete what is no outline, or split the drawing.');
  return notes;
}

function tooManyChains(chains: number): FileFault {
  return {
    path: 'drawing',
    what: `has ${chains} open lines, too many to be joined to outlines`,
    cure: 'Delete hatches and dimension lines, or join the outlines in the drawing program.',
  };
}

function count(n: number, one: string, more: string): string {
  return `${n} ${n === 1 ? one : more}`;
}
