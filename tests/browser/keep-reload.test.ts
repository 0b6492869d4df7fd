// A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm keeps (2.1 - 2) / 2 = 0.050 mm; with its upper right corner pulled out by d
// it keeps 0.050 - d / 2.
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { drawing } from './compare-page.ts';
import { kept, marginIs, moveCornerTo, notKept, openMenu, openPlain, stripKey } from './keep-page.ts';
import { headline, judged } from './wall-page.ts';

let app: OpenedApp;

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** The two history keys: whether each can be pressed. */
const history = async (page: Page) => [
  await stripKey(page, 'Undo').isEnabled(),
  await stripKey(page, 'Redo').isEnabled(),
];

test('a reload keeps the edits, undo and redo, the pair in hand, and whether all is saved', async () => {
  app = await openApp();
  const { page } = app;
  await openPlain(page);
  for (const x of ['2.01', '2.02', '2.03']) await moveCornerTo(page, x);
  await stripKey(page, 'Undo').click();
  await marginIs(page, '+0.040');
  await kept(page);
  await page.reload();
  await marginIs(page, '+0.040');
  expect([await page.title(), await history(page)]).toEqual(['Plain (edited) – Sectionary', [true, true]]);
  await stripKey(page, 'Redo').click();
  await marginIs(page, '+0.035');
  for (const margin of ['+0.040', '+0.045', '+0.050']) {
    await stripKey(page, 'Undo').click();
    await marginIs(page, margin);
  }
  // Back where it was opened: nothing is edited, and nothing left to undo.
  expect([await page.title(), await history(page)]).toEqual(['Plain – Sectionary', [false, true]]);
  await kept(page);
  await page.reload();
  await marginIs(page, '+0.050');
  expect(await history(page)).toEqual([false, true]);
});

test('the demo as it came is not kept, and needs no word about it', async () => {
  app = await openApp();
  await judged(app.page);
  await expect.poll(() => app.page.locator('[data-kept]').count()).toBe(0);
  await openMenu(app.page, /^First lesson/);
  await app.page.getByRole('heading', { name: 'Heron blank enters 1 of 3 keyways' }).waitFor();
  await judged(app.page);
  await app.page.reload();
  await app.page.getByRole('heading', { name: 'Heron blank enters 1 of 3 keyways' }).waitFor();
});

/** Begins a drag of the upper right corner and leaves the button down: the drawing shows it moved. */
async function beginDrag(page: Page): Promise<void> {
  const box = await drawing(page).boundingBox();
  if (!box) throw new Error('The drawing has no box.');
  // The plug stands 14 pixels from the edges; it is 2 * 1.16 * hypot(1.05, 3.3) mm high.
  const scale = (box.height - 28) / (2 * 1.16 * Math.hypot(1.05, 3.3));
  const at = { x: box.x + box.width / 2 + 1.01 * scale, y: box.y + box.height / 2 - 3 * scale };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 4, at.y, { steps: 4 });
  await page.getByRole('heading', { level: 1 }).filter({ hasNotText: '+0.045 mm' }).waitFor();
}

const KILLS: Record<string, (page: Page) => Promise<void>> = {
  'closed without a word': (page) => page.close({ runBeforeUnload: false }),
  'killed by a crash': async (page) => {
    const crashed = page.waitForEvent('crash');
    const debug = await page.context().newCDPSession(page);
    // A page that has crashed answers no more.
    debug.send('Page.crash').catch(() => {});
    await crashed;
    await page.close();
  },
};

test.each(Object.keys(KILLS))('a page %s in the middle of a drag loses the drag and nothing else', async (how) => {
  app = await openApp();
  const { page } = app;
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await marginIs(page, '+0.045');
  await beginDrag(page);
  await KILLS[how](page);
  const again = await app.anotherTab('#compare');
  await marginIs(again, '+0.045');
  await kept(again);
  expect(await history(again)).toEqual([true, false]);
  await stripKey(again, 'Undo').click();
  await marginIs(again, '+0.050');
});

/** Fills what the browser still gives this origin, down to the last hundred bytes; returns the browser's complaint. */
async function fillStorage(): Promise<string> {
  const open = indexedDB.open('filler');
  open.onupgradeneeded = () => open.result.createObjectStore('filler', { autoIncrement: true });
  const database = await new Promise<IDBDatabase>((done) => {
    open.onsuccess = () => done(open.result);
  });
  const put = (size: number) =>
    new Promise<string>((done) => {
      const change = database.transaction('filler', 'readwrite');
      change.objectStore('filler').put(crypto.getRandomValues(new Uint8Array(Math.min(size, 65_536))));
      change.oncomplete = () => done('');
      change.onabort = () => done(change.error?.name ?? 'no name');
    });
  let complaint = '';
  for (const size of [65_536, 8_192, 1_024, 100]) {
    complaint = '';
    for (let i = 0; i < 200 && complaint === ''; i++) complaint = await put(size);
  }
  database.close();
  return complaint;
}

