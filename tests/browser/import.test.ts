import { readdirSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import {
  add,
  askedAbout,
  dropFiles,
  fileAt,
  type Incoming,
  importThroughMenu,
  listedLoops,
  listedSizes,
  pasteText,
  refused,
  savedProfiles,
} from './import-page.ts';
import { pickedEntrant } from './wall-page.ts';

const SAMPLES = 'profiles-demo/imports';
const CLIPBOARD = { permissions: ['clipboard-read', 'clipboard-write'] };

const svg = (body: string, head = 'width="40mm" height="20mm" viewBox="0 0 40 20"'): Incoming => ({
  name: 'sections.svg',
  content: `<svg xmlns="http://www.w3.org/2000/svg" ${head}>${body}</svg>`,
});
const BLADE = '<path id="teal-blank" d="M2 10h2v-4l-.5 -.2v-1l.5-.2v-2.6h-2z"/>';
const MIXED = svg(
  `${BLADE}<path id="gapped" d="M10 2h2v8h-2v-7.9"/><path id="crossing" d="M20 2l2 8h-2l2-8z"/>` +
    '<rect id="holder" x="30" y="2" width="4" height="9"/><circle id="hole" cx="32" cy="6" r="1"/>',
);

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, context: CLIPBOARD, family: partOfDemo('heron-keyway', 'heron-blank-5') });
  await app.page.locator('button[data-opening]').first().waitFor();
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

describe('the samples', () => {
  // Tables of claims are no drawings: tests/browser/claims.test.ts brings them in.
  const isDrawing = (file: string) => !/\.(md|json|png|jpe?g|webp)$/.test(file) && !file.startsWith('claims-');
  for (const name of readdirSync(SAMPLES).filter(isDrawing)) {
    test(`${name} comes in by menu, by drop and by paste, each time the same`, async () => {
      const { page } = app;
      const sample = fileAt(`${SAMPLES}/${name}`);
      const seen: string[][] = [];
      const ways = [
        () => importThroughMenu(page, sample),
        () => dropFiles(page, sample),
        () => pasteText(page, String(sample.content)),
      ];
      for (const comeIn of ways) {
        await comeIn();
        const dialog = await askedAbout(page);
        expect(await dialog.getByText(/will be added/).textContent()).toMatch(/^[1-9]\d* sections? will be added\.$/);
        seen.push((await listedLoops(dialog)).map((line) => line.replace(/^.*?\| /, '')));
        await page.keyboard.press('Escape');
        await dialog.waitFor({ state: 'detached' });
      }
      expect(seen[1]).toEqual(seen[0]);
      expect(seen[2]).toEqual(seen[0]);
    }, 180_000);
  }
});

test('what is taken is added as one step, picked and shown in the Draw view', async () => {
  const { page } = app;
  await dropFiles(page, MIXED);
  const dialog = await askedAbout(page);
  const lines = await listedLoops(dialog);
  expect(lines[0]).toContain('2.00 × 8.00 mm, 8 corners');
  expect(lines.find((line) => line.includes('gapped'))).toContain('its gap of 0.10 mm is closed');
  const gapless = dialog.getByRole('checkbox', { name: /Take number \d+, Gapped/ });
  expect(await gapless.isChecked()).toBe(false);
  expect(await dialog.getByRole('checkbox', { name: /Crossing/ }).isDisabled()).toBe(true);
  expect(lines.find((line) => line.includes('crossing'))).toContain(
    'Crosses itself, 1.00 mm from its left and 4.00 mm up',
  );
  expect(lines.find((line) => line.startsWith('5 hole'))).toContain('A hole cannot be kept');
  await gapless.check();
  await dialog.getByText('3 sections will be added.').waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await add(dialog);
  await page.getByRole('button', { name: 'Draw', exact: true, pressed: undefined }).waitFor();
  expect(await page.getByRole('button', { name: 'Draw', exact: true }).getAttribute('aria-current')).toBe('page');
  const added = (await savedProfiles(page)).slice(-3);
  expect(added.map(({ name, section, kind }) => [name, section, kind])).toEqual([
    ['Teal blank', 'Teal', 'blank'],
    ['Gapped', undefined, 'blank'],
    ['Holder', undefined, 'blank'],
  ]);
  expect(added[0].outline).toEqual([
    [0, 0],
    [2, 0],
    [2, 4],
    [1.5, 4.2],
    [1.5, 5.2],
    [2, 5.4],
    [2, 8],
    [0, 8],
  ]);
  await page.getByRole('button', { name: 'Undo' }).click();
  const left = await savedProfiles(page);
  expect(left.some(({ name }) => ['Teal blank', 'Holder', 'Gapped'].includes(name))).toBe(false);
});

test('seen from the tip, turned and as a keyway it is taken so', async () => {
  const { page } = app;
  await dropFiles(page, svg(BLADE));
  const dialog = await askedAbout(page);
  await dialog.getByRole('button', { name: 'Tip' }).click();
  await dialog.getByRole('button', { name: '180°' }).click();
  await dialog.getByRole('button', { name: 'Keyways' }).click();
  await dialog.getByRole('textbox', { name: 'Name of number 1' }).fill('Garganey keyway');
  await dialog.getByRole('combobox', { name: 'Section of number 1' }).fill('Garganey');
  await add(dialog);
  const added = (await savedProfiles(page)).at(-1);
  expect(added).toMatchObject({ name: 'Garganey keyway', kind: 'opening', section: 'Garganey' });
  // Mirrored and turned by half a turn is turned over about a level line: heights are counted from the other end.
  const key = (points: number[][] = []) => points.map((p) => p.join()).sort();
  expect(key(added?.outline)).toEqual(
    key([
      [0, 8],
      [2, 8],
      [2, 4],
      [1.5, 3.8],
      [1.5, 2.8],
      [2, 2.6],
      [2, 0],
      [0, 0],
    ]),
  );
});

