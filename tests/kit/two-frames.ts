import type { Page } from 'playwright-core';

/** Chromium without a screen at times gives no more frames on a busy machine: it is not waited for longer, milliseconds. */
const PATIENCE_MS = 5000;

/** Waits until the page has drawn twice: one frame for the layout, one for what the app draws in answer to it. */
export function twoFrames(page: Page): Promise<void> {
  return page.evaluate(async (patience) => {
    const drawn = new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    await Promise.race([drawn, new Promise((done) => setTimeout(done, patience))]);
  }, PATIENCE_MS);
}
