import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import {
  beginOutlineEdit,
  chooseVertices,
  finishOutline,
  moveOutline,
  putVertex,
  verticesInHand,
} from '../../../src/app/state/draw/draw-editing.ts';
import {
  dropPreview,
  isPreviewed,
  showPreview,
  standingOutline,
  takePreview,
} from '../../../src/app/state/draw/outline-preview.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { pickProfile } from '../../../src/app/state/selection-state.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { moveOutline as shifted } from '../../../src/profile/move-outline.ts';
import { fakeDoors } from './fake-doors.ts';

const MM = 1e6;
const bar = (id: string, kind: string, width: number) => ({
  id,
  kind,
  name: id,
  outline: [
    [0, 0],
    [width, 0],
    [width, 6],
    [0, 6],
  ],
});
const FAMILY = {
  format: 'sectionary-family',
  version: 1,
  name: 'Plain',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [bar('slot', 'opening', 2.1), bar('bar', 'blank', 2), bar('bar-2', 'blank', 1.9)],
};

let session: Session;

beforeEach(() => {
  session = makeSession(fakeDoors().doors, null);
  openText(session.documents, session.doors, JSON.stringify(FAMILY), 'bar.json');
});

const steps = () => session.documents.getState().past.length;
const standing = () => standingOutline(session.documents.getState(), 'bar');
const right = (mm: number) => shifted(standing(), { x: mm * MM, y: 0 });

test('what an operation shows is made of the outline without it, and another value does not add to the first', () => {
  const before = standing();
  showPreview(session, right(1));
  expect(verticesInHand(session)[0].x).toBe(1 * MM);
  expect(standing()).toBe(before);
  showPreview(session, right(2));
  expect(verticesInHand(session)[0].x).toBe(2 * MM);
  expect(takePreview(session, right(2))).toBe('step');
  expect(steps()).toBe(1);
});

test('a vertex that is moved while a form is open is not lost: the form goes on from the outline as it is then', () => {
  showPreview(session, right(1));
  chooseVertices(session, [2]);
  const edit = beginOutlineEdit(session);
  expect(verticesInHand(session)[0].x).toBe(0);
  moveOutline(session, (edit?.base ?? []).with(2, { x: 2.3 * MM, y: 6 * MM }), [2]);
  finishOutline(session);
  expect(standing()[2].x).toBe(2.3 * MM);
  expect(takePreview(session, right(1))).toBe('step');
  expect(verticesInHand(session).map(({ x }) => x / MM)).toEqual([1, 3, 3.3, 1]);
  expect(steps()).toBe(2);
});

test('picking another section drops what is only shown', () => {
  showPreview(session, right(1));
  pickProfile(session.selection, { id: 'bar-2', kind: 'blank' });
  expect(steps()).toBe(0);
  expect(standing()[0].x).toBe(0);
  expect(session.documents.getState().editedFrom).toBeNull();
  expect(isPreviewed(session)).toBe(false);
});

test('dropping gives the outline back, and leaves alone what a hand holds', () => {
  showPreview(session, right(1));
  dropPreview(session);
  expect(verticesInHand(session)[0].x).toBe(0);
  const edit = beginOutlineEdit(session);
  moveOutline(session, (edit?.base ?? []).with(2, { x: 2.3 * MM, y: 6 * MM }), [2]);
  dropPreview(session);
  expect(verticesInHand(session)[2].x).toBe(2.3 * MM);
});

test('an operation that changes nothing is no step, and says so; one that is not sound is not taken', () => {
  putVertex(session, 2, { x: 2.3 * MM, y: 6 * MM });
  undo(session.documents);
  expect(takePreview(session, right(0))).toBe('same');
  expect(steps()).toBe(0);
  expect(session.documents.getState().future).toHaveLength(1);
  const crossing = [standing()[0], standing()[2], standing()[1], standing()[3]];
  expect(takePreview(session, crossing)).toBe('refused');
  expect(standing()[2].x).toBe(2 * MM);
});

test('undo in the middle of a drag ends it: the next movement has nothing in hand', () => {
  const edit = beginOutlineEdit(session);
  const wanted = (edit?.base ?? []).with(2, { x: 2.3 * MM, y: 6 * MM });
  moveOutline(session, wanted, [2]);
  undo(session.documents);
  expect(session.draw.getState().edit).toBeNull();
  expect(moveOutline(session, wanted, [2])).toBe(false);
  expect(session.documents.getState().future).toHaveLength(1);
});
