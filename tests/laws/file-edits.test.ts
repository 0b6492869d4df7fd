// Edits of a family file as values: what they lead to, that they invert exactly, and that many of them end where they
// began. The truth is the text of the file: equal to the byte.

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  applyEdit,
  diffFiles,
  type FileEdit,
  type FileValue,
  invertEdit,
} from '../../src/interchange/json/file-edit.ts';
import { readFamily } from '../../src/interchange/json/read.ts';
import type { FamilyFile, ProfileFile } from '../../src/interchange/json/schema.ts';
import { writeFamily } from '../../src/interchange/json/write.ts';
import { randomNumbers } from '../cases/random-numbers.ts';

const DEMO = readFileSync(new URL('../../profiles-demo/polderwick.json', import.meta.url), 'utf8');

/** The text of any JSON value; unlike JSON.stringify it keeps the sign of a zero. */
const textOf = (value: FileValue) => writeFamily(value as FamilyFile);

/** JSON values that share parts with each other now and then, as two documents of one family do. */
const jsonPair = fc
  .tuple(fc.jsonValue({ maxDepth: 4 }), fc.jsonValue({ maxDepth: 4 }), fc.jsonValue({ maxDepth: 3 }), fc.nat(5))
  .map(([a, b, shared, shape]): [FileValue, FileValue] => {
    if (shape === 0) return [a, b];
    if (shape === 1)
      return [
        { a, shared },
        { a: b, shared },
      ];
    if (shape === 2)
      return [
        { a, shared, gone: b },
        { shared, come: b, a },
      ];
    if (shape === 3)
      return [
        [shared, a, shared],
        [shared, b, a, shared],
      ];
    if (shape === 4)
      return [
        [
          { n: 1, shared },
          { n: -0, a },
        ],
        [
          { n: 1, shared },
          { n: 0, a: b },
        ],
      ];
    return [{ list: [1, 2, 3, a] }, { list: [1, 9, 3, b], more: shared }];
  });

describe('an edit of a file', () => {
  test('leads from the one to the other, in value and in text', () => {
    fc.assert(
      fc.property(jsonPair, ([before, after]) => {
        const reached = applyEdit(before, diffFiles(before, after));
        expect(reached).toStrictEqual(after);
        expect(textOf(reached)).toBe(textOf(after));
      }),
      { numRuns: 500 },
    );
  });

  test('inverts exactly, and inverted twice it is the same edit', () => {
    fc.assert(
      fc.property(jsonPair, ([before, after]) => {
        const edit = diffFiles(before, after);
        expect(textOf(applyEdit(after, invertEdit(edit)))).toBe(textOf(before));
        expect(invertEdit(invertEdit(edit))).toStrictEqual(edit);
      }),
      { numRuns: 500 },
    );
  });

  test('of the same file is no edit, and leaves what it does not touch as it is', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (value, other) => {
        expect(diffFiles(value, structuredClone(value))).toEqual([]);
        const before = { kept: [value], other: 1 };
        const after = applyEdit(before, diffFiles(before, { ...before, other }));
        expect(after.kept).toBe(before.kept);
      }),
      { numRuns: 200 },
    );
  });
});

test('fields that come, go or change places cost no more than themselves', () => {
  const image = 'x'.repeat(10_000);
  const plain = { id: 'a', picture: { image, middle: [0, 0], opacity: 1 }, note: 'n' };
  const { picture, ...rest } = plain;
  const moved = { ...rest, picture: { image, scale: { distance: 1 }, opacity: 0.5, remark: '' } };
  const edit = diffFiles([plain], [moved]);
  expect(JSON.stringify(edit).length).toBeLessThan(1_000);
  expect(textOf(applyEdit([plain], edit))).toBe(textOf([moved]));
  expect(textOf(applyEdit([moved], invertEdit(edit)))).toBe(textOf([plain]));
});

test('an edit that was made for another file is a mistake of the caller', () => {
  const edit = diffFiles({ a: { b: [1, 2, 3] } }, { a: { b: [1, 2, 4] } });
  expect(() => applyEdit({ a: 1 }, edit)).toThrow(RangeError);
  expect(() => applyEdit({ a: { b: [1] } }, edit)).toThrow(RangeError);
  const fields = diffFiles({ a: 1 }, { a: 1, b: 2 });
  expect(() => applyEdit({ c: 1 }, fields)).toThrow(RangeError);
  expect(() => applyEdit([1], fields)).toThrow(RangeError);
});

