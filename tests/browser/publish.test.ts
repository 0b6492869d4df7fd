// Sheets and slides of the demo family through pointer and keyboard. What is saved is read back: PDF by poppler
// (https://poppler.freedesktop.org), PNG by pngjs. Paper: ISO 216 and 8.5 x 11 in; a point of PDF is 1/72 in (ISO 32000-1).
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { pdfInfo, pdfText } from '../kit/ask-poppler.ts';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp, WINDOW_SIZES } from '../kit/open-app.ts';
import { drawing, openFamily, openPair, rectangle } from './compare-page.ts';

let app: OpenedApp;
let page: Page;

beforeAll(async () => {
  app = await openApp({ address: '#publish' });
  page = app.page;
});

afterAll(async () => {
  await app?.close();
});

const key = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });

/** Waits until a sheet is laid out as it is wanted now. */
const laidOut = (sheet: string) => page.locator(`[data-publish="${sheet}"]`).waitFor();

/** The page that is shown, not one of the small pictures. */
const paper = () => page.getByRole('region', { name: 'Page' });

const pageNumber = () =>
  page
    .getByRole('status')
    .filter({ hasText: /^(Page|Slide) \d/ })
    .textContent();

async function saved(press: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  const name = download.suggestedFilename();
  await page
    .getByRole('status')
    .filter({ hasText: `${name} is in your downloads.` })
    .waitFor();
  return { name, bytes: readFileSync(await download.path()) };
}

/** Sizes of pages in whole millimetres. */
function sizesMm(pdf: Uint8Array): number[][] {
  return pdfInfo(pdf).sizes.map((size) => size.map((points) => Math.round((points / 72) * 25.4)));
}

test('a sheet is chosen by the pointer, looked at page by page, and saved in every form', async () => {
  await page.getByRole('radio', { name: /^Verdict matrix/ }).check();
  await page.getByRole('combobox', { name: 'Inks' }).selectOption('grey');
  await laidOut('matrix');
  await expect.poll(pageNumber).toBe('Page 1 of 2');
  await key('Next page').click();
  await expect.poll(pageNumber).toBe('Page 2 of 2');
  await paper().getByRole('img').waitFor();
  await page.getByRole('list', { name: 'All pages' }).getByRole('button').first().click();
  await expect.poll(pageNumber).toBe('Page 1 of 2');

  const pdf = await saved(() => key('Save PDF').click());
  expect(pdf.name).toBe('Polderwick College - verdict matrix.pdf');
  expect(sizesMm(pdf.bytes)).toEqual([
    [297, 210],
    [297, 210],
  ]);
  expect(pdfText(pdf.bytes)).toContain('Bittern blank');

  const csv = await saved(() => key('Save CSV').click());
  const [head, ...rows] = csv.bytes.toString('utf8').trim().split(/\r?\n/);
  expect(csv.name).toBe('Polderwick College - verdict matrix.csv');
  expect(head).toContain('margin (mm)');
  // The demo family has twenty blanks and tools.
  expect(rows).toHaveLength(20);

  const png = await saved(() => key('Save PNG').click());
  expect(png.name).toBe('Polderwick College - verdict matrix 1.png');
  const { width, height } = PNG.sync.read(png.bytes);
  // 300 dots an inch: 297 mm are 3508 points, 210 mm are 2480.
  expect([width, height]).toEqual([3508, 2480]);

  await key('Save SVG ▾').click();
  const svg = await saved(() => key(/^This page/).click());
  expect(svg.name).toBe('Polderwick College - verdict matrix 1.svg');
  expect(svg.bytes.toString('utf8')).toMatch(/<svg[^>]* width="297mm"[^>]* height="210mm"/);
  await key('Save SVG ▾').click();
  const archive = await saved(() => key(/^All 2 pages/).click());
  expect(archive.name).toBe('Polderwick College - verdict matrix.zip');
  for (const name of ['verdict matrix 1.svg', 'verdict matrix 2.svg']) expect(archive.bytes.includes(name)).toBe(true);
  expect(app.problems).toEqual([]);
});

