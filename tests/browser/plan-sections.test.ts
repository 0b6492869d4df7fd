// The sections of a plan: from an empty page to a printed sheet by pointer and by keyboard alone; searched longer, cancelled,
// proved; a blade with too few sites; taken and taken back; and the demo campus against its own drawn family.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { judgeEntry } from '../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { readFamily } from '../../src/interchange/json/read.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { graveAxeFindings } from '../kit/axe.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { readPdf } from '../kit/read-pdf.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { openFamily } from './compare-page.ts';

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: partOfDemo('heron-keyway', 'heron-blank-5') });
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const key = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const headline = (page: Page) => page.locator('[data-plan-sections] h1');
const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '');

async function showSheet(page: Page, sheet: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Sheets of Plan' }).getByRole('button', { name: sheet }).click();
}

async function showSections(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Plan', exact: true }).click();
  await showSheet(page, 'Sections');
}

/** Waits until what was found is drawn and confirmed. */
async function drawn(page: Page): Promise<void> {
  await page.locator('[data-plan-pair="drawn"]').waitFor();
}

/** The printed sheet: its pages, and whether they hold some words, spaces apart. */
async function printed(page: Page, format: 'A4' | 'Letter') {
  const { pages } = readPdf(await page.pdf({ format }));
  const text = pages.join('');
  return { pages, has: (words: string) => text.includes(words.replace(/\s+/g, '')) };
}

/** Areas, the blanks that they need, which enter what; expected by hand of what the two tests below type. */
async function expectSheet(page: Page): Promise<void> {
  const article = page.getByRole('article', { name: 'Printed sheet of Two yards' });
  await article.waitFor();
  const sheet = await printed(page, 'A4');
  for (const words of ['Two yards: planned sections', 'Reed', 'Heron', 'Teal', 'Warden', 'Reed, Heron'])
    expect(sheet.has(words), words).toBe(true);
  for (const words of ['Reed blank', 'Heron blank', 'Teal blank', 'Warden group blank', 'All-section blank'])
    expect(sheet.has(words), words).toBe(true);
  expect(sheet.has('Smallest clearance')).toBe(true);
  expect(sheet.has("Have the cylinder's maker and a licensed locksmith confirm")).toBe(true);
  // Small as it is, the sheet takes more than one page, and says which is which.
  expect(sheet.pages.length).toBeGreaterThan(1);
  for (const [i, page] of sheet.pages.entries()) expect(page).toContain(`Page${i + 1}of${sheet.pages.length}`);
  // Nothing of the window round it is printed.
  for (const words of ['Sectionary', 'Improve', 'Undo']) expect(sheet.has(words), words).toBe(false);
  expect((await printed(page, 'Letter')).has('Warden group blank')).toBe(true);
}

test('from an empty page to a printed family by pointer', async () => {
  const { page } = app;
  await key(page, 'Family ▾').click();
  await page.getByRole('button', { name: /^New family…/ }).click();
  const begin = page.getByRole('dialog', { name: 'New family' });
  await begin.getByLabel('Name').fill('Two yards');
  await begin.getByLabel('Begins with').selectOption('plan');
  await begin.getByRole('button', { name: 'Begin family' }).click();
  await showSheet(page, 'Sections');
  await page.getByRole('heading', { name: 'The plan has no areas yet.' }).waitFor();
  await page.locator('[data-plan-sections]').getByRole('button', { name: 'Areas and holders' }).click();
  await key(page, 'Begin with an area').click();
  for (const name of ['Reed', 'Heron', 'Teal']) {
    await page.getByLabel('Name of the new area').fill(name);
    await key(page, 'Add area').click();
    await page.getByRole('treegrid').getByText(name, { exact: true }).waitFor();
  }
  await key(page, 'Add holder').click();
  await page.getByLabel('Name of the new holder').fill('Warden');
  const cell = (area: string, says: string) =>
    page.getByRole('gridcell', { name: `Warden, ${area}: ${says}`, exact: true });
  await page.getByRole('treegrid').getByText('Reed', { exact: true }).click();
  for (const area of ['Reed', 'Heron']) {
    await cell(area, 'must not enter').click();
    await cell(area, 'must enter').waitFor();
  }
  await showSheet(page, 'Sections');
  // Two base blanks that stay out of each other's keyways take two sites, and so do three.
  await expect.poll(() => headline(page).textContent()).toBe('3 sites, proved fewest');
  await drawn(page);
  await takeScreenshots(page, 'plan-sections');
  expect(await graveAxeFindings(page)).toEqual([]);
  await key(page, 'Print…').click();
  await takeScreenshots(page, 'plan-print');
  await expectSheet(page);
  expect(await graveAxeFindings(page)).toEqual([]);
  await key(page, 'Back').click();
  await key(page, 'Take these sections…').click();
  await key(page, 'Take 3 keyways and 5 blanks').click();
  await page.getByText('These sections are in the family.').waitFor();
  await key(page, 'Print…').click();
  await page.getByRole('combobox', { name: 'of', exact: true }).selectOption('the sections in the family');
  await expectSheet(page);
});

