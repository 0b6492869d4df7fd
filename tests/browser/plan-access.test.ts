// Areas and holders of a plan: typed from nothing by keyboard alone, ticked by pointer, pasted; what they come to.
// The expected counts are those of the tables written out here, counted by hand.
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: partOfDemo('heron-keyway', 'heron-blank-5') });
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** Begins a family from a plan, by the menu. */
async function newPlan(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page.getByRole('button', { name: /^New family…/ }).click();
  const sheet = page.getByRole('dialog', { name: 'New family' });
  await sheet.getByLabel('Name').fill(name);
  await sheet.getByLabel('Begins with').selectOption('plan');
  await sheet.getByRole('button', { name: 'Begin family' }).click();
  await page.getByRole('heading', { name: 'Nothing is planned yet' }).waitFor();
}

const grid = (page: Page) => page.getByRole('treegrid', { name: 'Areas and holders' });
const cell = (page: Page, holder: string, area: string, says: string) =>
  grid(page).getByRole('gridcell', { name: `${holder}, ${area}: ${says}`, exact: true });
const foot = (page: Page) => page.getByRole('region', { name: 'What it comes to' });
const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '');

/** Types a name into the field that has the focus, and waits until the next one stands empty. */
async function typeNext(page: Page, label: string, name: string): Promise<void> {
  await expect.poll(() => focused(page)).toBe(label);
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
  await grid(page).getByText(name, { exact: true }).first().waitFor();
  await expect.poll(() => page.getByLabel(label).inputValue()).toBe('');
}

/** Pastes a text as a table and takes it. */
async function pasteTable(page: Page, text: string): Promise<void> {
  await page.getByRole('button', { name: 'Paste a table' }).click();
  const sheet = page.getByRole('dialog', { name: 'Paste a table of holders and areas' });
  await sheet.getByRole('textbox').fill(text);
  await sheet.getByRole('button', { name: 'Take the table' }).click();
  await sheet.waitFor({ state: 'detached' });
}

test('a plan is typed from nothing by keyboard alone, and taken back step by step', async () => {
  const { page } = app;
  await newPlan(page, 'Marsh');
  await page.getByRole('button', { name: 'Begin with an area' }).focus();
  await page.keyboard.press('Enter');
  for (const name of ['Reed', 'Heron', 'Bittern', 'Teal']) await typeNext(page, 'Name of the new area', name);
  await page.keyboard.press('Escape');
  await expect.poll(() => focused(page)).toBe('Teal');
  // Bittern and Heron go into Reed.
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => focused(page)).toBe('Bittern');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => focused(page)).toBe('Heron');
  await page.keyboard.press('Alt+ArrowRight');
  await grid(page).locator('[aria-level="2"]', { hasText: 'Heron' }).waitFor();
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => focused(page)).toBe('Bittern');
  await page.keyboard.press('Alt+ArrowRight');
  await grid(page).locator('[aria-level="2"]', { hasText: 'Bittern' }).waitFor();
  await page.getByRole('button', { name: 'Add holder' }).focus();
  await page.keyboard.press('Enter');
  for (const name of ['Porter', 'Nurse']) await typeNext(page, 'Name of the new holder', name);
  await page.keyboard.press('Escape');
  // The focus is on Nurse and Bittern: free there, must for Teal; Porter must enter all of Reed.
  await expect.poll(() => focused(page)).toBe('Nurse, Bittern: must not enter');
  await page.keyboard.press('f');
  await cell(page, 'Nurse', 'Bittern', 'may enter or not').waitFor();
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => focused(page)).toBe('Nurse, Teal: must not enter');
  await page.keyboard.press('Space');
  await cell(page, 'Nurse', 'Teal', 'must enter').waitFor();
  await page.keyboard.press('Control+ArrowUp');
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => focused(page)).toBe('Porter, Reed: must not enter');
  await page.keyboard.press('x');
  await cell(page, 'Porter', 'Heron', 'must enter').waitFor();
  // Three base blanks, Reed and the all-section blank; Nurse has the set of Teal's base blank.
  await foot(page).getByText('3 sections, 5 blanks.').waitFor();
  await foot(page).getByText('8 must enter, 7 must not, 0 are free.').waitFor();
  const reed = foot(page).getByRole('listitem').filter({ hasText: 'group, 2 sections' });
  expect(await reed.textContent()).toContain('Porter');
  for (const gone of ['Porter, Heron: must not enter', 'Nurse, Teal: must not enter']) {
    await page.keyboard.press('Control+z');
    await grid(page).getByRole('gridcell', { name: gone, exact: true }).waitFor();
  }
  await page.keyboard.press('Control+Shift+z');
  await cell(page, 'Nurse', 'Teal', 'must enter').waitFor();
});

