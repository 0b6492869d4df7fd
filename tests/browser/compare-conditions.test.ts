// Expected answers follow by hand from the gaps and tolerances that profiles-demo/README.md states: Ruff 45 um with
// 20 + 30 um, Heron 55 um with 20 + 20 um.
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import {
  answer,
  drawing,
  numberIn,
  openFamily,
  openPair,
  rectangle,
  sentence,
  typeInto,
  verdict,
} from './compare-page.ts';

/** What these tests look at; they all open the one window. */
const PARTS = partOfDemo('heron-keyway', 'ruff-keyway', 'ruff-blank', 'reed-group-blank');

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: PARTS });
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

test('tolerances of 20 + 30 um against a gap of 45 depend on the parts; 10 + 30 always go in', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  expect(await answer(page)).toBe('depends on the parts');
  await page.getByText(/The tolerances add up to 0\.050\smm, more than the gap of 0\.04[45]\smm\./).waitFor();
  await typeInto(page, /^Blank tolerance/, '0,010');
  expect(await answer(page)).toBe('always enters');
  await page.getByText(/Even the fullest blank in the narrowest keyway keeps 0\.00[45]\smm\./).waitFor();
  await page.getByRole('button', { name: 'As drawn' }).click();
  expect(await answer(page)).toBe('depends on the parts');
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0.02);
});

test('where it depends, parts are drawn: by hand 99.5 % go together, in a corner of 5 um of bands of 40 and 60', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  // 1 - 5 x 5 / 2 / (40 x 60) = 0.9948; ten thousand draws scatter by less than 0.2 %.
  await page.getByText(/Of 10,000 pairs drawn evenly from their bands 99\.[3-7] % go together/).waitFor();
  await typeInto(page, /^Blank tolerance/, '0,010');
  expect(await answer(page)).toBe('always enters');
  await page.getByText(/pairs drawn evenly/).waitFor({ state: 'detached' });
});

test('the slider turns "always" into "depends" where the bands pass the gap, one press of a key at a time', async () => {
  const { page } = app;
  await openPair(page, 'Reed group blank', 'Heron keyway');
  const slider = page.getByRole('slider', { name: /^Blank tolerance/ });
  await slider.focus();
  for (let i = 0; i < 14; i++) await slider.press('ArrowRight');
  // 34 + 20 = 54 um, the gap is 54.8.
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0.034);
  expect(await answer(page)).toBe('always enters');
  await slider.press('ArrowRight');
  expect(await answer(page)).toBe('depends on the parts');
  expect(await verdict(page)).toMatch(/enters\+0\.055 mm$/);
  await slider.press('Home');
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0);
  expect(await answer(page)).toBe('always enters');
});

test('the slider follows the pointer', async () => {
  const { page } = app;
  await openPair(page, 'Reed group blank', 'Heron keyway');
  const box = await page.getByRole('slider', { name: /^Keyway tolerance/ }).boundingBox();
  if (!box) throw new Error('The slider has no box.');
  await page.mouse.move(box.x + box.width * 0.25, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.8, box.y + box.height / 2, { steps: 8 });
  expect(await answer(page)).toBe('depends on the parts');
  await page.mouse.up();
  const set = await numberIn(page, /^Keyway tolerance/);
  expect(set).toBeGreaterThan(0.06);
  expect(set).toBeLessThan(0.1);
});

test('a blank 0.22 mm too deep never enters with bands of 0.20, and may with bands well past that', async () => {
  const { page } = app;
  await openPair(page, 'Reed group blank', 'Ruff keyway');
  expect(await answer(page)).toBe('never enters');
  await typeInto(page, /^Blank tolerance/, '0.1');
  await typeInto(page, /^Keyway tolerance/, '0.1');
  expect(await answer(page)).toBe('never enters');
  // The keyway grown by 0.22 takes the blank; split between both parts it takes more, since a lean blank stays sharp.
  await typeInto(page, /^Blank tolerance/, '0.15');
  await typeInto(page, /^Keyway tolerance/, '0.15');
  expect(await answer(page)).toBe('depends on the parts');
});

test('a published grade for the thickness of the blade: IT9 gives half of 25 um, ISO 2768 m gives 100', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  const presets = page.getByRole('combobox', { name: /^Blank tolerance/ });
  await presets.selectOption({ label: 'ISO 286 IT9: ±0.013 mm' });
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0.0125);
  // 12.5 + 30 um are less than the gap of 45.
  expect(await answer(page)).toBe('always enters');
  await presets.selectOption({ value: 'ISO 2768 m' });
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0.1);
  expect(await answer(page)).toBe('depends on the parts');
  await presets.selectOption('file');
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0.02);
});

