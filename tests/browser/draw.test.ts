// A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm keeps (2.1 - 2) / 2 = 0.050 mm to either side; wider than 2.1 mm it is blocked.
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { rectangle } from './compare-page.ts';
import {
  counts,
  dragOver,
  onSheet,
  openInDraw,
  pointAt,
  savedFamily,
  savedOutline,
  sheet,
  showInDraw,
  told,
} from './draw-page.ts';

let app: OpenedApp;

const BAR = rectangle(2, 6);
const SLOT = rectangle(2.1, 6.6);
const FAMILY = {
  name: 'Plain',
  runningClearance: 0.03,
  profiles: [
    { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: SLOT },
    { id: 'bar', kind: 'blank', name: 'Bar blank', outline: BAR },
  ],
};

const openBar = (page: Page) => showInDraw(page, 'Blanks and tools', 'Bar blank');

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: FAMILY });
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

/** One step of undo, and whether there is another one. */
async function undoOnce(page: Page): Promise<void> {
  await page.keyboard.press('Control+z');
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
}

/** Undoes whatever there is: presses of keys are one step only within a second, and a busy machine takes longer. */
async function undoAll(page: Page): Promise<void> {
  const key = page.getByRole('button', { name: 'Undo', exact: true });
  for (let n = 0; n < 5 && !(await key.isDisabled()); n++) await page.keyboard.press('Control+z');
}

test('a keyway of twelve vertices is drawn by pointer, snapped to the grid, and saved to the last digit', async () => {
  const { page } = app;
  await showInDraw(page, 'Keyways', 'Slot keyway');
  await counts(page, 'Takes 1 of 1 blank');
  await page.getByRole('combobox', { name: 'Step of the grid' }).selectOption({ label: '0.25 mm' });
  await page.getByRole('button', { name: 'Section ▾' }).click();
  await page.getByRole('button', { name: /^New section/ }).click();
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Teal keyway');
  await page.getByRole('combobox', { name: 'Begin with' }).selectOption({ label: 'the pen, vertex by vertex' });
  await page.getByRole('button', { name: 'Add section' }).click();
  await page.getByRole('heading', { name: 'New keyway: Teal keyway' }).waitFor();
  const keyway: [number, number][] = [
    [0, 0],
    [2.5, 0],
    [2.5, 1.5],
    [1.75, 1.5],
    [1.75, 2.25],
    [2.5, 2.25],
    [2.5, 7],
    [0, 7],
    [0, 4.5],
    [0.75, 4.5],
    [0.75, 3.75],
    [0, 3.75],
  ];
  for (const [n, [x, y]] of keyway.entries()) {
    // Two pixels beside the place: the grid takes it there.
    await pointAt(page, x, y, 2);
    await page.mouse.down();
    await page.mouse.up();
    if (n === 11) await page.getByText('Closed now it takes 0 of 1').waitFor();
    await page.getByText(n === 0 ? '1 vertex' : `${n + 1} vertices`, { exact: true }).waitFor();
  }
  await pointAt(page, 0, 0, 3);
  await page.mouse.down();
  await page.mouse.up();
  await told(page, 'The outline is closed.');
  await page.getByRole('heading', { level: 1, name: 'Teal keyway' }).waitFor();
  expect(await savedOutline(page, 'teal-keyway')).toEqual(keyway);
  // 1.75 mm beside the wards is less than the blank's 2 mm.
  await counts(page, 'Takes 0 of 1 blank');
  await undoOnce(page);
  expect((await savedFamily(page)).profiles.map(({ id }) => id)).toEqual(['slot', 'bar']);
  await counts(page, 'Takes 1 of 1 blank');
});

