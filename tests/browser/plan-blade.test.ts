import { afterEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';

let app: OpenedApp | undefined;

afterEach(async () => {
  await app?.close();
  app = undefined;
});

/** The blade sheet of the demo family, with a plan. */
async function openBlade(size: 'large' | 'small', colorScheme: 'light' | 'dark') {
  app = await openApp({ size, colorScheme, address: '#plan' });
  const { page } = app;
  await page.getByRole('button', { name: 'Blade', exact: true }).click();
  const begin = page.getByRole('button', { name: 'Begin with a common small blade' });
  const form = page.getByRole('form', { name: 'Limits of the blade' });
  await begin.or(form).first().waitFor();
  if (await begin.isVisible()) await begin.click();
  await form.waitFor();
  return { page, form, problems: app.problems };
}

test('limits are typed, sites are counted again at once, faults stand at their fields, and all is undone', async () => {
  const { page, form, problems } = await openBlade('large', 'light');
  const count = page.getByRole('status').getByRole('heading', { level: 1 });
  await form.getByRole('button', { name: 'Common small blade' }).click();
  await expect.poll(() => count.textContent()).toBe('10 ward sites: 5 on the left, 5 on the right');
  const cuts = form.getByLabel('Height kept free for the cuts, mm');
  await cuts.fill('4');
  await cuts.press('Enter');
  await expect.poll(() => count.textContent()).toBe('8 ward sites: 4 on the left, 4 on the right');
  await form.getByLabel('Faces').selectOption('left');
  await expect.poll(() => count.textContent()).toBe('4 ward sites: 4 on the left, 0 on the right');
  await page.getByRole('button', { name: 'Both faces: 8 sites' }).click();
  await expect.poll(() => count.textContent()).toBe('8 ward sites: 4 on the left, 4 on the right');
  const depth = form.getByLabel('Greatest depth of a groove, mm');
  await depth.fill('0.2');
  await depth.press('Enter');
  await expect.poll(() => count.textContent()).toBe('No ward site');
  await expect.poll(() => depth.getAttribute('aria-invalid')).toBe('true');
  await form.getByText('A ward 0.20 mm deep would not stop a blade for certain.').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  for (const words of [
    '8 ward sites: 4 on the left, 4 on the right',
    '4 ward sites: 4 on the left, 0 on the right',
    '8 ward sites: 4 on the left, 4 on the right',
    '10 ward sites: 5 on the left, 5 on the right',
  ]) {
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => count.textContent()).toBe(words);
  }
  expect(problems).toEqual([]);
});

test('sites are picked by keys and by pointer in a small dark window, in inches too', async () => {
  const { page, form, problems } = await openBlade('small', 'dark');
  await form.getByRole('button', { name: 'Common small blade' }).click();
  const sites = page.getByRole('listbox', { name: 'Ward sites, lowest first' });
  const picked = sites.getByRole('option', { selected: true });
  await sites.focus();
  await expect.poll(() => picked.getAttribute('aria-label')).toMatch(/^Site 1, left face, 0.54 mm to 1.14 mm/);
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => picked.getAttribute('aria-label')).toMatch(/^Site 3, left face/);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => picked.getAttribute('aria-label')).toMatch(/right face/);
  await page.keyboard.press('End');
  await expect.poll(() => picked.getAttribute('aria-label')).toMatch(/^Site 10,/);
  await page.getByRole('heading', { name: 'Site 10', exact: true }).waitFor();
  await sites.getByRole('option', { name: /^Site 5,/ }).click();
  await page.getByRole('heading', { name: 'Site 5', exact: true }).waitFor();
  await page.getByRole('button', { name: 'inch', exact: true }).click();
  await expect.poll(() => picked.getAttribute('aria-label')).toMatch(/^Site 5, left face, [\d.]+ in to/);
  await form.getByLabel('Thickness of the blade, in').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  expect(problems).toEqual([]);
});
