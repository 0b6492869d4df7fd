import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged, pickEntrant, pickedEntrant, textOf } from './wall-page.ts';

let app: OpenedApp;

// One window for all of them, one after the other: each begins with what it looks at.
beforeAll(async () => {
  app = await openApp();
  await judged(app.page);
});

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

const list = (page: Page) => page.locator('[data-passage-list]');

async function openPassage(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Tiers', exact: true }).first().click();
  await page
    .getByRole('navigation', { name: 'Sheets of Tiers' })
    .getByRole('button', { name: 'Common passage' })
    .click();
  await found(page);
}

/** Waits for the answer, and for the list that goes with it. */
async function found(page: Page): Promise<void> {
  await page.locator('[data-passage="found"]').waitFor();
  await list(page).locator('li[data-verdict]').first().waitFor();
}

const headline = (page: Page) => textOf(page.getByRole('heading', { level: 1 }));

test('all ten keyways leave a blank as large as the all-section blank, drawn with what they share', async () => {
  const { page } = app;
  await openPassage(page);
  // profiles-demo/README.md: blades are 2.0 x 8.4 mm.
  expect(await headline(page)).toMatch(/^A blank of 2\.0[01] × 8\.4[01] mm passes all 10 keyways$/);
  expect(await list(page).locator('li[data-verdict="enters"]').count()).toBe(10);
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'passage-all-light');
  await page.emulateMedia({ colorScheme: 'dark' });
  await takeScreenshots(page, 'passage-all-dark');
  expect(await graveAxeFindings(page)).toEqual([]);
});

test('keyways are chosen by the list, by what a blank enters, and pointed at to see what is lost there', async () => {
  const { page } = app;
  await pickEntrant(page, 'Reed group blank');
  await openPassage(page);
  await page.getByRole('button', { name: 'What Reed group blank enters' }).click();
  await expect.poll(() => headline(page)).toMatch(/passes the 3 chosen keyways$/);
  await found(page);
  expect(await list(page).getByRole('checkbox', { checked: true }).count()).toBe(3);
  await expect.poll(() => list(page).locator('li[data-verdict="blocked"]').count()).toBe(7);
  const heron = list(page).getByRole('button', { name: 'Heron keyway' });
  await heron.focus();
  await page.getByText(/^In Heron keyway it gives up \d\.\d\d mm² of/).waitFor();
  await heron.press('Enter');
  expect(await heron.getAttribute('aria-pressed')).toBe('true');
  await takeScreenshots(page, 'passage-lit');
  await page.getByRole('button', { name: 'inch', exact: true }).click();
  await expect.poll(() => headline(page)).toMatch(/^A blank of 0\.0\d\d × 0\.33\d in passes/);
  await list(page).getByRole('checkbox', { name: 'Has to pass Bittern keyway' }).press('Space');
  await expect.poll(() => headline(page)).toMatch(/passes both keyways$/);
  await page.getByRole('button', { name: 'None', exact: true }).click();
  await expect.poll(() => headline(page)).toBe('No keyway is chosen');
  await list(page).getByRole('checkbox', { name: 'Has to pass Dunlin keyway' }).check();
  await expect.poll(() => headline(page)).toMatch(/passes this one keyway$/);
  await page.getByRole('button', { name: 'mm', exact: true }).click();
});

test('a blank made from it is one step of undo, is picked, and opens in Draw', async () => {
  const { page } = app;
  await pickEntrant(page, 'Shore group blank');
  await openPassage(page);
  await page.getByRole('button', { name: 'What Shore group blank enters' }).click();
  await expect.poll(() => headline(page)).toMatch(/passes the 3 chosen keyways$/);
  await page.getByRole('button', { name: 'Make a blank from this' }).click();
  await expect.poll(() => pickedEntrant(page)).toBe('Passage blank, 3 keyways');
  const tray = page.getByRole('listbox', { name: 'Blanks and tools' });
  const row = tray.getByRole('option', { name: /^Passage blank, 3 keyways/ });
  await row.waitFor();
  await takeScreenshots(page, 'passage-made');
  await page.getByRole('button', { name: 'Open in Draw' }).click();
  await page.locator('[data-view="draw"]').waitFor();
  await page.keyboard.press('Control+z');
  await row.waitFor({ state: 'detached' });
});

