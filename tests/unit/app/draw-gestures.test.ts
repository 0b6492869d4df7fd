import { expect, test } from 'vitest';
import { bulgeTowards, dragBulgeTo } from '../../../src/app/tools/draw/dragging-bulge.ts';
import { dragEdgeTo } from '../../../src/app/tools/draw/dragging-edge.ts';
import { dragVerticesTo } from '../../../src/app/tools/draw/dragging-vertices.ts';
import type { DraggingBulge, DraggingEdge, PickingBox, Press } from '../../../src/app/tools/draw/gesture.ts';
import { goOn } from '../../../src/app/tools/draw/gesture.ts';
import { beginGesture } from '../../../src/app/tools/draw/idle.ts';
import { insertPart } from '../../../src/app/tools/draw/insert-part.ts';
import { nudgeOf } from '../../../src/app/tools/draw/nudging.ts';
import { pickedBy, pickTo } from '../../../src/app/tools/draw/picking-box.ts';
import { angleAt, edgeText, penLines, vertexLines } from '../../../src/app/tools/draw/read-out.ts';
import type { SnapTargets } from '../../../src/app/tools/draw/snap-point.ts';
import { underPointer } from '../../../src/app/tools/draw/under-pointer.ts';
import { isTwoFingers, wheelView } from '../../../src/app/tools/draw/wheel.ts';
import type { DrawingView } from '../../../src/app/tools/drawing-view.ts';
import type { Vertex } from '../../../src/geom/vertex.ts';

const MM = 1e6;
/** A hundred pixels a millimetre, the origin at pixel (100, 700). */
const VIEW: DrawingView = { scale: 1e-4, x: 100, y: 700 };
/** A bar 2 x 6 mm: corners at pixels (100, 700), (300, 700), (300, 100), (100, 100). */
const BAR: readonly Vertex[] = [
  { x: 0, y: 0 },
  { x: 2 * MM, y: 0 },
  { x: 2 * MM, y: 6 * MM },
  { x: 0, y: 6 * MM },
];
const FREE: SnapTargets = { vertices: [], edges: [], axes: [], step: null, finest: 1000 };
const GRID: SnapTargets = { ...FREE, step: 50_000 };

const press = (px: number, py: number, more: Partial<Press> = {}): Press => ({
  at: { px, py },
  button: 0,
  spaceHeld: false,
  shift: false,
  alt: false,
  ...more,
});
const begin = (given: Press, chosen: readonly number[] = []) =>
  beginGesture(given, underPointer(BAR, chosen, VIEW, given.at), BAR, chosen, VIEW);

test('under the pointer a vertex comes before the middle of an edge, that before the edge', () => {
  expect(underPointer(BAR, [], VIEW, { px: 297, py: 106 })).toEqual({ kind: 'vertex', index: 2 });
  expect(underPointer(BAR, [], VIEW, { px: 302, py: 404 })).toEqual({ kind: 'bulge', edge: 1 });
  expect(underPointer(BAR, [], VIEW, { px: 303, py: 250 })).toMatchObject({ kind: 'edge', edge: 1, part: 0.75 });
  expect(underPointer(BAR, [], VIEW, { px: 200, py: 300 })).toEqual({ kind: 'nothing' });
});

test('of two vertices near to each other the nearer is taken, the chosen one where it is hardly further', () => {
  const close = BAR.toSpliced(3, 0, { x: 1.92 * MM, y: 6 * MM });
  expect(underPointer(close, [], VIEW, { px: 297, py: 100 })).toEqual({ kind: 'vertex', index: 2 });
  expect(underPointer(close, [3], VIEW, { px: 295.5, py: 100 })).toEqual({ kind: 'vertex', index: 3 });
});

test('a short edge has no handle in its middle', () => {
  const stub = [BAR[0], { x: 0.4 * MM, y: 0 }, { x: 0.4 * MM, y: 6 * MM }, BAR[3]];
  expect(underPointer(stub, [], VIEW, { px: 120, py: 700 }).kind).toBe('edge');
});

test('a press on a vertex chooses it, with shift adds it, and on a chosen one waits for the hand to let go', () => {
  expect(begin(press(300, 100)).chosen).toEqual([2]);
  expect(begin(press(300, 100, { shift: true }), [0]).chosen).toEqual([0, 2]);
  const again = begin(press(300, 100), [0, 2]);
  expect(again.chosen).toBeNull();
  expect(again.gesture).toMatchObject({ kind: 'dragging-vertices', lead: 2, click: [2], moved: false });
  expect(begin(press(300, 100, { shift: true }), [0, 2]).gesture).toMatchObject({ click: [0] });
});

