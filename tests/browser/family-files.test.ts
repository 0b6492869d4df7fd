import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, type OpenOptions, openApp } from '../kit/open-app.ts';
import { answersOnTheWall, enteredOnTheWall, headline, judged, pickEntrant, textOf } from './wall-page.ts';

const DEMO = readFileSync(new URL('../../profiles-demo/polderwick.json', import.meta.url), 'utf8');

const SLOT = [
  [0, 0],
  [2, 0],
  [2, 8],
  [0, 8],
];
const STRIP = [
  [0, 0],
  [1, 0],
  [1, 6],
  [0, 6],
];
const family = (profiles: object[], fields: object = {}) =>
  JSON.stringify({
    format: 'sectionary-family',
    version: 1,
    name: 'Test family',
    units: 'mm',
    runningClearance: 0.04,
    profiles,
    ...fields,
  });
const opening = (id: string, fields: object = {}) => ({
  id,
  kind: 'opening',
  name: `${id} keyway`,
  outline: SLOT,
  ...fields,
});
const tool = (id: string, fields: object = {}) => ({
  id,
  kind: 'tool',
  name: `${id} strip`,
  outline: STRIP,
  ...fields,
});

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({
    sameWindow: true,
    family: partOfDemo('heron-keyway', 'bittern-keyway', 'heron-blank-5', 'heron-blank-6'),
  });
  await judged(app.page);
});

/** In place of the few sections, the whole demo as it comes with the app. */
async function openDemo(options: OpenOptions = {}): Promise<Page> {
  await app.close();
  app = await openApp(options);
  await app.page.locator('button[data-opening]').first().waitFor();
  return app.page;
}

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** Opens a text as a file through the menu, as a user does. */
async function openThroughMenu(page: Page, text: string, name = 'test.json'): Promise<void> {
  await page.getByRole('button', { name: 'Family ▾' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: /^Open family/ }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Drops a text as a file on the middle of the window. */
async function drop(page: Page, text: string, name: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([content, fileName]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], fileName, { type: 'application/json' }));
      return transfer;
    },
    [text, name],
  );
  await page.dispatchEvent('main', 'dragover', { dataTransfer: data });
  await page.getByText('Drop to open or import').waitFor();
  await page.dispatchEvent('main', 'drop', { dataTransfer: data });
}

test('a family opened through the menu is judged and takes the wall', async () => {
  const { page } = app;
  await openThroughMenu(page, family([opening('a'), opening('b', { outline: STRIP }), tool('t')]));
  await page.getByText('Test family').waitFor();
  await judged(page);
  // A strip 1 x 6 in a slot 2 x 8 leaves half a millimetre either side; in a slot of its own size it touches.
  expect(await answersOnTheWall(page)).toEqual({
    'a keyway': { word: 'enters', margin: '+0.50 mm' },
    'b keyway': { word: 'tight', margin: 'touching' },
  });
  expect(await headline(page)).toBe('t strip enters 1 and is tight in 1 of 2 keyways');
});

test('a file can be dropped anywhere on the window, which asks whether to open it', async () => {
  const { page } = app;
  await drop(page, family([opening('a'), tool('t')], { name: 'Dropped family' }), 'dropped.json');
  await page.getByRole('dialog').getByRole('button', { name: 'Open it' }).click();
  await page.getByText('Dropped family').waitFor();
  await judged(page);
  expect(await enteredOnTheWall(page)).toEqual(['a keyway']);
});

test('a bad file is refused with the place and the cure of each fault, and nothing is lost', async () => {
  const { page } = app;
  await page.keyboard.press('ArrowDown');
  const before = await answersOnTheWall(page);
  const bowTie = [SLOT[0], SLOT[2], SLOT[1], SLOT[3]];
  await drop(page, family([opening('a', { outline: bowTie }), tool('t', { kind: 'spoon' })]), 'bad.json');
  const notice = page.getByRole('alert', { name: 'File not opened' });
  await notice.getByText('bad.json was not opened: 2 faults').waitFor();
  await notice.getByText('Nothing was lost: Polderwick College is still open.').waitFor();
  const faults = notice.getByRole('listitem');
  await expect.poll(() => faults.count()).toBe(2);
  expect(await textOf(faults.nth(0).locator('code'))).toMatch(/^profiles\[0\]\.outline/);
  expect(await textOf(faults.nth(1).locator('code'))).toBe('profiles[1].kind');
  // Beside its place each fault says what is wrong and what to do.
  for (const text of await faults.locator('span').allTextContents()) expect(text.length).toBeGreaterThan(8);
  await expect.poll(() => faults.locator('span').count()).toBe(4);
  expect(await answersOnTheWall(page)).toEqual(before);
  expect(await headline(page)).toContain('Heron blank, six chambers');
  expect(await graveAxeFindings(page)).toEqual([]);
  await notice.getByRole('button', { name: 'Put away' }).click();
  await notice.waitFor({ state: 'detached' });
});