test('by keyboard alone: sheet, pages, size; the printer gets pages of their own size, and the choice is kept', async () => {
  await page.getByRole('radio', { name: /^Verdict matrix/ }).focus();
  await page.keyboard.press('ArrowDown');
  await laidOut('scale');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await laidOut('answers');
  await page.getByRole('combobox', { name: 'Paper' }).selectOption('Letter');
  await laidOut('answers');
  // Letter is shorter than A4: ten questions and their answers need more than one page.
  await expect.poll(pageNumber).toMatch(/^Page 1 of [2-9]$/);
  const count = Number((await pageNumber())?.at(-1));
  await paper().focus();
  await page.keyboard.press('PageDown');
  await expect.poll(pageNumber).toBe(`Page 2 of ${count}`);
  await page.keyboard.press('1');
  // 8.5 in are 816 pixels of CSS.
  await expect.poll(async () => Math.round((await paper().locator('svg').boundingBox())?.width ?? 0)).toBe(816);
  await page.keyboard.press('f');
  await expect.poll(async () => ((await paper().locator('svg').boundingBox())?.width ?? 816) < 700).toBe(true);

  const printed = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  expect(sizesMm(printed)).toEqual(Array.from({ length: count }, () => [216, 279]));
  expect(pdfText(printed)).toContain('Does it go in?');
  expect(pdfText(printed)).not.toContain('Print it true');
  await expect.poll(() => page.locator('[data-printed]').count()).toBe(0);

  await page.reload();
  await laidOut('answers');
  expect(await page.getByRole('combobox', { name: 'Paper' }).inputValue()).toBe('Letter');
  expect(await page.getByRole('radio', { name: /^Answer sheet/ }).isChecked()).toBe(true);
  expect(app.problems).toEqual([]);
});

test('slides are saved as a web page and a PDF and lead to the lesson; both sheets are clean for everyone', async () => {
  await key('Slides').click();
  await laidOut('slides');
  const html = await saved(() => key('Save HTML').click());
  expect(html.name).toBe('Polderwick College - slides.html');
  const text = html.bytes.toString('utf8');
  expect(text).toMatch(/^<!doctype html>/i);
  expect(text).toContain('One college, ten keyways');
  expect(text).not.toMatch(/(?:src|href)="https?:/);
  const pdf = await saved(() => key('Save PDF').click());
  const sizes = sizesMm(pdf.bytes);
  expect(sizes.length).toBeGreaterThan(8);
  expect(new Set(sizes.map(String))).toEqual(new Set(['320,180']));
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize(WINDOW_SIZES.small);
  expect(await graveAxeFindings(page)).toEqual([]);
  await key('Sheets').click();
  await laidOut('answers');
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize(WINDOW_SIZES.large);
  await key('Slides').click();
  await laidOut('slides');
  await key('Edit the lesson').click();
  await key('Present ▶').waitFor();
  expect(app.problems).toEqual([]);
});

test('an edit and its undo renew the preview; what a family lacks is told', async () => {
  const profiles = [
    { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
    { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) },
  ];
  const plain = { name: 'Plain', runningClearance: 0.03, tolerance: 0.01 };
  await openFamily(page, { ...plain, profiles: profiles.slice(1) });
  await key('Publish').click();
  await page.getByRole('heading', { name: 'This family has no keyways' }).waitFor();
  // (2.1 - 2) / 2 = 0.050 mm all round; with its upper right corner 0.01 mm further out, 0.045 mm.
  await openFamily(page, { ...plain, profiles });
  await key('Sheets').click();
  await page.getByRole('radio', { name: /^Verdict matrix/ }).check();
  await laidOut('matrix');
  await paper().getByText('+0.050').waitFor();
  await key('Wall').click();
  await openPair(page, 'Bar blank', 'Slot keyway');
  await drawing(page).focus();
  await page.keyboard.press('c');
  await page.keyboard.press(']');
  await page.keyboard.press(']');
  await page.getByText('Corner 3 of 4').waitFor();
  await page.keyboard.press('ArrowRight');
  await key('Publish').click();
  await paper().getByText('+0.045').waitFor();
  await page.keyboard.press('Control+z');
  await paper().getByText('+0.050').waitFor();
  // That a section was squeezed in later is part of the family, so undo takes it back.
  await page.getByRole('radio', { name: /^Section chart/ }).check();
  await page.getByText('In-between sections: none').click();
  await page.getByRole('checkbox', { name: 'Slot keyway' }).check();
  await page.getByText('In-between sections: 1').waitFor();
  await laidOut('chart');
  await page.keyboard.press('Control+z');
  await page.getByText('In-between sections: none').waitFor();
  await key('Slides').click();
  await page.getByRole('heading', { name: 'No lesson yet' }).waitFor();
  // The key that makes a lesson goes with its press, and comes back with undo.
  const focused = () => page.evaluate(() => document.activeElement?.textContent);
  await key('Make a lesson from this family').press('Enter');
  await page.getByRole('status').filter({ hasText: 'A ready lesson was made.' }).waitFor();
  await expect.poll(focused).toBe('Edit the lesson');
  await page.keyboard.press('Control+z');
  await expect.poll(focused).toBe('Make a lesson from this family');
  await expect.poll(() => page.getByText('A ready lesson was made.').count()).toBe(0);
  expect(app.problems).toEqual([]);
});
