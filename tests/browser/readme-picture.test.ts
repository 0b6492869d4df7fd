import { expect, test } from 'vitest';
import { openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { judged } from './wall-page.ts';

// profiles-demo/wall.png is a copy of the larger of these two.
test('the picture in the README can be taken again', async () => {
  const app = await openApp();
  await app.page.getByRole('option', { name: /Causeway group blank/ }).click();
  await app.page.getByRole('heading', { level: 1, name: /Causeway group blank/ }).waitFor();
  const cells = (verdict: string) => app.page.locator(`li[data-verdict="${verdict}"]:has(button[data-opening])`);
  await cells('enters').nth(6).waitFor();
  expect(await cells('blocked').count()).toBe(3);
  // Not before the last figure is there: no notice, and the guard margin of the family.
  await judged(app.page);
  await app.page.getByRole('button', { name: /^Guard margin/ }).waitFor();
  await takeScreenshots(app.page, 'readme-wall');
  expect(app.problems).toEqual([]);
  await app.close();
});
