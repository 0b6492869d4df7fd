import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';
import { isEdited, makeDocumentStore, markSaved, openText } from '../../../src/app/state/document-state.ts';
import {
  beginHold,
  commitFamily,
  dropEdit,
  endEdit,
  endHold,
  previewFamily,
  previewOutline,
  redo,
  undo,
} from '../../../src/app/state/edit-document.ts';
import { moveByHand } from '../../../src/app/state/hand-state.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import type { Point } from '../../../src/geom/point.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');
const { doors } = fakeDoors();

let documents = makeDocumentStore();

beforeEach(() => {
  documents = makeDocumentStore();
  openText(documents, doors, LESSON, 'lesson.json');
});

const ringOf = (id: string): readonly Point[] =>
  documents.getState().document?.family.profiles.find((profile) => profile.id === id)?.ring ?? [];
const shifted = (id: string, by: number) => {
  const [first, ...rest] = ringOf(id);
  return [{ x: first.x + by, y: first.y }, ...rest];
};
const edit = (by: number, id = 'heron-blank') => {
  previewOutline(documents, doors, id, shifted(id, by));
  endEdit(documents);
};

test('a whole gesture is one step of undo, and the file follows the family', () => {
  const before = documents.getState().document;
  const x = ringOf('heron-blank')[0].x;
  for (let n = 1; n <= 5; n++) previewOutline(documents, doors, 'heron-blank', shifted('heron-blank', 1000));
  expect(ringOf('heron-blank')[0].x).toBe(x + 5000);
  expect(documents.getState().past).toEqual([]);
  endEdit(documents);
  expect(documents.getState().past).toEqual([before]);
  undo(documents);
  expect(documents.getState().document).toBe(before);
  redo(documents);
  expect(ringOf('heron-blank')[0].x).toBe(x + 5000);
  const { file } = documents.getState().document ?? {};
  const saved = JSON.parse(file ? doors.writeFamily(file) : '{}');
  expect(saved.profiles.find(({ id }: { id: string }) => id === 'heron-blank').outline[0][0]).toBe((x + 5000) / 1e6);
});

test('whatever a key does while it is held is one step of undo, and none where it ends where it began', () => {
  const x = ringOf('heron-blank')[0].x;
  const at = () => ringOf('heron-blank')[0].x - x;
  edit(500);
  // A gesture that was under way when the key went down is a step of its own.
  previewOutline(documents, doors, 'heron-blank', shifted('heron-blank', 500));
  beginHold(documents);
  endEdit(documents);
  for (const by of [1000, 1000, 1000]) edit(by);
  expect(at()).toBe(4000);
  expect(documents.getState().past).toHaveLength(3);
  endHold(documents);
  edit(1000);
  beginHold(documents);
  const before = documents.getState().document;
  for (const by of [1000, -1000]) edit(by);
  expect(documents.getState().document).toBe(before);
  edit(1000);
  edit(-1000);
  expect(documents.getState().past).toHaveLength(4);
  // Undo that is held goes back step by step.
  for (const left of [4000, 1000, 500, 0]) {
    undo(documents);
    expect(at()).toBe(left);
  }
  for (const left of [500, 1000]) {
    redo(documents);
    expect(at()).toBe(left);
  }
  expect(documents.getState().past).toHaveLength(2);
});

test('undo and redo walk through all steps, and a new edit forgets what was undone', () => {
  const x = ringOf('heron-blank')[0].x;
  const at = () => ringOf('heron-blank')[0].x - x;
  for (const by of [1000, 2000, 4000]) edit(by);
  expect(at()).toBe(7000);
  undo(documents);
  undo(documents);
  expect(at()).toBe(1000);
  redo(documents);
  expect(at()).toBe(3000);
  edit(16_000);
  expect(at()).toBe(19_000);
  redo(documents);
  expect(at()).toBe(19_000);
  for (let n = 0; n < 9; n++) undo(documents);
  expect(at()).toBe(0);
});

test('an undo in the middle of a gesture takes the gesture back, and loses nothing', () => {
  const x = ringOf('heron-blank')[0].x;
  edit(1000);
  previewOutline(documents, doors, 'heron-blank', shifted('heron-blank', 2000));
  undo(documents);
  expect(ringOf('heron-blank')[0].x).toBe(x + 1000);
  expect(documents.getState().editedFrom).toBeNull();
  redo(documents);
  expect(ringOf('heron-blank')[0].x).toBe(x + 3000);
});

test('a gesture that ends where it began is no step, and what was undone can still be done again', () => {
  edit(1000);
  undo(documents);
  previewOutline(documents, doors, 'heron-keyway', shifted('heron-keyway', 0));
  endEdit(documents);
  // A milled profile became a drawn one: that is a change, although nothing moved.
  expect(documents.getState().past).toHaveLength(1);
  undo(documents);
  const before = documents.getState();
  previewOutline(documents, doors, 'strip-06', shifted('strip-06', 4000));
  previewOutline(documents, doors, 'strip-06', shifted('strip-06', -4000));
  endEdit(documents);
  expect(documents.getState()).toMatchObject({ document: before.document, past: [], editedFrom: null });
  expect(documents.getState().future).toEqual(before.future);
  expect(before.future).toHaveLength(1);
});

