import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { WINDOW_SIZES } from './open-app.ts';
import { twoFrames } from './two-frames.ts';

const SHOTS_FOLDER = join(dirname(fileURLToPath(import.meta.url)), '..', 'browser', 'shots');

async function resize(page: Page, size: { readonly width: number; readonly height: number }): Promise<void> {
  await page.setViewportSize(size);
  await twoFrames(page);
}

/**
 * Takes the page at both window sizes into tests/browser/shots (not kept under version control), to be looked at:
 * `NAME-1440x900.png` and `NAME-1024x700.png`. The window is left at its former size.
 * @returns the two files' paths
 */
export async function takeScreenshots(page: Page, name: string): Promise<string[]> {
  mkdirSync(SHOTS_FOLDER, { recursive: true });
  const before = page.viewportSize();
  const files: string[] = [];
  for (const size of Object.values(WINDOW_SIZES)) {
    await resize(page, size);
    const path = join(SHOTS_FOLDER, `${name}-${size.width}x${size.height}.png`);
    await page.screenshot({ path });
    files.push(path);
  }
  if (before) await resize(page, before);
  return files;
}
