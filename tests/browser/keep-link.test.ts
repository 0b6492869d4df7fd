import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { openFamily } from './compare-page.ts';
import { kept, marginIs, moveCornerTo, openMenu, openPlain, PLAIN } from './keep-page.ts';
import { headline, judged } from './wall-page.ts';

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ context: { permissions: ['clipboard-read', 'clipboard-write'] } });
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** Copies the link to the open family, as a user does. */
async function copyLink(page: Page): Promise<string> {
  await openMenu(page, /^Share by a link/);
  await page.getByRole('button', { name: 'Copy link' }).click();
  await page.getByText('Copied.').waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  await page.getByText(`Link, ${link.length} characters`).waitFor();
  return link;
}

test('a link carries the family with its edits to somebody else, and the address is clean afterwards', async () => {
  await openPlain(app.page);
  await moveCornerTo(app.page, '2.01');
  await marginIs(app.page, '+0.045');
  const link = await copyLink(app.page);
  expect(link.startsWith(`${app.url}#family=1.`)).toBe(true);
  expect(await graveAxeFindings(app.page)).toEqual([]);
  await takeScreenshots(app.page, 'keep-share');
  // Somebody else: another profile, in which nothing is kept.
  const other = await openApp({ address: link.slice(app.url.length) });
  await judged(other.page);
  expect(await headline(other.page)).toBe('Bar blank enters 1 of 1 keyway');
  await expect.poll(() => other.page.url()).not.toContain('family');
  expect(await other.page.title()).toBe('Plain (edited) – Sectionary');
  await kept(other.page);
  const download = other.page.waitForEvent('download');
  await openMenu(other.page, /^Save family/);
  const saved = JSON.parse(readFileSync(await (await download).path(), 'utf8')) as typeof PLAIN;
  expect(saved.profiles[1].outline).toEqual(PLAIN.profiles[1].outline.with(2, [2.01, 6]));
  expect(saved.profiles[0]).toEqual(PLAIN.profiles[0]);
  expect(other.problems).toEqual([]);
  await other.close();
});

test('a link put into the address of an open window is opened there; a damaged one is told and changes nothing', async () => {
  const { page } = app;
  await openPlain(page);
  const link = await copyLink(page);
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Wall', exact: true }).click();
  await openMenu(page, /^Demo/);
  await page.getByRole('heading', { level: 1, name: /of 10 keyways/ }).waitFor();
  await judged(page);
  await page.evaluate((hash) => Object.assign(location, { hash }), new URL(link).hash.slice(0, -3));
  const notice = page.getByRole('alert', { name: 'File not opened' });
  await notice.getByText('The link was not opened: one fault').waitFor();
  await notice.locator('code', { hasText: 'link' }).waitFor();
  await notice.getByText('is damaged: part of it was cut off or changed on the way').waitFor();
  await takeScreenshots(page, 'keep-link-damaged');
  await expect.poll(() => page.url()).not.toContain('family');
  await notice.getByRole('button', { name: 'Put away' }).click();
  await page.evaluate((hash) => Object.assign(location, { hash }), new URL(link).hash);
  await page.getByRole('heading', { level: 1, name: /^Bar blank/ }).waitFor();
  await expect.poll(() => page.url()).not.toContain('family');
});

test('a family too large for a link is refused with its size, and can be saved as a file instead', async () => {
  const { page } = app;
  await judged(page);
  // A comb whose teeth have no pattern: packing cannot make much of it.
  let state = 7;
  const random = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  const teeth = Array.from({ length: 400 }, (_, i) => [
    Number((8 + random() / 9).toFixed(6)),
    Number((8 - i / 50).toFixed(6)),
  ]);
  const comb = (id: string, kind: string) => ({
    id,
    kind,
    name: id,
    outline: [[0, 0], [7.9, 0], ...teeth.toReversed(), [0, 8.1]],
  });
  const profiles = [
    comb('keyway', 'opening'),
    ...Array.from({ length: 30 }, (_, i) => ({
      ...comb(`b${i}`, 'blank'),
      outline: [
        [0, 0],
        [1, 0],
        [1, 6],
        [0, 6],
      ],
      note: Array.from({ length: 300 }, random).join(' '),
    })),
  ];
  await openFamily(page, { name: 'Large', runningClearance: 0.03, profiles });
  await page.getByRole('heading', { level: 1, name: /^b0/ }).waitFor();
  await openMenu(page, /^Share by a link/);
  const refusal = page.getByRole('alert').filter({ hasText: 'This family is too large for a link' });
  await refusal.waitFor();
  expect(await refusal.textContent()).toMatch(
    /it would have \d{2,3},\d{3} characters, more than the 60,000 that a link may have\./,
  );
  await expect.poll(() => page.getByRole('button', { name: 'Copy link' }).count()).toBe(0);
  await takeScreenshots(page, 'keep-share-too-large');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save family as a file' }).click();
  expect((await download).suggestedFilename()).toBe('test.json');
});
