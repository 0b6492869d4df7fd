// Two openings and three blanks in millimetres, printed 4 times as large: a bar 2 x 6 in a slot 2.1 x 6.6 goes in with
// (2.1 - 2) / 2 = 0.050 mm, a bar 2.6 wide is (2.6 - 2.1) / 2 = 0.250 mm too deep; a blade is 25 mm long. Heads of files by
// their formats: 3MF is a ZIP package (OPC) with a model in millimetres, STL has 80 bytes, a count and 50 bytes a triangle.
import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { twoFrames } from '../kit/two-frames.ts';
import { openFamily, rectangle } from './compare-page.ts';

const FAMILY = {
  name: 'Plain',
  runningClearance: 0.03,
  profiles: [
    { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
    { id: 'gate', kind: 'opening', name: 'Gate keyway', outline: rectangle(2.8, 6.6) },
    { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) },
    { id: 'wide', kind: 'blank', name: 'Wide blank', outline: rectangle(2.6, 6) },
  ],
};

/** What a software graphics driver says of itself where the picture of a page is taken: no complaint of the page. */
const HARMLESS = /GPU stall due to ReadPixels/;

let app: OpenedApp;

beforeAll(async () => {
  app = await openApp({ sameWindow: true });
  await openBlock(app.page);
});

afterEach(() => {
  expect(app.problems.filter((problem) => !HARMLESS.test(problem))).toEqual([]);
});

afterAll(() => app.close());

async function openBlock(page: Page): Promise<void> {
  await openFamily(page, FAMILY);
  await page.getByRole('button', { name: 'Publish', exact: true }).click();
  await page.getByRole('button', { name: 'Display block', exact: true }).click();
  await built(page);
}

const built = (page: Page) => page.locator('[data-block="found"]').waitFor();
const solids = (page: Page) => page.locator('[data-solids]');
const readings = (page: Page) => page.getByRole('complementary', { name: 'Readings' });
const key = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const pick = (page: Page, name: string) => page.getByRole('option', { name: new RegExp(`^${name}`) }).click();

/** How far the coupon is in, millimetres as printed. */
const inserted = async (page: Page) =>
  Number(await readings(page).locator('[data-inserted]').getAttribute('data-inserted'));

/** The share of a picture's pixels that differ from its ground. */
function inkOf({ data, width, height }: PNG): number {
  const at = 4 * (12 * width + 12);
  let other = 0;
  for (let i = 0; i < data.length; i += 4)
    if ([0, 1, 2].some((k) => Math.abs(data[i + k] - data[at + k]) > 12)) other++;
  return other / (width * height);
}

/** What is drawn on the page, seen from outside: solids are drawn in the frame after a change. */
async function pictureOf(page: Page): Promise<PNG> {
  await twoFrames(page);
  return PNG.sync.read(await solids(page).screenshot());
}

const inked = async (page: Page) => inkOf(await pictureOf(page));

