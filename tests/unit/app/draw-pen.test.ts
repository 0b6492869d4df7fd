import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import {
  bowPenEdge,
  bringBackPen,
  closePen,
  discardPen,
  putPenAway,
  setPenVertex,
  takeBackPenVertex,
  takePen,
} from '../../../src/app/state/draw/pen-editing.ts';
import { deleteSection, duplicateSection } from '../../../src/app/state/draw/section-editing.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { closesPen, crossStep, penBow, penCrossings } from '../../../src/app/tools/draw/pen.ts';
import { pressHand } from '../../../src/app/views/draw/draw-hand.ts';
import { fakeDoors } from './fake-doors.ts';

const MM = 1e6;
const at = (x: number, y: number) => ({ x: x * MM, y: y * MM });
const BAR = {
  format: 'sectionary-family',
  version: 1,
  name: 'Plain',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    {
      id: 'bar',
      kind: 'blank',
      name: 'Bar blank',
      outline: [
        [0, 0],
        [2, 0],
        [2, 6],
        [0, 6],
      ],
      note: 'kept',
    },
  ],
};

let session: Session;

beforeEach(() => {
  session = makeSession(fakeDoors().doors, null);
  openText(session.documents, session.doors, JSON.stringify(BAR), 'bar.json');
});

const set = (...places: [number, number][]) => {
  for (const [x, y] of places) setPenVertex(session, at(x, y));
};
const profiles = () => session.documents.getState().document?.family.profiles ?? [];
const steps = () => session.documents.getState().past.length;

test('a closed outline takes the place of the outline in hand, as one step of undo', () => {
  takePen(session);
  set([0, 0], [3, 0], [3, 5]);
  bowPenEdge(session, 0.25);
  expect(closePen(session)).toBe(true);
  expect(profiles()[0].drawn).toEqual([at(0, 0), { ...at(3, 0), bulge: 0.25 }, at(3, 5)]);
  expect(session.documents.getState().document?.file.profiles[0]).toMatchObject({ note: 'kept' });
  expect(steps()).toBe(1);
  expect(session.draw.getState()).toMatchObject({ pen: null, penFor: null, tool: 'choose' });
  undo(session.documents);
  expect(profiles()[0].drawn).toHaveLength(4);
});

test('with a head it becomes a profile of its own, which is picked', () => {
  takePen(session, { head: { kind: 'opening', name: 'Teal keyway', afterId: 'bar' } });
  set([0, 0], [2.1, 0], [2.1, 6.1], [0, 6.1]);
  expect(closePen(session)).toBe(true);
  expect(profiles().map(({ id }) => id)).toEqual(['bar', 'teal-keyway']);
  expect(session.selection.getState()).toMatchObject({ openingId: 'teal-keyway', part: 'opening' });
  expect(steps()).toBe(1);
  undo(session.documents);
  expect(profiles()).toHaveLength(1);
});

test('one that crosses is refused with words and its place, and the pen goes on', () => {
  takePen(session);
  set([0, 0], [4, 0], [0, 4], [4, 4]);
  expect(closePen(session)).toBe(false);
  const { refused, pen, tool } = session.draw.getState();
  expect(refused?.words).toBe('Not closed: edge 2 crosses edge 4. Take vertices back, or move on.');
  expect(refused?.at).toEqual([at(2, 2)]);
  expect([pen?.length, tool, steps()]).toEqual([4, 'pen', 0]);
  takeBackPenVertex(session);
  expect(session.draw.getState().refused).toBeNull();
  expect(closePen(session)).toBe(true);
});

test('fewer than three vertices are refused too', () => {
  takePen(session);
  expect(closePen(session)).toBe(false);
  set([0, 0], [1, 0]);
  expect(closePen(session)).toBe(false);
  expect(session.draw.getState().refused?.words).toMatch(/needs at least 3/);
});

test('the pen put away keeps what it has begun; discarded, it does not', () => {
  takePen(session);
  set([0, 0], [1, 0]);
  putPenAway(session);
  expect(session.draw.getState()).toMatchObject({ tool: 'choose', pen: [at(0, 0), at(1, 0)] });
  takePen(session);
  set([1, 1]);
  expect(session.draw.getState().pen).toHaveLength(3);
  discardPen(session);
  expect(session.draw.getState().pen).toBeNull();
});

