import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged, pickEntrant, textOf } from './wall-page.ts';

let app: OpenedApp;

// One window for all of them; nothing waits for all twenty blades, the picked one comes first.
beforeAll(async () => {
  app = await openApp();
  await judged(app.page);
  await app.page.getByRole('button', { name: 'Plan', exact: true }).first().click();
  await stopAtOnce(app.page);
  await sheets(app.page).getByRole('button', { name: 'Strength' }).click();
  await app.page.locator('[data-strength]').waitFor();
});

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

/** Has "Stop" pressed as soon as it is there: blades may be solved before a click from out here arrives. */
function stopAtOnce(page: Page): Promise<void> {
  return page.evaluate(() => {
    const look = new MutationObserver(() => {
      const stop = document.querySelector<HTMLButtonElement>('[data-strength] [data-phase="working"] button');
      if (!stop) return;
      look.disconnect();
      stop.click();
    });
    look.observe(document.body, { childList: true, subtree: true });
  });
}

const sheets = (page: Page) => page.getByRole('navigation', { name: 'Sheets of Plan' });
const row = (page: Page, name: string) =>
  page.getByRole('grid', { name: 'Strength of each blade' }).getByRole('row', { name });
const picked = (page: Page) => page.locator('[data-strength-reading]');

test('solving is stopped and taken up again', async () => {
  const { page } = app;
  const phase = () => page.locator('[data-strength]').getAttribute('data-strength');
  await page.getByText(/^Stopped: \d+ of 19 outlines are known, \d+ of them as closely as asked\.$/).waitFor();
  expect(await phase()).toBe('stopped');
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect.poll(phase).toMatch(/working|done/);
});

test('every blade is told with its torques, its materials and the shear picture of the picked one', async () => {
  const { page } = app;
  await pickEntrant(page, 'Polder all-section blank');
  await page.locator('[data-strength-reading="polder-all-section-blank"]').waitFor();
  await expect.poll(() => textOf(picked(page))).toContain('would twist through');
  await expect.poll(() => textOf(row(page, 'Polder all-section blank'))).toContain('too much');
  // The web is its stated least one; milled roots have a radius of 0.08 mm (profiles-demo/README.md).
  expect(await textOf(picked(page))).toMatch(/Thinnest web0\.550 mm.*Least root radius0\.080 mm/s);
  expect(await textOf(picked(page))).toContain('Sharp corners.');
  await page.locator('[data-shear="drawn"] canvas').waitFor();
  const label = await page.locator('[data-shear="drawn"] [role="img"]').getAttribute('aria-label');
  expect(label).toMatch(
    /^Shear over the section of Polder all-section blank under 2\.50 N m, in bands\. The greatest, \d+ MPa/,
  );
  expect(await page.locator('[data-use-torque]').textContent()).toContain('check the standard');
  expect(await page.locator('[data-cautions="strength"]').textContent()).toContain('before metal is cut');
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'plan-strength-light');
  await page.emulateMedia({ colorScheme: 'dark' });
  await takeScreenshots(page, 'plan-strength-dark');
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
});

test('a stronger metal, another torque, inches, and another blade beside it', async () => {
  const { page } = app;
  await page.getByRole('combobox', { name: 'Material' }).selectOption('s17700-ch900');
  await expect.poll(() => textOf(row(page, 'Polder all-section blank'))).toContain('bears it');
  await page.getByRole('combobox', { name: 'Beside another blade' }).selectOption('heron-blank-6');
  const ratios = page.locator('[data-beside="heron-blank-6"] table');
  // J of the all-section blank is about half that of a base blank.
  await expect.poll(() => textOf(ratios.getByRole('row', { name: /^J/ }))).toMatch(/× 0\.4\d/);
  await page.getByRole('button', { name: 'inch', exact: true }).click();
  const torque = page.getByRole('textbox', { name: 'Compared with' });
  await expect.poll(() => torque.inputValue()).toBe('22.1');
  await torque.fill('90');
  await expect.poll(() => textOf(row(page, 'Polder all-section blank'))).toContain('too much');
  await torque.fill('none');
  await page
    .getByRole('alert')
    .getByText(/Give a torque above 0/)
    .waitFor();
  await page.getByRole('button', { name: '22.1 in-lb' }).click();
  await expect.poll(() => textOf(row(page, 'Polder all-section blank'))).toContain('bears it');
  await page.getByRole('button', { name: 'mm', exact: true }).click();
});

test('by keyboard along the blades, and a material taken from the list of those that do', async () => {
  const { page } = app;
  const grid = page.getByRole('grid', { name: 'Strength of each blade' });
  await grid.focus();
  await grid.press('Home');
  await page.locator('[data-strength-reading="heron-blank-5"]').waitFor();
  await grid.press('ArrowDown');
  await grid.press('ArrowDown');
  await page.locator('[data-strength-reading="smew-blank"]').waitFor();
  expect(await row(page, 'Smew blank').getAttribute('aria-selected')).toBe('true');
  const brass = page.getByRole('button', { name: /Cartridge brass C26000, H02 \(0\.2 % offset\)/ });
  await brass.focus();
  await brass.press('Enter');
  await expect.poll(() => page.getByRole('combobox', { name: 'Material' }).inputValue()).toBe('c26000-h02-mill');
});

test('what is known stays known when the sheet is left and seen again', async () => {
  const { page } = app;
  await page.getByRole('button', { name: 'Wall', exact: true }).first().click();
  await sheets(page).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Plan', exact: true }).first().click();
  await expect.poll(() => textOf(row(page, 'Smew blank'))).toMatch(/yields in part|too much|bears it/);
});
