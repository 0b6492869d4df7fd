import { expect, test } from 'vitest';
import type { Ghost } from '../../../src/app/tools/draw/ghosts.ts';
import { ghostOf } from '../../../src/app/tools/draw/ghosts.ts';
import { type SnapTargets, snapPoint } from '../../../src/app/tools/draw/snap-point.ts';
import { dragTargets, gridStep, penTargets } from '../../../src/app/tools/draw/snap-targets.ts';
import { makeDrawn, type Vertex } from '../../../src/geom/vertex.ts';
import type { Profile } from '../../../src/profile/profile.ts';

const MM = 1e6;
/** A hundred pixels a millimetre: 10 pixels are 0.1 mm. */
const SCALE = 1e-4;
const at = (x: number, y: number) => ({ x: Math.round(x * MM), y: Math.round(y * MM) });
const NONE: SnapTargets = { vertices: [], edges: [], axes: [], step: 50_000, finest: 1000 };
const BAR: readonly Vertex[] = [at(0, 0), at(2, 0), at(2, 6), at(0, 6)];
const SNAP = { grid: true, step: null, vertices: true, edges: true, axes: true };
const sheet = (more: object = {}) => ({
  vertices: BAR,
  ghosts: [] as readonly Ghost[],
  snap: SNAP,
  units: 'mm' as const,
  off: false,
  ...more,
});

test('a place goes to the grid, and without one to whole thousandths', () => {
  expect(snapPoint(at(1.23, 4.56), NONE, SCALE)).toMatchObject({ point: at(1.25, 4.55), kind: 'grid' });
  const free = snapPoint({ x: 1_234_567, y: -4_560_400 }, { ...NONE, step: null }, SCALE);
  expect(free).toEqual({ point: { x: 1_235_000, y: -4_560_000 }, kind: 'free', word: '', guides: [] });
});

test('a vertex within ten pixels draws it exactly, and is named', () => {
  const targets = { ...NONE, vertices: [{ at: { x: 1_003_333, y: 1_000_007 }, name: 'vertex 3 of Heron keyway' }] };
  const drawn = { point: { x: 1_003_333, y: 1_000_007 }, kind: 'vertex', word: 'on vertex 3 of Heron keyway' };
  expect(snapPoint(at(1.08, 1.02), { ...targets, step: null }, SCALE)).toMatchObject(drawn);
  expect(snapPoint(at(1.08, 1.02), { ...targets, step: 500_000 }, SCALE)).toMatchObject(drawn);
  expect(snapPoint(at(1.02, 1.02), targets, SCALE)).toMatchObject(drawn);
  expect(snapPoint(at(1.15, 1.02), { ...targets, step: null }, SCALE).kind).toBe('free');
});

test('of a vertex and a place of the grid the nearer one draws, a vertex also where it is hardly further', () => {
  // The whole sheet is on the screen: 54 pixels a millimetre, 2.7 pixels from line to line.
  const scale = 54e-6;
  const vertices = [
    { at: at(0, 0.4), name: 'vertex 2' },
    { at: at(1.533, 1.582), name: 'vertex 7' },
  ];
  const targets = { ...NONE, vertices };
  // Half a pixel beside places of the grid, 3.5 and 2.3 pixels off the vertices.
  expect(snapPoint(at(-0.045, 0.447), targets, scale)).toMatchObject({ point: at(-0.05, 0.45), kind: 'grid' });
  expect(snapPoint(at(1.503, 1.552), targets, scale)).toMatchObject({ point: at(1.5, 1.55), kind: 'grid' });
  // 2.2 pixels off the vertex, 1.0 off the place of the grid at (1.55, 1.6).
  expect(snapPoint(at(1.556, 1.617), targets, scale)).toMatchObject({ point: at(1.533, 1.582), kind: 'vertex' });
  expect(snapPoint(at(1.54, 1.6), targets, scale)).toMatchObject({ point: at(1.533, 1.582), kind: 'vertex' });
});

test('level and plumb: one coordinate is taken over, the other goes to the grid; both where two are near', () => {
  const axes = [
    { at: { x: 1_003_333, y: 0 }, name: 'vertex 1' },
    { at: { x: 9 * MM, y: 2_004_444 }, name: 'vertex 2' },
  ];
  const plumb = snapPoint(at(1.02, 5.02), { ...NONE, axes }, SCALE);
  expect(plumb).toMatchObject({ point: { x: 1_003_333, y: 5 * MM }, kind: 'axis', word: 'plumb with vertex 1' });
  expect(plumb.guides).toEqual([[axes[0].at, plumb.point]]);
  expect(snapPoint(at(4.02, 2.02), { ...NONE, axes }, SCALE).point).toEqual({ x: 4 * MM, y: 2_004_444 });
  const both = { point: { x: 1_003_333, y: 2_004_444 }, word: 'level with vertex 2, plumb with vertex 1' };
  expect(snapPoint(at(1.02, 2.02), { ...NONE, axes }, SCALE)).toMatchObject(both);
  // Six pixels without a grid, and where its lines lie far apart.
  expect(snapPoint(at(1.05, 2.05), { ...NONE, step: null, axes }, SCALE)).toMatchObject(both);
  expect(snapPoint(at(1.05, 2.05), { ...NONE, step: 250_000, axes }, SCALE)).toMatchObject(both);
});

