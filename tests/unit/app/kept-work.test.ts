import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { type KeptWork, packWork, unpackWork, type WorkState, workState } from '../../../src/app/keep/kept-work.ts';
import {
  isEdited,
  makeDocumentStore,
  markSaved,
  openDocument,
  openText,
} from '../../../src/app/state/document-state.ts';
import { commitFamily, endEdit, previewFamily, redo, undo } from '../../../src/app/state/edit-document.ts';
import type { FamilyFile, ProfileFile } from '../../../src/interchange/json/schema.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { fakeDoors } from './fake-doors.ts';

const DEMO = readFileSync(new URL('../../../profiles-demo/polderwick.json', import.meta.url), 'utf8');
const { doors } = fakeDoors();

let documents = makeDocumentStore();

beforeEach(() => {
  documents = makeDocumentStore();
  openText(documents, doors, DEMO, 'polderwick.json');
});

const file = () => documents.getState().document?.file as FamilyFile;
const text = () => doors.writeFamily(file());
const commit = (change: Partial<FamilyFile>) => commitFamily(documents, doors, { ...file(), ...change });

function rename(at: number, name: string): void {
  commit({ profiles: file().profiles.with(at, { ...file().profiles[at], name }) });
}

function present(): WorkState {
  const state = workState(documents.getState());
  if (!state) throw new Error('a family must be open');
  return state;
}

/** What a store gives back: a copy that shares nothing. */
const stored = (work: KeptWork): KeptWork => structuredClone(work);

/** Another window that opens what this one keeps. */
function reopened(work = stored(packWork(present()))) {
  const unpacked = unpackWork(work, doors);
  if (!unpacked.ok) throw new Error(unpacked.why);
  const other = makeDocumentStore();
  openDocument(other, unpacked.family);
  return { other, historyLost: unpacked.historyLost };
}