async function bytesOf(page: Page, press: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

test('the set stands on its bed: it turns by hand and keys, parts are named by click and key, settings are told and kept', async () => {
  const { page } = app;
  await page.getByRole('status').getByText('4 parts on 1 bed: 1 block, 2 coupons and 1 board.').waitFor();
  await expect.poll(() => inked(page)).toBeGreaterThan(0.1);
  const says = (words: RegExp) => expect.poll(() => solids(page).getAttribute('aria-label')).toMatch(words);
  await says(/^The display set on its bed, from the front right, 49° above\./);
  await solids(page).focus();
  await page.keyboard.press('3');
  await says(/, from above\./);
  await page.keyboard.press('+');
  await says(/, from above, 1\.2 times as large\./);
  await page.keyboard.press('Home');
  const box = await solids(page).boundingBox();
  if (!box) throw new Error('no picture');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height - 20);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 - 192, box.y + box.height - 20, { steps: 4 });
  await page.mouse.up();
  // 192 of 480 pixels are two fifths of half a turn: 72 degrees on from 23.
  await says(/, from the right, 49° above\./);
  await page.keyboard.press('n');
  await says(/^The display set on its bed, Block pointed out/);
  await readings(page).getByRole('heading', { name: 'Block', exact: true }).waitFor();
  await page.keyboard.press('Escape');
  await says(/^The display set on its bed, from/);
  await readings(page)
    .getByRole('button', { name: /^Wide blank/ })
    .click();
  await says(/Wide blank pointed out/);
  expect(await graveAxeFindings(page)).toEqual([]);

  const gap = page.getByRole('textbox', { name: /^Fitting gap/ });
  await gap.fill('3');
  await page.getByText('Out of range: 0 to 1 mm.').waitFor();
  await gap.fill('0.3');
  await key(page, 'None of Coupons').click();
  await page.getByRole('heading', { name: 'Coupons: 0 of 2' }).waitFor();
  await page.getByRole('status').getByText('2 parts on 1 bed: 1 block and 1 board.').waitFor();
  await key(page, 'None of Openings').click();
  await page
    .getByRole('alert')
    .getByText(/Nothing is chosen/)
    .waitFor();
  await page.getByRole('checkbox', { name: 'Bar blank' }).check();
  await page.getByRole('status').getByText('2 parts on 1 bed: 1 coupon and 1 board.').waitFor();
  expect(await page.evaluate(() => localStorage.getItem('sectionary-display-block'))).toBe('{"gap":0.3}');
  await key(page, 'All as usual').click();
  await page.getByRole('status').getByText('4 parts on 1 bed').waitFor();
  expect(await gap.inputValue()).toBe('0.15');

  // Parts larger than the bed: asked before anything is written, and cured by one key.
  const bed = page.getByRole('textbox', { name: /^Bed, width/ });
  await bed.fill('50');
  await readings(page).getByText('"Board" is larger than the bed').waitFor();
  await built(page);
  await key(page, 'Save 3MF').click();
  const question = page.getByRole('dialog', { name: 'Larger than the bed' });
  const cure = question.getByRole('button', { name: /^Build it at [\d.]+:1$/ });
  const scale = /at ([\d.]+):1/.exec((await cure.textContent()) ?? '')?.[1];
  await cure.click();
  await question.waitFor({ state: 'detached' });
  await expect.poll(() => page.getByRole('textbox', { name: /^Scale/ }).inputValue()).toBe(scale);
  await expect.poll(() => readings(page).getByText('is larger than the bed').count()).toBe(0);
  await key(page, 'All as usual').click();
  await built(page);
});

test('a blank that goes in stops at its shoulder, a blocked one at the face, and what is said fits the pair', async () => {
  const { page } = app;
  await key(page, 'Try it').click();
  await pick(page, 'Bar blank');
  await pick(page, 'Slot keyway');
  const reading = (words: string | RegExp) => readings(page).getByText(words).first().waitFor();
  await reading('Bar blank stands before Slot keyway.');
  await expect.poll(() => inked(page)).toBeGreaterThan(0.1);
  const before = await inked(page);
  await solids(page).focus();
  await page.keyboard.press('Space');
  await reading(/^Bar blank is in up to its shoulder, 25\.00 mm\./);
  expect(await inserted(page)).toBe(25);
  await reading(
    /At 4:1 its least gap becomes 0\.20 mm; the fitting gap adds 0\.15 mm, so the printed pair keeps 0\.35 mm/,
  );
  await expect.poll(() => inked(page)).toBeLessThan(before);
  await page.keyboard.press('o');
  await reading('Bar blank is 23.00 mm of 25.00 mm in.');
  await key(page, 'See through').click();
  expect(await graveAxeFindings(page)).toEqual([]);

  await pick(page, 'Wide blank');
  await reading('Wide blank stands before Slot keyway.');
  const slider = page.getByRole('slider', { name: 'How far Wide blank is in Slot keyway' });
  await slider.focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('PageUp');
  await reading('Wide blank stops at the face of the block: it does not go into Slot keyway.');
  expect(await inserted(page)).toBe(0);
  await reading(/Wide blank does not enter Slot keyway: blocked by .* 0\.250 mm too deep/);
  await reading(/At 4:1 the overlap becomes 1\.00 mm; .* still stopped, by 0\.85 mm/);

  await pick(page, 'Gate keyway');
  await reading('Wide blank stands before Gate keyway.');
  await dragCoupon(page);
  await expect.poll(() => inserted(page)).toBeGreaterThan(0);
});

