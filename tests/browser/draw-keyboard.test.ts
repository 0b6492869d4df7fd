// Everything here is done with keys: no test of this file moves or presses a pointer.
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { rectangle } from './compare-page.ts';
import { sheet } from './draw-page.ts';

let app: OpenedApp;

/** A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm. */
const FAMILY = {
  format: 'sectionary-family',
  version: 1,
  name: 'Plain',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
    { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) },
  ],
};

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: FAMILY });
  await app.page.getByRole('option', { name: 'Bar blank' }).waitFor();
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** Goes on with Tab, or back, until the focus is on what is named so. */
async function tabTo(page: Page, name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  for (let n = 0; n < 150; n++) {
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      return `${element?.getAttribute('aria-label') ?? ''} ${element?.id ? (document.querySelector(`label[for="${element.id}"]`)?.textContent ?? '') : ''} ${element?.tagName === 'BUTTON' || element?.closest('[role=grid]') ? element.textContent : ''}`.trim();
    });
    if (name.test(focused)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`No Tab leads to ${name}.`);
}

/** Opens the Draw view and waits for its sheet. */
async function openDraw(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Draw', exact: true }).waitFor();
  await tabTo(page, /^Draw$/);
  await page.keyboard.press('Enter');
  await sheet(page).waitFor();
  await page.getByRole('grid').waitFor();
}

/** Presses the row of the Section menu that is called so. */
async function sectionMenu(page: Page, row: RegExp): Promise<void> {
  await tabTo(page, /^Section ▾$/);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^New section/ }).waitFor();
  for (let n = 0; n < 12; n++) {
    if (row.test(await page.evaluate(() => document.activeElement?.textContent ?? ''))) break;
    await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Enter');
}

/** Adds a plain keyway of so many millimetres and waits until it is in hand. */
async function newKeyway(page: Page, name: string, wide: string, tall: string): Promise<void> {
  await sectionMenu(page, /^New section/);
  await page.getByRole('dialog', { name: 'New section' }).waitFor();
  await page.keyboard.type(name);
  await tabTo(page, /Thickness$/);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(wide);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Control+a');
  await page.keyboard.type(tall);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 2, name, exact: true }).waitFor();
  await rowsAre(page, [
    ['0.000', '0.000'],
    [Number(wide).toFixed(3), '0.000'],
    [Number(wide).toFixed(3), Number(tall).toFixed(3)],
    ['0.000', Number(tall).toFixed(3)],
  ]);
}

/** The places that the table shows, row by row; minus signs as typed. */
function rows(page: Page): Promise<string[][]> {
  return page
    .locator('[role=grid] tbody tr[aria-rowindex]')
    .evaluateAll((all) =>
      all.map((row) =>
        [...row.querySelectorAll('td')].slice(0, 2).map((cell) => (cell.textContent ?? '').replace('−', '-')),
      ),
    );
}

async function rowsAre(page: Page, wanted: readonly (readonly string[])[]): Promise<void> {
  await expect.poll(() => rows(page)).toEqual(wanted);
}

/** Waits until something was told. */
async function told(page: Page, words: RegExp): Promise<void> {
  await page.getByRole('status').filter({ hasText: words }).first().waitFor();
}

/** Goes to the table from what stands before it. */
async function toTable(page: Page): Promise<void> {
  await tabTo(page, /^Section ▾$/);
  await page.keyboard.press('Tab');
  await expect.poll(() => page.evaluate(() => document.activeElement?.closest('[role=grid]') !== null)).toBe(true);
}

const at = (...places: string[]) => places.map((place) => place.split(' ').map((n) => Number(n).toFixed(3)));

test('a keyway of twelve vertices is drawn in the table by keyboard alone, and judged', async () => {
  const { page } = app;
  await openDraw(page);
  await newKeyway(page, 'Teal keyway', '2.5', '7');
  await toTable(page);
  await page.keyboard.press('ArrowDown');
  // Up the right side: each Insert takes what was typed and adds the next vertex.
  for (const place of ['2.5 1.5', '1.75 1.5', '1.75 2.25', '2.5 2.25']) {
    await page.keyboard.press('Insert');
    await page.keyboard.type(place);
  }
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowDown');
  for (const place of ['0 4.5', '0.75 4.5', '0.75 3.75', '0 3.75']) {
    await page.keyboard.press('Insert');
    await page.keyboard.type(place);
  }
  await page.keyboard.press('Enter');
  const right = ['0 0', '2.5 0', '2.5 1.5', '1.75 1.5', '1.75 2.25', '2.5 2.25'];
  const left = ['2.5 7', '0 7', '0 4.5', '0.75 4.5', '0.75 3.75', '0 3.75'];
  await rowsAre(page, at(...right, ...left));
  expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('13');
  await page
    .getByRole('status')
    .filter({ hasText: /^Takes [01] of 1 blank$/ })
    .waitFor();
  await page.keyboard.press('Control+z');
  await rowsAre(page, at(...right, ...left.slice(0, 5), '0.375 1.875'));
  expect(await graveAxeFindings(page)).toEqual([]);
}, 240_000);