test('a pasted table is understood before it is taken, ticked by pointer, and its contradiction shown and cured', async () => {
  const { page } = app;
  await newPlan(page, 'Marsh');
  await page.getByRole('button', { name: 'Paste a table' }).click();
  const sheet = page.getByRole('dialog', { name: 'Paste a table of holders and areas' });
  await sheet
    .getByRole('textbox')
    .fill('holder\tNorth / Hall\tNorth / Attic\tMill\nPorter\tx\tx\t\nNurse\t\t*\tx\nSmith\t\tperhaps\t1\n');
  await sheet.getByText('A matrix with holders in its rows').waitFor();
  await sheet.getByText('3 areas and 1 group not in the plan yet').waitFor();
  await sheet.getByText('row 4, column 3').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await sheet.getByRole('button', { name: 'Take the table' }).click();
  await foot(page).getByText('3 sections, 5 blanks.').waitFor();
  await cell(page, 'Porter', 'North', 'must enter').waitFor();
  await cell(page, 'Nurse', 'North', 'some of it').waitFor();
  // By pointer: one press ticks, one more leaves it free, the third takes it off.
  for (const [before, after] of [
    ['must not enter', 'must enter'],
    ['must enter', 'may enter or not'],
    ['may enter or not', 'must not enter'],
  ]) {
    await cell(page, 'Smith', 'Hall', before).click();
    await cell(page, 'Smith', 'Hall', after).waitFor();
  }
  // Hall and Mill share a section: Porter must enter the one and must not enter the other; so must Nurse and Smith.
  await grid(page).getByRole('rowheader', { name: 'Mill' }).click();
  const readings = page.getByRole('complementary', { name: 'Readings' });
  await readings.getByLabel('Its section').fill('Hall');
  await page.keyboard.press('Enter');
  await foot(page).getByText('3 contradictions').waitFor();
  const wrong = foot(page).getByRole('listitem').filter({ hasText: 'Porter must enter North / Hall' });
  expect(await wrong.textContent()).toContain('must not enter Mill, but they share the section Hall.');
  await wrong.getByRole('button', { name: /^Show where/ }).click();
  await expect.poll(() => focused(page)).toBe('Porter, Mill: must not enter');
  await page.keyboard.press('f');
  await foot(page).getByText('2 contradictions').waitFor();
  await page.keyboard.press('Control+z');
  await foot(page).getByText('3 contradictions').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
});

