// A blank 2 mm wide in a slot 2.1 mm wide keeps (2.1 - 2) / 2 = 0.050 mm, and in one 1.6 mm wide it is
// (2 - 1.6) / 2 = 0.200 mm too deep. All expected figures below follow from that.
import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { drawing, openFamily, rectangle } from './compare-page.ts';
import { judged, pickedEntrant } from './wall-page.ts';

let app: OpenedApp;

const FAMILY = {
  name: 'Plain',
  runningClearance: 0.03,
  profiles: [
    { id: 'hk', kind: 'opening', section: 'Heron', name: 'Heron keyway', outline: rectangle(2.1, 6.6) },
    { id: 'sk', kind: 'opening', section: 'Smew', name: 'Smew keyway', outline: rectangle(1.6, 6.6) },
    { id: 'h5', kind: 'blank', section: 'Heron', name: 'Heron blank short', chambers: 5, outline: rectangle(2, 6) },
    { id: 'h6', kind: 'blank', section: 'Heron', name: 'Heron blank long', chambers: 6, outline: rectangle(2, 6) },
    { id: 'sb', kind: 'blank', section: 'Smew', name: 'Smew blank', chambers: 6, outline: rectangle(1.5, 6) },
  ],
  names: [
    { text: 'Q 77', kind: 'blank', profile: 'h6', scheme: 'Stores list', chambers: 6 },
    { text: 'Heron Smew', kind: 'blank', profile: 'h5', scheme: 'Old chart', note: 'Taken for one that fits both.' },
    { text: 'Snipe', kind: 'section', section: 'Snipe', scheme: 'Old chart' },
  ],
};

// One window for the whole file: a family that is opened forgets what was asked and looked for before.
beforeAll(async () => {
  app = await openApp();
});

let opened = 0;

beforeEach(async () => {
  const { page } = app;
  opened++;
  await page.getByRole('button', { name: 'Wall', exact: true }).click();
  await openFamily(page, { ...FAMILY, name: `Plain ${opened}` });
  await page.getByText(`Plain ${opened}`, { exact: true }).first().waitFor();
  await judged(page);
  await page.getByRole('button', { name: 'Names', exact: true }).click();
});

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

const line = (page: Page): Locator => page.getByRole('combobox', { name: 'Your question' });
const answer = (page: Page): Locator => page.getByRole('region', { name: 'Answer' });
const key = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name, exact: true });
const row = (page: Page, name: RegExp): Locator => page.getByRole('row', { name });

async function ask(page: Page, question: string): Promise<void> {
  await line(page).fill(question);
  await line(page).press('Enter');
}

async function showSheet(page: Page, sheet: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Sheets of Names' }).getByRole('button', { name: sheet }).click();
}

/** Dark and light, both clean. */
async function expectClean(page: Page): Promise<void> {
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    await expect.poll(() => page.evaluate(() => document.documentElement.dataset.theme)).toBe(colorScheme);
    expect(await graveAxeFindings(page)).toEqual([]);
  }
}

test('a question typed by keys, with names offered, is answered by mark, sentence and picture, and leads on', async () => {
  const { page } = app;
  // The view begins in the question line.
  await expect.poll(() => line(page).evaluate((field) => field === document.activeElement)).toBe(true);
  await page.keyboard.type('does the heron blank l');
  await page.getByRole('listbox', { name: 'Names' }).getByRole('option', { name: 'Heron blank long' }).waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect.poll(() => line(page).inputValue()).toBe('does the Heron blank long');
  await page.keyboard.type(' go into smew keyway');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Enter');
  await answer(page).getByText('blocked', { exact: true }).waitFor();
  await answer(page)
    .getByText(/^No: Heron blank long does not go into Smew keyway\..*0\.200 mm too deep/)
    .waitFor();
  await answer(page).getByText('Heron blank long in Smew keyway').waitFor();
  expect(await pickedEntrant(page)).toBe('Heron blank long');
  await takeScreenshots(page, 'names-ask');
  await expectClean(page);
  await answer(page).getByRole('button', { name: 'Compare' }).click();
  await drawing(page).waitFor();
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toContain('Smew keyway');
});

