// Outside truth: the demo scan is drawn from the outline of the demo family by tests/kit/demo-scan.ts, which shares no code
// with the tracer. Here a pointer marks it in the app, and what the saved family holds is compared with that outline.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { readFamily } from '../../src/interchange/json/read.ts';
import {
  makePictureFrame,
  NO_MARKS,
  type PictureMarks,
  type PicturePoint,
  toProfilePlane,
} from '../../src/trace/picture-scale.ts';
import type { FourPoints } from '../../src/trace/plane-map.ts';
import { graveAxeFindings } from '../kit/axe.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { encodeGrey, SCAN, SHEET, scanMarks, scannedOutline } from '../kit/demo-scan.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { alignedDistance } from '../kit/outline-distance.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { numberIn, typeInto } from './compare-page.ts';
import { onSheet, savedFamily, sheet } from './draw-page.ts';
import { judged, pickEntrant } from './wall-page.ts';

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: partOfDemo('knot-keyway', 'knot-blank', 'rail-blank') });
  await judged(app.page);
  await pickEntrant(app.page, 'Rail blank');
  await app.page.getByRole('button', { name: 'Draw', exact: true }).click();
  await sheet(app.page).waitFor();
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

interface PictureToOpen {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

const scanFile = (): PictureToOpen => ({
  name: 'knot-blank.png',
  mimeType: 'image/png',
  buffer: readFileSync(SCAN.file),
});

/** Opens a picture through the file chooser. */
async function choosePicture(page: Page, file: PictureToOpen): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: /^(Trace a|Another) picture…/ }).click(),
  ]);
  await chooser.setFiles(file);
}

const step = (page: Page, name: RegExp) => page.getByRole('button', { name });

/** Opens a step of the panel. */
async function openStep(page: Page, name: RegExp): Promise<void> {
  const key = step(page, name);
  if ((await key.getAttribute('aria-expanded')) !== 'true') await key.click();
  await expect.poll(() => key.getAttribute('aria-expanded')).toBe('true');
}

/** Where a point of the picture is on the screen, by the marks told so far. */
async function onPicture(page: Page, marks: PictureMarks, at: PicturePoint): Promise<{ x: number; y: number }> {
  const made = makePictureFrame(SCAN, marks);
  const place = made.ok ? toProfilePlane(made.frame, at) : null;
  if (!place) throw new Error('no such place');
  return onSheet(page, place.x / 1e6, place.y / 1e6);
}

const scaleOf = async (page: Page) => Number((await sheet(page).getAttribute('data-sheet'))?.split(' ')[0]);

/** Sets the mark that is asked for: goes close with the wheel, and presses. */
async function pressOn(page: Page, marks: PictureMarks, at: PicturePoint): Promise<void> {
  const far = await onPicture(page, marks, at);
  await page.mouse.move(far.x, far.y);
  for (let turn = 0; turn < 4; turn++) {
    const before = await scaleOf(page);
    await page.mouse.wheel(0, -300);
    await expect.poll(() => scaleOf(page)).toBeGreaterThan(before * 1.5);
  }
  const near = await onPicture(page, marks, at);
  await page.mouse.move(near.x, near.y);
  await page.mouse.down();
  await page.mouse.up();
  await page.getByRole('button', { name: 'Fit', exact: true }).click();
}

/** The middle of the Rail blank, where a picture is laid first. */
const LAID: PictureMarks = { ...NO_MARKS, middle: { x: 1e6, y: 4.2e6 } };

