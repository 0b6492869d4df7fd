import type { Locator, Page } from 'playwright-core';
import { judged, pickEntrant, textOf } from './wall-page.ts';

/** The drawing of Compare. */
export const drawing = (page: Page): Locator => page.getByRole('application', { name: /^Drawing of/ });

/** Opens a pair of the family on the wall in Compare. */
export async function openPair(page: Page, entrant: string, opening: string): Promise<void> {
  await judged(page);
  await pickEntrant(page, entrant);
  // The cell itself: the readings may have a key for the same pair.
  await page.locator(`button[data-opening][title*="in ${opening}"]`).dblclick();
  await drawing(page).waitFor();
}

/** The verdict and margin over the drawing: "Heron blank in Heron keyway: enters+0.055 mm". */
export const verdict = (page: Page): Promise<string> => textOf(page.getByRole('heading', { level: 1 }));

/** The sentence over the drawing. */
export const sentence = (page: Page): Promise<string> => textOf(page.getByRole('status'));

/** The three-way answer as it is written. */
export const answer = (page: Page): Promise<string> => textOf(page.locator('[data-answer]'));

/** Types into a number field and leaves it with Enter. */
export async function typeInto(page: Page, label: RegExp, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label });
  await field.fill(text);
  await field.press('Enter');
}

/** What a number field says, as a number. */
export async function numberIn(page: Page, label: RegExp): Promise<number> {
  return Number(await page.getByRole('textbox', { name: label }).inputValue());
}

/** Opens a family given as its file's value, through the menu. */
export async function openFamily(page: Page, family: object): Promise<void> {
  await page.getByRole('button', { name: 'Family ▾' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: /^Open family/ }).click(),
  ]);
  const buffer = Buffer.from(JSON.stringify({ format: 'sectionary-family', version: 1, units: 'mm', ...family }));
  await chooser.setFiles({ name: 'test.json', mimeType: 'application/json', buffer });
}

/** A rectangle with its lower left corner at (x, y), in millimetres, turned by `degrees` about the origin. */
export function rectangle(wide: number, tall: number, x = 0, y = 0, degrees = 0): [number, number][] {
  const c = Math.cos((degrees * Math.PI) / 180);
  const s = Math.sin((degrees * Math.PI) / 180);
  const corners = [
    [x, y],
    [x + wide, y],
    [x + wide, y + tall],
    [x, y + tall],
  ];
  return corners.map(([px, py]) => [Number((px * c - py * s).toFixed(6)), Number((px * s + py * c).toFixed(6))]);
}