test('a drawing without a scale is doubted; the likely one is offered, or a height is typed', async () => {
  const { page } = app;
  await dropFiles(page, svg(BLADE, 'viewBox="0 0 40 20"'));
  const dialog = await askedAbout(page);
  expect(await listedSizes(dialog)).toEqual([[0.53, 2.12]]);
  await dialog.getByText('Look at the scale.').waitFor();
  await dialog.getByRole('button', { name: /^Read it in millimetres/ }).click();
  await dialog.getByText('2.00 × 8.00 mm').waitFor();
  await expect.poll(() => dialog.getByText('Look at the scale.').count()).toBe(0);
  const height = dialog.getByRole('textbox', { name: /^Height of number 1/ });
  await height.fill('8.4');
  await height.press('Enter');
  await dialog.getByText('2.10 × 8.40 mm').waitFor();
  await add(dialog);
  const outline = (await savedProfiles(page)).at(-1)?.outline ?? [];
  expect(Math.max(...outline.map(([, y]) => y))).toBe(8.4);
});

test('one loop can replace the outline of the picked profile', async () => {
  const { page } = app;
  const before = await savedProfiles(page);
  await dropFiles(page, svg(BLADE));
  const dialog = await askedAbout(page);
  await dialog.getByRole('checkbox', { name: /^Replace the outline of/ }).check();
  await dialog.getByText('The outline of Heron blank, five chambers will be replaced.').waitFor();
  await dialog.getByRole('button', { name: 'Replace outline' }).click();
  await dialog.waitFor({ state: 'detached' });
  const after = await savedProfiles(page);
  expect(after.map(({ id }) => id)).toEqual(before.map(({ id }) => id));
  expect(after.find(({ name }) => name === 'Heron blank, five chambers')?.outline).toHaveLength(8);
});

test('the list can be worked by the keyboard alone, and the keys of the wall rest meanwhile', async () => {
  const { page } = app;
  const picked = await pickedEntrant(page);
  await pasteText(page, 'x,y\n0,0\n2,0\n2,8\n0,8\n');
  const dialog = await askedAbout(page);
  const tick = dialog.getByRole('checkbox', { name: /^Take number 1/ });
  await page.waitForFunction(() => document.activeElement?.getAttribute('type') === 'checkbox');
  await page.keyboard.press('Space');
  expect(await tick.isChecked()).toBe(false);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('Typed name');
  expect(await pickedEntrant(page)).toBe(picked);
  // The focus stays in the sheet however far it is walked.
  for (let i = 0; i < 30; i++) {
    await page.keyboard.press('Tab');
    const outside = await page.evaluate(
      () => document.activeElement !== document.body && !document.activeElement?.closest('dialog'),
    );
    expect(outside).toBe(false);
  }
  await dialog.getByRole('button', { name: 'Add 1 section' }).press('Enter');
  await dialog.waitFor({ state: 'detached' });
  expect((await savedProfiles(page)).at(-1)?.name).toBe('Typed name');
});

test('several files come one after another', async () => {
  const { page } = app;
  const points: Incoming = { name: 'ruff.csv', content: 'x,y\n0,0\n2,0\n2,8\n0,8\n' };
  await dropFiles(page, { ...svg(BLADE), name: 'first.svg' }, points, { name: 'letter.txt', content: 'Dear Anna,' });
  const first = page.getByRole('dialog', { name: 'Import first.svg' });
  await first.getByText('2 more files to come').waitFor();
  await first.getByRole('button', { name: 'Cancel' }).click();
  const second = page.getByRole('dialog', { name: 'Import ruff.csv' });
  await second.waitFor();
  await add(second);
  await (await refused(page)).getByText('letter.txt was not opened').waitFor();
});

test('the clipboard comes in by the menu; where it may not be read, that is told', async () => {
  const { page } = app;
  await page.evaluate((text) => navigator.clipboard.writeText(text), String(svg(BLADE).content));
  const paste = async () => {
    await page.getByRole('button', { name: 'Family ▾' }).click();
    await page.getByRole('button', { name: /^Paste from clipboard/ }).click();
  };
  await paste();
  const dialog = await askedAbout(page);
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
  await page.evaluate(() => {
    navigator.clipboard.readText = () => Promise.reject(new DOMException('denied', 'NotAllowedError'));
  });
  await paste();
  await (await refused(page)).getByText('the browser did not allow it').waitFor();
});

test('a paste into a field stays in the field', async () => {
  const { page } = app;
  await dropFiles(page, svg(BLADE));
  const dialog = await askedAbout(page);
  const name = dialog.getByRole('textbox', { name: 'Name of number 1' });
  await name.fill('');
  await page.evaluate(() => navigator.clipboard.writeText('0,0 2,0 2,8'));
  await page.keyboard.press('Control+V');
  await expect.poll(() => name.inputValue()).toBe('0,0 2,0 2,8');
  await expect.poll(() => page.getByRole('dialog').count()).toBe(1);
});
