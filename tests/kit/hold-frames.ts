import type { Page } from 'playwright-core';
import { twoFrames } from './two-frames.ts';

/**
 * Holds the time that the page's frames are told: what moves by it stays where it is, however slow page and driver are, until
 * the page is loaded again.
 *
 * @returns lets so many milliseconds go by at once, and comes back when the frame after has been drawn.
 */
export async function holdFrames(page: Page): Promise<(ms: number) => Promise<void>> {
  await page.evaluate(() => {
    const realFrame = window.requestAnimationFrame.bind(window);
    const held = Object.assign(window, { heldFrames: performance.now() });
    window.requestAnimationFrame = (run) => realFrame(() => run(held.heldFrames));
  });
  return async (ms) => {
    await page.evaluate((by) => {
      (window as unknown as { heldFrames: number }).heldFrames += by;
    }, ms);
    await twoFrames(page);
  };
}