test('groups fold, areas and holders are renamed and deleted, and begin from a family’s own sections', async () => {
  await app.close();
  app = await openApp({ sameWindow: true });
  const { page } = app;
  await page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Plan' }).click();
  await foot(page).getByText('10 sections, 15 blanks.').waitFor();
  await page.getByRole('button', { name: 'Fold all' }).click();
  await expect.poll(() => grid(page).getByRole('rowheader').allTextContents()).toEqual(['Causeway side', 'Shore']);
  await grid(page).getByRole('button', { name: 'Unfold Shore' }).click();
  await grid(page).getByRole('rowheader', { name: 'Boathouse' }).dblclick();
  await page.getByLabel('Name of the area').fill('Boat shed');
  await page.keyboard.press('Enter');
  await expect.poll(() => focused(page)).toContain('Boat shed');
  await page.keyboard.press('Delete');
  await page.getByText('Boat shed is deleted. Ctrl+Z brings it back.').waitFor();
  await foot(page).getByText('9 sections, 14 blanks.').waitFor();
  await grid(page).getByRole('columnheader', { name: 'Technicians' }).click();
  await page.keyboard.press('Delete');
  await foot(page).getByText('9 sections, 13 blanks.').waitFor();
  await page.getByRole('checkbox', { name: /^A base blank for each section/ }).uncheck();
  await foot(page).getByText('9 sections, 4 blanks.').waitFor();
});

test('a family without a section says so in every view, and leads to its plan', async () => {
  const { page } = app;
  await newPlan(page, 'Marsh');
  const views = page.getByRole('navigation', { name: 'Views' });
  await page.getByRole('navigation', { name: 'Tray' }).getByText('No section yet').waitFor();
  for (const view of ['Wall', 'Draw', 'Tiers']) {
    await views.getByRole('button', { name: view }).click();
    await page.getByText('This family has no section yet').waitFor();
    await page.getByRole('button', { name: 'Plan its sections' }).click();
    await page.getByRole('heading', { name: 'Nothing is planned yet' }).waitFor();
  }
  for (const view of ['Names', 'Teach']) {
    await views.getByRole('button', { name: view }).click();
    await expect.poll(() => page.getByRole('main').textContent()).not.toBe('');
    expect(await graveAxeFindings(page)).toEqual([]);
  }
});

test('128 areas and 300 holders stay quick: only what is in sight is on the page', async () => {
  const { page } = app;
  await newPlan(page, 'Marsh');
  const areas = Array.from({ length: 128 }, (_, i) => `Zone ${Math.floor(i / 16) + 1} / Room ${i + 1}`);
  const rows = Array.from({ length: 300 }, (_, h) =>
    [`Holder ${h + 1}`, ...areas.map((_, i) => ((i * 7 + h * 3) % 11 === 0 ? 'x' : ''))].join('\t'),
  );
  await pasteTable(page, [['holder', ...areas].join('\t'), ...rows].join('\n'));
  // The ticks repeat with every 11 holders: so many sets, the base blanks and the all-section blank.
  await foot(page).getByText('128 sections, 140 blanks.').waitFor();
  expect(await grid(page).getByRole('gridcell').count()).toBeLessThan(1_500);
  await grid(page).getByRole('gridcell').first().click();
  await page.keyboard.press('Control+End');
  await expect.poll(() => focused(page)).toMatch(/^Holder 300, Room 128/);
  // The cell with the focus is there before its neighbours have come into sight.
  await grid(page)
    .getByRole('gridcell', { name: /^Holder 299, Room 127:/ })
    .waitFor();
  const before = await focused(page);
  await grid(page).evaluate((shown) => {
    const changed = new Set<Node>();
    Object.assign(window, { changed });
    const watch = new MutationObserver((changes) => {
      for (const { target } of changes) changed.add(target);
    });
    watch.observe(shown, { subtree: true, childList: true, attributes: true, characterData: true });
  });
  // Six presses come round to where they began. A tick draws its own cell and those of its groups, not the table.
  const said = new Set<string>();
  for (let press = 0; press < 6; press++) {
    const last = await focused(page);
    await page.keyboard.press(' ');
    await expect.poll(() => focused(page)).not.toBe(last);
    said.add(await focused(page));
  }
  expect(await focused(page)).toBe(before);
  expect(said.size).toBeGreaterThan(1);
  const changed = await page.evaluate(() => (window as unknown as { changed: Set<Node> }).changed.size);
  expect(changed).toBeLessThan(60);
});