/** Marks the scan with the pointer: the bar for its scale, then the four corners of its frame. */
async function markScan(page: Page): Promise<void> {
  const { bar, corners } = scanMarks();
  await openStep(page, /^1 Scale/);
  await page.getByRole('button', { name: 'Set two points' }).click();
  await page.getByText('Press on one end of a known distance.').waitFor();
  await pressOn(page, LAID, bar[0]);
  await page.getByText('Press on its other end.').waitFor();
  await pressOn(page, LAID, bar[1]);
  const scaled = { ...LAID, scale: { from: bar[0], to: bar[1], distance: SHEET.bar * 1e6 } };
  await step(page, /^1 Scale/)
    .filter({ hasText: '10.000 mm' })
    .waitFor();
  await openStep(page, /^3 Perspective/);
  await typeInto(page, /^Width/, String(SHEET.frame.width));
  await typeInto(page, /^Height/, String(SHEET.frame.height));
  await page.getByRole('button', { name: 'Set four corners' }).click();
  for (const [i, which] of ['upper left', 'upper right', 'lower right', 'lower left'].entries()) {
    await page.getByText(`Press on the ${which} corner`).waitFor();
    await pressOn(page, scaled, (corners as FourPoints)[i]);
  }
  await step(page, /^3 Perspective/)
    .filter({ hasText: '14.00 × 11.00 mm' })
    .waitFor();
}

/** Waits until the outlines have been looked for. */
async function found(page: Page): Promise<void> {
  await page.locator('[data-tracing="done"]').filter({ hasText: 'found' }).waitFor();
}

/** The outline of a profile in a saved family, nanometres. */
async function outlineInFile(page: Page, id: string) {
  const read = readFamily(JSON.stringify(await savedFamily(page)));
  if (!read.ok) throw new Error(read.faults[0].what);
  const profile = read.document.family.profiles.find((p) => p.id === id);
  if (!profile) throw new Error(`no ${id}`);
  return profile.ring;
}

test('the demo scan is opened, scaled, straightened and traced with the pointer, to 0.03 mm of the true outline', async () => {
  const { page } = app;
  await choosePicture(page, scanFile());
  await page.getByText('840 × 800 pixels').waitFor();
  await markScan(page);
  await openStep(page, /^4 Automatic outline/);
  await found(page);
  await page.getByText(/2\.0\d × 8\.4\d mm: \d+ corners/).waitFor();
  await takeScreenshots(page, 'draw-trace');
  const before = await outlineInFile(page, 'rail-blank');
  await page.getByRole('button', { name: 'Use as outline' }).click();
  await page.getByRole('button', { name: 'Use as outline' }).waitFor({ state: 'detached' });
  const traced = await outlineInFile(page, 'rail-blank');
  expect(alignedDistance(traced, scannedOutline())).toBeLessThan(30_000);
  // It stands where the outline before it stood, and one step back is that one.
  expect([Math.min(...traced.map((p) => p.x)), Math.min(...traced.map((p) => p.y))]).toEqual([0, 0]);
  await page.keyboard.press('Control+z');
  expect(await outlineInFile(page, 'rail-blank')).toEqual(before);
  await page.keyboard.press('Control+Shift+z');
  expect(await outlineInFile(page, 'rail-blank')).toEqual(traced);
});

test('the same by typed numbers alone, as a section of its own', async () => {
  const { page } = app;
  await choosePicture(page, scanFile());
  const { bar, corners } = scanMarks();
  const type = async (letter: string, at: PicturePoint) => {
    await typeInto(page, new RegExp(`^${letter} from left`), at.x.toFixed(2));
    await typeInto(page, new RegExp(`^${letter} from top`), at.y.toFixed(2));
  };
  await openStep(page, /^1 Scale/);
  await page.getByRole('button', { name: 'Type them' }).click();
  await type('A', bar[0]);
  await type('B', bar[1]);
  await openStep(page, /^3 Perspective/);
  await typeInto(page, /^Width/, String(SHEET.frame.width));
  await typeInto(page, /^Height/, String(SHEET.frame.height));
  await page.getByRole('button', { name: 'Type them' }).click();
  for (const [i, corner] of corners.entries()) await type(String(i + 1), corner);
  await openStep(page, /^4 Automatic outline/);
  await found(page);
  await page.getByRole('button', { name: 'As a new section' }).click();
  await page.getByRole('heading', { level: 2, name: 'knot-blank' }).waitFor();
  const { profiles } = await savedFamily(page);
  const made = profiles.find(({ name }) => name === 'knot-blank');
  expect(made?.id).toBe('knot-blank-2');
  expect(alignedDistance(await outlineInFile(page, 'knot-blank-2'), scannedOutline())).toBeLessThan(15_000);
});

