import type { Page } from 'playwright-core';
import { drawing, openFamily, openPair, rectangle, typeInto } from './compare-page.ts';

/** A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm: it keeps (2.1 - 2) / 2 = 0.050 mm. */
export const PLAIN = {
  name: 'Plain',
  runningClearance: 0.03,
  tolerance: 0.01,
  profiles: [
    { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
    { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) },
  ],
};

/** Opens the plain family and its pair in Compare, with the upper right corner of the blank chosen. */
export async function openPlain(page: Page): Promise<void> {
  await openFamily(page, PLAIN);
  await openPair(page, 'Bar blank', 'Slot keyway');
  await chooseCorner(page);
}

/** Chooses the upper right corner of the blank in Compare. */
export async function chooseCorner(page: Page): Promise<void> {
  await drawing(page).focus();
  await page.keyboard.press('c');
  await page.keyboard.press(']');
  await page.keyboard.press(']');
  await page.getByText('Corner 3 of 4').waitFor();
}

/** Moves the chosen corner to an x in millimetres: one step of undo. */
export async function moveCornerTo(page: Page, x: string): Promise<void> {
  await typeInto(page, /^Corner x/, x);
}

/** Waits until everything so far is kept in the browser. */
export async function kept(page: Page): Promise<void> {
  await page.locator('[data-kept="kept"]').waitFor();
}

/** Waits until the tab says that it does not keep the family, for the reason given. */
export async function notKept(page: Page, why: 'off' | 'full' | 'elsewhere' | 'taken'): Promise<void> {
  await page.locator(`[data-kept="${why}"]`).waitFor();
}

/** Waits until Compare says this margin: 0.050 mm less half of what the corner is pulled out by. */
export async function marginIs(page: Page, margin: string): Promise<void> {
  await page
    .getByRole('heading', { level: 1 })
    .filter({ hasText: `${margin} mm` })
    .waitFor();
}

/** Presses a row of the family menu. */
export async function openMenu(page: Page, row: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page.getByRole('button', { name: row }).first().click();
}

/** A key of the strip on top. */
export const stripKey = (page: Page, name: string) =>
  page.getByRole('banner').getByRole('button', { name, exact: true });