/** Presses Tab until what is asked for has the focus. */
async function tabTo(page: Page, name: string | RegExp, back = false): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    const now = await focused(page);
    if (typeof name === 'string' ? now === name : name.test(now)) return;
    await page.keyboard.press(back ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`Tab does not lead to ${name}; it is at ${await focused(page)}`);
}

async function press(page: Page, name: string | RegExp, back = false): Promise<void> {
  await tabTo(page, name, back);
  await page.keyboard.press('Enter');
}

/** Types names one after the other into a field that comes anew, and leaves it. */
async function typeNames(page: Page, label: string, names: readonly string[]): Promise<void> {
  for (const name of names) {
    await expect.poll(() => focused(page)).toBe(label);
    await page.keyboard.type(name);
    await page.keyboard.press('Enter');
    await page.getByRole('treegrid').getByText(name, { exact: true }).first().waitFor();
    await expect.poll(() => page.getByLabel(label).inputValue()).toBe('');
  }
  await page.keyboard.press('Escape');
  await page.getByLabel(label).waitFor({ state: 'detached' });
}

test('from an empty page to a printed family by keyboard alone', async () => {
  const { page } = app;
  await press(page, 'Family ▾');
  await expect.poll(() => focused(page)).toMatch(/^New family…/);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog', { name: 'New family' }).waitFor();
  await page.keyboard.type('Two yards');
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => page.getByLabel('Begins with').inputValue()).toBe('plan');
  await press(page, 'Begin family');
  await page.getByRole('heading', { name: 'Nothing is planned yet' }).waitFor();
  await press(page, 'Begin with an area');
  await typeNames(page, 'Name of the new area', ['Reed', 'Heron', 'Teal']);
  await press(page, 'Add holder', true);
  await typeNames(page, 'Name of the new holder', ['Warden']);
  // From the holder's name to the cell of the area that was picked last, and up to the first two areas.
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => focused(page)).toBe('Warden, Teal: must not enter');
  for (const area of ['Heron', 'Reed']) {
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => focused(page)).toBe(`Warden, ${area}: must not enter`);
    await page.keyboard.press('x');
    await expect.poll(() => focused(page)).toBe(`Warden, ${area}: must enter`);
  }
  await press(page, 'Sections', true);
  await expect.poll(() => headline(page).textContent()).toBe('3 sites, proved fewest');
  await drawn(page);
  // The tables are walked by the arrows, and the picture follows.
  await tabTo(page, 'Take these sections…');
  await tabTo(page, 'Sections');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => focused(page)).toBe('Pairs');
  await page.keyboard.press('Tab');
  await expect.poll(() => focused(page)).toMatch(/: must enter$/);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => focused(page)).toBe('Reed blank in Heron: must not enter');
  await page.getByRole('heading', { name: 'Reed blank in Heron keyway' }).waitFor();
  await page.locator('[data-verdict="blocked"]').getByText('blocked').waitFor();
  await press(page, 'Print…', true);
  await expect.poll(() => focused(page)).toBe('Print');
  await expectSheet(page);
  await page.keyboard.press('Escape');
  await headline(page).waitFor();
  await press(page, 'Take these sections…');
  await expect.poll(() => focused(page)).toBe('Take 3 keyways and 5 blanks');
  await page.keyboard.press('Enter');
  await page.getByText('These sections are in the family.').waitFor();
  await page.keyboard.press('Control+z');
  await page.getByText('These sections are in the family.').waitFor({ state: 'detached' });
});

