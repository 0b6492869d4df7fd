import type { Locator, Page } from 'playwright-core';

/** The text of an element; waits for the element to be there. */
export async function textOf(element: Locator): Promise<string> {
  return (await element.textContent()) ?? '';
}

/** Waits until every pair of the open family has been judged and measured. */
export async function judged(page: Page): Promise<void> {
  await page.locator('button[data-opening]').first().waitFor();
  await page.locator('[data-judging="done"]').waitFor({ state: 'attached' });
  await page.locator('li[data-verdict="unknown"] button[data-opening]').first().waitFor({ state: 'detached' });
}

/** What stands over the wall in big type. */
export function headline(page: Page): Promise<string> {
  return textOf(page.getByRole('heading', { level: 1 }));
}

/** The answer of every cell, by the name engraved in it: what the eye reads, not what the code keeps. */
export async function answersOnTheWall(page: Page): Promise<Record<string, { word: string; margin: string }>> {
  const lines = await page
    .locator('button[data-opening]')
    .evaluateAll((cells) => cells.map((cell) => [...cell.querySelectorAll(':scope > span')].map((s) => s.textContent)));
  return Object.fromEntries(lines.map(([name, word, margin]) => [name, { word: word ?? '', margin: margin ?? '' }]));
}

/** The engraved names of the keyways that the picked blank goes into with its running clearance. */
export async function enteredOnTheWall(page: Page): Promise<string[]> {
  const answers = await answersOnTheWall(page);
  return Object.keys(answers).filter((name) => answers[name].word === 'enters');
}

/** Picks a blank or tool in the tray with the mouse. */
export async function pickEntrant(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('listbox', { name: 'Blanks and tools' }).getByRole('option', { name }).click();
}

/** The name of the picked blank or tool, as the tray marks it. */
export function pickedEntrant(page: Page): Promise<string> {
  const tray = page.getByRole('listbox', { name: 'Blanks and tools' });
  return textOf(tray.locator('[aria-selected="true"] > span > span').first());
}

/** One fact of the readings at the right. */
export function reading(page: Page, term: string): Promise<string> {
  const line = page
    .getByRole('complementary', { name: 'Readings' })
    .locator('dl > div', { has: page.locator('dt', { hasText: term }) });
  return textOf(line.locator('dd').first());
}
