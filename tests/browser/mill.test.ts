// Five square grooves and a keyway made for them by hand with a gap of 0.05 mm: thickness and height 0.1 mm more, each
// ward 0.1 mm higher than its groove and 0.1 mm narrower. So the blank goes in with a clearance of 0.050 mm, no more.
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { counts, dragOver, savedFamily, sheet, showInDraw, told } from './draw-page.ts';
import { textOf } from './wall-page.ts';

let app: OpenedApp;

type Side = 'left' | 'right';

const GROOVES: { side: Side; bottom: number; width: number; depth: number }[] = [
  { side: 'left', bottom: 1, width: 0.8, depth: 0.5 },
  { side: 'left', bottom: 3, width: 0.7, depth: 0.6 },
  { side: 'left', bottom: 5, width: 0.6, depth: 0.4 },
  { side: 'right', bottom: 2, width: 0.8, depth: 0.6 },
  { side: 'right', bottom: 4.2, width: 0.8, depth: 0.5 },
];

const WARDS = GROOVES.map((g) => ({
  ...g,
  bottom: Number((g.bottom + 0.1).toFixed(3)),
  width: Number((g.width - 0.1).toFixed(3)),
}));

const KEYWAY = {
  id: 'teal-keyway',
  kind: 'opening',
  section: 'Teal',
  name: 'Teal keyway',
  milled: { thickness: 2.1, height: 8.5, grooves: WARDS },
};

const blank = (grooves: object[]) => ({
  id: 'teal-blank',
  kind: 'blank',
  section: 'Teal',
  name: 'Teal blank',
  milled: { thickness: 2, height: 8.4, grooves },
});

const family = (grooves: object[]) => ({
  name: 'Polderwick College, milling',
  runningClearance: 0.03,
  profiles: [KEYWAY, blank(grooves)],
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** Opens the app with a family, and one of its sections in the Draw view to be milled. */
async function openMill(of: object, list = 'Blanks and tools', section = 'Teal blank'): Promise<Page> {
  app = await openApp({ sameWindow: true, family: of });
  const { page } = app;
  await showInDraw(page, list, section);
  await page.getByRole('button', { name: 'Mill', exact: true }).click();
  return page;
}

const field = (page: Page, name: string | RegExp) => page.getByRole('textbox', { name });

/** Types into a field by keyboard alone and takes it with Enter. */
async function typeIn(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Waits until the line over the sheet says that the pair goes together with so much clearance. */
async function margin(page: Page, other: string, words: string): Promise<void> {
  await page.locator('p[data-verdict="enters"]').filter({ hasText: other }).filter({ hasText: words }).waitFor();
}

/** Presses a key of the form by keyboard alone. */
async function pressKey(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).focus();
  await page.keyboard.press('Enter');
}

async function savedMilled(page: Page, id: string): Promise<unknown> {
  const { profiles } = (await savedFamily(page)) as unknown as { profiles: { id: string; milled?: unknown }[] };
  return profiles.find((profile) => profile.id === id)?.milled;
}

test('a five-groove blank is milled from a plain blade by keyboard and pointer, judged as it goes, and saved', async () => {
  const page = await openMill(family([]));
  await counts(page, 'Goes into 0 of 1 keyway');
  for (const [i, groove] of GROOVES.slice(0, 4).entries()) {
    await pressKey(page, `Add groove on the ${groove.side}`);
    // The depth first: the place may be one where only so shallow a groove leaves a web.
    await typeIn(page, `Groove ${i + 1} depth, mm`, String(groove.depth));
    await typeIn(page, `Groove ${i + 1} width, mm`, String(groove.width));
    await typeIn(page, `Groove ${i + 1} bottom, mm`, String(groove.bottom));
  }
  await counts(page, 'Goes into 0 of 1 keyway');
  // The fifth comes into the middle of what is free of the right face, 2.8 to 8.4: 5.25 to 5.95, 0.6 deep.
  await page.getByRole('button', { name: 'Add groove on the right' }).click();
  const says = (name: string, text: string) =>
    expect.poll(() => field(page, `Groove 5 ${name}, mm`).inputValue()).toBe(text);
  await says('bottom', '5.25');
  await dragOver(page, [2, 5.6], [2, 5], [2, 4.55]);
  await says('bottom', '4.20');
  await dragOver(page, [2, 4.9], [2, 5]);
  await says('width', '0.80');
  await dragOver(page, [1.4, 4.6], [1.5, 4.6]);
  await says('depth', '0.50');
  await counts(page, 'Goes into 1 of 1 keyway');
  await margin(page, 'Teal keyway', '+0.050 mm');
  expect(await savedMilled(page, 'teal-blank')).toEqual(blank(GROOVES).milled);
  // A drag is one step: the depth is as it came.
  await page.keyboard.press('Control+z');
  await says('depth', '0.60');
});

test('the keyway of the blank is made by a clearance, picked, judged with it, and undone as one step', async () => {
  const page = await openMill(family(GROOVES));
  await counts(page, 'Goes into 1 of 1 keyway');
  await page.getByRole('button', { name: 'Make the keyway of this blank…' }).click();
  expect(await field(page, 'Clearance all round, mm').inputValue()).toBe('0.03');
  await typeIn(page, 'Clearance all round, mm', '0.05');
  await page.getByRole('button', { name: 'Add the keyway' }).click();
  await page.getByRole('heading', { level: 1, name: 'Teal keyway (2)' }).waitFor();
  await counts(page, 'Takes 1 of 1 blank');
  await margin(page, 'Teal blank', '+0.050 mm');
  expect(await savedMilled(page, 'teal-keyway-2')).toEqual(KEYWAY.milled);
  await page.keyboard.press('Control+z');
  await page.getByRole('option', { name: 'Teal keyway (2)' }).waitFor({ state: 'detached' });
});

test('what cannot be milled is named at its field and the last sound blade stays; a thin web is told', async () => {
  const page = await openMill(family(GROOVES));
  await page.getByRole('button', { name: '1 Left groove' }).click();
  await typeIn(page, 'Groove 1 depth, mm', '2.4');
  const fault = page.getByRole('alert').filter({ hasText: 'goes through the blade' });
  expect(await textOf(fault)).toBe(
    'The groove goes through the blade: depth 2.40 mm, thickness 2.00 mm. Make the groove shallower than 2.00 mm.',
  );
  expect(await field(page, 'Groove 1 depth, mm').getAttribute('aria-invalid')).toBe('true');
  await counts(page, 'Goes into 1 of 1 keyway');
  await page.getByRole('button', { name: 'Back to the sound one' }).click();
  expect(await field(page, 'Groove 1 depth, mm').inputValue()).toBe('0.50');
  const web = page.getByRole('region', { name: 'Web' }).getByRole('status');
  // Grooves 2 (3 to 3.7, 0.6 deep) and 4 (2 to 2.8, 0.6) stand one above the other: level cuts leave 1.4, aslant
  // from (0.6, 3) to (1.4, 2.8) it is the root of 0.8^2 + 0.2^2, 0.825 mm.
  expect(await textOf(web)).toMatch(/^0\.825 mm at its thinnest/);
  await typeIn(page, 'Least web of the family, 0 for none, mm', '0.9');
  await web.filter({ hasText: 'Too thin' }).waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'inch' }).click();
  expect(await textOf(web)).toMatch(/0\.03248 in at its thinnest.*the least is 0\.03543 in/);
});