test('a dragged vertex rests on the grid, the fits follow the hand, and the drag is one step of undo', async () => {
  const { page } = app;
  await openBar(page);
  await counts(page, 'Goes into 1 of 1 keyway');
  await pointAt(page, 2, 6);
  await page.mouse.down();
  for (const x of [2.05, 2.1, 2.2, 2.3]) await pointAt(page, x, 6);
  // Still in the hand: the slot is 2.1 mm wide.
  await counts(page, 'Goes into 0 of 1 keyway');
  await page.mouse.up();
  await told(
    page,
    /^x 2\.300, y 6\.000 mm; Δx \+0\.300, Δy 0\.000 mm; edge 6\.007 mm in; edge 2\.300 mm out; angle 87\.1°/,
  );
  expect(await savedOutline(page, 'bar')).toEqual(BAR.with(2, [2.3, 6]));
  await undoOnce(page);
  expect(await savedOutline(page, 'bar')).toEqual(BAR);
  await page.keyboard.press('Control+y');
  expect(await savedOutline(page, 'bar')).toEqual(BAR.with(2, [2.3, 6]));
});

test('a click moves nothing, though the grid is coarse', async () => {
  const { page } = app;
  await openInDraw(
    page,
    { ...FAMILY, profiles: [FAMILY.profiles[0], { ...FAMILY.profiles[1], outline: rectangle(1.987, 5.931) }] },
    'Blanks and tools',
    'Bar blank',
  );
  await pointAt(page, 1.987, 5.931, 2);
  await page.mouse.down();
  await page.mouse.up();
  await pointAt(page, 1.987, 2);
  await page.mouse.down();
  await page.mouse.up();
  expect(await savedOutline(page, 'bar')).toEqual(rectangle(1.987, 5.931));
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
});

test('Escape gives a drag up, and the hand that goes on moves nothing', async () => {
  const { page } = app;
  await openBar(page);
  await pointAt(page, 2, 6);
  await page.mouse.down();
  await pointAt(page, 2.4, 6);
  await counts(page, 'Goes into 0 of 1 keyway');
  await page.keyboard.press('Escape');
  await counts(page, 'Goes into 1 of 1 keyway');
  await pointAt(page, 2.6, 6);
  await page.mouse.up();
  expect(await savedOutline(page, 'bar')).toEqual(BAR);
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
});

test('a dragged edge moves both its ends; shift holds it to the straight way', async () => {
  const { page } = app;
  await openBar(page);
  await page.keyboard.down('Shift');
  await dragOver(page, [2, 2], [2.3, 2.1], [2.5, 2.2]);
  await page.keyboard.up('Shift');
  expect(await savedOutline(page, 'bar')).toEqual(rectangle(2.5, 6));
  await undoOnce(page);
  expect(await savedOutline(page, 'bar')).toEqual(BAR);
});

test('the middle of an edge bows it into an arc, and its radius is round; a double click adds a vertex', async () => {
  const { page } = app;
  await openBar(page);
  await pointAt(page, 1, 6);
  await dragOver(page, [1, 6], [1, 6.2], [1, 6.5]);
  const bowed = await savedOutline(page, 'bar');
  expect(bowed.map(([x, y]) => [x, y])).toEqual(BAR);
  // A bow of 0.5 mm over a chord of 2 mm: radius (1 + 0.25) / (2 * 0.5) = 1.25 mm, bulge 0.5.
  expect(bowed[2][2]).toBeCloseTo(0.5, 6);
  await undoOnce(page);
  const at = await onSheet(page, 2, 1.5);
  await page.mouse.dblclick(at.x, at.y);
  await told(page, 'A vertex was added.');
  expect(await savedOutline(page, 'bar')).toEqual(BAR.toSpliced(2, 0, [2, 1.5]));
  await undoOnce(page);
});

