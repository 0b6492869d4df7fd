// A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm keeps (2.1 - 2) / 2 = 0.050 mm. With a corner pulled out by 0.12 mm it is
// 2.12 mm wide there, 0.02 mm more than the keyway, so it no longer goes in: it is (2.12 - 2.1) / 2 = 0.010 mm too deep.
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { drawing, openFamily, openPair, rectangle, typeInto } from './compare-page.ts';
import { answersOnTheWall, judged } from './wall-page.ts';

let app: OpenedApp;

const FAMILY = {
  name: 'Plain',
  runningClearance: 0.03,
  tolerance: 0.01,
  profiles: [
    { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
    { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) },
  ],
};
const AS_OPENED = { 'Slot keyway': { word: 'enters', margin: '+0.050 mm' } };
const AS_EDITED = { 'Slot keyway': { word: 'blocked', margin: '0.010 mm too deep' } };

/** Opens the family, pulls the upper right corner of its blank out in Compare and comes back to the wall. */
beforeEach(async () => {
  app = await openApp();
  const { page } = app;
  await openFamily(page, FAMILY);
  await openPair(page, 'Bar blank', 'Slot keyway');
  await drawing(page).focus();
  await page.keyboard.press('c');
  await page.keyboard.press(']');
  await page.keyboard.press(']');
  await typeInto(page, /^Corner x/, '2.12');
  await page.getByRole('button', { name: 'Wall' }).click();
  await judged(page);
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const key = (name: string) => app.page.getByRole('banner').getByRole('button', { name, exact: true });
const isMarked = async () => (await app.page.getByText('edited', { exact: true }).count()) === 1;
const isEnabled = async () => [await key('Undo').isEnabled(), await key('Redo').isEnabled()];

test('an edit is on the wall, and keys and buttons take it back and do it again', async () => {
  const { page } = app;
  expect(await answersOnTheWall(page)).toEqual(AS_EDITED);
  expect([await isMarked(), await isEnabled(), await page.title()]).toEqual([
    true,
    [true, false],
    'Plain (edited) – Sectionary',
  ]);
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'wall-edited');
  await page.keyboard.press('Control+z');
  await judged(page);
  expect(await answersOnTheWall(page)).toEqual(AS_OPENED);
  expect([await isMarked(), await isEnabled(), await page.title()]).toEqual([
    false,
    [false, true],
    'Plain – Sectionary',
  ]);
  await page.keyboard.press('Control+Shift+Z');
  expect(await answersOnTheWall(page)).toEqual(AS_EDITED);
  await key('Undo').click();
  expect(await answersOnTheWall(page)).toEqual(AS_OPENED);
  await page.keyboard.press('Control+y');
  expect(await answersOnTheWall(page)).toEqual(AS_EDITED);
  await page.keyboard.press('Meta+z');
  expect(await answersOnTheWall(page)).toEqual(AS_OPENED);
  await key('Redo').click();
  expect(await answersOnTheWall(page)).toEqual(AS_EDITED);
});

test('saving saves the edit, and then nothing would be lost', async () => {
  const { page } = app;
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page
    .getByRole('button', { name: /^Save family/ })
    .first()
    .click();
  const saved = JSON.parse(readFileSync(await (await download).path(), 'utf8'));
  expect(saved.profiles[1].outline).toEqual([
    [0, 0],
    [2, 0],
    [2.12, 6],
    [0, 6],
  ]);
  expect(saved.profiles[0]).toEqual(FAMILY.profiles[0]);
  expect(await isMarked()).toBe(false);
  expect(await isEnabled()).toEqual([true, false]);
});

test('the window asks before edits are lost that are kept nowhere: on leaving, and when another family is opened', async () => {
  const { page } = app;
  const asked: string[] = [];
  page.on('dialog', async (dialog) => {
    asked.push(dialog.type());
    await dialog.dismiss();
  });
  const openDemo = async () => {
    await page.getByRole('button', { name: 'Family ▾' }).click();
    await page.getByRole('button', { name: /^First lesson/ }).click();
  };
  // A disk that takes nothing any more.
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('The disk is full.', 'QuotaExceededError');
    };
  });
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+y');
  await page.locator('[data-kept="full"]').waitFor();
  await openDemo();
  expect(asked).toEqual(['confirm']);
  expect(await answersOnTheWall(page)).toEqual(AS_EDITED);
  const dialog = page.waitForEvent('dialog');
  await page.close({ runBeforeUnload: true });
  expect((await dialog).type()).toBe('beforeunload');
  expect(asked).toEqual(['confirm', 'beforeunload']);
  await page.keyboard.press('Control+z');
  await openDemo();
  await page.getByRole('heading', { name: 'Heron blank enters 1 of 3 keyways' }).waitFor();
  expect(asked).toEqual(['confirm', 'beforeunload']);
});
