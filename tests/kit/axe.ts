import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, ImpactValue } from 'axe-core';
import type { Page } from 'playwright-core';
import { twoFrames } from './two-frames.ts';

const AXE_SOURCE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const RULE_SETS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const GRAVE: ReadonlySet<ImpactValue | undefined> = new Set(['serious', 'critical']);

/**
 * Serious and critical accessibility findings of axe-core in the page as it stands, one line each; empty when clean.
 * The script is handed to the debugger, not put into the page, so the page's content policy stays as it is.
 */
export async function graveAxeFindings(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(AXE_SOURCE);
  // A change of theme or size is answered in one of the next two frames: half of it would be looked at before, half after.
  await twoFrames(page);
  const results = await page.evaluate(async (tags): Promise<AxeResults> => {
    const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
    return axe.run(document, { runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'] });
  }, RULE_SETS);
  return results.violations
    .filter((violation) => GRAVE.has(violation.impact))
    .flatMap((violation) =>
      violation.nodes.map(
        (node) => `${violation.impact} ${violation.id}: ${node.target.join(' ')} - ${violation.help}`,
      ),
    );
}
