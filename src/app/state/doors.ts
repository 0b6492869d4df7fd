import type { EntryMatrix } from '../../family/entry-matrix.ts';
import type { Family, FileUnits } from '../../family/family.ts';
import type { GuardMargins } from '../../family/guard-margin.ts';
import type { Conditions } from '../../fit/conditions.ts';
import type { Explanation } from '../../fit/explain-placement.ts';
import type { Collision, Contact, Fit, Placement } from '../../fit/fit.ts';
import type { FormatBand, FormatLength } from '../../fit/fit-sentence.ts';
import type { InnerFit } from '../../fit/inner-fit-region.ts';
import type { Bands, ThreeWay } from '../../fit/judge-tolerance.ts';
import type { Share } from '../../fit/monte-carlo.ts';
import type { Region } from '../../geom/region.ts';
import type { Ring } from '../../geom/ring.ts';
import type { Vertex } from '../../geom/vertex.ts';
import type { addSection } from '../../interchange/json/add-section.ts';
import type { FileFault } from '../../interchange/json/file-fault.ts';
import type { putLeastWeb, putMilled } from '../../interchange/json/mill-file.ts';
import type { KeptPicture } from '../../interchange/json/picture-file.ts';
import type { FamilyDocument } from '../../interchange/json/read.ts';
import type { OutlineEdit } from '../../interchange/json/replace-outline.ts';
import type { PictureFile } from '../../interchange/json/schema.ts';
import type { DetailsInput, PairDetail } from '../../jobs/judge-details.ts';
import type { PairsInput, PairsPart } from '../../jobs/judge-pairs.ts';
import type { TraceInput } from '../../jobs/trace-picture.ts';
import type { PictureTrace } from '../../trace/trace-picture.ts';
import type { BandShapes } from '../doors/pair-now.ts';
import type { InterchangeDoors } from './exchange/interchange-doors.ts';
import type { GaugeDoors } from './gauge/gauge-doors.ts';
import type { JobOnItsWay } from './job-on-its-way.ts';
import type { IdentifyDoors } from './names/identify-doors.ts';
import type { NamesDoors } from './names/names-doors.ts';
import type { Pace } from './pace.ts';
import type { AccessDoors } from './plan/access/access-doors.ts';
import type { CapacityDoors } from './plan/capacity/capacity-doors.ts';
import type { GrowDoors } from './plan/grow/grow-doors.ts';
import type { SectionsDoors } from './plan/sections/sections-doors.ts';
import type { StrengthDoors } from './plan/strength/strength-doors.ts';
import type { BlockDoors } from './publish/block-doors.ts';
import type { PublishDoors } from './publish/publish-doors.ts';
import type { LessonDoors } from './teach/lesson-doors.ts';
import type { ClaimsDoors } from './tiers/claims-doors.ts';
import type { PassageDoors } from './tiers/passage-doors.ts';
import type { TiersDoors } from './tiers/tiers-doors.ts';

/** What the reader of family files answers. */
export type ReadAnswer =
  | { readonly ok: true; readonly document: FamilyDocument }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

export type { JobOnItsWay };

/** Edits of the open file that the Mill form makes. */
export interface MillDoors {
  /** The file with another milled description for one profile; `sources` tells where each groove stood before. */
  putMilled: typeof putMilled;
  /** The file with another least web, or without one; nanometres. */
  putLeastWeb: typeof putLeastWeb;
}

/**
 * The operations the app calls on the core. State gets them handed in (main.tsx names the real ones), so
 * that it neither knows about threads nor pulls the geometry into a test of its own bookkeeping.
 */
export interface Doors {
  readFamily(text: string): ReadAnswer;
  writeFamily(file: FamilyDocument['file']): string;
  /** The document with another outline for one profile, or why it is not sound; nanometres. */
  replaceOutline(document: FamilyDocument, id: string, vertices: readonly Vertex[]): OutlineEdit;
  /** The document of a value made from that of the open family, or what is wrong with it. */
  changeFamily(next: FamilyDocument['file']): ReadAnswer;
  /** The family with one section more, milled or drawn, and the id that it was given; nanometres. */
  addSection: typeof addSection;
  readonly mill: MillDoors;
  /** What is claimed: tables, edits, tolerances. */
  readonly claims: ClaimsDoors;
  readonly lesson: LessonDoors;
  /** Areas and holders of a plan. */
  readonly access: AccessDoors;
  /** Wards of a plan, drawn, taken. */
  readonly sections: SectionsDoors;
  readonly tiers: TiersDoors;
  readonly passage: PassageDoors;
  readonly strength: StrengthDoors;
  readonly capacity: CapacityDoors;
  /** Room to grow. */
  readonly grow: GrowDoors;
  readonly gauge: GaugeDoors;
  /** Sheets, slides and their files. */
  readonly publish: PublishDoors;
  /** Solids of a display set, and their files. */
  readonly block: BlockDoors;
  /** How many jobs run side by side. */
  threadCount(): number;
  /** Judges pairs in another thread; answers come in parts. Throws where the browser allows no threads. */
  judgePairs(input: PairsInput, onPart: (part: PairsPart) => void): JobOnItsWay<number>;
  /** Tolerance and wear of one blank in some keyways, one by one as they come. */
  judgeDetails(input: DetailsInput, onPart: (detail: PairDetail) => void): JobOnItsWay<PairDetail[]>;
  /** The guard margin of a family judged new and upright. */
  guardFamily(family: Family, matrix: EntryMatrix): JobOnItsWay<GuardMargins>;
  /** How many of `count` drawn pairs of new, upright parts go together. */
  drawParts(opening: Ring, entrant: Ring, bands: Bands, count: number, seed: number): JobOnItsWay<Share>;
  /** Every outline of a picture, in another thread. */
  tracePicture(input: TraceInput, onProgress: (done: number, total: number) => void): JobOnItsWay<PictureTrace>;
  /** A kept picture of a file in the core's units, and back; `before` is the field as it stands. */
  readPicture(file: PictureFile, units: FileUnits): KeptPicture;
  writePicture(kept: KeptPicture, units: FileUnits, before?: PictureFile): PictureFile;
  /** What brings drawings and families in, and sections out. */
  readonly interchange: InterchangeDoors;
  /** What ranks sections for an unknown outline. */
  readonly identify: IdentifyDoors;
  /** Names in files and tables. */
  readonly names: NamesDoors;
  readonly pace: Pace;
  /** The fit of one pair at once, on this thread: for the pair in hand while something about it is dragged. */
  judgeNow(opening: Ring, entrant: Ring, conditions: Conditions): Fit;
  /** The answer for all parts in their bands, at once; `fit` is that under the conditions. */
  toleranceNow(opening: Ring, entrant: Ring, fit: Fit, bands: Bands, conditions: Conditions): ThreeWay;
  /** All placements of a pair with the blank turned by `tilt` radians about its own origin (upright: 0), for drawing. */
  innerFitNow(opening: Ring, entrant: Ring, conditions: Conditions, tilt?: number): InnerFit;
  /** The shapes as the conditions leave them (worn), for drawing and explaining. */
  shapesUnder(opening: Ring, entrant: Ring, conditions: Conditions): { opening: Region; entrant: readonly Ring[] };
  /** The shapes at the ends of the tolerance bands, for drawing. */
  bandShapes(opening: Ring, entrant: Ring, bands: Bands, conditions: Conditions): BandShapes;
  explainPlacement(opening: Ring | Region, blank: Ring | readonly Ring[], placement: Placement): Explanation;
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