test('units and edits reach the answer, and questions asked before come back with Up', async () => {
  const { page } = app;
  await showSheet(page, 'Ask');
  await ask(page, 'Does Q 77 go into the Heron keyway?');
  await answer(page)
    .getByText(/0\.050 mm/)
    .first()
    .waitFor();
  await key(page, 'inch').click();
  // 0.050 mm are 1.97 thousandths of an inch.
  await answer(page)
    .getByText(/2\.0 thou/)
    .first()
    .waitFor();
  await key(page, 'mm').click();
  await ask(page, 'what is the Snipe section');
  await answer(page).waitFor();
  await line(page).press('ArrowUp');
  await expect.poll(() => line(page).inputValue()).toBe('Does Q 77 go into the Heron keyway?');
  await line(page).press('Enter');
  await answer(page).getByText('enters', { exact: true }).waitFor();
  // The name goes out of the register: the answer that stands there follows.
  await showSheet(page, 'Register');
  await row(page, /^Q 77/).click();
  await page.keyboard.press('Delete');
  await page.getByText('“Q 77” was deleted.').waitFor();
  await showSheet(page, 'Ask');
  await answer(page)
    .getByText(/no name "Q 77"/)
    .waitFor();
  await page.keyboard.press('Control+z');
  await answer(page).getByText('enters', { exact: true }).waitFor();
});

test('a name that is nearly right gives names to choose from, and a picked question is the same as a typed one', async () => {
  const { page } = app;
  await showSheet(page, 'Ask');
  await ask(page, 'does Q 77 go into the Hern keyway');
  await answer(page).getByText('There is no name "Hern" in this family.').waitFor();
  await answer(page)
    .getByRole('button', { name: /^Heron/ })
    .click();
  await answer(page).getByText('enters', { exact: true }).waitFor();
  const picked = page.getByRole('form', { name: 'The question put together from lists' });
  await picked.getByLabel('go into: keyway').selectOption('Smew keyway');
  await answer(page).getByText('blocked', { exact: true }).waitFor();
  expect(await line(page).inputValue()).toMatch(/^Does .* go into Smew keyway\?$/);
  await picked.getByLabel('Or pick').selectOption({ label: 'what goes into …?' });
  await picked.getByLabel('what goes into: keyway').selectOption('Heron keyway');
  await answer(page)
    .getByText(/^Into Heron keyway go/)
    .waitFor();
  const named = answer(page).getByRole('list', { name: 'Sections in the answer' });
  await named.getByRole('button', { name: 'Smew blank' }).click();
  await answer(page)
    .getByText(/Smew blank is a blank/)
    .waitFor();
});

test('the register finds, sorts, marks what is gone, and takes entries by a form that is all keys', async () => {
  const { page } = app;
  await showSheet(page, 'Register');
  await row(page, /^Snipe section gone/).waitFor();
  await takeScreenshots(page, 'names-register');
  await expectClean(page);
  await page.getByLabel('Show').selectOption('gone');
  await page.getByText('1 of 10 names').waitFor();
  await page.getByLabel('Show').selectOption('all');
  await page.getByRole('button', { name: 'Chambers' }).click();
  await page
    .getByRole('columnheader', { name: 'Chambers', exact: false })
    .and(page.locator('[aria-sort="ascending"]'))
    .waitFor();
  await expect.poll(() => page.locator('[data-name-row]').first().textContent()).toContain('Heron blank short');

  await key(page, 'Add a name…').click();
  await page.keyboard.type('Boathouse key');
  await page.getByLabel('Stands for').selectOption({ label: 'Smew section' });
  await page.getByLabel('Scheme or list').fill('Stores list');
  await page.keyboard.press('Enter');
  await page.getByText('“Boathouse key” was added.').waitFor();
  await page.getByLabel('Find').fill('boat');
  await row(page, /^Boathouse key blank Smew section Stores list/).click();
  await page.keyboard.press('Enter');
  await page.getByLabel('Chambers, if it says a length').fill('40');
  await page.keyboard.press('Enter');
  await page.getByRole('alert').getByText('whole one from 1 to 12').waitFor();
  await page.getByLabel('Chambers, if it says a length').fill('6');
  await page.keyboard.press('Enter');
  await page.getByText('“Boathouse key” was changed.').waitFor();
  await row(page, /^Boathouse key/).click();
  await page.keyboard.press('Delete');
  await page.getByText('No name holds what you are looking for.').waitFor();
  await page.getByTitle('Take it back (Ctrl+Z)').click();
  await row(page, /^Boathouse key blank Smew section Stores list 6/).waitFor();
});

