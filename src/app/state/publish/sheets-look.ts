import { makeSheetLook } from '../sheet-look.ts';
import type { EveryCard } from './sheet-choice.ts';

/** How large a page is shown: as large as there is room, or at its true size. */
export type PageZoom = 'fit' | 'true';

/** What is looked at on the sheets for paper and on that of the slides. */
export interface SheetsLook {
  /** Number of the page, from 0. */
  readonly page: number;
  readonly zoom: PageZoom;
  /** Whether the true-size sheet is of every section of the family, instead of the picked pair. */
  readonly wholeFamily: boolean;
  /** Id of the holder whose card is made; null: the blank picked in the tray. */
  readonly holderId: string | null;
  /** Whether a card is made for each of them instead of one. */
  readonly everyCard: EveryCard | null;
  /** Whether the pages stand ready for the printer. */
  readonly printing: boolean;
}

const FIRST: SheetsLook = {
  page: 0,
  zoom: 'fit',
  wholeFamily: false,
  holderId: null,
  everyCard: null,
  printing: false,
};

/** What is looked at on the sheets for paper. */
export const sheetsLookOf = makeSheetLook<SheetsLook>(FIRST, { without: () => null });

/** What is looked at of the slides. */
export const slidesLookOf = makeSheetLook<SheetsLook>(FIRST, { without: () => null });
