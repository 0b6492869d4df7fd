import type { Units } from '../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM, type Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { SnapSettings } from '../../state/draw/draw-state.ts';
import type { Ghost } from './ghosts.ts';
import type { NamedEdge, NamedPoint, SnapTargets } from './snap-point.ts';

/** Steps of the grid that are offered, nanometres; the first is the one that goes with the units. */
export const GRID_STEPS: Readonly<Record<Units, readonly number[]>> = {
  mm: [0.05, 0.01, 0.1, 0.25, 0.5].map((mm) => mm * NM_PER_MM),
  in: [0.002, 0.0005, 0.001, 0.005, 0.01].map((inch) => inch * NM_PER_INCH),
};

/** A place that nothing draws rests on whole steps: a thousandth of a millimetre, a twentieth of a thou. */
const FINEST: Readonly<Record<Units, number>> = { mm: NM_PER_MM / 1000, in: NM_PER_INCH / 20_000 };

/** The step of the grid, nanometres; null while the grid draws nothing. */
export function gridStep({ grid, step }: SnapSettings, units: Units): number | null {
  return grid ? (step ?? GRID_STEPS[units][0]) : null;
}

/** What is on the sheet that a hand may be drawn to. */
export interface Sheet {
  readonly vertices: readonly Vertex[];
  readonly ghosts: readonly Ghost[];
  readonly snap: SnapSettings;
  readonly units: Units;
  /** True while Ctrl, Cmd or Alt is held: nothing draws then. */
  readonly off: boolean;
}

/** What a dragged vertex may be drawn to: what does not move with it, and its own old place. */
export function dragTargets(sheet: Sheet, lead: number, moving: readonly number[]): SnapTargets {
  const { vertices, ghosts, snap } = sheet;
  if (sheet.off) return nothing(sheet.units);
  const n = vertices.length;
  const moves = new Set(moving);
  const still = vertices.flatMap((at, i) => (moves.has(i) ? [] : [{ at, name: `vertex ${i + 1}`, i }]));
  const own = vertices.flatMap((from, i): NamedEdge[] =>
    moves.has(i) || moves.has((i + 1) % n) ? [] : [{ from, to: vertices[(i + 1) % n], name: 'this outline' }],
  );
  const beside = new Set([(lead + n - 1) % n, (lead + 1) % n]);
  const axes: NamedPoint[] = [...still.filter(({ i }) => beside.has(i)), { at: vertices[lead], name: 'where it was' }];
  return {
    vertices: snap.vertices ? [...still, ...ghosts.flatMap(ghostVertices)] : [],
    edges: snap.edges ? [...own, ...ghosts.flatMap(ghostEdges)] : [],
    axes: snap.axes ? axes : [],
    step: gridStep(snap, sheet.units),
    finest: FINEST[sheet.units],
  };
}

/** What the pen's next vertex may be drawn to: what lies on the sheet, and what the pen has set. */
export function penTargets(sheet: Sheet, pen: readonly Vertex[]): SnapTargets {
  const { vertices, ghosts, snap } = sheet;
  if (sheet.off) return nothing(sheet.units);
  const set = pen.map((at, i) => ({ at, name: `vertex ${i + 1}` }));
  const old = vertices.map((at, i) => ({ at, name: `old vertex ${i + 1}` }));
  const edges = vertices.map((from, i) => ({ from, to: vertices[(i + 1) % vertices.length], name: 'the old outline' }));
  // The pen goes on from its last vertex and comes back to its first.
  const axes = set.filter((_, i) => i === 0 || i === set.length - 1);
  return {
    // Its last vertex would say nothing once more.
    vertices: snap.vertices ? [...set.slice(0, -1), ...old, ...ghosts.flatMap(ghostVertices)] : [],
    edges: snap.edges ? [...edges, ...ghosts.flatMap(ghostEdges)] : [],
    axes: snap.axes ? axes : [],
    step: gridStep(snap, sheet.units),
    finest: FINEST[sheet.units],
  };
}

function nothing(units: Units): SnapTargets {
  return { vertices: [], edges: [], axes: [], step: null, finest: FINEST[units] };
}

function ghostVertices({ vertices, name }: Ghost): NamedPoint[] {
  return vertices.map((at: Point, i) => ({ at, name: `vertex ${i + 1} of ${name}` }));
}

function ghostEdges({ vertices, name }: Ghost): NamedEdge[] {
  return vertices.map((from, i) => ({ from, to: vertices[(i + 1) % vertices.length], name }));
}
