import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { endEdit, redo, undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import {
  addStepAfter,
  changeStepNow,
  deleteStep,
  doubleStep,
  pickStep,
  shiftStep,
  stepsNow,
  stepWithin,
  takeLesson,
  typeIntoStep,
  typeTitle,
} from '../../../src/app/state/teach/lesson-editing.ts';
import { PROJECT_ROOT } from '../../kit/install-when-needed.mjs';
import { fakeDoors } from './fake-doors.ts';

const FIRST = readFileSync(join(PROJECT_ROOT, 'profiles-demo', 'first-lesson.json'), 'utf8');

function opened(text = FIRST): Session {
  const session = makeSession(fakeDoors().doors, null);
  openText(session.documents, session.doors, text, 'test.json');
  return session;
}

const titles = (session: Session) => stepsNow(session).map(({ title }) => title);
const picked = ({ teach }: Session) => teach.getState().step;
const ALL = ['A blank, a keyway', 'In it goes', 'Here it stops', 'Two grooves, two keyways', 'What do you think?'];

test('adding, doubling, moving and deleting pick the step that was meant, each a step of undo', () => {
  const session = opened();
  expect(titles(session)).toEqual(ALL);
  pickStep(session, 1);
  addStepAfter(session, 'pair');
  expect([titles(session)[2], picked(session)]).toEqual(['Does it go in?', 2]);
  expect(stepsNow(session)[2]).toMatchObject({ blank: 'heron-blank', opening: 'heron-keyway' });
  shiftStep(session, 2, 0);
  expect([titles(session)[0], picked(session)]).toEqual(['Does it go in?', 0]);
  shiftStep(session, 0, -1);
  doubleStep(session, 0);
  expect([titles(session).slice(0, 2), picked(session)]).toEqual([['Does it go in?', 'Does it go in?'], 1]);
  deleteStep(session, 1);
  deleteStep(session, 0);
  expect(titles(session)).toEqual(ALL);
  for (let n = 0; n < 5; n++) undo(session.documents);
  expect(titles(session)).toEqual(ALL);
  expect(session.documents.getState().past).toHaveLength(0);
  for (let n = 0; n < 2; n++) redo(session.documents);
  expect(titles(session)[0]).toBe('Does it go in?');
});

test('what is typed is seen at once and is one step of undo when the field is left', () => {
  const session = opened();
  for (const text of ['H', 'He', 'Her']) expect(typeIntoStep(session, 1, { title: text })).toBeNull();
  expect(titles(session)[1]).toBe('Her');
  endEdit(session.documents);
  expect(session.documents.getState().past).toHaveLength(1);
  undo(session.documents);
  expect(titles(session)).toEqual(ALL);
});

test('what a file cannot hold is refused and leaves the lesson as it is', () => {
  const session = opened();
  expect(typeIntoStep(session, 0, { title: ' ' })).toMatchObject([{ path: 'lesson.steps[0].title' }]);
  expect(typeTitle(session, 'x'.repeat(201))).toMatchObject([{ path: 'lesson.title' }]);
  expect(changeStepNow(session, 0, { words: 'x'.repeat(2001) })).not.toBeNull();
  expect(titles(session)).toEqual(ALL);
  expect(session.documents.getState().past).toHaveLength(0);
});

test('an undo may leave the picked number behind the last step: then the last one is picked', () => {
  const session = opened();
  pickStep(session, 4);
  addStepAfter(session, 'words');
  expect(picked(session)).toBe(5);
  undo(session.documents);
  expect(stepWithin(picked(session), stepsNow(session))).toBe(4);
  deleteStep(session, 4);
  expect(picked(session)).toBe(3);
});

test('an edit of the lesson judges nothing anew and leaves every profile the same value', () => {
  const session = opened();
  const before = session.documents.getState().document?.family.profiles;
  addStepAfter(session, 'words');
  const after = session.documents.getState().document?.family.profiles;
  expect(after?.every((profile, i) => profile === before?.[i])).toBe(true);
});

test('a lesson put in place of another begins at its first step; undo brings the other back', () => {
  const session = opened();
  pickStep(session, 3);
  expect(takeLesson(session, { title: 'New', steps: [{ show: 'words', title: 'a' }] })).toBeNull();
  expect([titles(session), picked(session)]).toEqual([['a'], 0]);
  undo(session.documents);
  expect(titles(session)).toEqual(ALL);
});

test('a family without a lesson gets one with its first step', () => {
  const { lesson: _, ...bare } = JSON.parse(FIRST);
  const session = opened(JSON.stringify(bare));
  expect(stepsNow(session)).toEqual([]);
  addStepAfter(session, 'words');
  expect([titles(session), picked(session)]).toEqual([['A few words'], 0]);
});
