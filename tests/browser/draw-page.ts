import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';

/** The sheet of the Draw view. */
export const sheet = (page: Page): Locator => page.getByRole('application', { name: /^Sheet of/ });

/** Opens a family over the open one, and one of its sections in the Draw view. */
export async function openInDraw(page: Page, family: object, list: string, section: string): Promise<void> {
  const name = 'Another family';
  const text = JSON.stringify({ format: 'sectionary-family', version: 1, units: 'mm', ...family, name });
  await page
    .getByLabel('Family file', { exact: true })
    .setInputFiles({ name: 'test.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  // A file is read in its own time, and the open family may have a section of that name.
  await page.getByRole('banner').getByText(name, { exact: true }).waitFor();
  await showInDraw(page, list, section);
}

/** Shows one of the sections of the open family in the Draw view. */
export async function showInDraw(page: Page, list: string, section: string): Promise<void> {
  await page.getByRole('listbox', { name: list }).getByRole('option', { name: section }).click();
  await page.getByRole('button', { name: 'Draw', exact: true }).click();
  await sheet(page).waitFor();
  await sheetView(page);
}

/** How the sheet lies on the screen: pixels a millimetre, and the pixel of the origin. */
async function sheetView(page: Page): Promise<{ scale: number; x: number; y: number }> {
  // Read at one moment, at which what is drawn is as large as its frame: else it is about to be fitted anew.
  const drawn = await page.waitForFunction(() => {
    const frame = document.querySelector<HTMLElement>('[data-drawing="draw"][data-sheet]');
    const canvas = frame?.querySelector('canvas');
    if (!frame || canvas?.clientWidth !== frame.clientWidth || canvas.clientHeight !== frame.clientHeight) return null;
    const { left, top } = frame.getBoundingClientRect();
    return { left, top, numbers: frame.dataset.sheet?.split(' ').map(Number) ?? [] };
  });
  const { left, top, numbers } = (await drawn.jsonValue()) ?? { left: 0, top: 0, numbers: [] };
  const [scale, x, y] = numbers;
  return { scale: scale * 1e6, x: left + x, y: top + y };
}

/** Where a place of the sheet, in millimetres, is on the screen. */
export async function onSheet(page: Page, x: number, y: number): Promise<{ x: number; y: number }> {
  const view = await sheetView(page);
  return { x: view.x + x * view.scale, y: view.y - y * view.scale };
}

/** Moves the pointer to a place of the sheet, `off` pixels beside it. */
export async function pointAt(page: Page, x: number, y: number, off = 0): Promise<void> {
  const at = await onSheet(page, x, y);
  await page.mouse.move(at.x + off, at.y - off, { steps: 3 });
}

/** Presses at one place, drags over others, and lets go at the last one. */
export async function dragOver(page: Page, ...places: readonly (readonly [number, number])[]): Promise<void> {
  await pointAt(page, ...places[0]);
  await page.mouse.down();
  for (const place of places.slice(1)) await pointAt(page, ...place);
  await page.mouse.up();
}

/** What the file would hold of a section's outline if it were saved now. */
export async function savedOutline(page: Page, id: string): Promise<number[][]> {
  const { profiles } = await savedFamily(page);
  return profiles.find((profile) => profile.id === id)?.outline ?? [];
}

interface SavedFamily {
  readonly profiles: readonly { readonly id: string; readonly name: string; readonly outline?: number[][] }[];
}

/** The file as it would be saved now. */
export async function savedFamily(page: Page): Promise<SavedFamily> {
  await page.getByRole('button', { name: 'Family ▾' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save family into your downloads' }).click(),
  ]);
  const saved: SavedFamily = JSON.parse(readFileSync(await download.path(), 'utf8'));
  await sheet(page).focus();
  return saved;
}

/** Waits until the count over the sheet says so. */
export async function counts(page: Page, words: string): Promise<void> {
  await page.getByRole('status').filter({ hasText: words }).waitFor();
}

/** Waits until the sheet says so to those who listen. */
export async function told(page: Page, words: string | RegExp): Promise<void> {
  await page.getByRole('status').filter({ hasText: words }).first().waitFor({ state: 'attached' });
}
