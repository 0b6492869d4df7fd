import { afterEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged, pickEntrant } from './wall-page.ts';

let app: OpenedApp;

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the wall and Compare, ${colorScheme}: no grave accessibility finding, and pictures to look at`, async () => {
    app = await openApp({ colorScheme });
    const { page } = app;
    await judged(page);
    expect(await page.locator('html').getAttribute('data-theme')).toBe(colorScheme);
    await pickEntrant(page, 'Reed group blank');
    expect(await graveAxeFindings(page)).toEqual([]);
    await takeScreenshots(page, `wall-${colorScheme}`);
    await page.getByRole('button', { name: 'Help ▾' }).click();
    await page.getByRole('button', { name: /^Help… the views/ }).click();
    await page.getByText('Before cutting metal').waitFor();
    expect(await graveAxeFindings(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByText('Before cutting metal').waitFor({ state: 'hidden' });
    await page.locator('button[data-opening="ruff-keyway"]').dblclick();
    await page.getByRole('status').waitFor();
    expect(await graveAxeFindings(page)).toEqual([]);
    await takeScreenshots(page, `compare-blocked-${colorScheme}`);
    await page.getByRole('listbox', { name: 'Keyways' }).getByRole('option', { name: 'Heron keyway' }).click();
    expect(await graveAxeFindings(page)).toEqual([]);
    await takeScreenshots(page, `compare-enters-${colorScheme}`);
  });
}

test('the sheet turns dark and light by hand, against the computer, and stays so', async () => {
  app = await openApp({ colorScheme: 'light' });
  const { page } = app;
  const theme = () => page.locator('html').getAttribute('data-theme');
  await page.getByRole('button', { name: 'Dark sheet' }).click();
  expect(await theme()).toBe('dark');
  await page.reload();
  await expect.poll(theme).toBe('dark');
  await page.getByRole('button', { name: 'Light sheet' }).click();
  expect(await theme()).toBe('light');
});

test('in grey the three verdicts have three silhouettes, a word each, and outlines of their own', async () => {
  app = await openApp();
  const { page } = app;
  await judged(page);
  await pickEntrant(page, 'Reed group blank');
  const marks = await page
    .locator('[aria-label="Tally"] li svg')
    .evaluateAll((all) => all.map((mark) => mark.innerHTML));
  expect(new Set(marks).size).toBe(3);
  const outlines = await page.evaluate(() =>
    ['enters', 'blocked'].map((verdict) => {
      const plug = document.querySelector(`li[data-verdict="${verdict}"] svg path`);
      return plug ? getComputedStyle(plug).strokeWidth : null;
    }),
  );
  expect(outlines[0]).not.toBe(outlines[1]);
  await page.evaluate(() => {
    document.documentElement.style.filter = 'grayscale(1)';
  });
  await takeScreenshots(page, 'wall-grey');
});

test('who asks for less motion gets none', async () => {
  app = await openApp({ reducedMotion: 'reduce' });
  const glide = () =>
    app.page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--glide').trim());
  expect(Number.parseFloat(await glide())).toBe(0);
  await app.page.emulateMedia({ reducedMotion: 'no-preference' });
  // Minified to seconds: .14s.
  const seconds = Number.parseFloat(await glide()) / ((await glide()).endsWith('ms') ? 1000 : 1);
  expect(seconds).toBeGreaterThan(0);
  expect(seconds).toBeLessThanOrEqual(0.15);
});
