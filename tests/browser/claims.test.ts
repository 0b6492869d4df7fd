import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { dropFiles, fileAt, importThroughMenu, refused } from './import-page.ts';

let app: OpenedApp;
let page: Page;

/** Opens the demo family's claims and waits until all of them are checked. */
async function openClaims(): Promise<void> {
  app = await openApp({ context: { permissions: ['clipboard-read', 'clipboard-write'] } });
  page = app.page;
  await page.locator('button[data-opening]').first().waitFor();
  await page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Tiers' }).click();
  await page.getByRole('button', { name: 'Claims', exact: true }).click();
  await summary(/^22 claims: 18 confirmed, 3 contradicted, 1 too close to call$/).waitFor({ timeout: 60_000 });
}

const summary = (words: RegExp): Locator => page.getByRole('heading', { name: words });
const rows = (): Locator => page.getByRole('grid', { name: 'Claims' }).locator('tbody tr');
const row = (words: string): Locator => rows().filter({ hasText: words });
const status = (): Locator => page.locator('main').getByRole('status');
const readings = (): Locator => page.getByRole('complementary', { name: 'Readings' });
const press = (name: string | RegExp) => page.getByRole('button', { name }).click();

const said = (words: string) => expect.poll(() => status().textContent()).toBe(words);
const told = (words: RegExp) => expect.poll(() => readings().textContent()).toMatch(words);

/** What is saved by a press. */
async function savedBy(name: RegExp): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press(name)]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

// One window for all of them, one after the other: each leaves the claims as it found them.
beforeAll(openClaims);

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

test('claims that fail come first with their reason; a pick is the pair of the whole window', async () => {
  await expect.poll(() => rows().first().textContent()).toContain('contradicted');
  await rows().first().click();
  await told(/Smew blank enters Heron keyway.*says Porter's wall chart.*contradicted/);
  await told(/It does not go in: blocked by the right ward at 1\.7–2\.2 mm/);
  await told(/Stores list, second printing says the opposite\./);
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'claims');
  await page.keyboard.press('ArrowDown');
  await told(/Smew blank enters Bittern keyway/);
  await page.keyboard.press('Enter');
  await page.getByRole('application', { name: /^Drawing of/ }).waitFor();
  const head = page.getByRole('heading', { level: 1 });
  await expect.poll(() => head.textContent()).toMatch(/Smew blank.*Bittern keyway.*blocked/);
  await page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Tiers' }).click();
  await summary(/^22 claims/).waitFor();
});

test('a claim is typed by keyboard, changed, its name mended, taken back', async () => {
  await press('Add a claim');
  await page.keyboard.type('Hern');
  await page.keyboard.press('Tab');
  await page.keyboard.type('does');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Smew');
  await page.keyboard.press('Tab');
  await page.keyboard.type('the ferryman');
  await page.keyboard.press('Enter');
  await summary(/^23 claims: .* 1 name not found$/).waitFor();
  const focused = () => page.evaluate(() => (document.activeElement as HTMLInputElement).value);
  await expect.poll(focused).toBe('');
  await press(/^Heron$/);
  await summary(/^23 claims: 19 confirmed, 3 contradicted, 1 too close to call$/).waitFor();
  await said('“Hern” is now “Heron” in 1 claim.');
  await press('Change');
  await page.getByRole('combobox', { name: 'Says', exact: true }).selectOption('enters');
  await page.getByRole('textbox', { name: 'Note' }).fill('at the ferry');
  await page.keyboard.press('Enter');
  await summary(/^23 claims: 18 confirmed, 4 contradicted/).waitFor();
  await told(/at the ferry/);
  for (let n = 0; n < 3; n++) await page.getByRole('button', { name: /^Undo/ }).click();
  await summary(/^22 claims: 18 confirmed/).waitFor();
  await page.getByRole('textbox', { name: 'Note' }).press('Escape');
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Add a claim');
});

test('listed by standing and source, ticked, deleted', async () => {
  await press(/^To look at 4$/);
  await expect.poll(() => rows().count()).toBe(4);
  await page.getByRole('combobox', { name: 'Whose claims are listed' }).selectOption({ index: 1 });
  await expect.poll(() => rows().count()).toBe(2);
  await rows().first().click();
  await page.keyboard.press('Space');
  await said('1 ticked.');
  await page.keyboard.press('Control+a');
  await said('2 ticked.');
  await page.keyboard.press('Delete');
  await said('2 claims deleted. Ctrl+Z brings them back.');
  await page.getByText('No claim is of that standing and source.').waitFor();
  await press(/^All 20$/);
  await press('Delete all of Stores list, second printing');
  await summary(/^10 claims: 10 confirmed$/).waitFor();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await summary(/^22 claims/).waitFor();
  // What was said of the deleting is no longer so.
  await expect.poll(() => status().textContent()).toBe('');
  await page.getByRole('combobox', { name: 'Whose claims are listed' }).selectOption({ index: 0 });
  await expect.poll(() => rows().count()).toBeGreaterThan(4);
});

