// A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm keeps (2.1 - 2) / 2 = 0.050 mm. With its upper right corner pulled out by d
// it is 2 + d wide there and keeps 0.050 - d / 2. All expected margins below follow from that.
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { drawing, numberIn, openFamily, openPair, rectangle, typeInto, verdict } from './compare-page.ts';

let app: OpenedApp;

/** Edge 2 begins at corner 2, (2, 0); edge 4 is the left side. */
const CROSSING = 'Not taken: edge 2 crosses edge 4. The last sound outline stays.';

const FAMILY = {
  name: 'Plain',
  runningClearance: 0.03,
  tolerance: 0.01,
  profiles: [
    { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
    { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) },
  ],
};

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: FAMILY });
  await openPair(app.page, 'Bar blank', 'Slot keyway');
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** Shows corners and chooses the third of the outline: the upper right one. */
async function chooseUpperRight(page: Page): Promise<void> {
  await drawing(page).focus();
  await page.keyboard.press('c');
  await page.keyboard.press(']');
  await page.keyboard.press(']');
  await page.getByText('Corner 3 of 4').waitFor();
}

/** Where a point of the blank's own frame, in millimetres, is on the screen: it lies in the middle of the drawing. */
async function onScreen(page: Page, x: number, y: number): Promise<{ x: number; y: number }> {
  const box = await drawing(page).boundingBox();
  if (!box) throw new Error('The drawing has no box.');
  // The plug stands 14 pixels from the edges; it is 2 * 1.16 * hypot(1.05, 3.3) mm high.
  const scale = (box.height - 28) / (2 * 1.16 * Math.hypot(1.05, 3.3));
  return { x: box.x + box.width / 2 + (x - 1) * scale, y: box.y + box.height / 2 - (y - 3) * scale };
}

const upperRight = (page: Page) => onScreen(page, 2, 6);

test('the arrow keys move the chosen corner by a hundredth, with shift by a tenth, and the margin follows', async () => {
  const { page } = app;
  await chooseUpperRight(page);
  expect(await verdict(page)).toMatch(/enters\+0\.050 mm$/);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  expect(await numberIn(page, /^Corner x/)).toBe(2.02);
  expect(await verdict(page)).toMatch(/enters\+0\.040 mm$/);
  await page.keyboard.press('Shift+ArrowRight');
  expect(await numberIn(page, /^Corner x/)).toBe(2.12);
  expect(await verdict(page)).toMatch(/blocked0\.010 mm too deep$/);
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('ArrowDown');
  expect(await numberIn(page, /^Corner y/)).toBe(5.99);
  expect(await verdict(page)).toMatch(/enters\+0\.040 mm$/);
});

test('while corners are moved the drawing says so and stands where it stood, and of the blank again afterwards', async () => {
  const { page } = app;
  const place = () => drawing(page).evaluate((element) => [element.clientHeight, element.getAttribute('data-sheet')]);
  const before = await place();
  const says = (what: string) =>
    page.getByRole('application', { name: `The arrow keys move ${what} by a hundredth` }).waitFor();
  await says('the blank');
  await chooseUpperRight(page);
  await says('the chosen corner');
  expect(await place()).toEqual(before);
  await page.keyboard.press('c');
  await says('the blank');
});

test('a corner of the keyway pulled out at both ends of its wall widens it', async () => {
  const { page } = app;
  await drawing(page).focus();
  await page.keyboard.press('c');
  await page.getByRole('button', { name: 'Keyway', exact: true }).click();
  await page.keyboard.press(']');
  await typeInto(page, /^Corner x/, '2.12');
  await drawing(page).focus();
  await page.keyboard.press(']');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  // Now 2.12 mm wide all the way up.
  expect(await verdict(page)).toMatch(/enters\+0\.060 mm$/);
});

test('a dragged corner changes the margin live by half of what it is pulled out', async () => {
  const { page } = app;
  await page.keyboard.press('c');
  const at = await upperRight(page);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.getByText('Corner 3 of 4').waitFor();
  await page.mouse.move(at.x + 3, at.y, { steps: 3 });
  const pulled = (await numberIn(page, /^Corner x/)) - 2;
  expect(pulled).toBeGreaterThan(0.005);
  // It rests on whole micrometres.
  expect(Math.abs(pulled * 1000 - Math.round(pulled * 1000))).toBeLessThan(1e-6);
  const margin = Number(/[+](\d\.\d+) mm$/.exec(await verdict(page))?.[1]);
  expect(margin).toBeCloseTo(0.05 - pulled / 2, 2.9);
  await page.mouse.up();
  expect((await numberIn(page, /^Corner x/)) - 2).toBeCloseTo(pulled, 6);
});

