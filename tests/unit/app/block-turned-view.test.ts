// Where the eye is, by plain vector algebra and by projecting the corners of boxes through a pinhole as three's own camera
// does: the library is the outside truth here for what lies within the picture.
import { Matrix4, PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { bedLines } from '../../../src/app/canvas/solid/bed-lines.ts';
import { fitEye, LENS_DEGREES } from '../../../src/app/canvas/solid/fit-eye.ts';
import { boxCorners, movedBy, type SolidPoint } from '../../../src/app/canvas/solid/solid-picture.ts';
import {
  dragView,
  eyeDirection,
  keyedView,
  moveView,
  NAMED_VIEWS,
  type TurnedView,
  turnView,
  viewWords,
  zoomView,
} from '../../../src/app/canvas/solid/turned-view.ts';

/** Where points are in a picture, both from -1 to 1, by the library's camera. */
function seen(points: readonly SolidPoint[], view: TurnedView, aspect: number): { x: number; y: number; z: number }[] {
  const eye = fitEye(points, view, aspect);
  const camera = new PerspectiveCamera(LENS_DEGREES, aspect, eye.near, eye.far);
  camera.zoom = eye.zoom;
  camera.position.set(...eye.at);
  camera.up.set(...eye.up);
  camera.lookAt(new Vector3(...eye.towards));
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
  return points.map((point) => new Vector3(...point).project(camera));
}

const box = (from: SolidPoint, size: SolidPoint) => boxCorners(movedBy(from), size);

const SCENES: SolidPoint[][] = [
  box([0, 0, 0], [200, 180, 45]),
  [...box([-5, -120, 0], [10, 130, 90]), ...box([40, -200, 30], [9, 60, 20])],
  box([3, 3, 3], [0, 0, 0]),
];

describe('the eye', () => {
  test('sees all of a box from everywhere, and fills the picture one way', () => {
    for (const points of SCENES)
      for (const aspect of [0.6, 1, 2.2])
        for (let turn = 0; turn < 6.2; turn += 0.7)
          for (const lift of [-1.5, -0.4, 0, 0.6, Math.PI / 2]) {
            const corners = seen(points, { turn, lift, near: 1, right: 0, up: 0 }, aspect);
            const most = Math.max(...corners.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
            expect(most).toBeLessThan(0.96);
            if (points[0][0] !== points[7][0]) expect(most).toBeGreaterThan(0.6);
            for (const { z } of corners) expect(Math.abs(z)).toBeLessThanOrEqual(1);
          }
  });

  test('has what it sees in the middle of the picture, and fills it one way nearly to the edge', () => {
    const [points] = SCENES;
    for (const aspect of [0.7, 1.6, 2.4])
      for (const view of [NAMED_VIEWS.corner, NAMED_VIEWS.front, NAMED_VIEWS.top]) {
        const corners = seen(points, view, aspect);
        const ends = (values: number[]) => [Math.min(...values), Math.max(...values)];
        const [left, right] = ends(corners.map(({ x }) => x));
        const [low, high] = ends(corners.map(({ y }) => y));
        expect(left + right).toBeCloseTo(0, 2);
        expect(low + high).toBeCloseTo(0, 2);
        expect(Math.max(right, high)).toBeGreaterThan(0.93);
      }
  });

  test('enlarges about the middle, and moves what is seen with the hand', () => {
    const [points] = SCENES;
    const [before] = seen(points, NAMED_VIEWS.corner, 1.5);
    const [twice] = seen(points, zoomView(NAMED_VIEWS.corner, 2), 1.5);
    expect(twice.x / before.x).toBeCloseTo(2, 6);
    const [moved] = seen(points, moveView(NAMED_VIEWS.corner, 0.2, 0.1), 1.5);
    expect(moved.x).toBeGreaterThan(before.x);
    expect(moved.y).toBeGreaterThan(before.y);
  });

  test('looks from the front along y, from above with the back upwards', () => {
    expect(eyeDirection(NAMED_VIEWS.front)).toEqual({ x: 0, y: -1, z: 0 });
    const top = eyeDirection(NAMED_VIEWS.top);
    expect(top.z).toBe(1);
    const eye = fitEye(SCENES[0], NAMED_VIEWS.top, 1);
    expect(eye.up[1]).toBeCloseTo(1, 12);
    const seen = new Vector3(0, 1, 0).applyMatrix4(
      new Matrix4().lookAt(new Vector3(...eye.at), new Vector3(...eye.towards), new Vector3(...eye.up)).transpose(),
    );
    expect(seen.y).toBeCloseTo(1, 9);
  });
});

describe('turning', () => {
  test('goes round without end and never over the top', () => {
    let view: TurnedView = NAMED_VIEWS.front;
    for (let i = 0; i < 49; i++) view = keyedView(view, 'ArrowRight', false) ?? view;
    expect(view.turn).toBeCloseTo(Math.PI / 24, 9);
    expect(turnView(view, { right: 0, up: 9 }).lift).toBe(Math.PI / 2);
    expect(turnView(view, { right: -1, up: -9 })).toMatchObject({ lift: -Math.PI / 2 });
    expect(turnView(NAMED_VIEWS.front, { right: -0.5, up: 0 }).turn).toBeCloseTo(2 * Math.PI - 0.5, 9);
  });

  test('follows the hand: what is dragged right shows its left side, what is dragged down its top', () => {
    const dragged = dragView({ ...NAMED_VIEWS.front, turn: 1 }, 48, 96);
    expect(dragged.turn).toBeLessThan(1);
    expect(dragged.lift).toBeCloseTo(Math.PI / 5, 9);
  });

  test('keys turn, move, enlarge and go to a view of their own; others do nothing', () => {
    const { corner } = NAMED_VIEWS;
    expect(keyedView(corner, '+', false)?.near).toBeCloseTo(1.2);
    expect(keyedView(corner, '-', false)?.near).toBeCloseTo(1 / 1.2);
    expect(keyedView(corner, 'ArrowUp', true)).toMatchObject({ lift: corner.lift, up: 0.08 });
    expect(keyedView(zoomView(corner, 3), 'Home', false)).toEqual(corner);
    expect(keyedView(zoomView(corner, 3), 'Home', false, 'before')).toEqual(NAMED_VIEWS.before);
    expect(['1', '2', '3', '4'].map((key) => keyedView(corner, key, false))).toEqual([
      NAMED_VIEWS.corner,
      NAMED_VIEWS.front,
      NAMED_VIEWS.top,
      NAMED_VIEWS.right,
    ]);
    expect(keyedView(corner, 'x', false)).toBeNull();
    expect(zoomView(corner, 1e9).near).toBe(12);
  });

  test('is said in words', () => {
    expect(viewWords(NAMED_VIEWS.front)).toBe('from the front, level');
    expect(viewWords(NAMED_VIEWS.corner)).toBe('from the front right, 49° above');
    expect(viewWords(zoomView(NAMED_VIEWS.top, 2))).toBe('from above, 2.0 times as large');
    expect(viewWords({ ...NAMED_VIEWS.front, turn: Math.PI, lift: -0.5 })).toBe('from the back, 29° below');
    expect(viewWords({ ...NAMED_VIEWS.front, turn: 6.2 })).toBe('from the front, level');
  });
});

test('the bed is ruled every 20 mm and at its edges, inside itself', () => {
  const lines = bedLines({ x: 10, y: 0, size: [220, 210], drawn: [220, 210] });
  const across = lines.filter((_, i) => i % 6 === 0);
  expect(lines.length / 6).toBe(12 + 12);
  expect([Math.min(...across), Math.max(...across)]).toEqual([10, 230]);
  expect(new Set(lines.filter((_, i) => i % 3 === 1))).toContain(210);
  // Of a piece the last rules run out, and no line closes them.
  const piece = bedLines({ x: 10, y: 0, size: [220, 210], drawn: [99, 210] });
  expect(piece.length / 6).toBe(5 + 12);
  expect(Math.max(...piece.filter((_, i) => i % 6 === 3))).toBe(109);
});