test('a box chooses vertices, Delete removes them in one step, and fewer than three are refused in words', async () => {
  const { page } = app;
  const notched: [number, number][] = [...BAR.slice(0, 2), [2, 2], [1.5, 2.2], [1.5, 2.8], [2, 3], ...BAR.slice(2)];
  await openInDraw(
    page,
    { ...FAMILY, profiles: [FAMILY.profiles[0], { ...FAMILY.profiles[1], outline: notched }] },
    'Blanks and tools',
    'Bar blank',
  );
  await dragOver(page, [2.6, 1.7], [2, 2.5], [1.2, 3.3]);
  await told(page, '4 vertices chosen.');
  await page.keyboard.press('Delete');
  await told(page, '4 vertices were removed.');
  expect(await savedOutline(page, 'bar')).toEqual(BAR);
  await undoOnce(page);
  expect(await savedOutline(page, 'bar')).toEqual(notched);
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Delete');
  await page.getByRole('alert').filter({ hasText: 'at least three vertices' }).waitFor();
  expect(await savedOutline(page, 'bar')).toEqual(notched);
});

test('a crossing place is shown while the hand is there, and let go there the last sound outline stays', async () => {
  const { page } = app;
  await openBar(page);
  await pointAt(page, 2, 6);
  await page.mouse.down();
  await pointAt(page, 1.5, 6);
  await pointAt(page, -1, 3);
  // From (2, 0) to (-1, 3) and on to (0, 6): the left side, edge 4, is crossed by edge 2.
  const alert = page
    .getByRole('alert')
    .filter({ hasText: 'Not taken: edge 2 crosses edge 4. The last sound outline stays.' });
  await alert.waitFor();
  await page.mouse.up();
  expect(await alert.isVisible()).toBe(true);
  const kept = await savedOutline(page, 'bar');
  expect(kept[2][0]).toBeGreaterThan(0);
  expect(kept).not.toEqual(BAR);
  await pointAt(page, 2, 0);
  await page.mouse.down();
  await page.mouse.up();
  await alert.waitFor({ state: 'detached' });
  await undoOnce(page);
  expect(await savedOutline(page, 'bar')).toEqual(BAR);
});

test('with the keyboard alone: brackets choose, arrows nudge, with alt finely, Insert adds, Delete removes', async () => {
  const { page } = app;
  await openBar(page);
  await sheet(page).focus();
  for (let n = 0; n < 3; n++) await page.keyboard.press(']');
  await told(page, 'Vertex 3 of 4: x 2.000, y 6.000 mm');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Alt+ArrowUp');
  await told(page, 'Vertex 3 of 4: x 2.110, y 6.001 mm');
  expect(await savedOutline(page, 'bar')).toEqual(BAR.with(2, [2.11, 6.001]));
  await undoAll(page);
  expect(await savedOutline(page, 'bar')).toEqual(BAR);
  await page.keyboard.press('Insert');
  expect(await savedOutline(page, 'bar')).toEqual([...BAR.slice(0, 3), [1, 6], BAR[3]]);
  await page.keyboard.press('Delete');
  expect(await savedOutline(page, 'bar')).toEqual(BAR);
});

test('the pen by keyboard alone: typed places, a cross moved by arrows, Enter closes', async () => {
  const { page } = app;
  await openBar(page);
  await sheet(page).focus();
  await page.keyboard.press('p');
  const field = page.getByRole('textbox', { name: /^Next, in mm/ });
  for (const text of ['0.5, 0.5', '@1, 0', '5<90']) {
    await field.fill(text);
    await field.press('Enter');
    await expect.poll(() => field.inputValue()).toBe('');
  }
  await field.fill('nowhere');
  await field.press('Enter');
  await page.getByRole('alert').filter({ hasText: 'Not a place' }).waitFor();
  await field.fill('');
  await sheet(page).focus();
  // The cross begins at the last vertex, (1.5, 5.5); ten steps of 0.05 mm twice.
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('Shift+ArrowLeft');
  await told(page, 'Cross at x 0.500, y 5.500 mm');
  await page.keyboard.press(' ');
  await told(page, 'Vertex 4 set at x 0.500, y 5.500 mm.');
  await page.keyboard.press('Enter');
  await told(page, 'The outline is closed.');
  expect(await savedOutline(page, 'bar')).toEqual(rectangle(1, 5, 0.5, 0.5));
});