test('Escape gives a drag up; the outline is as it was, and Compare stays open', async () => {
  const { page } = app;
  await page.keyboard.press('c');
  const at = await upperRight(page);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 20, at.y + 10, { steps: 4 });
  expect(await verdict(page)).toMatch(/blocked/);
  await page.keyboard.press('Escape');
  expect(await verdict(page)).toMatch(/enters\+0\.050 mm$/);
  await page.mouse.move(at.x + 30, at.y + 10, { steps: 2 });
  await page.mouse.up();
  expect(await numberIn(page, /^Corner x/)).toBe(2);
  expect(await drawing(page).isVisible()).toBe(true);
});

test('an edit that crosses is refused in words and leaves the last sound outline', async () => {
  const { page } = app;
  await chooseUpperRight(page);
  // From (2, 6) to (-1, 6): the edge that comes from (2, 0) would cross the left side.
  await typeInto(page, /^Corner x/, '-1');
  await page.getByRole('alert').filter({ hasText: CROSSING }).waitFor();
  expect(await numberIn(page, /^Corner x/)).toBe(2);
  expect(await verdict(page)).toMatch(/enters\+0\.050 mm$/);
  await page.getByRole('button', { name: 'Next corner' }).click();
  await page.getByRole('alert').waitFor({ state: 'detached' });
});

test('a dragged corner that crosses keeps the outline while the hand goes on', async () => {
  const { page } = app;
  await page.keyboard.press('c');
  const at = await upperRight(page);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x - 10, at.y + 10, { steps: 3 });
  const sound = await numberIn(page, /^Corner x/);
  await page.mouse.move(at.x - 320, at.y + 10);
  await page.getByRole('alert').filter({ hasText: CROSSING }).waitFor();
  expect(await numberIn(page, /^Corner x/)).toBe(sound);
  await page.mouse.up();
  expect(await numberIn(page, /^Corner x/)).toBe(sound);
});

test('an outline turned inside out by a move is sound, and the corner in hand stays the chosen one', async () => {
  const { page } = app;
  await page.keyboard.press('c');
  const from = await onScreen(page, 0, 6);
  const to = await onScreen(page, 3, -0.5);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.getByText('Corner 4 of 4').waitFor();
  // (0, 0), (2, 0), (2, 6), (3, -0.5) is simple but clockwise, so it is kept as (0, 0), (3, -0.5), (2, 6), (2, 0).
  await page.mouse.move(to.x, to.y);
  await page.getByText('Corner 2 of 4').waitFor();
  expect(await numberIn(page, /^Corner x/)).toBeCloseTo(3, 1);
  await page.mouse.up();
  await drawing(page).focus();
  const before = await numberIn(page, /^Corner x/);
  await page.keyboard.press('ArrowRight');
  expect(await numberIn(page, /^Corner x/)).toBeCloseTo(before + 0.01, 6);
});

test('one drag is one step of undo', async () => {
  const { page } = app;
  await page.keyboard.press('c');
  const at = await upperRight(page);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 20, at.y, { steps: 5 });
  await page.mouse.up();
  expect(await numberIn(page, /^Corner x/)).toBeGreaterThan(2.05);
  await drawing(page).focus();
  await page.keyboard.press('Control+z');
  expect(await verdict(page)).toMatch(/enters\+0\.050 mm$/);
});

test('a milled blade says that a moved corner makes it a drawn outline, until it is one; undo brings the note back', async () => {
  const { page } = app;
  const milled = { thickness: 2, height: 6, grooves: [{ side: 'left', bottom: 2, width: 1, depth: 0.5 }] };
  const blade = { id: 'blade', kind: 'blank', name: 'Blade blank', milled };
  await page.getByRole('button', { name: 'Wall', exact: true }).click();
  await openFamily(page, { ...FAMILY, profiles: [FAMILY.profiles[0], blade] });
  await page.getByRole('option', { name: 'Blade blank' }).waitFor();
  await openPair(page, 'Blade blank', 'Slot keyway');
  await page.keyboard.press('c');
  const note = page.getByText('Blade blank is described by its grooves. A moved corner makes it a drawn outline', {
    exact: false,
  });
  await note.waitFor();
  await drawing(page).focus();
  await page.keyboard.press('ArrowRight');
  await note.waitFor({ state: 'detached' });
  await page.keyboard.press('Control+z');
  await note.waitFor();
});

test('the keys of the corner panel are clean for everyone, and Escape puts the corners away first', async () => {
  const { page } = app;
  await chooseUpperRight(page);
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.getByRole('heading', { name: 'Move corners' }).waitFor({ state: 'detached' });
  expect(await drawing(page).isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await page.locator('button[data-opening]').first().waitFor();
});
