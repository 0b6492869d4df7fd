import { afterAll, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { twoFrames } from '../kit/two-frames.ts';
import { judged } from './wall-page.ts';

let app: OpenedApp;

beforeAll(async () => {
  app = await openApp({ hints: true });
});

afterAll(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const hint = () => app.page.getByRole('complementary', { name: 'Hint' });
const steps = () => app.page.getByRole('complementary', { name: 'First five minutes' });
const view = (name: string) =>
  app.page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name, exact: true });

test('each view has a hint until it is put away, by pointer and by keys, also after a reload', async () => {
  const { page } = app;
  await hint()
    .getByText(/^Pick a blank in the tray/)
    .waitFor();
  await judged(page);
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'hint-wall');
  await hint().getByRole('button', { name: 'Got it' }).click();
  await hint().waitFor({ state: 'detached' });
  await view('Tiers').click();
  await hint()
    .getByText(/^Pick a cell of the matrix/)
    .waitFor();
  await view('Wall').click();
  await hint().waitFor({ state: 'detached' });
  await page.reload();
  await judged(page);
  expect(await hint().count()).toBe(0);
  // The focus is moved on before the frame in which the view has it: there it stays.
  await view('Names').evaluate(async (key: HTMLElement) => {
    key.click();
    await null;
    [...document.querySelectorAll('button')].find(({ textContent }) => textContent === 'No hints')?.focus();
  });
  await twoFrames(page);
  await page.keyboard.press('Enter');
  await hint().waitFor({ state: 'detached' });
  await view('Draw').click();
  await page.getByRole('button', { name: 'Help ▾' }).click();
  expect(await hint().count()).toBe(0);
  await page.getByRole('button', { name: /^Hints: show them/ }).click();
  await hint()
    .getByText(/^Drag a vertex/)
    .waitFor();
});

test('the first five minutes lead through the views with the first family, forth and back, and end where one likes', async () => {
  const { page } = app;
  await page.getByRole('button', { name: 'Help ▾' }).click();
  await page.getByRole('button', { name: /^First five minutes/ }).click();
  await steps().getByText('1 of 8').waitFor();
  await page.getByRole('heading', { level: 1, name: /Heron blank/ }).waitFor();
  await judged(page);
  await takeScreenshots(page, 'first-steps');
  const next = steps().getByRole('button', { name: 'Next' });
  await next.click();
  await page.getByRole('heading', { level: 1, name: /Reed group blank/ }).waitFor();
  await next.click();
  await expect.poll(() => view('Compare').getAttribute('aria-current')).toBe('page');
  await steps().getByRole('button', { name: 'Back' }).click();
  await expect.poll(() => view('Wall').getAttribute('aria-current')).toBe('page');
  // The steps come back to their sheets, whichever was looked at last.
  await view('Gauge').click();
  await page.getByRole('button', { name: 'Tightness', exact: true }).click();
  for (const name of ['Compare', 'Tiers', 'Draw', 'Gauge', 'Names', 'Publish']) {
    await next.click();
    await expect.poll(() => view(name).getAttribute('aria-current')).toBe('page');
    if (name === 'Gauge')
      await page
        .locator('[aria-current="page"]')
        .filter({ hasText: /^Thickness$/ })
        .waitFor();
  }
  await steps().getByRole('button', { name: 'Done' }).click();
  await steps().waitFor({ state: 'detached' });
});

test('a question mark shows the keys, Help the words; a word is found; Escape puts them away', async () => {
  const { page } = app;
  await view('Wall').click();
  await judged(page);
  await page.keyboard.press('?');
  const keys = page.getByRole('dialog', { name: 'Keys' });
  await keys.getByText('undo', { exact: true }).waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'help-keys');
  await page.keyboard.press('Escape');
  await keys.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Help ▾' }).click();
  await page.getByRole('button', { name: /^Help… the views/ }).click();
  const help = page.getByRole('dialog', { name: 'Help' });
  await takeScreenshots(page, 'help-words');
  expect(await graveAxeFindings(page)).toEqual([]);
  await help.getByRole('searchbox', { name: 'Find a word' }).fill('paracen');
  await expect.poll(() => help.locator('dt').allTextContents()).toEqual(['paracentric']);
  await help.getByRole('searchbox').fill('xyzzy');
  await help.getByText('No word here has “xyzzy” in it.').waitFor();
  await help.getByRole('button', { name: 'Teach', exact: true }).click();
  await expect.poll(() => view('Teach').getAttribute('aria-current')).toBe('page');
});
