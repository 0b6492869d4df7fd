import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { noticesOf } from '../../../src/app/state/notices-state.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { makePassageBlank } from '../../../src/app/state/tiers/passage-blank.ts';
import { chooseOpenings, chosenIds, passageInput, toggleOpening } from '../../../src/app/state/tiers/passage-choice.ts';
import { commonPassage } from '../../../src/passage/find-passage.ts';
import { judge } from '../../kit/judge.ts';
import { fakeDoors } from './fake-doors.ts';

const TEXT = readFileSync('profiles-demo/first-lesson.json', 'utf8');

function opened() {
  const { doors } = fakeDoors();
  const session = makeSession(doors, null);
  openText(session.documents, doors, TEXT, 'first-lesson.json');
  const family = session.documents.getState().document?.family;
  if (!family) throw new Error('the first lesson is not sound');
  const ids = family.profiles.filter(({ kind }) => kind === 'opening').map(({ id }) => id);
  const search = commonPassage(passageInput(family, ids));
  let step = search.next();
  while (!step.done) step = search.next();
  return { session, family, ids, passage: step.value };
}

test('the widest blank is added as one step of undo, picked, and enters every chosen keyway as the file has it', () => {
  const { session, family, passage } = opened();
  const before = session.documents.getState().document;
  expect(makePassageBlank(session, family, passage, 'mm')).toBeNull();
  const after = session.documents.getState().document;
  const { entrantId } = session.selection.getState();
  const made = after?.family.profiles.find(({ id }) => id === entrantId);
  expect(made).toMatchObject({ kind: 'blank', name: 'Passage blank, all keyways' });
  for (const { kind, name, ring } of family.profiles)
    if (kind === 'opening' && made)
      expect(judge(ring, made.ring, family.runningClearance).verdict, name).toBe('enters');
  expect(
    noticesOf(session)
      .getState()[0]
      .keys.map(({ label }) => label),
  ).toContain('Open in Draw');
  makePassageBlank(session, after?.family ?? family, passage, 'mm');
  expect(session.documents.getState().document?.family.profiles.at(-1)?.name).toBe('Passage blank, all keyways (2)');
  undo(session.documents);
  undo(session.documents);
  expect(session.documents.getState().document).toBe(before);
});

test('all keyways chosen is told as all, so that a new one belongs to it', () => {
  const { session, family, ids } = opened();
  toggleOpening(session, family, ids[0]);
  expect(session.tiers.getState().chosenOpenings).toEqual(ids.slice(1));
  toggleOpening(session, family, ids[0]);
  expect(session.tiers.getState().chosenOpenings).toBeNull();
  chooseOpenings(session, family, ['nobody']);
  expect(chosenIds(family, session.tiers.getState().chosenOpenings)).toEqual([]);
});
