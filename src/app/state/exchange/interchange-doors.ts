import type { Units } from '../../../family/length-text.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { ExportedFile, ExportFormat } from '../../../interchange/export-profiles.ts';
import type { MergeChoice, MergePlan } from '../../../interchange/json/merge-families.ts';
import type { FamilyDocument } from '../../../interchange/json/read.ts';
import type { FamilyFile } from '../../../interchange/json/schema.ts';
import type { Placing } from '../../../interchange/place-loop.ts';
import type { Sniffed } from '../../../interchange/sniff-format.ts';
import type { DrawnLoop } from '../../../interchange/take-outline.ts';
import type { DrawingInput, LoopsRead } from '../../../jobs/read-drawing.ts';
import type { Profile } from '../../../profile/profile.ts';

/** The operations that bring drawings in and take them out; main.tsx names the real ones. */
export interface InterchangeDoors {
  /** What a file is, by its first bytes. */
  sniffFormat(name: string, bytes: Uint8Array): Sniffed;
  /** The loops of a drawing, in another thread that ends with it or is ended. */
  readDrawing(input: DrawingInput): { readonly result: Promise<LoopsRead>; cancel(): void };
  /** The outline that is taken of a loop, nanometres. */
  placeLoop(loop: DrawnLoop, placing: Placing): Vertex[];
  /** What adding the sections of one family to another comes to. */
  planMerge(into: FamilyDocument, from: FamilyDocument): MergePlan;
  mergeFamilies(into: FamilyDocument, from: FamilyDocument, choices: ReadonlyMap<string, MergeChoice>): FamilyFile;
  /** Profiles as the text of a file for other programs. */
  exportProfiles(profiles: readonly Profile[], format: ExportFormat, units: Units): ExportedFile;
}