/** The random changes that a user may make to a family: each gives another file and leaves the given one whole. */
const CHANGES: readonly ((file: FamilyFile, random: () => number) => FamilyFile)[] = [
  (file, random) => onProfile(file, random, (profile) => moveVertex(profile, random)),
  (file, random) => onProfile(file, random, (profile) => ({ ...profile, name: `Name ${Math.floor(random() * 1e6)}` })),
  (file, random) => onProfile(file, random, ({ note: _, ...rest }) => ({ note: 'first field now', ...rest })),
  (file, random) => onProfile(file, random, ({ section: _, ...rest }) => rest),
  (file, random) => ({ ...file, runningClearance: Number((random() / 10).toFixed(4)) }),
  (file, random) => {
    const at = Math.floor(random() * file.profiles.length);
    const copy = { ...file.profiles[at], id: `copy-${Math.floor(random() * 1e9)}` };
    return { ...file, profiles: file.profiles.toSpliced(Math.floor(random() * (file.profiles.length + 1)), 0, copy) };
  },
  (file, random) => {
    if (file.profiles.length < 3) return file;
    return { ...file, profiles: file.profiles.toSpliced(Math.floor(random() * file.profiles.length), 1) };
  },
  (file) => ({ ...file, profiles: file.profiles.toReversed() }),
  (file, random) => {
    const { remark: _, ...rest } = file as FamilyFile & { remark?: unknown };
    return (random() < 0.5 ? { remark: [random(), {}], ...rest } : rest) as FamilyFile;
  },
];

function onProfile(file: FamilyFile, random: () => number, change: (profile: ProfileFile) => ProfileFile): FamilyFile {
  const at = Math.floor(random() * file.profiles.length);
  return { ...file, profiles: file.profiles.with(at, change(file.profiles[at])) };
}

function moveVertex(profile: ProfileFile, random: () => number): ProfileFile {
  if (!profile.outline) return { ...profile, note: `milled ${random()}` };
  const at = Math.floor(random() * profile.outline.length);
  const [x, y] = profile.outline[at];
  const moved: [number, number] = [Number((x + random() - 0.5).toFixed(3)), Number((y + random() - 0.5).toFixed(3))];
  return { ...profile, outline: profile.outline.with(at, moved) };
}

test('10,000 random edits, undos and redos of the demo family end where they began', () => {
  const read = readFamily(DEMO);
  if (!read.ok) throw new Error('the demo must be readable');
  const random = randomNumbers(20_261_125).next;
  let file = read.document.file;
  const done: FileEdit[] = [];
  let undone: FileEdit[] = [];
  const texts = [writeFamily(file)];
  const undo = () => {
    const edit = done.pop();
    if (!edit) return;
    undone.push(edit);
    file = applyEdit(file, invertEdit(edit));
  };
  const redo = () => {
    const edit = undone.pop();
    if (!edit) return;
    done.push(edit);
    file = applyEdit(file, edit);
  };
  for (let i = 0; i < 10_000; i++) {
    const roll = random();
    if (roll < 0.35) undo();
    else if (roll < 0.5) redo();
    else {
      const next = CHANGES[Math.floor(random() * CHANGES.length)](file, random);
      done.push(diffFiles(file, next));
      file = applyEdit(file, done[done.length - 1]);
      undone = [];
      texts.length = done.length;
      // Now and then the text of the moment is noted, to be met again on the way back.
      if (i % 50 === 0) texts[done.length] = writeFamily(file);
    }
  }
  expect(done.length).toBeGreaterThan(500);
  while (done.length > 0) {
    const noted = texts[done.length];
    if (noted !== undefined) expect(writeFamily(file)).toBe(noted);
    undo();
  }
  expect(writeFamily(file)).toBe(texts[0]);
  const again = readFamily(writeFamily(file));
  if (!again.ok) throw new Error('the family must still be readable');
  expect(again.document.family).toEqual(read.document.family);
});