test('the same with the pen and its field of typed places', async () => {
  const { page } = app;
  await openDraw(page);
  await sectionMenu(page, /^New section/);
  await page.getByRole('dialog', { name: 'New section' }).waitFor();
  await page.keyboard.type('Wigeon keyway');
  await tabTo(page, /Begin with$/);
  await page.keyboard.press('ArrowDown');
  await tabTo(page, /^Add section$/);
  await page.keyboard.press('Enter');
  // The field of typed places has the focus by itself, and at once.
  const field = page.getByRole('textbox', { name: /^Next, in mm/ });
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
  for (const place of ['0,0', '2,0', '@0,7', '@-2,0']) {
    await page.keyboard.type(place);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 2, name: 'Wigeon keyway' }).waitFor();
  await rowsAre(page, at('0 0', '2 0', '2 7', '0 7'));
  await expect.poll(() => page.evaluate(() => document.activeElement?.hasAttribute('data-drawing'))).toBe(true);
}, 240_000);

test('an entry: a step, a sum, an arc, a bad one told in place, and Escape', async () => {
  const { page } = app;
  await openDraw(page);
  await newKeyway(page, 'Teal keyway', '2', '7');
  await toTable(page);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.type('+0.1');
  await page.keyboard.press('Tab');
  await page.keyboard.type('0.5-0.7');
  await page.keyboard.press('Enter');
  await rowsAre(page, at('0 0', '2.1 -0.2', '2 7', '0 7'));
  await page.keyboard.type('tall');
  await page.keyboard.type('8b');
  await page.keyboard.press('Enter');
  await page.getByRole('alert').filter({ hasText: 'Row 3: Not a length' }).waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-invalid'))).toBe('true');
  await page.keyboard.press('Escape');
  await rowsAre(page, at('0 0', '2.1 -0.2', '2 7', '0 7'));
  // Now the edge after vertex 3 bows out by 0.5 mm: two cells to the right of y.
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.type('0.5');
  await page.keyboard.press('Enter');
  // Radius of an arc 0.5 mm high over a chord of 2 mm: (1 + 0.25) / (2 * 0.5) = 1.25 mm.
  await page.getByRole('row', { name: /^3 2\.000 7\.000 1\.250 0\.500$/ }).waitFor();
  await page.keyboard.press('Control+z');
  await page
    .getByRole('row', { name: /^3 2\.000 7\.000 – ?straight – ?straight$|^3 2\.000 7\.000 straight straight$/ })
    .waitFor();
}, 240_000);

test('several rows are chosen, copied, pasted, moved and removed; the sheet has them chosen too', async () => {
  const { page } = app;
  await openDraw(page);
  await newKeyway(page, 'Teal keyway', '2', '7');
  await toTable(page);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  await expect.poll(() => page.locator('tr[aria-selected=true]').count()).toBe(2);
  await page.keyboard.type('+0.5');
  await page.keyboard.press('Enter');
  await rowsAre(page, at('0 0', '2.5 0', '2.5 7', '0 7'));
  await page.keyboard.press('Control+a');
  await expect.poll(() => page.locator('tr[aria-selected=true]').count()).toBe(4);
  await page.keyboard.press('Home');
  await page.keyboard.press('Control+ArrowUp');
  await page.keyboard.press('Insert');
  await page.keyboard.press('Delete');
  await rowsAre(page, at('0 0', '2.5 0', '2.5 7', '0 7'));
}, 240_000);

