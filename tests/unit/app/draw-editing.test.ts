import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import {
  beginOutlineEdit,
  chooseAll,
  chooseVertices,
  chosenNow,
  deleteVertices,
  endNudges,
  finishOutline,
  giveUpOutline,
  insertVertex,
  moveOutline,
  nudgeChosen,
  putOutline,
  putVertex,
  setBulge,
  toggleVertex,
  verticesInHand,
  walkVertices,
} from '../../../src/app/state/draw/draw-editing.ts';
import { redo, undo } from '../../../src/app/state/edit-document.ts';
import { pickProfile } from '../../../src/app/state/selection-state.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import type { Point } from '../../../src/geom/point.ts';
import { type FakeDoors, fakeDoors } from './fake-doors.ts';

const MM = 1e6;
const BAR = {
  format: 'sectionary-family',
  version: 1,
  name: 'Plain',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    {
      id: 'slot',
      kind: 'opening',
      name: 'Slot keyway',
      outline: [
        [0, 0],
        [2.1, 0],
        [2.1, 6.6],
        [0, 6.6],
      ],
    },
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
    },
  ],
};

let session: Session;
let fake: FakeDoors;

beforeEach(() => {
  fake = fakeDoors();
  session = makeSession(fake.doors, null);
  openText(session.documents, session.doors, JSON.stringify(BAR), 'bar.json');
});

const at = (number: number): Point => verticesInHand(session)[number];
const steps = () => session.documents.getState().past.length;
const shifted = (number: number, dx: number, dy: number) => {
  const vertices = verticesInHand(session);
  const { x, y } = vertices[number];
  return vertices.with(number, { x: x + dx * MM, y: y + dy * MM });
};

test('choosing adds, takes out, walks round and chooses all', () => {
  chooseVertices(session, [2, 0]);
  expect(chosenNow(session)).toEqual([0, 2]);
  toggleVertex(session, 1);
  toggleVertex(session, 0);
  expect(chosenNow(session)).toEqual([1, 2]);
  walkVertices(session, 1);
  expect(chosenNow(session)).toEqual([3]);
  walkVertices(session, 1);
  expect(chosenNow(session)).toEqual([0]);
  walkVertices(session, -1);
  expect(chosenNow(session)).toEqual([3]);
  chooseAll(session);
  expect(chosenNow(session)).toEqual([0, 1, 2, 3]);
});

test('a drag is one step of undo, and its middle steps are none', () => {
  beginOutlineEdit(session);
  for (const dx of [0.1, 0.2, 0.3]) {
    const { edit } = session.draw.getState();
    moveOutline(session, (edit?.base ?? []).with(2, { x: (2 + dx) * MM, y: 6 * MM }), [2]);
  }
  expect(at(2)).toEqual({ x: 2.3 * MM, y: 6 * MM });
  expect(steps()).toBe(0);
  finishOutline(session);
  expect(steps()).toBe(1);
  undo(session.documents);
  expect(at(2)).toEqual({ x: 2 * MM, y: 6 * MM });
});

test('a crossing place is shown with all its crossings, told, and not taken; the next sound one is', () => {
  beginOutlineEdit(session);
  moveOutline(session, shifted(2, 0.1, 0), [2]);
  const wanted = [
    { x: 0, y: 0 },
    { x: 2 * MM, y: 0 },
    { x: -1 * MM, y: 3 * MM },
    { x: 0, y: 6 * MM },
  ];
  expect(moveOutline(session, wanted, [2])).toBe(false);
  const { refused } = session.draw.getState();
  expect(refused?.vertices).toBe(wanted);
  expect(refused?.words).toBe('Not taken: edge 2 crosses edge 4. The last sound outline stays.');
  // From (2, 0) to (-1, 3) and back to (0, 6): it crosses x = 0 at y = 2 only; it touches it nowhere else.
  expect(refused?.at).toEqual([{ x: 0, y: 2 * MM }]);
  finishOutline(session);
  expect(at(2)).toEqual({ x: 2.1 * MM, y: 6 * MM });
  expect(session.draw.getState().refused).not.toBeNull();
  chooseVertices(session, [1]);
  expect(session.draw.getState().refused).toBeNull();
});

test('giving up brings outline and choice back', () => {
  chooseVertices(session, [2]);
  beginOutlineEdit(session);
  moveOutline(session, shifted(2, 0.4, 0), [2]);
  expect(giveUpOutline(session)).toBe(true);
  expect(at(2)).toEqual({ x: 2 * MM, y: 6 * MM });
  expect(chosenNow(session)).toEqual([2]);
  expect(steps()).toBe(0);
  expect(giveUpOutline(session)).toBe(false);
});

