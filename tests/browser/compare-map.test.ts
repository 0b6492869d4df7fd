import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { drawing, openPair, sentence } from './compare-page.ts';
import { reading } from './wall-page.ts';

/** What these tests look at. */
const PARTS = partOfDemo('heron-keyway', 'ruff-keyway', 'heron-blank-5', 'ruff-blank', 'reed-group-blank');

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: PARTS });
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const map = (page: Page) => page.getByRole('application', { name: /^Map of placements/ });
const dot = (page: Page) => map(page).locator('[data-now]');

async function dotAt(page: Page): Promise<{ x: number; y: number }> {
  const box = await dot(page).boundingBox();
  if (!box) throw new Error('The map shows no dot.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function millimetres(page: Page, term: string): Promise<number> {
  return Number.parseFloat((await reading(page, term)).replace('−', '-'));
}

async function dragDot(page: Page, dx: number, dy: number): Promise<void> {
  await map(page).scrollIntoViewIfNeeded();
  const from = await dotAt(page);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + dx, from.y + dy, { steps: 6 });
  await page.mouse.up();
}

test('dragging the dot moves the blank in the drawing, and it is no longer in its best placement', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  await page.getByRole('heading', { level: 2, name: 'Best placement' }).waitFor();
  const before = await drawing(page).screenshot();
  await dragDot(page, 30, 0);
  await page.getByRole('heading', { level: 2, name: 'Placed by hand' }).waitFor();
  const moved = await millimetres(page, 'Sideways');
  expect(moved).toBeGreaterThan(0.015);
  expect(await millimetres(page, 'Up')).toBeCloseTo(0, 2);
  // The region is nearly a circle of 0.045 mm: what is left is what was not moved.
  expect(await millimetres(page, 'Least gap')).toBeCloseTo(0.045 - moved, 2.6);
  await expect.poll(async () => Buffer.compare(before, await drawing(page).screenshot())).not.toBe(0);
  await page.getByRole('button', { name: 'Best placement' }).click();
  await page.getByRole('heading', { level: 2, name: 'Best placement' }).waitFor();
});

test('twice the way on the map is twice the way of the blank, and out of the region it collides', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  await dragDot(page, 0, -20);
  const once = await millimetres(page, 'Up');
  await dragDot(page, 0, -20);
  expect(await millimetres(page, 'Up')).toBeCloseTo(2 * once, 2.5);
  await dragDot(page, 0, -60);
  expect(await page.evaluate(() => String(getSelection()))).toBe('');
  expect(await sentence(page)).toMatch(/^Here it is blocked by /);
  expect(await dot(page).getAttribute('data-now')).not.toBe('free');
});

test('a blank moved in the drawing moves the dot; on the map the arrow keys move the blank', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  const before = await dotAt(page);
  await drawing(page).focus();
  await page.keyboard.press('ArrowRight');
  const after = await dotAt(page);
  expect(after.x).toBeGreaterThan(before.x + 5);
  expect(after.y).toBeCloseTo(before.y, 0);
  await map(page).focus();
  await page.keyboard.press('ArrowUp');
  expect(await reading(page, 'Up')).toBe('+0.010 mm');
  await page.getByText(/^Free at \+0\.010 mm sideways, \+0\.010 mm up: 0\.03\d mm left\.$/).waitFor();
  await page.keyboard.press('Home');
  expect(await reading(page, 'Up')).toBe('0.000 mm');
});

test('where nothing goes in, the map is empty and says so; the blank can still be moved on it', async () => {
  const { page } = app;
  await openPair(page, 'Reed group blank', 'Ruff keyway');
  await page.getByText('No placement: the map is empty', { exact: false }).waitFor();
  await dragDot(page, -40, 10);
  expect(await millimetres(page, 'Sideways')).toBeLessThan(-0.05);
  await page.getByText('where it would have to lie').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
});

test('a press beside the dot brings the blank there', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  await map(page).scrollIntoViewIfNeeded();
  const at = await dotAt(page);
  await page.mouse.click(at.x - 35, at.y + 30);
  const now = await dotAt(page);
  expect(now.x).toBeCloseTo(at.x - 35, 0);
  expect(now.y).toBeCloseTo(at.y + 30, 0);
  expect(await millimetres(page, 'Up')).toBeLessThan(0);
});

test('what limits the best placement is named with side, height and what touches', async () => {
  const { page } = app;
  await openPair(page, 'Heron blank, five chambers', 'Heron keyway');
  const narrow = page.getByRole('region', { name: 'Where it is narrow' });
  await narrow
    .getByText(/^It cannot have more room: it is held (between the .+ and the .+|by the .+|round the .+)\.$/)
    .waitFor();
  const items = narrow.getByRole('listitem');
  await expect.poll(() => items.count()).toBeGreaterThan(1);
  expect(await items.first().textContent()).toMatch(
    /^(A corner of the|The) blank against (a corner of )?the (left|right) (wall|ward)at \d\.\d mm$/,
  );
  await drawing(page).focus();
  await page.keyboard.press('ArrowRight');
  await narrow.getByText(/It cannot have more room/).waitFor({ state: 'detached' });
});
