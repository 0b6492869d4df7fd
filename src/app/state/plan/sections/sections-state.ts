import { makeSheetLook, withoutWords } from '../../sheet-look.ts';
import type { ConfirmedPlan } from './drawn-sections.ts';

/** The tables of the sections sheet. */
export type SectionsTable = 'sections' | 'blanks' | 'pairs' | 'report';

/** Times its true size that a section may be printed. */
export const PRINT_SCALES = [1, 2, 4, 5, 10] as const;

/** How the sheet for printing is wished for. */
export interface PrintChoice {
  readonly scale: number;
  /** The plan as it is drawn now, or the planned sections that the family holds. */
  readonly from: 'drawn' | 'family';
}

/** What a sheet for printing begins with. */
export const FIRST_PRINT: PrintChoice = { scale: 5, from: 'drawn' };

/** What of a plan's sections is looked at. */
export interface SectionsLook {
  readonly table: SectionsTable;
  /** The picked section and blank by their place in the plan. */
  readonly section: number;
  readonly blank: number;
  /** How long a search for less may go on, seconds. */
  readonly seconds: number;
  /** The plan that is asked about before it is taken; null for none. */
  readonly taking: ConfirmedPlan | null;
  /** The sheet for printing that is looked at; null for none. */
  readonly printing: PrintChoice | null;
  /** The sheet for printing was just left, so the key that leads to it has the focus again. */
  readonly backFromPrint: boolean;
  /** What was done last, in words. */
  readonly said: string;
}

/** What a search is given first, seconds. */
const FIRST_SECONDS = 20;

const NOTHING: SectionsLook = {
  table: 'sections',
  section: 0,
  blank: 0,
  seconds: FIRST_SECONDS,
  taking: null,
  printing: null,
  backFromPrint: false,
  said: '',
};

/** What is looked at on the sections sheet of a window. */
export const sectionsLookOf = makeSheetLook<SectionsLook>(NOTHING, { without: withoutWords });
