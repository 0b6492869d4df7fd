// The file of slides as a trainer uses it: opened from a disk, without a server and without a network.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { publishSheets } from '../../src/jobs/publish-sheets.ts';
import { graveAxeFindings } from '../kit/axe.ts';
import { browserOfThisLane } from '../kit/open-app.ts';
import { readPdf } from '../kit/read-pdf.ts';
import { demoFamily } from '../unit/teach/known-family.ts';

const folder = mkdtempSync(join(tmpdir(), 'slides-'));
const file = join(folder, 'slides.html');
const problems: string[] = [];
const asked: string[] = [];
let context: BrowserContext;
let page: Page;
let count = 0;

beforeAll(async () => {
  const family = demoFamily('first-lesson');
  const order = { sheet: 'slides', paper: 'A4', turned: 'landscape', palette: 'colour', units: 'mm' } as const;
  const quiet = { progress() {}, cancelled: () => false, pause: async () => {}, now: () => performance.now() };
  const { html, pageCount } = await publishSheets({ family, sheet: order, as: 'html' }, quiet);
  count = pageCount;
  writeFileSync(file, html ?? '');
  context = await (await browserOfThisLane()).newContext({ viewport: { width: 1440, height: 900 }, hasTouch: true });
  page = await context.newPage();
  page.on('console', (message) => problems.push(message.text()));
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('request', (request) => asked.push(request.url().slice(0, 40)));
  await page.goto(pathToFileURL(file).href);
});

afterAll(async () => {
  await context?.close();
  rmSync(folder, { recursive: true, force: true });
});

const number = () => page.locator('#number').textContent();
const shown = () => page.locator('.slide:visible').evaluateAll((all) => all.map(({ id }) => id));
const at = async (n: number) => {
  await expect.poll(number).toBe(`${n} of ${count}`);
  expect(await shown()).toEqual([`slide-${n}`]);
};

/** A finger drawn across the page. */
async function swipe(from: number, to: number): Promise<void> {
  const hand = await context.newCDPSession(page);
  const points = [from, (from + to) / 2, to].map((x) => [{ x, y: 450 }]);
  await hand.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: points[0] });
  for (const touchPoints of points.slice(1))
    await hand.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints });
  await hand.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await hand.detach();
}

test('keys of a keyboard and of a clicker turn the slides, no further than their ends', async () => {
  await at(1);
  const keys = ['ArrowRight', ' ', 'PageDown', 'Enter', 'ArrowDown'];
  for (const [i, key] of keys.entries()) {
    await page.keyboard.press(key);
    await at(Math.min(count, i + 2));
  }
  await page.keyboard.press('End');
  await page.keyboard.press('ArrowRight');
  await at(count);
  for (const key of ['ArrowLeft', 'PageUp', 'Shift+Space']) await page.keyboard.press(key);
  await at(count - 3);
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowLeft');
  await at(1);
  await page.keyboard.press('4');
  await page.keyboard.press('Enter');
  await at(4);
});

test('clicks, swipes and buttons turn them too; its number stays in the address', async () => {
  await page.keyboard.press('Home');
  await page.mouse.click(1000, 400);
  await at(2);
  await page.mouse.click(200, 400);
  await at(1);
  await page.touchscreen.tap(1000, 400);
  await at(2);
  await swipe(900, 500);
  await at(3);
  await swipe(500, 900);
  await at(2);
  await page.getByRole('button', { name: 'Next' }).focus();
  await page.keyboard.press('Enter');
  await at(3);
  await expect.poll(() => new URL(page.url()).hash).toBe('#3');
  await page.reload();
  await at(3);
  await page.getByRole('button', { name: 'Back' }).click();
  await at(2);
});

test('a slide fills the window, is read out with its number, and is set in its own typeface', async () => {
  await page.keyboard.press('Home');
  const box = await page.locator('#slide-1 > svg').boundingBox();
  expect(box?.width).toBeCloseTo(1440, 0);
  expect(box?.height).toBeCloseTo(810, 0);
  const keys = await page.locator('#next').boundingBox();
  expect(keys?.y).toBeGreaterThan((box?.y ?? 900) + 810 + 4);
  await page.keyboard.press('ArrowRight');
  const second = page.getByRole('region', { name: `2 of ${count}` });
  await expect.poll(() => second.textContent()).toContain('One ward, one groove');
  await expect.poll(() => page.locator('#told').textContent()).toBe(`Slide 2 of ${count}: In it goes`);
  const isLoaded = () => document.fonts.check("700 20px 'Atkinson Hyperlegible Next'");
  await expect.poll(() => page.evaluate(isLoaded)).toBe(true);
  expect(await graveAxeFindings(page)).toEqual([]);
});

test('printed it is one slide a page', async () => {
  const { pages } = readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  expect(pages).toHaveLength(count);
  for (const [i, text] of pages.entries()) expect(text).toContain(`${i + 1}/${count}`);
});

test('it asks for nothing but itself, and complains of nothing', () => {
  expect(asked.filter((url) => !url.startsWith('file:') && !url.startsWith('data:'))).toEqual([]);
  expect(problems).toEqual([]);
});