test('the chosen groove is moved by keys on the sheet and told', async () => {
  const page = await openMill(family(GROOVES));
  await sheet(page).focus();
  await page.keyboard.press(']');
  await told(page, '1 Left groove, 1.00–1.80, 0.50 deep');
  await page.keyboard.press('Shift+ArrowUp');
  await told(page, '1 Left groove, 1.10–1.90, 0.50 deep');
  // A key that is held is pressed again by the keyboard: one step of undo.
  for (let repeat = 0; repeat < 3; repeat++) await page.keyboard.down('ArrowRight');
  await told(page, '1 Left groove, 1.10–1.90, 0.53 deep');
  await page.keyboard.up('ArrowRight');
  await page.keyboard.press('Control+z');
  await expect.poll(() => field(page, 'Groove 1 depth, mm').inputValue()).toBe('0.50');
  await page.keyboard.press('Delete');
  await told(page, 'The groove was removed.');
  await expect.poll(() => page.getByRole('button', { name: /Left groove/ }).count()).toBe(2);
});

test('a drawn outline is read as grooves, what they do not explain is told, and it becomes milled as one step', async () => {
  // A blade with one groove, and a nick of 0.03 mm standing out of its right face.
  const outline = [
    [1, 1],
    [3, 1],
    [3, 4.05],
    [3.03, 4.1],
    [3, 4.15],
    [3, 9],
    [1, 9],
    [1, 5],
    [1.6, 5],
    [1.6, 4],
    [1, 4],
  ];
  const drawn = {
    name: 'Drawn',
    runningClearance: 0.03,
    profiles: [KEYWAY, { id: 'smew-blank', kind: 'blank', name: 'Smew blank', outline }],
  };
  const page = await openMill(drawn, 'Blanks and tools', 'Smew blank');
  await page.getByRole('button', { name: 'Read as grooves' }).click();
  await told(page, 'A blade 2.00 mm thick, 8.00 mm high, a square back, 1 groove or step.');
  expect(await textOf(page.getByRole('listitem').filter({ hasText: 'more at' }))).toBe(
    '0.030 mm more at 3.1 mm on the right',
  );
  await page.getByRole('button', { name: 'Leave as drawn' }).click();
  await page.getByRole('button', { name: 'Use the grooves' }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Read as grooves' }).click();
  await page.getByRole('button', { name: 'Use the grooves' }).click();
  await page.getByRole('button', { name: '1 Left groove' }).waitFor();
  expect(await savedMilled(page, 'smew-blank')).toEqual({
    thickness: 2,
    height: 8,
    grooves: [{ side: 'left', bottom: 3, width: 1, depth: 0.6 }],
  });
  await page.keyboard.press('Control+z');
  await page.getByRole('button', { name: 'Read as grooves' }).waitFor();
});

test('a circle is no milled blade, and that is said', async () => {
  const outline = Array.from({ length: 72 }, (_, i) => [
    2 + 2 * Math.cos((i * Math.PI) / 36),
    2 + 2 * Math.sin((i * Math.PI) / 36),
  ]);
  const round = { id: 'rod', kind: 'tool', name: 'Rod', outline };
  const page = await openMill(
    { name: 'Round', runningClearance: 0.03, profiles: [KEYWAY, round] },
    'Blanks and tools',
    'Rod',
  );
  await page.getByRole('button', { name: 'Read as grooves' }).click();
  await told(page, 'No milled blade');
  await expect.poll(() => page.getByRole('button', { name: 'Use the grooves' }).count()).toBe(0);
});
