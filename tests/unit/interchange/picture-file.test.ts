import { expect, test } from 'vitest';
import { readPicture, USUAL_OPACITY, writePicture } from '../../../src/interchange/json/picture-file.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import type { PictureFile } from '../../../src/interchange/json/schema.ts';
import { writeFamily } from '../../../src/interchange/json/write.ts';
import type { PictureMarks } from '../../../src/trace/picture-scale.ts';
import { outlineProfile, SQUARE, withProfile } from '../../cases/bad-files/nearly-sound.ts';

const IMAGE = 'data:image/png;base64,iVBORw0KGgo=';

const MARKS: PictureMarks = {
  scale: { from: { x: 10.25, y: 20.5 }, to: { x: 200.125, y: 21 }, distance: 10_000_000 },
  rectangle: {
    corners: [
      { x: 1, y: 2 },
      { x: 101, y: 3 },
      { x: 100, y: 80 },
      { x: 0, y: 79 },
    ],
    width: 12_000_000,
    height: 9_000_000,
  },
  line: { from: { x: 3, y: 4 }, to: { x: 5, y: 60 }, lies: 'upright' },
  turn: Math.PI / 180,
  middle: { x: 1_234_567, y: -7_654_321 },
};

test.each(['mm', 'in'] as const)(
  'what is written in %s comes back: pixels to a thousandth, lengths to the nanometre',
  (units) => {
    const kept = readPicture(writePicture({ image: IMAGE, marks: MARKS, opacity: 0.35 }, units), units);
    expect(kept).toMatchObject({ image: IMAGE, opacity: 0.35 });
    expect({ ...kept.marks, turn: 0 }).toEqual({ ...MARKS, turn: 0 });
    expect(kept.marks.turn).toBeCloseTo(MARKS.turn, 9);
  },
);

test('marks that were taken away leave the file, fields unknown to us stay', () => {
  const before = { ...writePicture({ image: IMAGE, marks: MARKS, opacity: 1 }, 'mm'), taken: 'at the bench' };
  const after = writePicture({ image: IMAGE, marks: { turn: 0, middle: { x: 0, y: 0 } }, opacity: 1 }, 'mm', before);
  expect(after).toEqual({ taken: 'at the bench', image: IMAGE, middle: [0, 0], opacity: 1 });
});

test('a bare picture lies with its middle at the origin and is shown as usual', () => {
  const kept = readPicture({ image: IMAGE } as PictureFile, 'mm');
  expect(kept).toEqual({ image: IMAGE, marks: { turn: 0, middle: { x: 0, y: 0 } }, opacity: USUAL_OPACITY });
});

test('a family with a picture is read, and written as it was', () => {
  const picture = writePicture({ image: IMAGE, marks: MARKS, opacity: 0.5 }, 'mm');
  const read = readFamily(withProfile(outlineProfile(SQUARE, { picture })));
  if (!read.ok) throw new Error(read.faults[0].what);
  expect(read.document.file.profiles[1].picture).toEqual(picture);
  const again = readFamily(writeFamily(read.document.file));
  expect(again.ok && again.document.file).toEqual(read.document.file);
});