test('Compare tells ward by ward which groove lets it by, and a line lights its ward', async () => {
  const { page } = app;
  await pickEntrant(page, 'Heron blank, six chambers');
  await page.getByRole('button', { name: 'Compare', exact: true }).first().click();
  const lines = page.locator('section[aria-labelledby="reading-wards"] li button');
  await expect.poll(() => lines.count()).toBe(3);
  // profiles-demo/README.md: the Heron sites 1 and 2 and the low groove of all, 55 um round its own blank.
  expect(await lines.allTextContents()).toEqual([
    'Right ward at 0.5–1.1 mm: passes through the right groove at 0.5–1.1 mm, 0.055 mm spare',
    expect.stringMatching(
      /^Right ward at 1\.[56]–2\.2 mm: passes through the right groove at 1\.5–2\.[23] mm, 0\.055 mm spare$/,
    ),
    expect.stringMatching(
      /^Left ward at 2\.0–2\.6 mm: passes through the left groove at 1\.9–2\.[67] mm, 0\.055 mm spare$/,
    ),
  ]);
  await lines.nth(2).focus();
  await expect.poll(() => lines.nth(2).getAttribute('data-lit')).toBe('true');
  await lines.nth(2).scrollIntoViewIfNeeded();
  await takeScreenshots(page, 'compare-wards');
  expect(await graveAxeFindings(page)).toEqual([]);
});

test('restricted to a straight cutter it says what that costs and what else it would enter, and is made milled', async () => {
  const { page } = app;
  await openPassage(page);
  await page.getByRole('button', { name: 'None', exact: true }).click();
  for (const name of ['Heron keyway', 'Smew keyway'])
    await list(page)
      .getByRole('checkbox', { name: `Has to pass ${name}` })
      .press('Space');
  await expect.poll(() => headline(page)).toMatch(/passes both keyways$/);
  await page.getByLabel('Form', { exact: true }).selectOption('milled');
  await page.locator('[data-milling="found"]').waitFor();
  await page
    .locator('[data-also]')
    .getByText(/^enters, 0\.\d+ mm all round$/)
    .waitFor();
  await page.getByText('Less than in any form').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'passage-milled');
  const height = page.getByLabel('Height of the plain blade');
  // What was typed and not taken goes with its units: the fields say the same lengths in inches, and none in millimetres.
  const width = page.getByLabel('Least width of a groove');
  await height.fill('7');
  await page.getByRole('button', { name: 'inch' }).click();
  await expect.poll(async () => Number(await width.inputValue())).toBeCloseTo(0.4 / 25.4, 5);
  expect(await height.inputValue()).toBe('');
  await page.getByRole('button', { name: 'mm', exact: true }).click();
  await expect.poll(async () => Number(await width.inputValue())).toBe(0.4);
  await height.fill('20');
  await height.press('Enter');
  await page
    .getByRole('alert')
    .getByText(/^This cutter can mill no blank/)
    .waitFor();
  await height.fill('8');
  await height.press('Enter');
  await expect.poll(() => headline(page)).toMatch(/^A blank of 2\.0\d × 8\.00 mm passes both keyways$/);
  await page.getByRole('button', { name: 'Make a blank from this' }).click();
  await page.getByRole('button', { name: 'Open in Draw' }).click();
  await page.locator('[data-view="draw"]').waitFor();
  await page.keyboard.press('Control+z');
});

const box = (width: number, height: number) => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

const SLITS = {
  format: 'sectionary-family',
  version: 1,
  name: 'Slits',
  units: 'mm',
  runningClearance: 0.05,
  profiles: [
    { id: 'slit', kind: 'opening', name: 'Slit', outline: box(0.09, 8) },
    { id: 'wide', kind: 'opening', name: 'Wide slot', outline: box(2, 8) },
    { id: 'strip', kind: 'blank', name: 'Strip', outline: box(1, 6) },
  ],
};

test('a keyway too narrow for the clearance is told, and what the others share stays to be seen', async () => {
  const { page } = app;
  await openPassage(page);
  await page
    .getByLabel('Family file', { exact: true })
    .setInputFiles({ name: 'slits.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(SLITS)) });
  await page.getByText(/^With 0\.050 mm of running clearance all round Slit leaves no room for any blank/).waitFor();
  expect(await headline(page)).toBe('No blank passes both keyways');
  expect(await page.getByRole('button', { name: 'Make a blank from this' }).count()).toBe(0);
  await takeScreenshots(page, 'passage-none');
});
