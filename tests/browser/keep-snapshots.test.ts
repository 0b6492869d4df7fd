// A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm keeps 0.050 mm; with its upper right corner pulled out by d, 0.050 - d / 2.
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { kept, marginIs, moveCornerTo, openMenu, openPlain, stripKey } from './keep-page.ts';
import { judged, textOf } from './wall-page.ts';

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ colorScheme: 'dark' });
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const sheet = (page: Page) => page.getByRole('dialog');
const rows = (page: Page) => sheet(page).getByRole('listitem');

async function take(page: Page, title: string): Promise<void> {
  await sheet(page).getByRole('textbox', { name: 'Name of the snapshot' }).fill(title);
  await page.keyboard.press('Enter');
  await rows(page).filter({ hasText: title }).waitFor();
}

test('a snapshot is taken, renamed, restored as one step of undo, deleted and put back; a reload keeps it', async () => {
  const { page } = app;
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await openMenu(page, /^Snapshots/);
  await take(page, 'Before the change');
  expect(await textOf(rows(page).first())).toMatch(/2 profiles/);
  await page.keyboard.press('Escape');
  await moveCornerTo(page, '2.03');
  await marginIs(page, '+0.035');
  await openMenu(page, /^Snapshots/);
  await take(page, 'After it');
  await sheet(page).getByRole('button', { name: 'Rename Before the change' }).click();
  await sheet(page).getByRole('textbox', { name: 'New name of Before the change' }).fill('The good one');
  await page.keyboard.press('Enter');
  await rows(page).filter({ hasText: 'The good one' }).waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'keep-snapshots-dark');
  await sheet(page).getByRole('button', { name: 'Delete After it' }).click();
  await sheet(page).getByText('“After it” was deleted.').waitFor();
  await rows(page).filter({ hasText: 'After it' }).waitFor({ state: 'detached' });
  await expect.poll(() => rows(page).count()).toBe(1);
  await sheet(page).getByRole('button', { name: 'Put it back' }).click();
  await rows(page).filter({ hasText: 'After it' }).waitFor();
  await sheet(page).getByRole('button', { name: 'Restore The good one' }).click();
  await sheet(page).waitFor({ state: 'detached' });
  await marginIs(page, '+0.045');
  await stripKey(page, 'Undo').click();
  await marginIs(page, '+0.035');
  await kept(page);
  await page.reload();
  await marginIs(page, '+0.035');
  await openMenu(page, /^Snapshots/);
  await rows(page).filter({ hasText: 'The good one' }).waitFor();
  await expect.poll(() => rows(page).count()).toBe(2);
});

test('a snapshot of the untouched demo makes it a family of its own; kept families are deleted and put back', async () => {
  const { page } = app;
  await judged(page);
  await openMenu(page, /^Recent families/);
  await sheet(page).getByText('Nothing is kept yet.').waitFor();
  await page.keyboard.press('Escape');
  await openMenu(page, /^Snapshots/);
  await take(page, 'As it came');
  await page.keyboard.press('Escape');
  await kept(page);
  await openMenu(page, /^First lesson/);
  await openMenu(page, /^Recent families/);
  await rows(page).filter({ hasText: 'Polderwick College' }).waitFor();
  await takeScreenshots(page, 'keep-recent-dark');
  await sheet(page).getByRole('button', { name: 'Delete Polderwick College' }).click();
  await sheet(page).getByText('Nothing is kept yet.').waitFor();
  await sheet(page).getByRole('button', { name: 'Put it back' }).click();
  await sheet(page).getByRole('button', { name: 'Open Polderwick College' }).click();
  await page.getByRole('heading', { level: 1, name: /of 10 keyways/ }).waitFor();
  await openMenu(page, /^Snapshots/);
  await rows(page).filter({ hasText: 'As it came' }).waitFor();
});
