import { expect, test } from 'vitest';
import { openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged } from './wall-page.ts';

// The pictures of the README in profiles-demo/ are copies of the larger of each two.
test('the picture of the Wall in the README can be taken again', async () => {
  const app = await openApp({ sameWindow: true });
  await app.page.getByRole('option', { name: /Causeway group blank/ }).click();
  await app.page.getByRole('heading', { level: 1, name: /Causeway group blank/ }).waitFor();
  const cells = (verdict: string) => app.page.locator(`li[data-verdict="${verdict}"]:has(button[data-opening])`);
  await cells('enters').nth(6).waitFor();
  await expect.poll(() => cells('blocked').count()).toBe(3);
  // Not before the last figure is there: no notice, and the guard margin of the family.
  await judged(app.page);
  await app.page.getByRole('button', { name: /^Guard margin/ }).waitFor();
  await takeScreenshots(app.page, 'readme-wall');
  expect(app.problems).toEqual([]);
  await app.close();
});

test('the picture of Draw in the README can be taken again', async () => {
  const app = await openApp({ address: '#draw', sameWindow: true });
  await app.page.getByRole('option', { name: /Curlew blank/ }).click();
  await app.page
    .getByRole('heading', { name: /Curlew blank/ })
    .first()
    .waitFor();
  await app.page.locator('[data-judging="done"]').waitFor({ state: 'attached' });
  await takeScreenshots(app.page, 'readme-draw');
  expect(app.problems).toEqual([]);
  await app.close();
});

test('the picture of Tiers in the README can be taken again', async () => {
  const app = await openApp({ address: '#tiers', sameWindow: true });
  await app.page.getByRole('option', { name: /Reed group blank/ }).click();
  await app.page.locator('[data-judging="done"]').waitFor({ state: 'attached' });
  await app.page.getByText('The Reed group blank enters 3 of 10 keyways: Heron, Smew and Bittern.').waitFor();
  await app.page.locator('[data-node]').filter({ hasText: 'Polder' }).first().waitFor();
  await takeScreenshots(app.page, 'readme-tiers');
  expect(app.problems).toEqual([]);
  await app.close();
});

test('the picture of Plan in the README can be taken again', async () => {
  const app = await openApp({ address: '#plan', sameWindow: true });
  await app.page.getByRole('button', { name: 'Sections', exact: true }).click();
  await app.page.getByRole('button', { name: /^Take these sections/ }).waitFor();
  await app.page.getByText(/^The plan says that it must enter/).waitFor();
  await takeScreenshots(app.page, 'readme-plan');
  expect(app.problems).toEqual([]);
  await app.close();
});

test('the pictures of Compare, Gauge, Names, Teach and Publish in the README can be taken again', async () => {
  const app = await openApp({ sameWindow: true });
  const { page } = app;
  const show = (name: string) =>
    page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name, exact: true }).click();
  await page.getByRole('option', { name: /Reed group blank/ }).click();
  await page.locator('button[data-opening="ruff-keyway"]').dblclick();
  await page.locator('[data-drawing]').waitFor();
  await page.locator('[data-judging="done"]').waitFor({ state: 'attached' });
  await takeScreenshots(page, 'readme-compare');
  await show('Gauge');
  await page.getByRole('heading', { name: /is the thickest strip 6 mm tall that enters all 10/ }).waitFor();
  await page.locator('[data-gauge-chart] [data-tool]').filter({ hasText: 'enters 10 of 10' }).first().waitFor();
  await takeScreenshots(page, 'readme-gauge');
  await show('Names');
  await page.getByRole('combobox', { name: 'Your question' }).fill('does PC 105 go into the Smew keyway?');
  await page.keyboard.press('Enter');
  await page.getByRole('region', { name: 'Answer' }).waitFor();
  await takeScreenshots(page, 'readme-names');
  await show('Teach');
  await page.getByRole('button', { name: 'Present ▶' }).waitFor();
  await takeScreenshots(page, 'readme-teach');
  await show('Publish');
  await page.locator('[data-publish="chart"]').waitFor();
  await takeScreenshots(page, 'readme-publish');
  expect(app.problems).toEqual([]);
  await app.close();
});
