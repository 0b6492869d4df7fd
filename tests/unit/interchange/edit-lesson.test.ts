import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import {
  addStep,
  changeStep,
  dropLesson,
  duplicateStep,
  moveStep,
  putLesson,
  removeStep,
  setLessonTitle,
} from '../../../src/interchange/json/edit-lesson.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import { PROJECT_ROOT } from '../../kit/install-when-needed.mjs';

function lessonFile(): FamilyFile {
  const read = readFamily(readFileSync(join(PROJECT_ROOT, 'profiles-demo', 'first-lesson.json'), 'utf8'));
  if (!read.ok) throw new Error('the demo must be readable');
  return read.document.file;
}

const FILE = lessonFile();
const titles = (file: FamilyFile) => file.lesson?.steps.map(({ title }) => title);
const abc = putLesson(FILE, { title: 'abc', steps: ['a', 'b', 'c'].map((title) => ({ show: 'words', title })) });

test('steps are added, moved, taken out and doubled; the file before is left as it was', () => {
  const before = JSON.stringify(abc);
  expect(titles(addStep(abc, 1, { show: 'tiers', title: 'x' }))).toEqual(['a', 'x', 'b', 'c']);
  expect(titles(addStep(abc, 99, { show: 'tiers', title: 'x' }))).toEqual(['a', 'b', 'c', 'x']);
  expect(titles(moveStep(abc, 0, 2))).toEqual(['b', 'c', 'a']);
  expect(titles(moveStep(abc, 2, 0))).toEqual(['c', 'a', 'b']);
  expect(titles(moveStep(abc, 1, 99))).toEqual(['a', 'c', 'b']);
  expect(moveStep(abc, 2, 99)).toBe(abc);
  expect(titles(removeStep(abc, 1))).toEqual(['a', 'c']);
  expect(titles(duplicateStep(abc, 1))).toEqual(['a', 'b', 'b', 'c']);
  expect(JSON.stringify(abc)).toBe(before);
});

test('a change puts fields in and takes them out; fields unknown to the format stay', () => {
  const strange = {
    ...abc,
    lesson: { title: 'abc', room: 7, steps: [{ show: 'pair' as const, title: 'a', mood: 'good' }] },
  };
  const changed = changeStep(strange, 0, { blank: 'heron-blank', opening: 'plover-keyway', push: true });
  expect(changed.lesson).toEqual({
    title: 'abc',
    room: 7,
    steps: [{ show: 'pair', title: 'a', mood: 'good', blank: 'heron-blank', opening: 'plover-keyway', push: true }],
  });
  const less = changeStep(changed, 0, { push: undefined, show: 'wall' });
  expect(less.lesson?.steps[0]).toEqual({
    show: 'wall',
    title: 'a',
    mood: 'good',
    blank: 'heron-blank',
    opening: 'plover-keyway',
  });
  expect(setLessonTitle(changed, 'new').lesson).toMatchObject({ title: 'new', room: 7 });
});

test('a family without a lesson gets one with the first edit, and may lose it again', () => {
  const none = dropLesson(FILE);
  expect('lesson' in none).toBe(false);
  expect(addStep(none, 0, { show: 'words', title: 'x' }).lesson).toMatchObject({ title: 'A lesson' });
  expect(setLessonTitle(none, 'T').lesson).toEqual({ title: 'T', steps: [] });
});

test('an edited file is taken by the reader, its profiles as they were', () => {
  const edited = changeFamily(addStep(abc, 0, { show: 'passage', title: 'x', openings: ['heron-keyway'] }));
  if (!edited.ok) throw new Error(JSON.stringify(edited.faults));
  expect(edited.document.family.lesson?.steps[0]).toEqual({ show: 'passage', title: 'x', openings: ['heron-keyway'] });
  expect(edited.document.family.profiles).toHaveLength(FILE.profiles.length);
  expect(changeFamily(setLessonTitle(abc, ' ')).ok).toBe(false);
});

test('a step that is not there is a mistake of the caller', () => {
  for (const edit of [
    () => removeStep(abc, 3),
    () => duplicateStep(abc, -1),
    () => changeStep(abc, 9, {}),
    () => moveStep(abc, 7, 0),
  ])
    expect(edit).toThrow(RangeError);
});