test('a gesture that is given up leaves no step behind', () => {
  const before = documents.getState().document;
  previewOutline(documents, doors, 'heron-blank', shifted('heron-blank', 1000));
  dropEdit(documents);
  expect(documents.getState()).toMatchObject({ document: before, past: [], future: [], editedFrom: null });
  endEdit(documents);
  expect(documents.getState().past).toEqual([]);
});

test('an outline that is not sound is not taken, and the reason is told until the edit ends', () => {
  const before = documents.getState().document;
  const [a, b, c, ...rest] = ringOf('heron-blank');
  expect(previewOutline(documents, doors, 'heron-blank', [a, c, b, ...rest])).toBe(false);
  expect(documents.getState().document).toBe(before);
  expect(documents.getState().editFault).toBeTruthy();
  endEdit(documents);
  expect(documents.getState().editFault).toBeNull();
});

test('a document counts as edited until it is saved or every edit is undone', () => {
  expect(isEdited(documents.getState())).toBe(false);
  edit(1000);
  expect(isEdited(documents.getState())).toBe(true);
  undo(documents);
  expect(isEdited(documents.getState())).toBe(false);
  redo(documents);
  const { document } = documents.getState();
  if (document) markSaved(documents, document);
  expect(isEdited(documents.getState())).toBe(false);
  undo(documents);
  expect(isEdited(documents.getState())).toBe(true);
  openText(documents, doors, LESSON, 'lesson.json');
  expect(isEdited(documents.getState())).toBe(false);
  expect(documents.getState()).toMatchObject({ past: [], future: [] });
});

test('an edit leaves the pick and the hand where they are; another family does not, and is judged as drawn', () => {
  const session = makeSession(doors, null);
  documents = session.documents;
  openText(documents, doors, LESSON, 'lesson.json');
  session.selection.setState({ entrantId: 'plover-blank', openingId: 'bittern-keyway' });
  moveByHand(session.hand, undefined, { x: 5, y: 7 });
  session.conditions.setState({ wear: 10_000, telling: 'parts' });
  const held = session.hand.getState().placement;
  edit(1000, 'plover-blank');
  undo(documents);
  redo(documents);
  previewOutline(documents, doors, 'plover-blank', shifted('plover-blank', 1000));
  dropEdit(documents);
  expect(session.hand.getState().placement).toBe(held);
  expect(session.selection.getState()).toMatchObject({ entrantId: 'plover-blank', openingId: 'bittern-keyway' });
  expect(session.conditions.getState().wear).toBe(10_000);
  openText(documents, doors, LESSON, 'other.json');
  expect(session.hand.getState().placement).toBeNull();
  expect(session.conditions.getState()).toMatchObject({ wear: 0, tiltLimit: 0, telling: 'parts' });
});

test('the pair in hand is judged before the edit is drawn', () => {
  const session = makeSession(doors, null);
  documents = session.documents;
  openText(documents, doors, LESSON, 'lesson.json');
  const fitNow = () => session.results.getState().fits?.fits[0][0];
  const before = fitNow();
  // The first corner of the outline goes out through the wall.
  previewOutline(documents, doors, 'heron-blank', shifted('heron-blank', -400_000));
  expect(before?.verdict).toBe('enters');
  expect(fitNow()?.verdict).toBe('blocked');
  expect(fitNow()?.clearance).toBeLessThan(0);
  undo(documents);
  expect(fitNow()).toEqual(before);
});

test('an edit of the family is one step, and a gesture under way is a step before it', () => {
  const before = documents.getState().document;
  if (!before) throw new Error('no family is open');
  const x = ringOf('heron-blank')[0].x;
  previewOutline(documents, doors, 'heron-blank', shifted('heron-blank', 1000));
  const { file } = documents.getState().document ?? before;
  expect(commitFamily(documents, doors, { ...file, name: 'Second lesson' })).toBeNull();
  expect(documents.getState().document?.family.name).toBe('Second lesson');
  undo(documents);
  expect(documents.getState().document?.family.name).toBe(before.family.name);
  expect(ringOf('heron-blank')[0].x).toBe(x + 1000);
  undo(documents);
  expect(documents.getState().document).toBe(before);
});

test('a family that is not sound is not taken: everything wrong is told, and there is no step', () => {
  const before = documents.getState().document;
  if (!before) throw new Error('no family is open');
  const faults = commitFamily(documents, doors, { ...before.file, name: ' ', runningClearance: -1 });
  expect(faults?.map(({ path }) => path)).toEqual(['name', 'runningClearance']);
  expect(documents.getState()).toMatchObject({ document: before, past: [], editedFrom: null });
  expect(previewFamily(documents, doors, before.file)).toBeNull();
  expect(documents.getState().editedFrom).toBeNull();
});