test('Escape puts away why a file was refused, before it leads anywhere else', async () => {
  const { page } = app;
  await judged(page);
  await page.getByRole('button', { name: 'Compare', exact: true }).first().click();
  const drawing = page.getByRole('application', { name: /^Drawing of/ });
  await drawing.waitFor();
  await drop(page, '{ broken', 'bad.json');
  const notice = page.getByRole('alert', { name: 'File not opened' });
  await notice.waitFor();
  await page.keyboard.press('Escape');
  await notice.waitFor({ state: 'detached' });
  expect(await drawing.isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await page.locator('button[data-opening]').first().waitFor();
});

test('broken JSON, and a file that is no text of ours, are told from each other', async () => {
  const { page } = app;
  await openThroughMenu(page, '{ "format": "sectionary-family", ', 'broken.json');
  const notice = page.getByRole('alert', { name: 'File not opened' });
  await notice.getByText('broken.json was not opened').waitFor();
  const first = await textOf(notice.getByRole('listitem').first());
  await openThroughMenu(page, '{"shopping": ["milk"]}', 'list.json');
  await notice.getByText('list.json was not opened').waitFor();
  expect(await textOf(notice.getByRole('listitem').first())).not.toBe(first);
  expect(await headline(page)).toContain('Heron blank');
});

test('the saved file is the opened one, field for field, unknown fields too', async () => {
  const page = await openDemo();
  const text = family([opening('a', { shelf: 7 }), tool('t')], { colour: 'green' });
  for (const [content, name] of [
    [DEMO, 'polderwick.json'],
    [text, 'ours.json'],
  ]) {
    if (name !== 'polderwick.json') await openThroughMenu(page, content, name);
    // A file is read in its own time: until then the menu saves the family before it.
    await page.getByRole('banner').getByText(JSON.parse(content).name, { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Family ▾' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save family into your downloads' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(name);
    expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toEqual(JSON.parse(content));
  }
});

test('a family can be saved to a place of choice; a closed dialog saves nothing, a place that fails falls back', async () => {
  const page = await openDemo({ fileDialogs: true });
  /** Stands in for the browser's own dialog, which no test can operate. */
  const answerDialog = (answer: 'write' | 'close' | 'fail') =>
    page.evaluate((how) => {
      const written: string[] = [];
      Object.assign(window, {
        written,
        showSaveFilePicker: async () => {
          if (how === 'close') throw new DOMException('closed', 'AbortError');
          const write = async (text: string) => {
            if (how === 'fail') throw new DOMException('read-only', 'NoModificationAllowedError');
            written.push(text);
          };
          const getFile = async () => new File(written, 'picked.json');
          return { name: 'picked.json', getFile, createWritable: async () => ({ write, close: async () => {} }) };
        },
      });
    }, answer);
  const saveAs = async () => {
    await page.getByRole('button', { name: 'Family ▾' }).click();
    await page.getByRole('button', { name: /^Save family as/ }).click();
  };
  await answerDialog('write');
  await saveAs();
  const written = await page.waitForFunction(() => (window as unknown as { written: string[] }).written[0]);
  expect(JSON.parse(String(await written.jsonValue()))).toEqual(JSON.parse(DEMO));
  let downloads = 0;
  page.on('download', () => downloads++);
  await answerDialog('close');
  await saveAs();
  await answerDialog('fail');
  const fallback = page.waitForEvent('download');
  await saveAs();
  expect(JSON.parse(readFileSync(await (await fallback).path(), 'utf8'))).toEqual(JSON.parse(DEMO));
  // Not one for the dialog that was closed.
  expect(downloads).toBe(1);
});

test('the first lesson has three keyways, in which a group blank enters two', async () => {
  const { page } = app;
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page.getByRole('button', { name: /^First lesson/ }).click();
  await page.getByText('Polderwick College, first lesson').waitFor();
  await judged(page);
  await page.getByRole('option', { name: /Reed group blank/ }).click();
  expect(await headline(page)).toBe('Reed group blank enters 2 of 3 keyways');
  expect(await enteredOnTheWall(page)).toEqual(['Heron', 'Bittern']);
});

test('a family without keyways, and one without blanks, say what they lack and stay usable', async () => {
  const { page } = app;
  await openThroughMenu(page, family([tool('t')]));
  await page.getByRole('heading', { name: 'This family has no keyways' }).waitFor();
  await expect.poll(() => page.getByRole('button', { name: 'Compare' }).count()).toBe(0);
  expect(await graveAxeFindings(page)).toEqual([]);
  await openThroughMenu(page, family([opening('a')]));
  await page.getByRole('heading', { name: 'No blank or tool in this family' }).waitFor();
  await page.getByText('Make one in Draw, import one, or plan the family.').waitFor();
  await expect.poll(() => page.locator('button[data-opening]').count()).toBe(1);
  await expect.poll(() => page.getByRole('button', { name: 'Compare' }).count()).toBe(0);
  expect(await graveAxeFindings(page)).toEqual([]);
});

test('the open menu takes the arrow keys, and Escape gives the focus back to its key', async () => {
  const { page } = app;
  await judged(page);
  const before = await headline(page);
  const focused = () =>
    page.evaluate(() => document.activeElement?.querySelector('b')?.textContent ?? document.activeElement?.textContent);
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await expect.poll(focused).toBe('New family…');
  await page.keyboard.press('ArrowDown');
  expect(await focused()).toBe('The family…');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  expect(await focused()).toMatch(/^A plan/);
  await page.keyboard.press('Home');
  expect(await focused()).toBe('New family…');
  expect(await headline(page)).toBe(before);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^Open family/ }).waitFor({ state: 'hidden' });
  await expect.poll(focused).toBe('Family ▾');
  await page.keyboard.press('ArrowDown');
  expect(await headline(page)).not.toBe(before);
});

test('a long judgement shows how far it is, can be stopped and begun again, and is dropped for a new family', async () => {
  const { page } = app;
  const zigzag = (shift: number, side: number) => [
    ...Array.from({ length: 60 }, (_, i) => [side + (i % 2) * 0.3, 8 * (1 - i / 59)]),
    ...Array.from({ length: 60 }, (_, i) => [2.4 + shift + (i % 2) * 0.3, (8 * i) / 59]),
  ];
  const openings = Array.from({ length: 60 }, (_, i) => opening(`o${i}`, { outline: zigzag(i * 0.001, 0) }));
  const tools = Array.from({ length: 400 }, (_, i) => tool(`t${i}`, { outline: zigzag(i * 0.001, 0.05) }));
  await openThroughMenu(page, family([...openings, ...tools], { name: 'Large family' }));
  // The pair looked at has its answer at once; 60 times 400 less one are on their way.
  await page.getByText(/Judging pairs: \d+ of 23999/).waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByText('Judging was stopped.').waitFor();
  // The picked row came first; the last one had no turn.
  await pickEntrant(page, 't399 strip');
  await page.locator('button[data-opening]').filter({ hasText: 'not judged' }).first().waitFor();
  await expect.poll(() => page.getByText('measuring…').count()).toBe(0);
  expect(await headline(page)).toMatch(/ was tried in \d+ of 60 keyways$/);
  await page.getByText('Guard marginnot measured').waitFor();
  await page.getByRole('button', { name: 'Judge again' }).click();
  await page.getByText(/Judging pairs/).waitFor();
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page.getByRole('button', { name: /^Demo/ }).click();
  await page.getByText('Polderwick College', { exact: true }).waitFor();
  await judged(page);
  expect(await headline(page)).toBe('Heron blank, five chambers enters 1 of 10 keyways');
});