test('an edit that undo ended takes no further move', () => {
  putVertex(session, 0, { x: -100, y: 0 });
  beginOutlineEdit(session);
  moveOutline(session, shifted(2, 0.1, 0), [2]);
  undo(session.documents);
  expect(moveOutline(session, shifted(2, 0.2, 0), [2])).toBe(false);
  expect(at(2)).toEqual({ x: 2 * MM, y: 6 * MM });
});

test('an outline turned inside out stays sound, and the chosen vertex is still the one in hand', () => {
  beginOutlineEdit(session);
  // (0, 0), (2, 0), (2, 6), (3, -0.5) is clockwise: it is kept as (0, 0), (3, -0.5), (2, 6), (2, 0).
  expect(moveOutline(session, verticesInHand(session).with(3, { x: 3 * MM, y: -0.5 * MM }), [3])).toBe(true);
  expect(chosenNow(session)).toEqual([1]);
  expect(at(1)).toEqual({ x: 3 * MM, y: -0.5 * MM });
});

test('presses within a second are one step of undo, later ones another', () => {
  chooseVertices(session, [2]);
  nudgeChosen(session, { x: 10_000, y: 0 });
  nudgeChosen(session, { x: 10_000, y: 0 });
  expect(at(2).x).toBe(2_020_000);
  expect(steps()).toBe(0);
  fake.calm();
  expect(steps()).toBe(1);
  nudgeChosen(session, { x: 0, y: 10_000 });
  endNudges(session);
  expect(steps()).toBe(2);
  undo(session.documents);
  undo(session.documents);
  expect(at(2)).toEqual({ x: 2 * MM, y: 6 * MM });
  redo(session.documents);
  expect(at(2)).toEqual({ x: 2_020_000, y: 6 * MM });
});

test('a press that would cross is refused and does not count for the next one', () => {
  chooseVertices(session, [2]);
  expect(nudgeChosen(session, { x: -3 * MM, y: -3 * MM })).toBe(false);
  expect(session.draw.getState().refused?.words).toMatch(/^Not taken/);
  expect(nudgeChosen(session, { x: 10_000, y: 0 })).toBe(true);
  expect(at(2).x).toBe(2_010_000);
});

test('undo in a burst takes the burst back, and the next press begins anew', () => {
  chooseVertices(session, [2]);
  nudgeChosen(session, { x: 10_000, y: 0 });
  undo(session.documents);
  expect(at(2).x).toBe(2 * MM);
  nudgeChosen(session, { x: 30_000, y: 0 });
  expect(at(2).x).toBe(2_030_000);
});

test('vertices are added, bowed and removed, each as one step, and fewer than three are refused in words', () => {
  expect(insertVertex(session, 1)).toBe(true);
  expect(at(2)).toEqual({ x: 2 * MM, y: 3 * MM });
  expect(chosenNow(session)).toEqual([2]);
  expect(setBulge(session, 1, 0.5)).toBe(true);
  expect(verticesInHand(session)[1].bulge).toBe(0.5);
  expect(deleteVertices(session)).toBe(true);
  expect(verticesInHand(session)).toHaveLength(4);
  expect(steps()).toBe(3);
  chooseVertices(session, [0, 1]);
  expect(deleteVertices(session)).toBe(false);
  expect(session.draw.getState().refused?.words).toMatch(/at least three vertices/);
  expect(steps()).toBe(3);
});

test('another profile begins with nothing chosen; undo forgets a refusal', () => {
  chooseVertices(session, [2]);
  pickProfile(session.selection, { id: 'slot', kind: 'opening' });
  expect(chosenNow(session)).toEqual([]);
  putVertex(session, 2, { x: 2.2 * MM, y: 6.6 * MM });
  putOutline(session, shifted(2, -5, 0));
  expect(session.draw.getState().refused).not.toBeNull();
  undo(session.documents);
  expect(session.draw.getState().refused).toBeNull();
});

test('another pick in the middle of an edit ends it: what was taken stays, as one step', () => {
  chooseVertices(session, [2]);
  nudgeChosen(session, { x: 10_000, y: 0 });
  pickProfile(session.selection, { id: 'slot', kind: 'opening' });
  expect(steps()).toBe(1);
  expect(session.draw.getState().edit).toBeNull();
  fake.calm();
  expect(steps()).toBe(1);
  expect(moveOutline(session, verticesInHand(session), [])).toBe(false);
});