test('what was discarded comes back with its target, and a new outline or another edit lets it go', () => {
  const head = { kind: 'opening', name: 'Teal keyway' } as const;
  takePen(session, { head });
  set([0, 0], [1, 0]);
  discardPen(session);
  expect(session.draw.getState()).toMatchObject({ tool: 'choose', pen: null, penFor: null });
  expect(bringBackPen(session)).toBe(true);
  expect(session.draw.getState()).toMatchObject({ tool: 'pen', pen: [at(0, 0), at(1, 0)], penFor: { head } });
  expect(bringBackPen(session)).toBe(false);
  discardPen(session);
  takePen(session);
  set([5, 5]);
  expect(bringBackPen(session)).toBe(false);
  discardPen(session);
  deleteSection(session, profiles()[0]);
  duplicateSection(session, profiles()[0]);
  expect(bringBackPen(session)).toBe(false);
  undo(session.documents);
  expect(bringBackPen(session)).toBe(true);
});

test('a new section that has only its name so far is kept when the pen is put away', () => {
  const head = { kind: 'blank', name: 'Teal blank' } as const;
  takePen(session, { head });
  putPenAway(session);
  takePen(session);
  expect(session.draw.getState().penFor).toEqual({ head });
  discardPen(session);
  takePen(session);
  expect(session.draw.getState().penFor).toEqual({ id: 'bar' });
  discardPen(session);
  expect(session.draw.getState().discarded).toBeNull();
});

test('the outline that happens to be picked draws the pen only where it is to take its place', () => {
  session.draw.setState((s) => ({ snap: { ...s.snap, grid: false } }));
  const view = { scale: 1e-4, x: 100, y: 700 };
  // Three pixels beside the bar's corner at (2, 6).
  const press = { at: { px: 303, py: 100 }, button: 0, spaceHeld: false, shift: false, alt: false };
  const pressed = () => {
    pressHand(session, { view, ghosts: [] }, press, { shift: false, free: false });
    return session.draw.getState().pen?.at(-1);
  };
  takePen(session, { head: { kind: 'opening', name: 'Teal keyway' } });
  expect(pressed()).toEqual({ x: 2_030_000, y: 6 * MM });
  discardPen(session);
  takePen(session);
  expect(pressed()).toEqual(at(2, 6));
});

test('vertices are taken back one by one, with the bow of the edge that led to them', () => {
  takePen(session);
  set([0, 0], [1, 0]);
  bowPenEdge(session, 0.5);
  expect(setPenVertex(session, at(1, 0))).toBe(false);
  takeBackPenVertex(session);
  expect(session.draw.getState().pen).toEqual([at(0, 0)]);
  takeBackPenVertex(session);
  expect(session.draw.getState().pen).toBeNull();
  expect(takeBackPenVertex(session)).toBe(false);
});

test('the pen closes at its first vertex, bows by the pressed pointer, and shows what crosses', () => {
  const view = { scale: 1e-4, x: 100, y: 700 };
  const pen = [at(0, 0), at(4, 0), at(4, 4)];
  expect(closesPen(pen, view, { px: 107, py: 693 })).toBe(true);
  expect(closesPen(pen.slice(0, 2), view, { px: 100, py: 700 })).toBe(false);
  // 100 pixels to the right of an edge of 4 mm that runs upwards: a bow of 1 mm, half of half the edge.
  expect(penBow(pen, false, view, { px: 600, py: 500 }, null)?.bulge).toBeCloseTo(0.5, 9);
  // (1, 3) is the root of 2 off the diagonal from (4, 4) to (0, 0), half of half its length, to the right of the way.
  expect(penBow(pen, true, view, { px: 200, py: 400 }, null)?.bulge).toBeCloseTo(0.5, 9);
  expect(penBow([at(0, 0)], false, view, { px: 0, py: 0 }, null)).toBeNull();
  expect(penCrossings(pen, at(2, -1), false)).toHaveLength(1);
  expect(penCrossings(pen, at(0, 4), false)).toEqual([]);
  expect(penCrossings([...pen, at(0, 4), at(5, 2)], null, true).length).toBeGreaterThan(0);
});

test('arrow keys move the cross by a step of the grid, ten with shift', () => {
  expect(crossStep('ArrowLeft', false, 50_000)).toEqual({ x: -50_000, y: 0 });
  expect(crossStep('ArrowUp', true, 50_000)).toEqual({ x: 0, y: 500_000 });
  expect(crossStep('Enter', false, 50_000)).toBeNull();
});
