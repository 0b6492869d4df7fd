import type { EntryMatrix } from '../family/entry-matrix.ts';
import { type EntryTable, entryTable } from '../family/entry-table.ts';
import type { Family } from '../family/family.ts';
import { type Tiers, tiersOf } from '../family/tiers.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Passage } from '../passage/passage.ts';
import { rememberedWidths } from './remembered-widths.ts';

/** What sheets are laid out from: a family that is judged, and how wide words are. */
export interface SheetGround {
  readonly family: Family;
  /** New parts held upright, blocked pairs measured. */
  readonly fits: EntryMatrix;
  /** The same as yes and no. */
  readonly table: EntryTable;
  readonly tiers: Tiers;
  readonly measure: TextMeasure;
  /** Common passages that were found before, by `passageKey`; what is not there is found when it is shown. */
  readonly passages?: ReadonlyMap<string, Passage>;
}

/** The ground of all sheets of a family. */
export function sheetGround(family: Family, fits: EntryMatrix, measure: TextMeasure): SheetGround {
  const table = entryTable(fits);
  return { family, fits, table, tiers: tiersOf(table), measure: rememberedWidths(measure) };
}
