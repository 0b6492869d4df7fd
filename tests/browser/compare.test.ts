import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { judged, pickEntrant, reading, textOf } from './wall-page.ts';

/** What these tests look at, in the order of the demo. */
const PARTS = partOfDemo(
  'heron-keyway',
  'smew-keyway',
  'ruff-keyway',
  'heron-blank-5',
  'dunlin-blank',
  'reed-group-blank',
  'dyke-group-blank',
  'causeway-group-blank',
);

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: PARTS });
  await judged(app.page);
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const drawing = (page: Page) => page.getByRole('application', { name: /^Drawing of/ });
const status = (page: Page) => textOf(page.getByRole('status'));

/** A cell of the wall: the readings may have a key for the same pair. */
const cell = (page: Page, opening: string) => page.locator(`button[data-opening][title*="in ${opening}"]`);

/** Opens the Reed group blank in the keyway of the name. */
async function compareReed(page: Page, opening: string): Promise<void> {
  await pickEntrant(page, 'Reed group blank');
  await cell(page, opening).dblclick();
  await drawing(page).waitFor();
}

/** The middle of the drawing, where the blank lies while the whole plug is shown. */
async function middle(page: Page): Promise<{ x: number; y: number }> {
  const box = await drawing(page).boundingBox();
  if (!box) throw new Error('The drawing has no box.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function drag(page: Page, from: { x: number; y: number }, dx: number, dy: number): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + dx / 2, from.y + dy / 2, { steps: 4 });
  await page.mouse.move(from.x + dx, from.y + dy, { steps: 4 });
  await page.mouse.up();
}

/** A reading in millimetres as a number, with its minus sign made one that parses. */
async function millimetres(page: Page, term: string): Promise<number> {
  return Number.parseFloat((await reading(page, term)).replace('−', '-'));
}

test('Enter on a cell opens its pair, Escape goes back to that cell, and so does the browser', async () => {
  const { page } = app;
  await cell(page, 'Smew keyway').focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: /in Smew keyway: blocked/ }).waitFor();
  await expect.poll(() => drawing(page).evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.press('Escape');
  await cell(page, 'Smew keyway').waitFor();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-opening')))
    .toBe('smew-keyway');
  await page.getByRole('button', { name: 'Compare', exact: true }).first().click();
  await drawing(page).waitFor();
  await page.goBack();
  await page.locator('button[data-opening]').first().waitFor();
});