/** Drags the coupon, which is what is drawn furthest to the front, along its way as it is seen from the right. */
async function dragCoupon(page: Page): Promise<void> {
  await solids(page).focus();
  await page.keyboard.press('4');
  await expect.poll(() => solids(page).getAttribute('aria-label')).toMatch(/from the right, level/);
  const { data, width, height } = await pictureOf(page);
  const box = await solids(page).boundingBox();
  if (!box) throw new Error('no picture');
  // Seen from the right the front is at the left: the first column with the coupon's orange, its middle.
  const isOrange = (x: number, y: number) => {
    const at = 4 * (y * width + x);
    return data[at] > 120 && data[at] - data[at + 2] > 90;
  };
  for (let x = 8; x < width - 8; x++) {
    const rows = Array.from({ length: height - 16 }, (_, i) => i + 8).filter((y) => isOrange(x, y));
    if (rows.length < 20) continue;
    const y = box.y + rows[Math.floor(rows.length / 2)];
    await page.mouse.move(box.x + x + 12, y);
    await page.mouse.down();
    await page.mouse.move(box.x + x + 360, y, { steps: 5 });
    await page.mouse.up();
    return;
  }
  throw new Error('no coupon is seen');
}

test('3MF, STL and the picture are saved, each with the head of its format', async () => {
  const { page } = app;
  await key(page, 'The set').click();
  await expect.poll(() => inked(page)).toBeGreaterThan(0.1);
  const model = await bytesOf(page, () => key(page, 'Save 3MF').click());
  expect(model.name).toBe('plain-display-set.3mf');
  const files = unzipSync(model.bytes);
  expect(Object.keys(files)).toContain('[Content_Types].xml');
  const [, xml] = Object.entries(files).find(([name]) => name.endsWith('.model')) ?? ['', new Uint8Array()];
  const text = new TextDecoder().decode(xml);
  expect(text).toMatch(/<model[^>]* unit="millimeter"/);
  for (const name of ['Block', 'Bar blank', 'Wide blank', 'Board']) expect(text).toContain(`name="${name}"`);
  await page.getByRole('status').getByText('plain-display-set.3mf is in your downloads.').waitFor();

  const saveStl = async (choice: RegExp) => {
    await key(page, 'Save STL ▾').click();
    return bytesOf(page, () => page.getByRole('button', { name: choice }).click());
  };
  const one = await saveStl(/^One file of all parts/);
  expect(one.name).toBe('plain-display-set.stl');
  expect(one.bytes.length).toBe(84 + 50 * one.bytes.readUInt32LE(80));
  expect(one.bytes.subarray(0, 5).toString()).not.toBe('solid');
  const parts = await saveStl(/^One file for each part/);
  const stls = unzipSync(parts.bytes);
  expect(Object.keys(stls).sort()).toEqual(['Bar blank.stl', 'Block.stl', 'Board.stl', 'Wide blank.stl']);
  const triangles = Object.values(stls).map((bytes) => Buffer.from(bytes).readUInt32LE(80));
  expect(triangles.reduce((sum, n) => sum + n)).toBe(one.bytes.readUInt32LE(80));

  const picture = await bytesOf(page, () => key(page, 'Save picture').click());
  const png = PNG.sync.read(picture.bytes);
  expect([png.width, png.height]).toEqual([1920, 1200]);
  expect(inkOf(png)).toBeGreaterThan(0.1);
});

test('without WebGL the parts and checks are told in words, and files are saved all the same', async () => {
  await app.close();
  app = await openApp();
  const { page } = app;
  await page.evaluate(() => {
    const real = HTMLCanvasElement.prototype.getContext;
    Object.assign(HTMLCanvasElement.prototype, {
      getContext(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return kind.startsWith('webgl') ? null : Reflect.apply(real, this, [kind, ...rest]);
      },
    });
  });
  await openBlock(page);
  await page.getByRole('heading', { name: 'This browser draws no solids' }).waitFor();
  await page
    .getByRole('main')
    .getByRole('button', { name: /^Wide blank/ })
    .waitFor();
  expect((await bytesOf(page, () => key(page, 'Save 3MF').click())).bytes.readUInt32LE(0)).toBe(0x04034b50);
  await key(page, 'Save picture').click();
  await page.getByText('There is no picture to save: this browser does not draw solids.').waitFor();
});
