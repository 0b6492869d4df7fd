import { type Block, placeBlock } from './block.ts';
import type { Mark } from './page.ts';
import type { PageRoom } from './page-frame.ts';

/** A block in a column of blocks. */
export interface FlowItem {
  readonly block: Block;
  /** Room above it where it does not open a page, millimetres. */
  readonly gap?: number;
  /** Stays on the page of the next one: a heading. */
  readonly keep?: boolean;
  /** Opens a page. */
  readonly opens?: boolean;
}

/**
 * Blocks one under the other, over as many pages as they need. What is kept with the next one moves with it.
 *
 * @returns the marks of each page, at least one page. A block higher than a page stands alone, from its top.
 * @check tests/unit/publish/page-parts.test.ts
 */
export function flowBlocks(items: readonly FlowItem[], room: PageRoom): Mark[][] {
  const pages: Mark[][] = [[]];
  let y = 0;
  for (const run of keptRuns(items)) {
    const height = heightOf(run);
    const gap = y > 0 ? (run[0].gap ?? 0) : 0;
    if (y > 0 && (run[0].opens || y + gap + height > room.height + 1e-6)) {
      pages.push([]);
      y = 0;
    } else {
      y += gap;
    }
    for (const [i, { block, gap: above = 0 }] of run.entries()) {
      if (i > 0) y += above;
      pages[pages.length - 1].push(...placeBlock(block, room.x, room.y + y));
      y += block.height;
    }
  }
  return pages;
}

/** Items in runs that stay together. */
function keptRuns(items: readonly FlowItem[]): FlowItem[][] {
  const runs: FlowItem[][] = [];
  let open = false;
  for (const item of items) {
    if (open) runs[runs.length - 1].push(item);
    else runs.push([item]);
    open = item.keep === true;
  }
  return runs;
}

function heightOf(run: readonly FlowItem[]): number {
  return run.reduce((sum, { block, gap = 0 }, i) => sum + block.height + (i > 0 ? gap : 0), 0);
}