/** A plan of two groups of four areas; everything in it is invented. */
const BLADE = {
  ...{ thickness: 2, height: 8.4, backRadius: 0.4, cutZone: 3, backZone: 0.5, grooveWidth: 0.6, heightStep: 0.9 },
  ...{ grooveDepth: 0.6, depthStep: 0.2, flankDeg: 10, rootRadius: 0.1 },
};

function campus(count: number, groups: number, plan: object = {}) {
  const group = (i: number) => Math.floor((i * groups) / count);
  return {
    ...{ name: `Campus of ${count}`, runningClearance: 0.03, tolerance: 0.01, profiles: [] },
    plan: {
      areas: [
        ...Array.from({ length: groups }, (_, g) => ({ id: `g${g}`, name: `Yard ${g + 1}` })),
        ...Array.from({ length: count }, (_, i) => ({ id: `a${i}`, name: `House ${i + 1}`, parent: `g${group(i)}` })),
      ],
      holders: Array.from({ length: groups }, (_, g) => ({ id: `h${g}`, name: `Warden ${g + 1}`, enters: [`g${g}`] })),
      blade: BLADE,
      ...plan,
    },
  };
}

/** Keeps the next search of so many seconds from its thread until it is let go: it is on its way, however slow the driver is. */
async function holdSearch(page: Page, seconds: number): Promise<() => Promise<void>> {
  await page.evaluate((held) => {
    const RealWorker = window.Worker;
    window.Worker = class extends RealWorker {
      override postMessage(message: { readonly input?: { readonly options?: { readonly seconds?: number } } }) {
        if (message.input?.options?.seconds !== held) return super.postMessage(message);
        window.Worker = RealWorker;
        Object.assign(window, { letSearchGo: () => super.postMessage(message) });
      }
    };
  }, seconds);
  return () => page.evaluate(() => (window as unknown as { letSearchGo(): void }).letSearchGo());
}

test('a search goes on in the background by itself and by wish, is stopped, and ends proved or with its gap', async () => {
  const { page } = app;
  await openFamily(page, campus(8, 2, { stops: 2 }));
  await page.getByRole('banner').getByText('Campus of 8', { exact: true }).waitFor();
  await holdSearch(page, 10);
  await showSections(page);
  const words = /^\d+ sites(, proved fewest|; at least \d+ are needed)$/;
  await expect.poll(() => headline(page).textContent()).toMatch(words);
  const before = await headline(page).textContent();
  // It begins by itself, moves nothing, and has a key of its own that stops it.
  const byItself = page.locator('[data-search-by-itself]');
  await byItself.getByText(/^Looking for less: best so far \d+ sites/).waitFor();
  await byItself.getByRole('button', { name: 'Stop' }).click();
  await byItself.waitFor({ state: 'detached' });
  await page.getByLabel('for', { exact: true }).fill('120');
  await page.getByLabel('for', { exact: true }).press('Enter');
  await holdSearch(page, 120);
  await key(page, 'Improve').click();
  await page.getByText(/^Looking for less: best so far \d+ sites/).waitFor();
  expect(await headline(page).textContent()).toMatch(words);
  await key(page, 'Stop').click();
  await page.getByText(/^Looking for less/).waitFor({ state: 'detached' });
  expect(await headline(page).textContent()).toMatch(words);
  expect(Number.parseInt((await headline(page).textContent()) ?? '', 10)).toBeLessThanOrEqual(
    Number.parseInt(before ?? '', 10),
  );
  // An edit leaves no figure of the plan before it, and undo brings that one's own answer back.
  await page.getByLabel('Stopped by').selectOption('1 ward');
  await expect.poll(() => headline(page).textContent()).toMatch(/^[56] sites/);
  await page.getByLabel('for', { exact: true }).fill('2');
  await page.getByLabel('for', { exact: true }).press('Enter');
  const letGo = await holdSearch(page, 2);
  await key(page, 'Improve').click();
  await page.getByText(/^Looking for less/).waitFor();
  await letGo();
  await page.getByText(/^Looking for less/).waitFor({ state: 'detached' });
  await expect.poll(() => headline(page).textContent()).toMatch(words);
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.getByLabel('Stopped by').inputValue()).toBe('2');
  await expect.poll(() => headline(page).textContent()).toMatch(words);
  await page.getByLabel('Reserve').fill('x');
  await page.getByText('a whole number from 0 to 1000').waitFor();
  await page.getByLabel('Reserve').press('Escape');
});

