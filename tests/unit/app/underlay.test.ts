import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import {
  newProfileOfPicture,
  outlineOfPicture,
  pickedLoop,
  pickLoopAt,
  setHand,
  toleranceOf,
  traceNow,
} from '../../../src/app/state/draw/tracing.ts';
import {
  clearMarks,
  followFile,
  keepPicture,
  markAfter,
  putMark,
  removePicture,
  showPicture,
  stopKeeping,
  tell,
} from '../../../src/app/state/draw/underlay-editing.ts';
import { type UnderlayImage, underlayOf, underlaysOf } from '../../../src/app/state/draw/underlay-state.ts';
import { redo, undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { boxOf } from '../../../src/geom/point.ts';
import type { TraceInput } from '../../../src/jobs/trace-picture.ts';
import { WHITE } from '../../../src/trace/gray-picture.ts';
import { coverage } from '../../kit/coverage.ts';
import { traced } from '../../kit/traced.ts';
import { type FakeDoors, fakeDoors, turn } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');
const ID = 'heron-blank';
const DATA = 'data:image/png;base64,iVBORw0KGgo=';

let fake: FakeDoors;
let session: Session;

/** A picture of 100 x 120 pixels with a dark bar of 20 x 80, its lower left at (30, 100). */
function image(data: string | null = DATA): UnderlayImage {
  const size = { width: 100, height: 120 };
  const bar = [
    { x: 30, y: 20 },
    { x: 30, y: 100 },
    { x: 50, y: 100 },
    { x: 50, y: 20 },
  ];
  const light = Uint16Array.from(coverage([bar], 100, 120), (c) => Math.round(WHITE * (1 - c)));
  const bitmap = { width: 100, height: 120, close: () => {} } as ImageBitmap;
  return { name: 'bar.png', size, bitmap, light: { ...size, light }, data, note: '' };
}

beforeEach(() => {
  fake = fakeDoors();
  session = makeSession(fake.doors, null);
  openText(session.documents, fake.doors, LESSON, 'lesson.json');
  showPicture(session, ID, image());
  // A pixel is 0.1 mm.
  tell(session, ID, { distance: 2e6 });
  putMark(session, ID, 'scaleFrom', { x: 30, y: 20 });
  putMark(session, ID, 'scaleTo', { x: 50, y: 20 });
});

const here = () => {
  const underlay = underlayOf(session, ID);
  if (!underlay) throw new Error('no picture');
  return underlay;
};
const file = () => session.documents.getState().document?.file;
const pictureInFile = (id = ID) => file()?.profiles.find((profile) => profile.id === id)?.picture;
const ringOf = (id: string) =>
  session.documents.getState().document?.family.profiles.find((p) => p.id === id)?.ring ?? [];
const steps = () => session.documents.getState().past.length;

/** Answers the search that is on its way as the real one would. */
async function answer(n = 0): Promise<void> {
  const { input, finish } = fake.traces[n] as { input: TraceInput; finish(found: unknown): void };
  finish(traced(input.picture, input.toProfile, input.settings));
  await turn();
}

describe('a picture under a profile', () => {
  test('lies with its middle on the middle of the profile, and by its marks', () => {
    const box = boxOf(ringOf(ID));
    expect(here().told.middle).toEqual({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 });
    expect(here().frame).toMatchObject({ scaleFrom: 'points', perspective: false });
    expect(here().frame.nmPerPixel).toBeCloseTo(100_000, 6);
    expect(steps()).toBe(0);
  });

  test('a mark outside goes to the edge of the picture; marks of a step go together', () => {
    putMark(session, ID, 'scaleTo', { x: 500, y: -3 });
    expect(here().told.points.scaleTo).toEqual({ x: 100, y: 0 });
    putMark(session, ID, 'corner1', { x: 1, y: 1 });
    clearMarks(session, ID, 'scale');
    expect(here().told.points).toEqual({ corner1: { x: 1, y: 1 } });
    expect([markAfter('scaleFrom'), markAfter('scaleTo'), markAfter('corner3')]).toEqual(['scaleTo', null, 'corner4']);
  });

  test('a mark that makes no frame is told, and the picture stays where it was', () => {
    const { frame } = here();
    putMark(session, ID, 'scaleTo', { x: 30, y: 20 });
    expect(here().fault?.what).toMatch(/same/);
    expect(here().frame).toBe(frame);
    putMark(session, ID, 'scaleTo', { x: 70, y: 20 });
    expect(here().fault).toBeNull();
    expect(here().frame.nmPerPixel).toBeCloseTo(50_000, 6);
  });

  test('another family has none of it', () => {
    openText(session.documents, fake.doors, LESSON, 'again.json');
    expect(underlayOf(session, ID)).toBeNull();
  });
});

describe('a kept picture', () => {
  test('is in the file from the tick on; each change of its marks is one step, and undo leads the picture back', () => {
    expect(pictureInFile()).toBeUndefined();
    expect(keepPicture(session, ID)).toBe(true);
    expect(pictureInFile()).toMatchObject({ image: DATA, scale: { from: [30, 20], to: [50, 20], distance: 2 } });
    tell(session, ID, { turn: Math.PI / 2 });
    expect(pictureInFile()?.turnDeg).toBe(90);
    expect(steps()).toBe(2);
    undo(session.documents);
    expect(followFile(session, ID)).toBe(true);
    expect(here().told.turn).toBe(0);
    undo(session.documents);
    followFile(session, ID);
    expect(here().kept).toBeNull();
    redo(session.documents);
    followFile(session, ID);
    expect(here().kept).toBe(pictureInFile());
  });

  test('a step that changes nothing of the frame is none', () => {
    keepPicture(session, ID);
    tell(session, ID, { turn: 0 });
    expect(steps()).toBe(1);
  });

  test('is taken out again, with the picture or without', () => {
    keepPicture(session, ID);
    stopKeeping(session, ID);
    expect(pictureInFile()).toBeUndefined();
    expect(underlayOf(session, ID)).not.toBeNull();
    keepPicture(session, ID);
    removePicture(session, ID);
    expect(pictureInFile()).toBeUndefined();
    expect(underlayOf(session, ID)).toBeNull();
  });

  test('one that is too large is not kept, with words', () => {
    showPicture(session, ID, image(null));
    expect(keepPicture(session, ID)).toBe(false);
    expect(underlaysOf(session).getState().trouble?.what).toMatch(/too large/);
  });

  test('nor one that the file has no room for beside others', () => {
    const large = `data:image/png;base64,${'A'.repeat(7_999_000)}`;
    showPicture(session, ID, image(large));
    expect(keepPicture(session, ID)).toBe(true);
    showPicture(session, 'bittern-blank', image(large));
    expect(keepPicture(session, 'bittern-blank')).toBe(false);
    expect(underlaysOf(session).getState().trouble?.what).toMatch(/beside its other pictures/);
  });

  test('a file that keeps another picture must have it read first', () => {
    keepPicture(session, ID);
    showPicture(session, ID, image('data:image/png;base64,AAAA'));
    expect(pictureInFile()?.image).toBe('data:image/png;base64,AAAA');
    undo(session.documents);
    expect(followFile(session, ID)).toBe(false);
  });
});

describe('the automatic outline', () => {
  test('is looked for once at a time, the latest wish last', async () => {
    traceNow(session, ID);
    setHand(session, ID, { blur: 1 });
    setHand(session, ID, { blur: 2 });
    expect(fake.traces).toHaveLength(1);
    expect(here().tracing.running).toBe(true);
    await answer();
    expect(fake.traces.map(({ input }) => input.settings.blur)).toEqual([0, 2]);
  });

  test('becomes the outline where the old one stood, as one step; the picture goes along', async () => {
    const before = boxOf(ringOf(ID));
    traceNow(session, ID);
    await answer();
    expect(outlineOfPicture(session, ID)).toBe(true);
    const after = boxOf(ringOf(ID));
    expect([after.minX, after.minY]).toEqual([before.minX, before.minY]);
    expect(after.maxX - after.minX).toBeCloseTo(2e6, -3);
    expect(after.maxY - after.minY).toBeCloseTo(8e6, -3);
    expect(steps()).toBe(1);
    // The bar's lower left, pixel (30, 100), lies at the outline's.
    const [a, , c, , e, f] = here().frame.toProfile;
    expect(a * 30 + c).toBeCloseTo(after.minX, -3);
    expect(e * 100 + f).toBeCloseTo(after.minY, -3);
    undo(session.documents);
    expect(boxOf(ringOf(ID))).toEqual(before);
  });

  test('with a kept picture too it is one step', async () => {
    keepPicture(session, ID);
    traceNow(session, ID);
    await answer();
    outlineOfPicture(session, ID);
    expect(steps()).toBe(2);
    expect(followFile(session, ID)).toBe(true);
    expect(here().kept).toBe(pictureInFile());
  });

  test('becomes a section of its own at the origin, which is picked, and takes the picture along', async () => {
    traceNow(session, ID);
    await answer();
    const id = newProfileOfPicture(session, ID, 'Traced bar');
    expect(id).toBe('traced-bar');
    const box = boxOf(ringOf('traced-bar'));
    expect([box.minX, box.minY]).toEqual([0, 0]);
    expect(session.selection.getState().entrantId).toBe('traced-bar');
    expect(underlayOf(session, ID)).toBeNull();
    expect(underlayOf(session, 'traced-bar')).not.toBeNull();
    expect(steps()).toBe(1);
  });

  test('a press picks it, a press beside it nothing', async () => {
    traceNow(session, ID);
    await answer();
    const { middle } = here().told;
    expect(pickLoopAt(session, ID, { x: middle.x - 1e6, y: middle.y })).toBe(true);
    expect(pickLoopAt(session, ID, { x: middle.x + 3e6, y: middle.y })).toBe(false);
    expect(pickedLoop(here())).not.toBeNull();
  });

  test('none at this threshold is said; a failed search is told', async () => {
    setHand(session, ID, { grey: 0 });
    await answer();
    expect(here().tracing).toMatchObject({ running: false, trouble: 'No outline at this threshold.' });
    expect(outlineOfPicture(session, ID)).toBe(false);
    traceNow(session, ID);
    fake.traces[1].fail(new Error('no memory'));
    await turn();
    expect(here().tracing).toMatchObject({ running: false, trouble: 'no memory' });
  });

  test('the tolerance goes with the size of a pixel until it is set', () => {
    expect(toleranceOf(here())).toBe(20_000);
    tell(session, ID, { distance: 0.4e6 });
    expect(toleranceOf(here())).toBe(4_000);
    setHand(session, ID, { tolerance: 7_000 });
    expect(toleranceOf(here())).toBe(7_000);
  });
});
