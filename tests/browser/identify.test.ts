// Outside truth: the demo scan is drawn from the outline of the demo family by tests/kit/demo-scan.ts, which shares no code
// with the tracer or the comparison.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { demoProfile } from '../kit/demo-family.ts';
import { SCAN, scanMarks } from '../kit/demo-scan.ts';
import { noisyTrace } from '../kit/noisy-trace.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { typeInto } from './compare-page.ts';
import { sheet } from './draw-page.ts';
import { pickEntrant } from './wall-page.ts';

let app: OpenedApp;

const poll = <Value>(read: () => Value) => expect.poll(read, { timeout: 60_000 });

beforeEach(async () => {
  app = await openApp({ sameWindow: true });
  app.page.setDefaultTimeout(60_000);
  await app.page.locator('button[data-opening]').first().waitFor();
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const list = (page: Page) => page.getByRole('listbox', { name: 'Sections by how close they lie' });
const options = (page: Page) => list(page).getByRole('option');

const inTray = (page: Page, name: string) =>
  page.getByRole('listbox', { name: 'Blanks and tools' }).getByRole('option', { name: new RegExp(`^${name}`) });

async function openSheet(page: Page): Promise<void> {
  await button(page, 'Names').click();
  await button(page, 'Identify').click();
  const empty = page.getByRole('heading', { name: 'What is this section?' });
  const other = button(page, 'Another outline…');
  await empty.or(other).waitFor();
  if (await other.isVisible()) await other.click();
  await empty.waitFor();
}

/** A drawing of outlines, each moved and with an id, in millimetres. */
function drawing(
  ...outlines: readonly { readonly id: string; readonly ring: readonly { x: number; y: number }[] }[]
): string {
  const paths = outlines.map(({ id, ring }, i) => {
    const points = ring.map(({ x, y }) => `${(x / 1e6 + 15 + 12 * i).toFixed(6)},${(25 - y / 1e6).toFixed(6)}`);
    return `<path id="${id}" d="M${points.join('L')}Z"/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="50mm" viewBox="0 0 60 50">${paths.join('')}</svg>`;
}

async function pickFile(page: Page, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button(page, 'Pick a file…').click()]);
  await chooser.setFiles({ name, mimeType: 'image/svg+xml', buffer: Buffer.from(text) });
  await page.getByRole('dialog').waitFor();
}

test('a file: one loop of it is ranked, looked at, tried in the keyways and added, and undo takes it out', async () => {
  const { page } = app;
  await openSheet(page);
  expect(await graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'identify-empty');
  const { ring } = noisyTrace(demoProfile('plover-blank').ring, { seed: 5, error: 50_000, step: 200_000 });
  await pickFile(
    page,
    'drawer.svg',
    drawing({ id: 'found', ring }, { id: 'other', ring: demoProfile('rail-blank').ring }),
  );
  const dialog = page.getByRole('dialog');
  // Two are ticked: which one is meant is asked.
  expect(await dialog.getByRole('button', { name: 'Identify', exact: true }).isDisabled()).toBe(true);
  await dialog.getByText('Tick the one loop to be identified.').waitFor();
  await dialog.getByRole('checkbox', { name: /Other/ }).uncheck();
  await dialog.getByRole('button', { name: 'Identify', exact: true }).click();
  await list(page).waitFor();
  expect(await page.getByLabel('Drawing error, ±').inputValue()).toBe('0.05');
  await page.getByText(/^This almost certainly looks like the tip view of Plover blank: nowhere/).waitFor();
  expect(await options(page).first().textContent()).toContain('almost certainly');
  await page.getByRole('img', { name: /^Found laid on Plover blank: 0\.0\d+ mm apart at most$/ }).waitFor();
  await takeScreenshots(page, 'identify-file');
  expect(await graveAxeFindings(page)).toEqual([]);

  // The keyboard walks the candidates, and the picture follows.
  await list(page).focus();
  await page.keyboard.press('ArrowDown');
  await poll(() => options(page).nth(1).getAttribute('aria-selected')).toBe('true');
  const second = await options(page).nth(1).locator('b').textContent();
  await page.getByRole('img', { name: new RegExp(`^Found laid on ${second}: 0\\.[2-9]\\d+ mm`) }).waitFor();
  await page.keyboard.press('Home');
  await page.getByRole('img', { name: /^Found laid on Plover blank/ }).waitFor();

  await button(page, 'Compare with keyways').click();
  await page.getByText(/within the drawing error of ±0\.050 mm|also if it is drawn 0\.050 mm wrong/).waitFor();
  await page.getByText('Plover blank as the family has it goes into Plover keyway.').waitFor();

  expect(await inTray(page, 'Found').count()).toBe(0);
  await button(page, 'Add to the family…').click();
  await page.getByLabel('Name', { exact: true }).fill('Drawer find');
  await button(page, 'Add').click();
  await page.getByText('Added to the family as Drawer find. Undo takes it out again.').waitFor();
  await inTray(page, 'Drawer find').waitFor();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await inTray(page, 'Drawer find').waitFor({ state: 'detached' });
});

test('the outline in hand in Draw is compared with all others, and two names of one outline are one line', async () => {
  const { page } = app;
  await pickEntrant(page, 'Knot blank');
  await button(page, 'Draw').click();
  await sheet(page).waitFor();
  await button(page, 'Section ▾').click();
  await button(page, /^Identify/).click();
  await page.getByText(/^This is like no other of the family: it is up to/).waitFor();
  expect(await options(page).first().textContent()).toContain('nearest, but not alike');
  for (const option of await options(page).all()) expect(await option.textContent()).not.toMatch(/^Knot blank/);
  await page.getByLabel('Compare with').selectOption({ label: 'keyways' });
  await poll(() => options(page).first().locator('b').textContent()).toBe('Knot keyway');
  await button(page, 'inch').click();
  await poll(() => options(page).first().textContent()).toMatch(/thou at most, mean .* thou, .* in²/);
  await button(page, 'mm').click();
  await button(page, 'Open it in Draw').click();
  await sheet(page).waitFor();
  await page.getByRole('heading', { level: 1, name: 'Knot blank' }).waitFor();

  // Almost certain, with nothing apart.
  await openSheet(page);
  await page.getByLabel('Section to be compared with all others').selectOption({ label: 'Heron blank, six chambers' });
  await button(page, 'Compare it').click();
  await page.getByText(/^This is almost certainly Heron blank, five chambers: it lies on it everywhere/).waitFor();
  await page
    .getByRole('img', { name: 'Heron blank, six chambers lies on Heron blank, five chambers everywhere' })
    .waitFor();
});

test('a traced scan is what was scanned, its keyways too, in the dark as in a small window', async () => {
  const { page } = app;
  await pickEntrant(page, 'Rail blank');
  await openSheet(page);
  await button(page, 'Go to Draw').click();
  await page.getByText('Open the picture of the unknown here.').waitFor();
  // The key is in sight, wherever the readings were before.
  const inSight = (key: Element) => key.getBoundingClientRect().bottom <= innerHeight;
  await poll(() => button(page, 'Trace a picture…').evaluate(inSight)).toBe(true);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button(page, 'Trace a picture…').click()]);
  await chooser.setFiles({ name: 'sawn face.png', mimeType: 'image/png', buffer: readFileSync(SCAN.file) });
  await page.getByText('840 × 800 pixels').waitFor();
  const { bar } = scanMarks();
  await openStep(page, /^1 Scale/);
  await button(page, 'Type them').click();
  for (const [letter, { x, y }] of [['A', bar[0]] as const, ['B', bar[1]] as const]) {
    await typeInto(page, new RegExp(`^${letter} from left`), x.toFixed(2));
    await typeInto(page, new RegExp(`^${letter} from top`), y.toFixed(2));
  }
  await openStep(page, /^4 Automatic outline/);
  await page.locator('[data-tracing="done"]').filter({ hasText: 'found' }).waitFor();
  await button(page, 'Identify').click();
  await page.getByText(/^This is almost certainly Knot blank: nowhere/).waitFor();
  await page.getByText('traced from a picture').waitFor();
  await page.emulateMedia({ colorScheme: 'dark' });
  await poll(() => graveAxeFindings(page)).toEqual([]);
  await takeScreenshots(page, 'identify-trace-dark');
  await button(page, 'Another outline…').click();
  await page.getByRole('heading', { name: 'What is this section?' }).waitFor();
});

/** Opens a step of the picture panel. */
async function openStep(page: Page, name: RegExp): Promise<void> {
  const key = page.getByRole('button', { name });
  if ((await key.getAttribute('aria-expanded')) !== 'true') await key.click();
  await poll(() => key.getAttribute('aria-expanded')).toBe('true');
}