test('an edge is taken by its nearer end and chooses both; its middle or Alt bows it', () => {
  const edge = begin(press(300, 200));
  expect(edge.chosen).toEqual([1, 2]);
  expect(edge.gesture).toMatchObject({ kind: 'dragging-edge', edge: 1, lead: 2, grip: { px: 0, py: 100 } });
  expect(begin(press(300, 200, { alt: true })).gesture).toMatchObject({ kind: 'dragging-bulge', edge: 1 });
  expect(begin(press(300, 400)).gesture).toMatchObject({ kind: 'dragging-bulge', edge: 1, grip: { px: 0, py: 0 } });
});

test('space and the middle button move the sheet, the second button does nothing, empty sheet begins a box', () => {
  expect(begin(press(300, 100, { spaceHeld: true })).gesture.kind).toBe('panning');
  expect(begin(press(300, 100, { button: 1 })).gesture.kind).toBe('panning');
  expect(begin(press(300, 100, { button: 2 })).gesture.kind).toBe('idle');
  expect(begin(press(200, 300), [1]).chosen).toEqual([]);
  expect(begin(press(200, 300, { shift: true }), [1]).chosen).toEqual([1]);
});

test('a press is no drag before the hand has gone on by more than three pixels', () => {
  const { gesture } = begin(press(300, 100));
  if (gesture.kind !== 'dragging-vertices') throw new Error(gesture.kind);
  expect(goOn(gesture, { px: 302, py: 102 }).moved).toBe(false);
  const moved = goOn(gesture, { px: 304, py: 100 });
  expect(moved.moved).toBe(true);
  expect(goOn(moved, { px: 300, py: 100 }).moved).toBe(true);
});

test('a box chooses what is in it, whichever way it is drawn, and keeps what was chosen with shift', () => {
  const start: PickingBox = {
    kind: 'picking-box',
    from: { px: 350, py: 150 },
    moved: false,
    corner: { x: 2.5 * MM, y: 5.5 * MM },
    to: { x: 2.5 * MM, y: 5.5 * MM },
    kept: [1],
  };
  expect(pickedBy(pickTo(start, { px: 351, py: 150 }, VIEW), BAR)).toEqual([1]);
  expect(pickedBy(pickTo(start, { px: 50, py: 50 }, VIEW), BAR)).toEqual([1, 2, 3]);
});

test('a dragged vertex goes to the grid and takes the other chosen ones along', () => {
  const lead = { lead: 2, grip: { px: 1, py: -1 } };
  const { wanted, snapped } = dragVerticesTo(lead, { px: 318, py: 96 }, VIEW, BAR, [2, 3], GRID, false);
  // 17 pixels to the right and 3 up are 0.17 and 0.03 mm: 0.15 and 0.05 on a grid of 0.05.
  expect(wanted[2]).toEqual({ x: 2.15 * MM, y: 6.05 * MM });
  expect(wanted[3]).toEqual({ x: 0.15 * MM, y: 6.05 * MM });
  expect(wanted[0]).toEqual(BAR[0]);
  expect(snapped.kind).toBe('grid');
});

test('shift holds a drag to the straight way', () => {
  const { wanted } = dragVerticesTo(
    { lead: 2, grip: { px: 0, py: 0 } },
    { px: 340, py: 85 },
    VIEW,
    BAR,
    [2],
    GRID,
    true,
  );
  expect(wanted[2]).toEqual({ x: 2.4 * MM, y: 6 * MM });
});

test('a dragged edge keeps its length and direction', () => {
  const gesture = begin(press(300, 200)).gesture as DraggingEdge;
  const { wanted } = dragEdgeTo(gesture, { px: 330, py: 200 }, VIEW, BAR, GRID, false);
  expect(wanted[1]).toEqual({ x: 2.3 * MM, y: 0 });
  expect(wanted[2]).toEqual({ x: 2.3 * MM, y: 6 * MM });
});

test('the last edge runs from the last vertex to the first, and both move', () => {
  const gesture = begin(press(100, 300)).gesture as DraggingEdge;
  const { wanted } = dragEdgeTo(gesture, { px: 80, py: 300 }, VIEW, BAR, GRID, false);
  expect([wanted[3], wanted[0]]).toEqual([
    { x: -0.2 * MM, y: 6 * MM },
    { x: -0.2 * MM, y: 0 },
  ]);
});

test('a bowed edge stands off its chord as far as the hand, to the right of the way with a positive bulge', () => {
  const gesture = begin(press(300, 400)).gesture as DraggingBulge;
  const { wanted } = dragBulgeTo(gesture, { px: 360, py: 400 }, VIEW, BAR, null);
  // The sagitta is half the chord times the bulge: 0.6 = 3 b.
  expect(wanted[1].bulge).toBeCloseTo(0.2, 9);
  const inwards = dragBulgeTo(gesture, { px: 240, py: 430 }, VIEW, BAR, null);
  expect(inwards.wanted[1].bulge).toBeCloseTo(-0.2, 9);
});