test('a blade with too few sites is told with what binds, and the nearest plan is applied by its key', async () => {
  const { page } = app;
  await openFamily(page, campus(8, 2, { stops: 2, blade: { ...BLADE, height: 6.2 } }));
  await showSections(page);
  await page.locator('[data-plan-nearest="there"]').waitFor();
  expect(await headline(page).textContent()).toMatch(/^Needs \d+ sites, the blade has \d+$/);
  await page
    .getByRole('list', { name: 'Limits that bind' })
    .getByText(/has room for/)
    .waitFor();
  expect(await key(page, 'Take these sections…').isDisabled()).toBe(true);
  await takeScreenshots(page, 'plan-nearest');
  expect(await graveAxeFindings(page)).toEqual([]);
  await key(page, 'Stop by 1 ward').click();
  await expect.poll(() => headline(page).textContent()).toMatch(/^\d+ sites[,;]/);
  await page.locator('[data-plan-nearest]').waitFor({ state: 'detached' });
  await page.getByText('The plan was changed. Undo takes it back.').waitFor();
  await page.keyboard.press('Control+z');
  await page.locator('[data-plan-nearest="there"]').waitFor();
  // Sections may be shared instead: so many fewer that the blade has room.
  await key(page, 'Share these sections').click();
  await page.locator('[data-plan-nearest]').waitFor({ state: 'detached' });
  await drawn(page);
  await refuseDrawings(page);
  await page.getByLabel('Stopped by').selectOption('1 ward');
  await page
    .getByText('These sections are not offered: drawn and judged, they do not do what the plan says.')
    .waitFor();
  expect(await key(page, 'Take these sections…').isDisabled()).toBe(true);
  await key(page, 'Why').click();
  await page.getByRole('alert').getByText('House 1 blank goes into House 2 keyway').waitFor();
  await takeScreenshots(page, 'plan-refused');
  expect(await graveAxeFindings(page)).toEqual([]);
});

/** Lets every drawing from now on come back as one that the judge of fits did not confirm: no real plan does. */
async function refuseDrawings(page: Page): Promise<void> {
  await page.evaluate(() => {
    const words = 'House 1 blank goes into House 2 keyway: it must not, and does by 0.012 mm';
    const pairs = [{ blank: 'house-1', opening: 'house-2', kind: 'goes-in', words }];
    const RealWorker = window.Worker;
    window.Worker = class extends RealWorker {
      override set onmessage(hear: (event: MessageEvent) => void) {
        super.onmessage = (event: MessageEvent) => {
          const isDrawing = event.data.kind === 'result' && event.data.output?.profiles !== undefined;
          const output = { ok: false, why: [], pairs };
          hear(isDrawing ? new MessageEvent('message', { data: { ...event.data, output } }) : event);
        };
      }
    };
  });
}

test('sections are taken as one step, asked about others, and told once the plan has left them', async () => {
  const { page } = app;
  const slot = {
    id: 'old',
    kind: 'opening',
    name: 'Old keyway',
    outline: [
      [0, 0],
      [2, 0],
      [2, 8],
      [0, 8],
    ],
  };
  await openFamily(page, { ...campus(4, 2), profiles: [slot] });
  await showSections(page);
  await drawn(page);
  await page.getByRole('tab', { name: 'Report' }).click();
  // It can be reached though there is nothing to compare yet, and says why.
  await key(page, 'Compare').first().press('Enter');
  await page.getByText('Take these sections first; then each pair can be looked at in Compare.').waitFor();
  await key(page, 'Take these sections…').click();
  await page.getByLabel('Keep the one section that is not from a plan').uncheck();
  await key(page, 'Take 4 keyways and 7 blanks').click();
  await page.getByText(/^4 keyways and 7 blanks were taken/).waitFor();
  const keyways = page.getByRole('listbox', { name: 'Keyways' }).getByRole('option');
  await expect.poll(() => keyways.count()).toBe(4);
  await key(page, 'Compare').first().click();
  await page.locator('[data-drawing]').waitFor();
  await showSections(page);
  await page.getByLabel('Stopped by').selectOption('2 wards');
  await page.getByText(/The planned sections in the family no longer belong to this plan/).waitFor();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect.poll(() => keyways.count()).toBe(1);
});

