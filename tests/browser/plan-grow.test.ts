import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { holdJob } from '../kit/hold-job.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged, textOf } from './wall-page.ts';

let app: OpenedApp;

// One window for all of them, one after the other.
beforeAll(async () => {
  app = await openApp();
  await judged(app.page);
});

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

/** A search is long work: on a busy machine it takes its time. */
const LONG = { timeout: 150_000 };

const COLLEGE = JSON.parse(readFileSync('profiles-demo/polderwick.json', 'utf8'));

/** The demo with a few of its sections only, so that the search is short. */
async function openSome(page: Page, names: readonly string[]): Promise<void> {
  const profiles = COLLEGE.profiles.filter(({ id }: { id: string }) => names.some((name) => id.startsWith(name)));
  const family = { ...COLLEGE, name: `Some of ${names.length}`, claims: [], names: [], profiles };
  for (const key of ['plan', 'lesson']) delete family[key];
  await page
    .getByLabel('Family file', { exact: true })
    .setInputFiles({ name: 'some.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(family)) });
  await page.getByText(`Some of ${names.length}`).first().waitFor();
}

async function openGrow(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Plan', exact: true }).first().click();
  await page.getByRole('navigation', { name: 'Sheets of Plan' }).getByRole('button', { name: 'Room to grow' }).click();
}

const found = (page: Page) => page.locator('[data-grow="found"]').waitFor(LONG);
const cards = (page: Page) => page.getByRole('list', { name: /^Next sections/ }).getByRole('button');

test('the demo family has room for many more, proved; the next ones are pictured with their margins', async () => {
  const { page } = app;
  await openGrow(page);
  await found(page);
  await expect.poll(() => textOf(page.getByRole('heading', { level: 1 }))).toMatch(/^Room for \d\d sections more$/);
  await page.getByText(/^Proved the most over these 9 places for wards/).waitFor();
  await expect.poll(() => cards(page).count()).toBe(12);
  await page.getByRole('checkbox', { name: /^Reed group blank/ }).waitFor();
  await page.locator('[data-cautions="plan"]').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'plan-grow-light');
  await page.emulateMedia({ colorScheme: 'dark' });
  await takeScreenshots(page, 'plan-grow-dark');
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
});

test('between two neighbours, by keyboard: stopped, looked for again, named, added, and taken back', async () => {
  const { page } = app;
  await holdJob(page, 'growFamily');
  await page.getByLabel('Next section between').selectOption('heron-keyway');
  await page.getByRole('button', { name: 'Stop', exact: true }).press('Enter');
  await page.getByText('The search was stopped.').waitFor();
  await page.getByRole('button', { name: 'Look again' }).press('Enter');
  await found(page);
  await cards(page)
    .first()
    .getByText(/of Heron keyway, \d of Smew keyway/)
    .waitFor();
  await cards(page).nth(1).press('Enter');
  await page.getByRole('heading', { name: /^Next section 2 of \d+$/ }).waitFor();
  const name = page.getByLabel('Name of the new section');
  await name.fill('HerBit');
  await name.press('Enter');
  await page
    .getByRole('alert')
    .getByText(/would mislead/)
    .waitFor();
  await name.fill('Teal');
  await name.press('Enter');
  await page.getByText('Teal was added, keyway and blank').waitFor();
  const tray = page.getByRole('listbox', { name: 'Blanks and tools' });
  await tray.getByRole('option', { name: /^Teal blank/ }).waitFor();
  await page.getByRole('button', { name: 'Stay here' }).click();
  await page.keyboard.press('Control+z');
  await expect.poll(() => tray.getByRole('option', { name: /^Teal blank/ }).count()).toBe(0);
});

test('without an all-section blank it says so, and goes on with the widest blank that passes all', async () => {
  const { page } = app;
  await openSome(page, ['heron', 'bittern']);
  await openGrow(page);
  await page.getByRole('heading', { name: 'No blank enters every keyway' }).waitFor(LONG);
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Use the widest blank that passes all' }).click();
  await page.getByText(/each is entered by the widest blank that passes all keyways/).waitFor(LONG);
  await page.getByRole('button', { name: 'Add to the family' }).click();
  const tray = page.getByRole('listbox', { name: 'Blanks and tools' });
  await tray.getByRole('option', { name: /^All-section blank/ }).waitFor();
  await page.getByText(/each is entered by All-section blank/).waitFor(LONG);
});
