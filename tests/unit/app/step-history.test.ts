import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { putVertex, verticesInHand } from '../../../src/app/state/draw/draw-editing.ts';
import { showPreview } from '../../../src/app/state/draw/outline-preview.ts';
import { closePen, discardPen, setPenVertex, takePen } from '../../../src/app/state/draw/pen-editing.ts';
import { changeFamilyFields } from '../../../src/app/state/draw/section-editing.ts';
import { pickProfile } from '../../../src/app/state/selection-state.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { stepBack, stepOn } from '../../../src/app/state/step-history.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');
const MM = 1e6;

let session: Session;

beforeEach(() => {
  const fake = fakeDoors();
  session = makeSession(fake.doors, null);
  openText(session.documents, fake.doors, LESSON, 'family.json');
  session.selection.setState({ view: 'draw' });
});

const picked = () => {
  const { part, entrantId, openingId } = session.selection.getState();
  return part === 'entrant' ? entrantId : openingId;
};
const pick = (id: string, kind: 'opening' | 'blank') => pickProfile(session.selection, { id, kind });
const moveFirst = () => {
  const { x, y } = verticesInHand(session)[0];
  expect(putVertex(session, 0, { x: x - 1000, y })).toBe(true);
};
const drawSedge = () => {
  takePen(session, { head: { kind: 'opening', name: 'Sedge keyway' } });
  for (const [x, y] of [
    [0, 0],
    [2, 0],
    [2, 7],
  ])
    setPenVertex(session, { x: x * MM, y: y * MM });
};

test('undo and redo pick the section that they change', () => {
  pick('bittern-keyway', 'opening');
  moveFirst();
  pick('plover-blank', 'blank');
  moveFirst();
  pick('heron-keyway', 'opening');
  stepBack(session);
  expect(picked()).toBe('plover-blank');
  stepBack(session);
  expect(picked()).toBe('bittern-keyway');
  pick('heron-blank', 'blank');
  stepOn(session);
  expect(picked()).toBe('bittern-keyway');
  stepOn(session);
  expect(picked()).toBe('plover-blank');
});

test('a section that comes again is picked again', () => {
  drawSedge();
  expect(closePen(session)).toBe(true);
  expect(picked()).toBe('sedge-keyway');
  stepBack(session);
  expect(picked()).not.toBe('sedge-keyway');
  stepOn(session);
  expect(picked()).toBe('sedge-keyway');
});

test('what changes no section picks none, nor does a change of one that Compare shows', () => {
  changeFamilyFields(session, { name: 'Other', runningClearance: 30_000, tolerance: null, tiltLimitDeg: 1, note: '' });
  pick('bittern-keyway', 'opening');
  moveFirst();
  pick('plover-blank', 'blank');
  session.selection.setState({ view: 'compare' });
  stepBack(session);
  expect(picked()).toBe('plover-blank');
  stepBack(session);
  expect(picked()).toBe('plover-blank');
  stepOn(session);
  expect(session.documents.getState().document?.family.name).toBe('Other');
  expect(picked()).toBe('plover-blank');
});

test('undo brings a discarded pen back before it takes a step back; what is only shown is no step', () => {
  pick('heron-keyway', 'opening');
  moveFirst();
  drawSedge();
  discardPen(session);
  stepBack(session);
  expect(session.draw.getState()).toMatchObject({ tool: 'pen', penFor: { head: { name: 'Sedge keyway' } } });
  expect(session.draw.getState().pen).toHaveLength(3);
  expect(session.documents.getState().past).toHaveLength(1);
  discardPen(session);
  showPreview(
    session,
    verticesInHand(session).map(({ x, y }) => ({ x: x + 5000, y })),
  );
  stepBack(session);
  expect(session.draw.getState().pen).toHaveLength(3);
  stepBack(session);
  expect(session.documents.getState()).toMatchObject({ past: [], editedFrom: null });
});
