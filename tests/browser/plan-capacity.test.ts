import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged, textOf } from './wall-page.ts';

let app: OpenedApp;

beforeAll(async () => {
  app = await openApp();
  await judged(app.page);
  await app.page.getByRole('button', { name: 'Plan', exact: true }).first().click();
  const sheets = app.page.getByRole('navigation', { name: 'Sheets of Plan' });
  await sheets.getByRole('button', { name: 'Capacity' }).click();
  await app.page.locator('[data-capacity="counted"]').waitFor();
});

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

/** With spaces that break. */
const plain = (text: string | null) => (text ?? '').replaceAll('\u00a0', ' ');
const headline = async (page: Page) => plain(await textOf(page.getByRole('heading', { level: 1 })));
const field = (page: Page, name: string) => page.getByRole('spinbutton', { name });

test('the ten sections of the demo under the usual rules, the same bitting in each, what one more brings', async () => {
  const { page } = app;
  // 753754: ten depths, six chambers, at most seven apart (tests/outside/key-changes.test.ts).
  await expect.poll(() => headline(page)).toBe('753 754 bittings × 10 sections = 7 537 540 key changes');
  expect(await page.locator('[data-example] li').count()).toBe(10);
  const before = await page.locator('[data-example]').getAttribute('data-example');
  await page.getByRole('button', { name: 'Another one' }).click();
  await expect.poll(() => page.locator('[data-example]').getAttribute('data-example')).not.toBe(before);
  const chart = page.getByRole('img', { name: /^Key changes as asked/ });
  const told = plain(await chart.getAttribute('aria-label'));
  expect(told).toMatch(/^Key changes as asked: 7 537 540\..*7 chambers: 71 315 960/);
  const sections = page.locator('[data-sections="10"]');
  expect(await textOf(sections)).toContain('this is proved');
  expect(await textOf(sections)).toContain('Polder all-section blank in all of 10');
  expect(await textOf(sections)).toContain('Heron blank, six chambers');
  await sections
    .locator('[data-guard="known"]')
    .getByText(/^Smallest guard margin between them: \d/)
    .waitFor();
  await sections.getByRole('button', { name: /^Ruff keyway/ }).click();
  await page.getByRole('option', { name: /^Ruff keyway/, selected: true }).waitFor();
  expect(await page.locator('[data-cautions="capacity"]').textContent()).toContain('no security boundary');
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'plan-capacity-light');
  await page.emulateMedia({ colorScheme: 'dark' });
  await takeScreenshots(page, 'plan-capacity-dark');
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
});

test('rules are typed, picked and ticked, by keyboard alone; a contradiction is told where it is', async () => {
  const { page } = app;
  await field(page, 'Maximum adjacent cut').fill('');
  await expect.poll(() => headline(page)).toMatch(/^1 000 000 bittings × 10 sections/);
  await page.getByRole('combobox', { name: 'Progression' }).selectOption('two-step');
  await expect.poll(() => headline(page)).toMatch(/^15 625 bittings/);
  // Under a top master four depths are left in each position: 4 to the power of 6.
  const master = page.getByRole('textbox', { name: 'Top master' });
  await master.fill('5 2 7 4 1 8');
  await expect.poll(() => headline(page)).toMatch(/^4 096 bittings/);
  await field(page, 'Maximum adjacent cut').fill('4');
  await page
    .getByRole('alert')
    .getByText(/further apart than the maximum adjacent cut/)
    .first()
    .waitFor();
  expect(await headline(page)).toBe('These rules contradict each other');
  await field(page, 'Maximum adjacent cut').fill('7');
  // The count of tests/outside/key-changes.test.ts for this master.
  await expect.poll(() => headline(page)).toMatch(/^3 105 bittings × 10 sections = 31 050 key changes/);
  await takeScreenshots(page, 'plan-capacity-master');
  await master.fill('');
  await page.getByRole('combobox', { name: 'Progression' }).selectOption('one-step');
  await expect.poll(() => headline(page)).toMatch(/^753 754 bittings/);
});

test('depths are taken out by keys in the grid, of one chamber and of all', async () => {
  const { page } = app;
  await field(page, 'Maximum adjacent cut').fill('');
  await expect.poll(() => headline(page)).toMatch(/^1 000 000 bittings/);
  const first = page.getByRole('button', { name: /^Depth 0 in chamber 1: used/ });
  await first.focus();
  await first.press('Space');
  await expect.poll(() => headline(page)).toMatch(/^900 000 bittings/);
  await page.getByRole('button', { name: /^Depth 0 in chamber 1: excluded/ }).press('ArrowLeft');
  await page.getByRole('button', { name: 'Depth 0, every chamber' }).press('Enter');
  await expect.poll(() => headline(page)).toMatch(/^531 441 bittings/);
  await field(page, 'Chambers').fill('13');
  await page.getByRole('alert').getByText('A whole number from 1 to 12.').waitFor();
  await field(page, 'Chambers').fill('4');
  await expect.poll(() => headline(page)).toMatch(/^6 561 bittings/);
});