test('threshold, shade and simplification change the outline as they are moved; a pressed one is picked', async () => {
  const { page } = app;
  await choosePicture(page, scanFile());
  await openStep(page, /^4 Automatic outline/);
  await found(page);
  const words = () => page.locator('[data-tracing="done"] ~ p').first().textContent();
  const usual = await words();
  await page.getByRole('slider', { name: 'Simplify by at most' }).focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('PageUp');
  await expect.poll(words).not.toBe(usual);
  // Without a scale the sizes are a guess, which must not become an outline.
  await page.getByText(/The scale is not known yet/).waitFor();
  expect(await page.getByRole('button', { name: 'As a new section' }).isDisabled()).toBe(true);
  const cornersIn = async () => Number(/(\d+) corners/.exec((await words()) ?? '')?.[1]);
  await expect.poll(cornersIn).toBeLessThan(Number(/(\d+) corners/.exec(usual ?? '')?.[1]));
  await found(page);
  // The frame is a wide outline too: a press between it and the blank picks its inside.
  const made = await onPicture(page, LAID, { x: 200, y: 400 });
  await page.mouse.click(made.x, made.y);
  await page.getByRole('button', { name: /inside/, pressed: true }).waitFor();
  // Light is the sheet itself, which the picture's edge cuts off.
  await page.getByRole('button', { name: 'Light', exact: true }).click();
  await page.getByRole('button', { name: /cut off/ }).waitFor();
  const outside = await onPicture(page, LAID, { x: 30, y: 30 });
  await page.mouse.click(outside.x, outside.y);
  await page.getByText(/cuts this outline off/).waitFor();
  await typeInto(page, /^Threshold/, '0');
  await page.getByRole('button', { name: 'Dark', exact: true }).click();
  await page.getByText('No outline at this threshold.').waitFor();
  expect(await page.getByRole('button', { name: 'Use as outline' }).isDisabled()).toBe(true);
});

test('the picture is kept in the file only when that is ticked, and lies there as it did when the file is opened', async () => {
  const { page } = app;
  await choosePicture(page, scanFile());
  await openStep(page, /^2 Straighten/);
  await typeInto(page, /^Turn to the left/, '-3.4');
  const picture = async () => {
    const { profiles } = await savedFamily(page);
    return (profiles.find(({ id }) => id === 'rail-blank') as { picture?: { image: string; turnDeg: number } }).picture;
  };
  expect(await picture()).toBeUndefined();
  const tick = page.getByRole('checkbox', { name: /^Keep the picture in the file/ });
  await page.getByText(/\(adds 3\d\d kB\)/).waitFor();
  await tick.check();
  const kept = await picture();
  expect(kept?.image).toBe(`data:image/png;base64,${readFileSync(SCAN.file).toString('base64')}`);
  expect(kept?.turnDeg).toBe(-3.4);
  await page.keyboard.press('Control+z');
  await expect.poll(() => tick.isChecked()).toBe(false);
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(() => tick.isChecked()).toBe(true);
  // A change of a kept picture is a step of its own.
  await typeInto(page, /^Turn to the left/, '5');
  expect((await picture())?.turnDeg).toBe(5);
  await page.keyboard.press('Control+z');
  await expect.poll(() => numberIn(page, /^Turn to the left/)).toBe(-3.4);
  const text = JSON.stringify({ ...(await savedFamily(page)), name: 'Kept with its picture' });
  await page.getByRole('button', { name: 'Family ▾' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: /^Open family/ }).click(),
  ]);
  await chooser.setFiles({ name: 'kept.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.getByRole('banner').getByText('Kept with its picture', { exact: true }).waitFor();
  await page.getByText('840 × 800 pixels').waitFor();
  await page
    .getByRole('button', { name: /^2 Straighten/ })
    .filter({ hasText: '-3.4°' })
    .waitFor();
  await page.getByRole('button', { name: 'Remove picture' }).click();
  expect(await picture()).toBeUndefined();
});