test('a full disk is told, overwrites nothing, and is put right by the next change that fits', async () => {
  app = await openApp();
  const { page } = app;
  const debug = await page.context().newCDPSession(page);
  const origin = new URL(app.url).origin;
  await debug.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 4_000_000 });
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await kept(page);
  expect(await page.evaluate(fillStorage)).toBe('QuotaExceededError');
  await moveCornerTo(page, '2.02');
  await notKept(page, 'full');
  const notice = page.getByRole('alert', { name: 'The browser’s storage is full' });
  await notice.waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'keep-full');
  const download = page.waitForEvent('download');
  await notice.getByRole('button', { name: 'Save family' }).click();
  expect((await download).suggestedFilename()).toBe('test.json');
  // What another tab finds is the state before; it does not touch it, since this one has it.
  const other = await app.anotherTab('#compare');
  await marginIs(other, '+0.045');
  await other.close();
  await debug.send('Storage.overrideQuotaForOrigin', { origin });
  await moveCornerTo(page, '2.03');
  await kept(page);
  await notice.waitFor({ state: 'detached' });
  await page.reload();
  await marginIs(page, '+0.035');
});

test('where the browser forbids storage it says so once, all works, and edits are not lost without a question', async () => {
  app = await openApp();
  const { page } = app;
  await page.locator('button[data-opening]').first().waitFor();
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    };
  });
  await page.reload();
  const notice = page.getByRole('alert', { name: 'Nothing is kept in this browser' });
  await notice.waitFor();
  await takeScreenshots(page, 'keep-forbidden');
  await notice.getByRole('button', { name: 'Put away' }).click();
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await marginIs(page, '+0.045');
  await notKept(page, 'off');
  const dialog = page.waitForEvent('dialog');
  await page.close({ runBeforeUnload: true });
  const asked = await dialog;
  expect(asked.type()).toBe('beforeunload');
  await asked.dismiss();
});

test('where all is kept the window closes and another family opens without a question', async () => {
  app = await openApp();
  const { page } = app;
  const asked: string[] = [];
  page.on('dialog', async (dialog) => {
    asked.push(dialog.type());
    await dialog.dismiss();
  });
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await kept(page);
  await page.getByRole('button', { name: 'Wall', exact: true }).click();
  await openMenu(page, /^First lesson/);
  await page.getByRole('heading', { level: 1, name: /enters 1 of 3 keyways/ }).waitFor();
  await openMenu(page, /^Recent families/);
  await page.getByRole('button', { name: 'Open Plain' }).click();
  await page.getByRole('heading', { level: 1, name: /^Bar blank/ }).waitFor();
  expect([asked, await history(page)]).toEqual([[], [true, false]]);
  const closed = page.waitForEvent('close');
  await page.close({ runBeforeUnload: true });
  await closed;
  expect(asked).toEqual([]);
  const again = await app.anotherTab();
  await judged(again);
  expect(await headline(again)).toBe('Bar blank enters 1 of 1 keyway');
});

test('a record that is damaged is told, and what is left of it can be saved', async () => {
  app = await openApp();
  const { page } = app;
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await kept(page);
  await page.evaluate(async () => {
    const open = indexedDB.open('sectionary');
    const database = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const change = database.transaction('keep', 'readwrite');
    const store = change.objectStore('keep');
    const keys = await new Promise<IDBValidKey[]>((done) => {
      const all = store.getAllKeys();
      all.onsuccess = () => done(all.result);
    });
    for (const key of keys) if (String(key).startsWith('body/')) store.put({ version: 1, half: 'a family' }, key);
    await new Promise((done) => {
      change.oncomplete = done;
    });
    database.close();
  });
  await page.goto(`${app.url}?`);
  await judged(page);
  const notice = page.getByRole('alert', { name: 'Plain could not be opened as it was kept' });
  await notice.waitFor();
  expect(await headline(page)).toContain('of 10 keyways');
  await takeScreenshots(page, 'keep-damaged');
  const download = page.waitForEvent('download');
  await notice.getByRole('button', { name: 'Save what is there' }).click();
  expect((await download).suggestedFilename()).toBe('Plain (damaged).json');
});
