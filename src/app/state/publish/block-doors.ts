import type { Family } from '../../../family/family.ts';
import type { DisplayWriting } from '../../../jobs/write-display-set.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import type { DisplaySetup } from '../../../print3d/display-setup.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** What a display set is built from. */
export interface BlockOrder {
  readonly family: Family;
  readonly setup: DisplaySetup;
}

/** What builds a display set and writes its files, each in a thread of its own, which a cancel ends. */
export interface BlockDoors {
  buildDisplaySet(order: BlockOrder, onProgress: (done: number, total: number) => void): JobOnItsWay<DisplaySet>;
  writeDisplaySet(writing: DisplayWriting, onProgress: (done: number, total: number) => void): JobOnItsWay<Uint8Array>;
}