describe('kept work', () => {
  test('opens with the same family, the same undo and redo, and the same word on whether it is edited', () => {
    rename(0, 'One');
    markSaved(documents, present().document);
    rename(1, 'Two');
    rename(2, 'Three');
    undo(documents);
    const { other } = reopened();
    const textThere = () => doors.writeFamily(other.getState().document?.file as FamilyFile);
    for (const step of [redo, undo, undo, undo, undo, redo, redo, redo, redo]) {
      step(documents);
      step(other);
      expect(textThere()).toBe(text());
      expect(isEdited(other.getState())).toBe(isEdited(documents.getState()));
      expect(other.getState().document?.family).toEqual(documents.getState().document?.family);
    }
  });

  test('in the middle of a gesture is the family before it', () => {
    rename(0, 'One');
    const before = packWork(present());
    previewFamily(documents, doors, { ...file(), name: 'Half way' });
    expect(packWork(present())).toEqual(before);
    endEdit(documents);
    expect(packWork(present()).file.name).toBe('Half way');
  });

  test('knows what is saved even where that is no step of the history any more', () => {
    rename(0, 'Saved');
    markSaved(documents, present().document);
    undo(documents);
    rename(0, 'Another way');
    const { other } = reopened();
    expect(other.getState().saved?.file.profiles[0].name).toBe('Saved');
    expect(isEdited(other.getState())).toBe(true);
  });

  test('of a family that no file holds counts as edited', () => {
    documents.setState({ saved: null });
    expect(isEdited(reopened().other.getState())).toBe(true);
  });

  test('shares what was not touched: only a changed profile is another one', () => {
    rename(3, 'Other');
    const { other } = reopened();
    const now = other.getState();
    expect(now.past[0].family.profiles[4]).toBe(now.document?.family.profiles[4]);
    expect(now.past[0].family.profiles[3]).not.toBe(now.document?.family.profiles[3]);
  });

  test('drops the oldest steps where the history is too long, and says how many', () => {
    for (let i = 0; i < 20; i++) rename(0, `Name ${i}`);
    const whole = packWork(present());
    const step = JSON.stringify(whole.past[10]).length;
    const work = packWork(present(), step * 5 + 10);
    expect([work.past.length, work.dropped]).toEqual([5, 15]);
    const { other } = reopened(stored(work));
    for (let i = 0; i < 9; i++) undo(other);
    expect(other.getState().document?.file.profiles[0].name).toBe('Name 14');
    expect(packWork(present(), 0)).toMatchObject({ past: [], dropped: 20 });
  });

  test('keeps its history where a picture of any size is kept, marked and taken out again', () => {
    const image = `data:image/png;base64,iVBORw0KGgo${'A'.repeat(5_000_000)}`;
    const [first, ...others] = file().profiles;
    const withPicture = (picture: object) => commit({ profiles: [{ ...first, picture } as ProfileFile, ...others] });
    for (let i = 0; i < 20; i++) rename(3, `Name ${i}`);
    withPicture({ image, middle: [0, 0], opacity: 1 });
    for (let i = 1; i < 10; i++)
      withPicture({ image, scale: { from: [0, 0], to: [i, 9], distance: 1 }, middle: [0, 0], opacity: 1 });
    withPicture({ image, middle: [0, 0], opacity: 1 });
    commit({ profiles: [first, ...others] });
    const work = stored(packWork(present()));
    expect([work.past.length, work.dropped]).toEqual([32, 0]);
    const { other, historyLost } = reopened(work);
    expect(historyLost).toBe(false);
    for (let i = 0; i < 32; i++) undo(other);
    expect(doors.writeFamily(other.getState().document?.file as FamilyFile)).toBe(doors.writeFamily(JSON.parse(DEMO)));
  });

  test('that is damaged is refused with a reason, or opens without its history', () => {
    rename(0, 'One');
    const work = stored(packWork(present()));
    const why = (kept: unknown) => {
      const unpacked = unpackWork(kept, doors);
      return unpacked.ok ? 'opened' : unpacked.why;
    };
    for (const nonsense of [undefined, null, 7, 'text', [], {}, { ...work, version: 9 }, { ...work, past: 'x' }])
      expect(why(nonsense)).toBe('It is not in a form that this program knows.');
    expect(why({ ...work, file: { ...work.file, profiles: 'none' } })).toBe(
      'profiles is the text "none", must be a list [ … ].',
    );
    expect(why({ ...work, file: { ...work.file, runningClearance: Number.NaN } })).toBe('It is cut off.');
    const wrong = { ...work, past: [[{ kind: 'set', path: ['nowhere', 0], before: 1, after: 2 }]] };
    expect(reopened(wrong as KeptWork)).toMatchObject({ historyLost: true });
    const empty = { ...work, past: [[{ kind: 'set', path: ['profiles'], before: 'none', after: [] }]] };
    expect(reopened(empty as KeptWork).other.getState()).toMatchObject({ past: [], future: [] });
    expect(reopened({ ...work, past: [7] } as unknown as KeptWork)).toMatchObject({ historyLost: true });
  });

  test('keeps up with a long random session: 300 edits and undos, kept and opened again and again', () => {
    const random = randomNumbers(42);
    let other = documents;
    for (let i = 0; i < 300; i++) {
      documents = other;
      if (random.chance(0.3)) undo(other);
      else if (random.chance(0.2)) redo(other);
      else rename(random.whole(0, 9), `Name ${i}`);
      if (i % 10 === 0) other = reopened().other;
    }
    documents = other;
    while (documents.getState().past.length > 0) undo(documents);
    expect(text()).toBe(doors.writeFamily(JSON.parse(DEMO)));
  });

  test('of 5,000 steps keeps and opens them all', () => {
    for (let i = 0; i < 5_000; i++) commit({ runningClearance: i / 100_000 });
    const work = packWork(present());
    expect(work.dropped).toBe(0);
    expect(reopened(stored(work)).other.getState().past).toHaveLength(5_000);
  });
});
