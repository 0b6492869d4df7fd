import { expect, test } from 'vitest';
import { openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged } from './wall-page.ts';

// profiles-demo/wall.png, draw.png, tiers.png and plan.png are copies of the larger of each two.
test('the picture of the Wall in the README can be taken again', async () => {
  const app = await openApp();
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
  const app = await openApp({ address: '#draw' });
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
  const app = await openApp({ address: '#tiers' });
  await app.page.getByRole('option', { name: /Reed group blank/ }).click();
  await app.page.locator('[data-judging="done"]').waitFor({ state: 'attached' });
  await app.page.getByText('The Reed group blank enters 3 of 10 keyways: Heron, Smew and Bittern.').waitFor();
  await app.page.locator('[data-node]').filter({ hasText: 'Polder' }).first().waitFor();
  await takeScreenshots(app.page, 'readme-tiers');
  expect(app.problems).toEqual([]);
  await app.close();
});

test('the picture of Plan in the README can be taken again', async () => {
  const app = await openApp({ address: '#plan' });
  await app.page.getByRole('button', { name: 'Sections', exact: true }).click();
  await app.page.getByRole('button', { name: /^Take these sections/ }).waitFor();
  await app.page.getByText(/^The plan says that it must enter/).waitFor();
  await takeScreenshots(app.page, 'readme-plan');
  expect(app.problems).toEqual([]);
  await app.close();
});
