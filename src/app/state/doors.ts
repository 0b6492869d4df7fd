import type { EntryMatrix } from '../../family/entry-matrix.ts';
import type { Family } from '../../family/family.ts';
import type { Explanation } from '../../fit/explain-placement.ts';
import type { Collision, Contact, Fit, Placement } from '../../fit/fit.ts';
import type { FormatBand, FormatLength } from '../../fit/fit-sentence.ts';
import type { Ring } from '../../geom/ring.ts';
import type { FileFault } from '../../interchange/json/file-fault.ts';
import type { FamilyDocument } from '../../interchange/json/read.ts';

/** What the reader of family files answers. */
export type ReadAnswer =
  | { readonly ok: true; readonly document: FamilyDocument }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/** A matrix job on its way. */
export interface RunningJudgement {
  readonly result: Promise<EntryMatrix>;
  cancel(): void;
}

/**
 * The operations the app calls on the core. State gets them handed in (main.tsx names the real ones), so
 * that it neither knows about threads nor pulls the geometry into a test of its own bookkeeping.
 */
export interface Doors {
  readFamily(text: string): ReadAnswer;
  writeFamily(file: FamilyDocument['file']): string;
  judgeFamily(family: Family, onProgress: (done: number, total: number) => void): RunningJudgement;
  explainPlacement(opening: Ring, blank: Ring, placement: Placement): Explanation;
  fitSentence(
    blankName: string,
    openingName: string,
    fit: Fit,
    explanation: Explanation,
    length: FormatLength,
    band: FormatBand,
  ): string;
  blockedWords(collisions: readonly Collision[], length: FormatLength, band: FormatBand): string;
  /** The plug's part that a contact or a collision is at: "left ward", "right wall". */
  partName(part: Pick<Contact, 'side' | 'ward'>): string;
}