test('a table is pasted: what was understood, what was left out, which names are odd, who says so', async () => {
  await press('Paste a table…');
  const dialog = page.getByRole('dialog', { name: 'Paste a table of claims' });
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.keyboard.insertText(
    'blank\tkeyway\tenters\nHeron blank\tHeron\tyes\nAvocett\tRail\tx\nReed\tSmew\tperhaps\n',
  );
  await dialog.getByRole('heading', { name: 'A list with 2 claims' }).waitFor();
  await dialog.getByText('row 4, column 3 (enters)').waitFor();
  await dialog.getByRole('textbox', { name: 'Who says so' }).fill('the ferryman');
  await dialog.getByRole('combobox', { name: /^Avocett/ }).selectOption('Avocet');
  await dialog.getByText('Avocet enters Rail the ferryman').waitFor();
  await takeScreenshots(page, 'claims-paste');
  expect(await graveAxeFindings(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Add 2 claims' }).click();
  await summary(/^24 claims: 19 confirmed, 4 contradicted, 1 too close to call$/).waitFor();
  await said('2 claims added.');
  await row('the ferryman').first().waitFor();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await summary(/^22 claims/).waitFor();
});

test('tables come by menu and drop; the report goes out as text and as a table', async () => {
  await importThroughMenu(page, fileAt('profiles-demo/imports/claims-matrix.csv'));
  const matrix = page.getByRole('dialog', { name: 'Claims from claims-matrix.csv' });
  await matrix.getByRole('heading', { name: 'A matrix with 47 claims' }).waitFor();
  await matrix.getByRole('textbox', { name: 'Who says so' }).fill('The old chart');
  await matrix.getByRole('button', { name: 'Add 47 claims' }).click();
  await summary(/^69 claims: 61 confirmed, 5 contradicted, 3 too close to call$/).waitFor();
  await dropFiles(page, fileAt('profiles-demo/imports/claims-list.csv'));
  await page
    .getByRole('dialog', { name: 'Claims from claims-list.csv' })
    .getByRole('button', { name: 'Add 12 claims' })
    .click();
  await summary(/^81 claims: 69 confirmed, 7 contradicted, 4 too close to call, 1 name not found$/).waitFor();
  await press('Report ▾');
  await press(/^Copy the report/);
  await said('The report is in the clipboard.');
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toMatch(/^Polderwick College: 81 claims: 69 confirmed/);
  expect(copied.trimEnd().split('\n')).toHaveLength(82);
  await press('Report ▾');
  const saved = await savedBy(/^Save the report/);
  expect(saved.name).toBe('Polderwick College claims report.csv');
  expect(saved.text.split('\r\n')).toHaveLength(83);
  expect(saved.text).toContain('contradicted,0.220 mm too deep,');
  for (let n = 0; n < 2; n++) await page.getByRole('button', { name: /^Undo/ }).click();
  await summary(/^22 claims/).waitFor();
});

test('bad tables are refused in words and change nothing', async () => {
  await dropFiles(page, { name: 'nul.csv', content: 'blank,keyway,enters\nHeron,\0,yes\n' });
  const notice = await refused(page);
  await expect.poll(() => notice.textContent()).toContain('nul.csv');
  await page.keyboard.press('Escape');
  await dropFiles(page, { name: 'large.csv', content: `blank,keyway,enters\n${'Heron,Smew,no\n'.repeat(1_600_000)}` });
  await expect
    .poll(() => page.getByRole('alert', { name: 'File not opened' }).textContent())
    .toContain('more than the 20 MB');
  await page.keyboard.press('Escape');
  await press('Paste a table…');
  await page.keyboard.insertText('blank,keyway,enters\nHeron,"Smew,no\n');
  const dialog = page.getByRole('dialog', { name: 'Paste a table of claims' });
  await dialog.getByText('row 2: has a stray quotation mark').waitFor();
  expect(await dialog.getByRole('button', { name: 'Add', exact: true }).isDisabled()).toBe(true);
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
  await summary(/^22 claims/).waitFor();
});

test('in the dark, without claims, and while one is typed', async () => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await rows().nth(3).click();
  await press('Add a claim');
  await takeScreenshots(page, 'claims-dark');
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await rows().nth(3).click();
  await page.keyboard.press('Control+a');
  await press('Delete ticked');
  await page.getByRole('heading', { name: 'Nothing is claimed yet' }).waitFor();
  await takeScreenshots(page, 'claims-none');
  expect(await graveAxeFindings(page)).toEqual([]);
});