test('the pen shows a crossing at once, refuses to close over it, and takes back; put away it keeps its draft', async () => {
  const { page } = app;
  await openBar(page);
  await page.keyboard.press('p');
  for (const [x, y] of [
    [3, 1],
    [5, 1],
    [3, 3],
    [5, 3],
  ]) {
    await pointAt(page, x, y);
    await page.mouse.down();
    await page.mouse.up();
  }
  await page.getByText('4 vertices', { exact: true }).waitFor();
  await page.keyboard.press('Enter');
  await page.getByRole('alert').filter({ hasText: 'Not closed: edge 2 crosses edge 4.' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'New outline with the pen' }).click();
  await page.getByText('4 vertices', { exact: true }).waitFor();
  await page.keyboard.press('Backspace');
  await page.getByText('3 vertices', { exact: true }).waitFor();
  await page.getByRole('button', { name: 'Close outline' }).click();
  expect(await savedOutline(page, 'bar')).toEqual([
    [3, 1],
    [5, 1],
    [3, 3],
  ]);
});

test('while the pen makes a section the picked one is out of reach; discarded, it comes back by its key or by undo', async () => {
  const { page } = app;
  await openBar(page);
  await page.getByRole('button', { name: 'Section ▾' }).click();
  await page.getByRole('button', { name: /^New section/ }).click();
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Teal keyway');
  await page.getByRole('combobox', { name: 'Begin with' }).selectOption({ label: 'the pen, vertex by vertex' });
  await page.getByRole('button', { name: 'Add section' }).click();
  await page.getByRole('heading', { level: 2, name: 'Teal keyway' }).waitFor();
  for (const [x, y] of [
    [3, 1],
    [5, 1],
    [3, 3],
  ]) {
    await pointAt(page, x, y);
    await page.mouse.down();
    await page.mouse.up();
  }
  const rows = page.getByRole('table', { name: '3 vertices so far, mm' }).locator('tbody').getByRole('row');
  await rows.nth(2).filter({ hasText: '3.000' }).waitFor();
  await expect.poll(() => page.getByRole('button', { name: 'Insert', exact: true }).count()).toBe(0);
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Discard' }).click();
  await page.getByRole('status').filter({ hasText: '3 vertices of Teal keyway discarded.' }).waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Bring them back' }).click();
  await rows.nth(2).waitFor();
  await page.getByRole('button', { name: 'Discard' }).click();
  await page.getByRole('heading', { level: 2, name: 'Bar blank' }).waitFor();
  await page.keyboard.press('Control+z');
  await rows.nth(2).waitFor();
  await page.getByRole('button', { name: 'Close outline' }).click();
  await page.getByRole('heading', { level: 1, name: 'Teal keyway' }).waitFor();
  expect(await savedOutline(page, 'teal-keyway')).toHaveLength(3);
});

test('a press of the pen that is dragged makes an arc', async () => {
  const { page } = app;
  await openBar(page);
  await page.keyboard.press('p');
  const press = async (x: number, y: number, bowX = x, bowY = y) => dragOver(page, [x, y], [bowX, bowY]);
  await press(3, 1);
  await press(5, 1);
  // From (5, 1) up to (5, 3), bowed a millimetre to the right: a half circle.
  await press(5, 3, 6, 2);
  await press(3, 3);
  await page.keyboard.press('Enter');
  expect(await savedOutline(page, 'bar')).toEqual([
    [3, 1],
    [5, 1, 1],
    [5, 3],
    [3, 3],
  ]);
});

test('nothing in the view fails for those who do not see it, in either hand', async () => {
  const { page } = app;
  await openBar(page);
  expect(await graveAxeFindings(page)).toEqual([]);
  await page.keyboard.press('p');
  await page.getByRole('region', { name: 'Pen' }).waitFor();
  expect(await graveAxeFindings(page)).toEqual([]);
  expect((await savedFamily(page)).profiles).toHaveLength(2);
});