test('an address that asks for Compare opens there, and Escape first closes a panel that hangs open', async () => {
  const { page } = app;
  await page.goto(`${app.url}#compare`);
  await page.reload();
  await drawing(page).waitFor();
  const row = page.getByRole('button', { name: /^Keys… all shortcuts/ });
  await page.getByRole('button', { name: 'Help ▾' }).click();
  await row.waitFor();
  await page.keyboard.press('Escape');
  await row.waitFor({ state: 'hidden' });
  expect(await drawing(page).isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await page.locator('button[data-opening]').first().waitFor();
});

test('a blocked pair names the ward, its height and its depth, in words and as a list', async () => {
  const { page } = app;
  await compareReed(page, 'Ruff keyway');
  expect(await status(page)).toMatch(
    /^Reed group blank does not enter Ruff keyway: blocked by the (left|right) (ward|wall) at \d\.\d–\d\.\d mm, 0\.\d\d mm too deep/,
  );
  // Ruff has wards at sites 3 and 4; the blank has no groove at 4: a left ward at 0.75 to 1.45 mm must be in the way.
  const inTheWay = page.getByRole('region', { name: 'In the way' }).getByRole('listitem');
  await inTheWay.filter({ hasText: 'left ward' }).first().waitFor();
  await expect.poll(() => inTheWay.count()).toBeGreaterThan(1);
});

test('arrow keys nudge by a hundredth, with shift by a tenth, and the readings follow', async () => {
  const { page } = app;
  await compareReed(page, 'Heron keyway');
  const start = await status(page);
  await page.keyboard.press('ArrowRight');
  expect(await reading(page, 'Sideways')).toBe('+0.010 mm');
  // Towards the plain right wall the gap of 0.055 mm falls by just that much.
  expect(await millimetres(page, 'Least gap')).toBeCloseTo(0.045, 2.9);
  await page.keyboard.press('ArrowDown');
  expect(await reading(page, 'Up')).toBe('−0.010 mm');
  expect(await status(page)).toMatch(/^Here it goes in, 0\.0[34]\d mm from the /);
  await page.keyboard.press('Shift+ArrowRight');
  expect(await reading(page, 'Sideways')).toBe('+0.110 mm');
  // The gap was 0.055 mm: moved 0.110 mm, the blank stands 0.055 mm in the wall.
  expect(await millimetres(page, 'Too deep by')).toBeCloseTo(0.055, 2.9);
  expect(await status(page)).toMatch(/^Here it is blocked by the .+ too deep/);
  await page.keyboard.press('Home');
  expect(await status(page)).toBe(start);
});

test('stood centred, only the wards of the other section are in the way, and share nothing out', async () => {
  const { page } = app;
  await compareReed(page, 'Ruff keyway');
  const shared = await millimetres(page, 'Too deep by');
  const best = await status(page);
  await page.keyboard.press('m');
  // Blade and keyway are as in the section's own pair, so no wall is near; the blank has no groove at site 4.
  const inTheWay = page.getByRole('region', { name: 'In the way' }).getByRole('listitem');
  const parts = await inTheWay.allTextContents();
  expect(parts.length).toBeGreaterThan(0);
  for (const part of parts) expect(part).toMatch(/(left|right) ward/);
  expect(await status(page)).toMatch(/^Here it is blocked by the (left|right) ward /);
  // Ruff's right ward is 0.56 mm high: the blank's side runs past its middle, 0.28 mm from both flanks.
  expect(await millimetres(page, 'Too deep by')).toBeGreaterThanOrEqual(0.28);
  expect(await millimetres(page, 'Too deep by')).toBeGreaterThan(shared);
  await page.getByRole('button', { name: 'Best placement' }).click();
  expect(await status(page)).toBe(best);
  await page.getByRole('button', { name: 'Stand centred' }).click();
  expect(await inTheWay.allTextContents()).toEqual(parts);
});

test('a dragged blank says live what it meets, and snaps back', async () => {
  const { page } = app;
  await compareReed(page, 'Heron keyway');
  const start = await status(page);
  const at = await middle(page);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 40, at.y, { steps: 6 });
  expect(await status(page)).toMatch(/^Here it is blocked by the right (wall|ward) /);
  await page.mouse.up();
  expect(await millimetres(page, 'Sideways')).toBeGreaterThan(0.4);
  await page.getByRole('button', { name: 'Best placement' }).click();
  expect(await status(page)).toBe(start);
  expect(await reading(page, 'Sideways')).toBe('0.000 mm');
});

test('a blank dragged into the wall rests there until it is pulled on', async () => {
  const { page } = app;
  await compareReed(page, 'Heron keyway');
  const at = await middle(page);
  // Eleven pixels are about 0.2 mm, four times the gap, but less than the pull that pushes it in.
  await drag(page, at, 11, 0);
  const moved = await millimetres(page, 'Sideways');
  expect(moved).toBeGreaterThan(0.03);
  expect(moved).toBeLessThanOrEqual(0.056);
  expect(await status(page)).toMatch(/^Here it goes in/);
});