test('near the chord an edge is straight, near a half circle it is one, else its radius is round where that is near', () => {
  const [from, to] = [BAR[1], BAR[2]];
  const towards = (xMm: number) => bulgeTowards(from, to, { x: (2 + xMm) * MM, y: 3 * MM }, 50_000, VIEW.scale);
  expect(towards(0.04)).toEqual({ bulge: 0, word: 'straight' });
  expect(towards(2.97)).toEqual({ bulge: 1, word: 'half circle' });
  expect(towards(-2.97)).toEqual({ bulge: -1, word: 'half circle' });
  const { bulge, word } = towards(1);
  // A bow of 1 over a chord of 6 has a radius of 5 exactly: (9 + 1) / 2.
  expect(word).toBe('round radius');
  expect(bulge).toBeCloseTo(1 / 3, 9);
  expect(bulgeTowards(from, from, to, 50_000, VIEW.scale).bulge).toBe(0);
});

test('a vertex is added on an upright edge where the grid meets it', () => {
  expect(insertPart(BAR, 1, { x: 2 * MM, y: 1.513 * MM }, 50_000)).toBeCloseTo(1.5 / 6, 12);
  expect(insertPart(BAR, 1, { x: 2 * MM, y: 0.004 * MM }, 50_000)).toBe(0.5);
  expect(insertPart(BAR, 1, { x: 2 * MM, y: 1.513 * MM }, null)).toBeCloseTo(1.513 / 6, 12);
});

test('arrow keys move by a hundredth, with shift by a tenth, with alt by a thousandth; in inches by half a thou', () => {
  expect(nudgeOf('ArrowRight', false, false, 'mm')).toEqual({ x: 10_000, y: 0 });
  expect(nudgeOf('ArrowUp', true, false, 'mm')).toEqual({ x: 0, y: 100_000 });
  expect(nudgeOf('ArrowLeft', false, true, 'mm')).toEqual({ x: -1000, y: 0 });
  expect(nudgeOf('ArrowDown', false, false, 'in')).toEqual({ x: 0, y: -12_700 });
  expect(nudgeOf('Home', false, false, 'mm')).toBeNull();
  expect(nudgeOf('toString', false, false, 'mm')).toBeNull();
});

test('what is read at a vertex: place, way, both edges, the angle inside', () => {
  const moved = BAR.with(2, { x: 2.05 * MM, y: 6 * MM });
  expect(vertexLines(moved, 2, BAR[2], 'mm')).toEqual([
    'x 2.050, y 6.000 mm',
    'Δx +0.050, Δy 0.000 mm',
    'edge 6.000 mm in',
    'edge 2.050 mm out',
    'angle 89.5°',
  ]);
  expect(edgeText({ x: 0, y: 0, bulge: 1 }, { x: 2 * MM, y: 0 }, 'mm')).toBe('arc: radius 1.000, bow 1.000 mm');
  expect(penLines({ x: 0, y: 0 }, { x: 0, y: 25.4 * MM }, 'in')).toEqual([
    'x 0.0000, y 1.0000 in',
    '1.0000 in at 90.0°',
  ]);
});

test('the angle inside is reflex at a hollow and measured between tangents on arcs', () => {
  const notch = [BAR[0], BAR[1], { x: 1 * MM, y: 3 * MM }, BAR[2], BAR[3]];
  expect(angleAt(notch[1], notch[2], notch[3])).toBeGreaterThan(Math.PI);
  // A half circle over the top meets the upright sides without a corner.
  expect(angleAt(BAR[1], { ...BAR[2], bulge: 1 }, BAR[3])).toBeCloseTo(Math.PI, 9);
});

test('a wheel zooms about the pointer, two fingers and shift move the sheet, a pinch zooms', () => {
  const turn = { deltaX: 0, deltaY: -100, deltaMode: 0, ctrl: false, shift: false };
  const at = { px: 300, py: 100 };
  expect(isTwoFingers(turn)).toBe(false);
  expect(isTwoFingers({ ...turn, deltaY: 4 })).toBe(true);
  expect(isTwoFingers({ ...turn, deltaX: 3 })).toBe(true);
  expect(isTwoFingers({ ...turn, deltaY: 3, deltaMode: 1 })).toBe(false);
  const zoomed = wheelView(VIEW, turn, at, false);
  expect(zoomed.scale).toBeGreaterThan(VIEW.scale);
  expect(zoomed.x + 2 * MM * zoomed.scale).toBeCloseTo(300, 6);
  expect(wheelView(VIEW, { ...turn, deltaX: 7, deltaY: -4 }, at, true)).toEqual({ ...VIEW, x: 93, y: 704 });
  expect(wheelView(VIEW, { ...turn, shift: true }, at, false)).toEqual({ ...VIEW, x: 200 });
  expect(wheelView(VIEW, { ...turn, ctrl: true, deltaY: -5 }, at, true).scale).toBeGreaterThan(VIEW.scale);
});
