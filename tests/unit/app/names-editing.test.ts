import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { answerNow, askQuestion } from '../../../src/app/state/names/asking.ts';
import { entryKey } from '../../../src/app/state/names/name-rows.ts';
import {
  addEntries,
  addEntry,
  changeEntry,
  entriesOf,
  newAmong,
  removeEntry,
  rename,
  strangersAmong,
} from '../../../src/app/state/names/register-editing.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { stepBack } from '../../../src/app/state/step-history.ts';
import { readNames, writeNames } from '../../../src/interchange/csv/read-names.ts';
import type { NameFile } from '../../../src/interchange/json/schema.ts';
import { fakeDoors } from './fake-doors.ts';

const DEMO = readFileSync(new URL('../../../profiles-demo/polderwick.json', import.meta.url), 'utf8');

let session: Session;

beforeEach(() => {
  session = makeSession(fakeDoors().doors, null);
  openText(session.documents, session.doors, DEMO, 'polderwick.json');
});

const names = () => session.documents.getState().document?.file.names ?? [];
const told = () => session.names.getState().done?.words;

const ENTRY: NameFile = { text: 'Q 901', kind: 'blank', section: 'Heron', scheme: 'Test list' };

test('an entry is added, changed and taken out, each as one step that is told', () => {
  const before = names();
  expect(addEntry(session, ENTRY)).toBeNull();
  expect(names()).toEqual([...before, ENTRY]);
  expect(session.names.getState().look.chosen).toBe(entryKey(before.length));
  expect(changeEntry(session, before.length, { ...ENTRY, chambers: 5 })).toBeNull();
  expect(names().at(-1)).toEqual({ ...ENTRY, chambers: 5 });
  removeEntry(session, before.length);
  expect(names()).toEqual(before);
  expect(told()).toBe('“Q 901” was deleted.');
  stepBack(session);
  expect(names().at(-1)?.chambers).toBe(5);
  stepBack(session);
  stepBack(session);
  expect(session.documents.getState().past).toEqual([]);
});

test('the same entry is not put in twice, and a bad one is refused with everything as it was', () => {
  addEntry(session, ENTRY);
  expect(addEntry(session, { ...ENTRY })?.[0].what).toMatch(/stands in the register already/);
  const before = session.documents.getState().document;
  expect(changeEntry(session, 0, { ...ENTRY, chambers: 40 })?.[0].path).toMatch(/^names\[0\]\.chambers/);
  expect(session.documents.getState().document).toBe(before);
  // Nothing stands there: nothing happens.
  removeEntry(session, 99_999);
  expect(session.documents.getState().document).toBe(before);
});

test('a table of all names comes back without one name more', () => {
  const family = session.documents.getState().document?.family;
  if (!family) throw new Error('no family');
  const table = readNames(writeNames(entriesOf(family)));
  if (!table.ok) throw new Error(JSON.stringify(table.faults));
  expect(newAmong(session, table.names)).toEqual([]);
  expect(newAmong(session, [...table.names, ENTRY])).toEqual([ENTRY]);
  addEntries(session, [ENTRY, { ...ENTRY, text: 'Q 902' }]);
  expect(told()).toBe('2 names were added.');
});

test('a name of a section or a profile that is not there is told before it is taken, with the nearest one', () => {
  const table: NameFile[] = [
    ENTRY,
    { ...ENTRY, text: 'K-2', section: 'Herron' },
    { text: 'K-3', kind: 'blank', profile: 'gone' },
  ];
  expect(strangersAmong(session, table).map(({ path, what, cure }) => `${path}: ${what}. ${cure}`)).toEqual([
    'K-2: There is no section "Herron" in this family. Is it Heron? Write that, or it is taken as it stands.',
    'K-3: There is no profile "gone" in this family. The name is taken, but it stands for nothing here.',
  ]);
});

test('a renamed section takes its old name along as superseded', () => {
  const renames = [{ target: { of: 'section', section: 'Heron' } as const, to: 'Alder' }];
  expect(rename(session, renames, 'Done.')).toBeNull();
  const family = session.documents.getState().document?.family;
  expect(family?.profiles.find(({ id }) => id === 'heron-keyway')?.name).toBe('Alder keyway');
  expect(names()).toContainEqual({ text: 'Heron', kind: 'section', section: 'Alder', supersededBy: 'Alder' });
});

test('a question is answered with what is known, and picks what it asks about', () => {
  const question = 'Does the Reed group blank go into the Smew keyway?';
  askQuestion(session, ` ${question} `);
  // No thread runs here, so nothing is judged but the picked pair.
  expect(answerNow(session, question)?.kind).toBe('not judged yet');
  expect(session.names.getState()).toMatchObject({ asked: question, question, recent: [question], sheet: 'ask' });
  askQuestion(session, 'what is the Plover keyway');
  expect(session.selection.getState().openingId).toBe('plover-keyway');
  askQuestion(session, question);
  expect(session.names.getState().recent).toEqual([question, 'what is the Plover keyway']);
  askQuestion(session, '   ');
  expect(session.names.getState().asked).toBe(question);
  openText(session.documents, session.doors, DEMO, 'again.json');
  expect(session.names.getState().asked).toBe('');
});