test('the wheel zooms, keys and buttons zoom, 0 shows the whole plug', async () => {
  const { page } = app;
  await compareReed(page, 'Ruff keyway');
  /** How far the blank moves for a hand movement of 100 pixels: small when the view is close. */
  const reach = async () => {
    await page.getByRole('button', { name: 'Best placement' }).click();
    await drag(page, await middle(page), 100, 0);
    return millimetres(page, 'Sideways');
  };
  const room = () => drawing(page).evaluate(({ clientHeight }) => clientHeight);
  const before = await room();
  const whole = await reach();
  // Less is said of a blank in the hand than of its best placement: the drawing does not grow under the hand.
  expect(await room()).toBe(before);
  const at = await middle(page);
  await page.mouse.move(at.x, at.y);
  await page.mouse.wheel(0, -400);
  const close = await reach();
  expect(close).toBeLessThan(whole * 0.7);
  await drawing(page).focus();
  await page.keyboard.press('0');
  expect(await reach()).toBeCloseTo(whole, 2);
  await page.keyboard.press('+');
  expect(await reach()).toBeCloseTo(whole / 1.25, 2);
  await page.keyboard.press('-');
  expect(await reach()).toBeCloseTo(whole, 2);
  await page.getByRole('button', { name: 'Zoom in' }).click();
  expect(await reach()).toBeCloseTo(whole / 1.5, 2);
  await page.getByRole('button', { name: 'Whole plug' }).click();
  expect(await reach()).toBeCloseTo(whole, 2);
});

test('the sheet moves by a drag beside the blank, with space, and with the middle button', async () => {
  const { page } = app;
  await compareReed(page, 'Heron keyway');
  const at = await middle(page);
  const beside = { x: at.x - 250, y: at.y };
  await drag(page, beside, -150, 0);
  expect(await reading(page, 'Sideways')).toBe('0.000 mm');
  // The blank went along: it can be taken where it is now.
  await drag(page, { x: at.x - 150, y: at.y }, 60, 0);
  expect(await millimetres(page, 'Sideways')).toBeGreaterThan(0.5);
  await page.keyboard.press('Home');
  await page.keyboard.down(' ');
  await drag(page, { x: at.x - 150, y: at.y }, 150, 0);
  await page.keyboard.up(' ');
  expect(await reading(page, 'Sideways')).toBe('0.000 mm');
  await page.mouse.move(at.x, at.y);
  await page.mouse.down({ button: 'middle' });
  await page.mouse.move(at.x + 80, at.y + 20, { steps: 3 });
  await page.mouse.up({ button: 'middle' });
  expect(await reading(page, 'Sideways')).toBe('0.000 mm');
  await drag(page, { x: at.x + 80, y: at.y }, 60, 0);
  expect(await millimetres(page, 'Sideways')).toBeGreaterThan(0.5);
});

test('the next blank and the next keyway come without leaving Compare', async () => {
  const { page } = app;
  await compareReed(page, 'Heron keyway');
  await page.getByRole('button', { name: 'Next keyway' }).click();
  await page.getByRole('heading', { level: 1, name: /Reed group blank in Smew keyway: enters/ }).waitFor();
  await page.getByRole('button', { name: 'Next blank or tool' }).click();
  await page.getByRole('heading', { level: 1, name: /Dyke group blank in Smew keyway: blocked/ }).waitFor();
  await page.keyboard.press('PageUp');
  await page.keyboard.press('PageUp');
  await page.getByRole('heading', { level: 1, name: /Dunlin blank in Smew keyway/ }).waitFor();
  await page.getByRole('button', { name: 'Previous keyway' }).click();
  await pickEntrant(page, 'Causeway group blank');
  await page.getByRole('heading', { level: 1, name: /Causeway group blank in Heron keyway: enters/ }).waitFor();
});

test('in inch units a nudge is half a thousandth and heights are inches', async () => {
  const { page } = app;
  await page.getByRole('button', { name: 'inch' }).click();
  await compareReed(page, 'Ruff keyway');
  expect(await status(page)).toMatch(/at 0\.\d{3}–0\.\d{3} in, \d+\.\d thou too deep/);
  await drawing(page).focus();
  await page.keyboard.press('ArrowRight');
  expect(await reading(page, 'Sideways')).toBe('+0.5 thou');
});

test('the canvas is drawn, and hidden from screen readers', async () => {
  const { page } = app;
  await compareReed(page, 'Ruff keyway');
  await expect.poll(() => drawing(page).locator('[aria-hidden="true"] canvas').count()).toBe(2);
  const before = await drawing(page).screenshot();
  await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(async () => Buffer.compare(before, await drawing(page).screenshot())).not.toBe(0);
});