test('wear of each part widens the gap by twice as much, and lets a blocked blank in, not before half its interference', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  await typeInto(page, /^Wear/, '0.01');
  expect(await verdict(page)).toMatch(/enters\+0\.06[45] mm$/);
  expect(await sentence(page)).toMatch(/^Worn by 0\.010 mm: Ruff blank enters/);
  expect(await answer(page)).toBe('always enters');
  await page.getByRole('option', { name: 'Reed group blank' }).click();
  await typeInto(page, /^Wear/, '0.105');
  expect(await verdict(page)).toMatch(/blocked/);
  await typeInto(page, /^Wear/, '0.15');
  expect(await verdict(page)).toMatch(/(enters|tight)/);
});

test('a number that is none, or out of range, is refused in words and changes nothing', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  await typeInto(page, /^Blank tolerance/, 'thin');
  await page.getByRole('alert').filter({ hasText: 'Type a number from 0 to 0.5.' }).waitFor();
  await typeInto(page, /^Blank tolerance/, '-0.01');
  await page.getByRole('alert').filter({ hasText: 'Type a number from 0 to 0.5.' }).waitFor();
  expect(await answer(page)).toBe('depends on the parts');
  await page.keyboard.press('Escape');
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0.02);
  expect(await drawing(page).isVisible()).toBe(true);
});

test('As drawn also takes away what was typed and refused', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  const wear = page.getByRole('textbox', { name: /^Wear of each part/ });
  await wear.fill('9');
  await wear.press('Enter');
  await page.getByText(/^Type a number from 0 to/).waitFor();
  await page.getByRole('button', { name: 'As drawn' }).click();
  await page.getByText(/^Type a number from 0 to/).waitFor({ state: 'detached' });
  expect(await wear.inputValue()).toBe('0.000');
  // Also where the field has not said so yet: it is left by the press itself.
  await wear.fill('nonsense');
  await page.getByRole('button', { name: 'As drawn' }).click();
  expect(await wear.inputValue()).toBe('0.000');
  await expect.poll(() => page.getByText(/^Type a number from 0 to/).count()).toBe(0);
});

test('in inch units tolerances are thousandths', async () => {
  const { page } = app;
  await openPair(page, 'Ruff blank', 'Ruff keyway');
  await page.getByRole('button', { name: 'inch' }).click();
  // The file's 0.020 mm are 0.787 thou, written as the list beside it has them.
  const field = page.getByRole('textbox', { name: /^Blank tolerance ±, thou/ });
  expect(await field.inputValue()).toBe('0.8');
  // 0.4 thou are 10.16 um; with 30 um less than the gap of 45.
  await typeInto(page, /^Blank tolerance ±, thou/, '0.4 thou');
  expect(await answer(page)).toBe('always enters');
  await page.getByRole('button', { name: 'mm', exact: true }).click();
  expect(await numberIn(page, /^Blank tolerance/)).toBe(0.01016);
});

test('a blank that is blocked upright goes into a leaning slot within the tilt limit of the file', async () => {
  const { page } = app;
  // A slot 1.1 x 6.1 mm that leans by 2 degrees; a strip 1 x 6 keeps 0.05 mm in it only when it leans too.
  await openFamily(page, {
    name: 'Leaning',
    runningClearance: 0.04,
    tiltLimitDeg: 2.5,
    profiles: [
      { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(1.1, 6.1, 0, 0, 2) },
      { id: 'strip', kind: 'tool', name: 'Strip tool', outline: rectangle(1, 6) },
    ],
  });
  await openPair(page, 'Strip tool', 'Slot keyway');
  expect(await verdict(page)).toMatch(/blocked/);
  await page.getByRole('button', { name: 'as the file says, 2.5°' }).click();
  await expect.poll(() => verdict(page)).toMatch(/enters\+0\.0(50|49) mm$/);
  expect(await sentence(page)).toMatch(/^Tilted up to 2\.5°: Strip tool enters/);
  await typeInto(page, /^Tilt/, '1');
  // 1 cos 1° + 6 sin 1° = 1.1046 mm is more than 1.1.
  await expect.poll(() => verdict(page)).toMatch(/blocked/);
  await page.getByRole('button', { name: 'As drawn' }).click();
  expect(await verdict(page)).toMatch(/blocked/);
  expect(await graveAxeFindings(page)).toEqual([]);
});
