import type { Page } from 'playwright-core';
import { TestRunner } from 'vitest';

/** What a page answers within, milliseconds; one that has hung is told as such. */
const PATIENCE_MS = 5000;

/**
 * Prints what the window of a failed test shows before it is closed: where the focus is, what is told, what is open. A test
 * that fails on one machine in a hundred runs cannot be looked at otherwise.
 */
export async function tellWindowOfFailure(page: Page): Promise<void> {
  const test = TestRunner.getCurrentTest();
  if (test?.result?.state !== 'fail' || page.isClosed()) return;
  const late = new Promise<string>((resolve) => setTimeout(() => resolve('the page does not answer'), PATIENCE_MS));
  const told = await Promise.race([late, shownBy(page).catch((error: Error) => error.message)]);
  process.stdout.write(`\nThe window of "${test.name}", when it failed:\n${told}\n`);
}

function shownBy(page: Page): Promise<string> {
  return page.evaluate(() => {
    const words = (element: Element | null) =>
      (element?.textContent ?? '').replaceAll(/\s+/g, ' ').trim().slice(0, 200);
    const all = (title: string, selector: string) =>
      [...document.querySelectorAll(selector)].map((element) => `  ${title}: ${words(element)}`);
    const focused = document.activeElement;
    const called = focused?.getAttribute('aria-label') ?? words(focused);
    return [
      `  address: ${location.hash.slice(0, 60)}`,
      `  focus: ${focused?.tagName.toLowerCase()} "${called.slice(0, 100)}"`,
      ...all('heading', 'h1, h2'),
      ...all('status', '[role=status]'),
      ...all('alert', '[role=alert]'),
      ...all('progress', '[role=progressbar]'),
      ...all('open', 'dialog[open], [popover]:popover-open'),
    ].join('\n');
  });
}