test('mirror, offset, align, simplify: each told in words, each one step of undo', async () => {
  const { page } = app;
  await openDraw(page);
  await newKeyway(page, 'Teal keyway', '2', '7');
  const plain = at('0 0', '2 0', '2 7', '0 7');
  await tabTo(page, /^Offset…$/);
  await page.keyboard.press('Enter');
  await page.getByRole('form', { name: 'Offset' }).waitFor();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('0.25');
  // It is seen before it is taken.
  await rowsAre(page, at('-0.25 -0.25', '2.25 -0.25', '2.25 7.25', '-0.25 7.25'));
  await page.keyboard.press('Escape');
  await rowsAre(page, plain);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('0.25');
  await page.keyboard.press('Enter');
  await told(page, /^Grown by 0\.250 mm all round\.$/);
  await tabTo(page, /^Mirror ⇆$/, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await told(page, /^Mirrored: left and right/);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await rowsAre(page, plain);
  await tabTo(page, /^Align…$/);
  await page.keyboard.press('Enter');
  await page.getByRole('form', { name: 'Align' }).waitFor();
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowDown');
  await tabTo(page, /Sideways$/);
  await page.keyboard.press('ArrowUp');
  await tabTo(page, /^Lay it there$/);
  await page.keyboard.press('Enter');
  await told(page, /^Laid onto /);
  await tabTo(page, /^Simplify…$/);
  await page.keyboard.press('Enter');
  await told(page, /^4 → 4 vertices; strays nowhere\.$/);
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.keyboard.press('Escape');
}, 240_000);

test('the Section menu has the focus as soon as it is open, and its key once a row was pressed', async () => {
  const { page } = app;
  await openDraw(page);
  // In one go, as keys struck faster than the page draws: what the browser does later is not seen here.
  const focused = await page.getByRole('button', { name: 'Section ▾' }).evaluate((key: HTMLElement) => {
    const words = (element: Element | null) => element?.textContent ?? '';
    key.focus();
    key.click();
    const first = words(document.activeElement);
    document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true }));
    const second = words(document.activeElement);
    const rows = [...document.querySelectorAll<HTMLElement>('[popover] button')];
    rows.find((row) => words(row).startsWith('Move up'))?.click();
    return [first, second, words(document.activeElement)];
  });
  expect(focused).toEqual(['New section…keyway, blank or tool', expect.stringMatching(/^Duplicate/), 'Section ▾']);
  await told(page, /is the first of its kind already\.$/);
});

test('rename, duplicate, move, delete and undo; the last section of a family stays', async () => {
  const { page } = app;
  await openDraw(page);
  await newKeyway(page, 'Teal keyway', '2', '7');
  await sectionMenu(page, /^Rename/);
  await page.getByRole('dialog', { name: 'Teal keyway' }).waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Delete');
  await page.keyboard.press('Enter');
  const noName = page.getByRole('alert').filter({ hasText: 'The name is missing.' });
  await noName.waitFor();
  await page.keyboard.type('Pintail keyway');
  await noName.waitFor({ state: 'detached' });
  // What is mended is told no more where another field stops the sheet.
  await tabTo(page, /^Tolerance/);
  await page.keyboard.type('x');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').getByRole('alert').waitFor();
  expect(await noName.count()).toBe(0);
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 2, name: 'Pintail keyway' }).waitFor();
  await sectionMenu(page, /^Duplicate/);
  await page.getByRole('heading', { level: 2, name: 'Pintail keyway, copy' }).waitFor();
  await sectionMenu(page, /^Move up/);
  await told(page, /^Pintail keyway, copy now stands before Pintail keyway\.$/);
  await sectionMenu(page, /^Delete/);
  await told(page, /^Pintail keyway, copy deleted\./);
  await expect.poll(() => page.getByRole('option', { name: 'Pintail keyway, copy' }).count()).toBe(0);
  for (let n = 0; n < 4; n++) await page.keyboard.press('Control+z');
  await page.getByRole('option', { name: 'Teal keyway' }).waitFor();
}, 240_000);

test('a new family begins with a blank and its keyway, and its last section cannot be deleted', async () => {
  const { page } = app;
  await openDraw(page);
  await sectionMenu(page, /^New family/);
  await page.getByRole('dialog', { name: 'New family' }).waitFor();
  await page.keyboard.press('Enter');
  await page.getByRole('alert').filter({ hasText: 'The name is missing.' }).waitFor();
  await tabTo(page, /Name$/, 'Shift+Tab');
  await page.keyboard.type('Marsh annexe');
  await page.keyboard.press('Enter');
  await page
    .getByRole('status')
    .filter({ hasText: /^Goes into 1 of 1 keyway|^Takes 1 of 1 blank/ })
    .waitFor();
  await sectionMenu(page, /^Delete/);
  await told(page, /deleted\. Undo brings it back\.$/);
  await sectionMenu(page, /^Delete/);
  await told(page, /is the last section of the family and cannot be deleted\.$/);
}, 240_000);