test('a table of five thousand names is pasted, faults told by row, walked to its end, and saved as CSV', async () => {
  const { page } = app;
  await showSheet(page, 'Register');
  await key(page, 'Paste names…').click();
  const field = page.getByRole('dialog').getByRole('textbox');
  await field.fill('name\tkind\tsection\nT 1\tbird\tHeron');
  await page.getByText('"bird" is no kind of thing', { exact: false }).waitFor();
  expect(await page.getByRole('dialog').getByText('row 2').count()).toBe(1);
  await field.fill('name\tkind\tsection\nT 1\tblank\tHerron');
  await page.getByText('There is no section "Herron" in this family. Is it Heron?', { exact: false }).waitFor();
  const many = Array.from({ length: 4990 }, (_, i) => `T ${i + 1}\tblank\tSmew\tLong list`);
  const table = Buffer.from(`name\tkind\tsection\tscheme\n${many.join('\n')}`);
  await page.getByLabel('From a file…').setInputFiles({ name: 'long.csv', mimeType: 'text/csv', buffer: table });
  await key(page, 'Add 4990 names').click();
  await page.getByText('5000 names').first().waitFor();
  expect(await page.locator('[data-name-row]').count()).toBeLessThan(60);
  await page.getByLabel('Show').selectOption('register');
  await page.locator('[data-name-row]').first().click();
  await page.keyboard.press('End');
  await row(page, /^T 4990 /)
    .and(page.locator('[aria-selected="true"]'))
    .waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent ?? '')).toContain('T 4990');
  await page.getByLabel('Find').fill('t 4321');
  await page.getByText('1 of 5000 names').waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), key(page, 'Save as CSV').click()]);
  expect(download.suggestedFilename()).toBe('test-names.csv');
  const text = await readFile(await download.path(), 'utf8');
  const lines = text.trimEnd().split('\r\n');
  expect(lines).toHaveLength(5001);
  expect(lines).toContain('T 4321,blank,Smew,Long list,,,,');
  expect(lines).toContain('Smew blank,blank,Smew,,6,,sb,');
});

test('a misleading name is told with its reason and renamed, or not to a name that is taken', async () => {
  const { page } = app;
  await showSheet(page, 'Misleading names');
  const joined = page.getByRole('region', { name: 'Joined from two sections' });
  const finding = joined.getByRole('listitem').filter({ hasText: 'Heron Smew' }).first();
  await finding.waitFor();
  await takeScreenshots(page, 'names-misleading');
  await expectClean(page);
  const field = finding.getByLabel('New name for Heron Smew');
  const suggested = await field.inputValue();
  await field.fill('Smew blank');
  await finding.getByText('“Smew blank” is taken: it is the name of a blank of the Smew section.').waitFor();
  await field.fill(suggested);
  await finding.getByRole('button', { name: 'Rename', exact: true }).click();
  await page.getByText(`“Heron Smew” is called “${suggested}” now.`).waitFor();
  await finding.waitFor({ state: 'detached' });
  // The case went, with the key that was pressed: the next one has the focus.
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toMatch(/^(Rename|Undo)/);
  await page.getByTitle('Take it back (Ctrl+Z)').click();
  await finding.waitFor();
});

test('all sections are named by one rule from the Family menu, as one step that leaves no misleading name', async () => {
  const { page } = app;
  await showSheet(page, 'Ask');
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page.getByRole('button', { name: /^Name the sections…/ }).click();
  const sheet = page.getByRole('dialog', { name: 'Name the sections' });
  await sheet.getByLabel('Name sections by').selectOption('numbers');
  await sheet.getByLabel('Before the number').fill('O');
  await sheet.getByText(/The prefix has O/).waitFor();
  await sheet.getByLabel('Before the number').fill('K');
  await sheet.getByRole('row', { name: 'keyway Smew keyway K 20 keyway' }).waitFor();
  await sheet.getByRole('row', { name: 'blank Heron blank short K 10 blank, five chambers' }).waitFor();
  await takeScreenshots(page, 'names-scheme');
  expect(await graveAxeFindings(page)).toEqual([]);
  await sheet.getByRole('button', { name: 'Rename' }).click();
  await page.getByRole('listbox', { name: 'Keyways' }).getByRole('option', { name: 'K 20 keyway' }).waitFor();
  // What was asked by an old name is still answered.
  await ask(page, 'does Smew blank go into the Heron keyway');
  await answer(page).getByText('enters', { exact: true }).waitFor();
  await answer(page)
    .getByText(/K 20 blank goes into K 10 keyway|K 20 blank/)
    .first()
    .waitFor();
  await page.getByTitle('Take back the last edit (Ctrl+Z)').click();
  await page.getByRole('listbox', { name: 'Keyways' }).getByRole('option', { name: 'Smew keyway' }).waitFor();
});