test('a level holds no further than half way to the next line of the grid', () => {
  // A corner of a bar is level and plumb with its neighbours and with where it was: it still moves by one step.
  const scale = 54e-6;
  const targets = dragTargets(sheet(), 2, [2]);
  expect(snapPoint(at(2.05, 6.05), targets, scale).point).toEqual(at(2.05, 6.05));
  expect(snapPoint(at(2.1, 6), targets, scale).point).toEqual(at(2.1, 6));
  expect(snapPoint(at(2.02, 5.98), targets, scale)).toMatchObject({ point: at(2, 6), kind: 'axis' });
  expect(snapPoint(at(1.94, 6), targets, scale, at(2, 6)).point).toEqual(at(1.95, 6));
});

test('an edge draws it onto itself, an arc onto its circle', () => {
  const straight = { from: at(0, 0), to: at(4, 4), name: 'Heron keyway' };
  const on = snapPoint(at(2.05, 1.98), { ...NONE, edges: [straight] }, SCALE);
  expect(on.kind).toBe('edge');
  expect(on.point.x).toBe(on.point.y);
  const arc = { from: { ...at(0, 0), bulge: 1 }, to: at(4, 0), name: 'Heron keyway' };
  const round = snapPoint(at(2.02, -2.04), { ...NONE, edges: [arc] }, SCALE);
  expect(Math.hypot(round.point.x - 2 * MM, round.point.y)).toBeCloseTo(2 * MM, -1);
});

test('held to the straight way it goes along the nearer axis, as far as the grid or a vertex says', () => {
  const from = { x: 1_003_333, y: 2_004_444 };
  expect(snapPoint(at(1.9, 2.3), NONE, SCALE, from)).toMatchObject({ point: { x: 1_900_000, y: 2_004_444 } });
  expect(snapPoint(at(1.1, 3.33), NONE, SCALE, from)).toMatchObject({ point: { x: 1_003_333, y: 3_350_000 } });
  const targets = { ...NONE, vertices: [{ at: { x: 1_907_777, y: 9 * MM }, name: 'vertex 4' }] };
  expect(snapPoint(at(1.89, 2.1), targets, SCALE, from).point).toEqual({ x: 1_907_777, y: 2_004_444 });
});

test('what moves draws nothing; neighbours and its old place may', () => {
  const { vertices, edges, axes, step } = dragTargets(sheet(), 2, [1, 2]);
  expect(vertices.map(({ name }) => name)).toEqual(['vertex 1', 'vertex 4']);
  expect(edges).toHaveLength(1);
  expect(axes.map(({ name }) => name)).toEqual(['vertex 4', 'where it was']);
  expect(step).toBe(50_000);
});

test('each kind can be switched off, and a held key switches all off', () => {
  const off = { grid: false, step: null, vertices: false, edges: false, axes: false };
  expect(dragTargets(sheet({ snap: off }), 2, [2])).toEqual({ ...NONE, step: null });
  expect(dragTargets(sheet({ off: true }), 2, [2])).toEqual({ ...NONE, step: null });
  expect(penTargets(sheet({ off: true, units: 'in' }), BAR)).toMatchObject({ step: null, finest: 1270 });
  expect(gridStep({ ...SNAP, step: 10_000 }, 'mm')).toBe(10_000);
  expect(gridStep(SNAP, 'in')).toBe(50_800);
});

test('the pen is drawn by its first and last vertex, and not onto its last', () => {
  const pen = [at(5, 5), at(6, 5), at(6, 7)];
  const { vertices, axes } = penTargets(sheet(), pen);
  expect(vertices.slice(0, 2).map((v) => v.at)).toEqual(pen.slice(0, 2));
  expect(vertices).toHaveLength(6);
  expect(axes.map((a) => a.at)).toEqual([pen[0], pen[2]]);
});

test('a ghost of the other kind lies as the pair fits best, one of the same kind in the same frame', () => {
  const make = (id: string, kind: Profile['kind'], vertices: readonly Vertex[]): Profile => {
    const made = makeDrawn(vertices);
    if (!made.ok) throw new Error(made.fault.message);
    return { id, kind, name: id, ring: made.ring, drawn: made.drawn };
  };
  const blank = make('blank', 'blank', BAR);
  const keyway = make(
    'keyway',
    'opening',
    BAR.map(({ x, y }): Vertex => ({ x: x + 100, y })).with(0, { x: 100, y: 0, bulge: 0.1 }),
  );
  const placement = { x: 50_000, y: -20_000, tilt: 0 };
  expect(ghostOf(keyway, blank, placement, true).vertices[2]).toEqual({ x: 2_050_000, y: 5_980_000 });
  const under = ghostOf(blank, keyway, placement, true);
  expect(under.vertices[0]).toEqual({ x: -49_900, y: 20_000, bulge: 0.1 });
  expect(ghostOf(blank, make('tool', 'tool', BAR), placement, false).vertices).toEqual(BAR);
  expect(ghostOf(blank, keyway, null, true).vertices).toEqual(keyway.drawn);
});