test.each([
  ['photo.heic', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0', 'latin1'), 'photo.heic is a HEIC photograph'],
  ['page.pdf', Buffer.from('%PDF-1.7\n'), 'page.pdf is a PDF'],
  [
    'drawing.svg',
    Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" onload="document.title=1"/>'),
    'drawing.svg is a drawing (SVG)',
  ],
  ['broken.png', readFileSync(SCAN.file).subarray(0, 400), 'broken.png cannot be read: it is broken'],
  ['bomb.png', bomb(), 'bomb.png has 60000 × 60000 pixels'],
])('%s is refused in words, nothing is lost', async (name, buffer, words) => {
  const { page } = app;
  const title = await page.title();
  await choosePicture(page, { name, mimeType: 'application/octet-stream', buffer });
  await page.getByRole('alert').filter({ hasText: words }).waitFor();
  expect(await page.getByRole('button', { name: 'Trace a picture…' }).isVisible()).toBe(true);
  expect(await page.title()).toBe(title);
});

/** The head of a PNG that says it has 3,600 million pixels. */
function bomb(): Buffer {
  const head = Buffer.from(readFileSync(SCAN.file).subarray(0, 200));
  head.writeUInt32BE(60_000, 16);
  head.writeUInt32BE(60_000, 20);
  return head;
}

test('a picture of 12,000 pixels is worked on at a smaller scale, and that is said', async () => {
  const { page } = app;
  const [width, height] = [12_000, 1_200];
  const grey = new Uint8Array(width * height).fill(255);
  for (let y = 300; y < 900; y++) grey.fill(0, y * width + 4_000, y * width + 8_000);
  await choosePicture(page, { name: 'wide.png', mimeType: 'image/png', buffer: encodeGrey(grey, width, height) });
  await page.getByText('It has 12000 × 1200 pixels and is worked on at 8192 × 819').waitFor();
  await openStep(page, /^4 Automatic outline/);
  // Without a scale it is taken as 25 mm high, and what is in it is far too long.
  await page.getByRole('alert').filter({ hasText: 'it is larger than 47 mm' }).waitFor();
});

test('marks that tell nothing are refused with a cure, and the picture stays where it was', async () => {
  const { page } = app;
  await choosePicture(page, scanFile());
  await openStep(page, /^3 Perspective/);
  await page.getByRole('button', { name: 'Type them' }).click();
  await typeInto(page, /^1 from left/, '700');
  await typeInto(page, /^2 from left/, '100');
  const alert = page.getByRole('alert').filter({ hasText: 'Not taken' });
  await alert.filter({ hasText: 'the sides between the corners cross' }).waitFor();
  await page.getByRole('button', { name: 'Take the marks away' }).click();
  await alert.waitFor({ state: 'detached' });
});

test('Escape gives up the setting of marks, then a drag of one; the panel is clean for everyone', async () => {
  const { page } = app;
  await choosePicture(page, scanFile());
  await openStep(page, /^1 Scale/);
  await page.getByRole('button', { name: 'Set two points' }).click();
  await page.getByText('Press on one end of a known distance.').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await sheet(page).focus();
  await page.keyboard.press('Escape');
  await page.getByText('Press on one end of a known distance.').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Type them' }).click();
  const before = await numberIn(page, /^A from left/);
  const { bar } = scanMarks();
  const marks = { ...LAID, scale: { from: { x: 210, y: 600 }, to: { x: 630, y: 600 }, distance: 10e6 } };
  const at = await onPicture(page, marks, marks.scale.from);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 40, at.y + 10, { steps: 4 });
  await expect.poll(() => numberIn(page, /^A from left/)).toBeGreaterThan(before + 5);
  await takeScreenshots(page, 'draw-trace-loupe');
  await page.keyboard.press('Escape');
  await expect.poll(() => numberIn(page, /^A from left/)).toBe(before);
  await page.mouse.up();
  expect(await numberIn(page, /^A from left/)).toBe(before);
  expect(bar).toHaveLength(2);
});
