import type { Family } from '../../../family/family.ts';
import type { DisplaySet, SolidPart } from '../../../print3d/display-set.ts';
import type { DisplaySetup } from '../../../print3d/display-setup.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** What a display set is built from. */
export interface BlockOrder {
  readonly family: Family;
  readonly setup: DisplaySetup;
}

/** A file of bytes on its way. */
export type BytesOnTheirWay = Promise<Uint8Array<ArrayBuffer>>;

/** What builds a display set and writes its files; main.tsx names the real ones. */
export interface BlockDoors {
  /** In a thread of its own, which a cancel ends. */
  buildDisplaySet(order: BlockOrder, onProgress: (done: number, total: number) => void): JobOnItsWay<DisplaySet>;
  /** All parts with their names and colours, in millimetres. */
  write3mf(parts: readonly SolidPart[], title: string): BytesOnTheirWay;
  /** All parts in one binary STL, where they lie on the beds. */
  writeStl(parts: readonly SolidPart[]): BytesOnTheirWay;
  /** An archive with a binary STL for each part. */
  writeStlArchive(parts: readonly SolidPart[]): BytesOnTheirWay;
}