test('a hundred and twenty-eight areas are planned while the page answers', async () => {
  const { page } = app;
  await openFamily(
    page,
    campus(128, 8, { blade: { ...BLADE, height: 14, cutZone: 2, grooveWidth: 0.4, heightStep: 0.7 } }),
  );
  await page.evaluate(() => {
    const turns = { whilePlanned: 0 };
    Object.assign(window, { turns });
    const RealWorker = window.Worker;
    window.Worker = class extends RealWorker {
      override postMessage(message: { readonly name?: string }) {
        super.postMessage(message);
        if (message.name !== 'solvePlan') return;
        window.Worker = RealWorker;
        const turn = () => {
          if (document.querySelector('[data-plan-sections="found"]')) return;
          turns.whilePlanned++;
          setTimeout(turn);
        };
        setTimeout(turn);
      }
    };
  });
  await showSections(page);
  await page.locator('[data-plan-sections="found"]').waitFor();
  // A page that plans on its own thread has no turn for anything else from when it is asked until it has an answer.
  const turns = () =>
    page.evaluate(() => (window as unknown as { turns: { whilePlanned: number } }).turns.whilePlanned);
  expect(await turns()).toBeGreaterThan(5);
  await expect.poll(() => headline(page).textContent()).toMatch(/^\d+ sites[,;]/);
  const rows = page.getByRole('grid', { name: 'Sections with their wards' }).getByRole('row');
  expect(await rows.count()).toBeLessThan(60);
  await rows.nth(1).click();
  await page.keyboard.press('End');
  await page.getByRole('heading', { name: 'House 1 blank in House 128 keyway' }).waitFor();
  await expect.poll(() => focused(page)).toMatch(/^House 128/);
});

/** The sets of sections that blanks enter, each as one text. */
function enteredSets(blanks: readonly Profile[], openings: readonly Profile[]): Set<string> {
  const prepared = openings.map(({ section, ring }) => ({ section, shape: prepareOpening(ring) }));
  return new Set(
    blanks.map(({ ring }) => {
      const blank = prepareBlank([ring]);
      const entered = prepared.filter(({ shape }) => judgeEntry(shape, blank, 30_000).verdict === 'enters');
      return entered
        .map(({ section }) => section)
        .sort()
        .join(', ');
    }),
  );
}

test('the demo campus planned from its own areas and holders has the verdicts of its drawn family', async () => {
  await app.close();
  app = await openApp({ sameWindow: true });
  const { page } = app;
  await showSections(page);
  await drawn(page);
  await takeScreenshots(page, 'plan-demo');
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.getByRole('tab', { name: 'Report' }).click();
  await takeScreenshots(page, 'plan-demo-dark');
  expect(await graveAxeFindings(page)).toEqual([]);
  await key(page, 'Take these sections…').click();
  await page.getByRole('button', { name: /^Take 10 keyways and \d+ blanks$/ }).click();
  await page.getByText('These sections are in the family.').waitFor();
  await key(page, 'Family ▾').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Save family/ }).click(),
  ]);
  const text = readFileSync(await download.path(), 'utf8');
  const read = readFamily(text);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { family, file } = read.document;
  const of = (planned: boolean, kind: string) =>
    family.profiles.filter((profile, i) => profile.kind === kind && (file.profiles[i].planned === true) === planned);
  const own = enteredSets(of(true, 'blank'), of(true, 'opening'));
  const demo = enteredSets(of(false, 'blank'), of(false, 'opening'));
  expect(demo.size).toBe(15);
  // Those that were kept took other names, since the plan has sections of the same ones.
  const before = [...demo].map((names) => names.replaceAll(', before the plan', ''));
  expect([...own].sort()).toEqual(before.sort());
  expect(new Set(family.profiles.map(({ name }) => name)).size).toBe(family.profiles.length);
});
