import type { Palette } from './inks.ts';
import type { PaperName, PaperTurn } from './paper.ts';

/** What every sheet is ordered with. */
export interface OrderOfAny {
  readonly paper: PaperName;
  readonly turned: PaperTurn;
  readonly palette: Palette;
  /** The unit in which lengths are told. */
  readonly units: 'mm' | 'in';
  /** Told at the foot of each page as it stands; nothing is told where it is not given. */
  readonly date?: string;
}

/** The section chart: base row, in-between sections, group tiers, all-section, and who enters whom. */
export interface ChartOrder extends OrderOfAny {
  readonly sheet: 'chart';
  /** Whether tools are left out; they are shown where not given. */
  readonly blanksOnly?: boolean;
  /**
   * Ids of keyways whose sections were squeezed in later: they stand half a row higher, between their neighbours. Those of
   * which the family says so where not given.
   */
  readonly inBetween?: readonly string[];
  /** Whether the chart is made smaller until it stands on one page; it runs over several pages where not given. */
  readonly onePage?: boolean;
}

/** The verdict matrix, split over as many pages as it needs. */
export interface MatrixOrder extends OrderOfAny {
  readonly sheet: 'matrix';
  /** Whether tools are left out; they are shown where not given. */
  readonly blanksOnly?: boolean;
}

/** One opening and one blank at true size and enlarged, with a scale bar. */
export interface ScaleOrder extends OrderOfAny {
  readonly sheet: 'scale';
  /** Id of the opening; the first where not given. */
  readonly opening?: string;
  /** Id of the blank or tool; the opening's own, else the first, where not given. */
  readonly blank?: string;
  /** Whether every section of the family is shown, instead of one opening and one blank. */
  readonly all?: boolean;
  /** How many times the enlarged picture is as large as the part; as many as there is good room for where not given. */
  readonly enlarge?: number;
}

/** What one holder's blank enters, to hang beside a door. */
export interface CardOrder extends OrderOfAny {
  readonly sheet: 'card';
  /** Id of a blank, tool or holder of the plan; where not given, a card for each of `every`. */
  readonly of?: string;
  /** Whose cards are made; those of the holders, or of the blanks where there is no plan, where not given. */
  readonly every?: 'holders' | 'blanks';
}

/** Questions for a class, and the answers on pages of their own. */
export interface AnswersOrder extends OrderOfAny {
  readonly sheet: 'answers';
  readonly questions: number;
  /** Draws the questions: the same seed gives the same ones. */
  readonly seed: number;
}

/** The steps of the lesson as pages of 16:9, whatever the paper. */
export interface SlidesOrder extends OrderOfAny {
  readonly sheet: 'slides';
}

/** What is to be laid out, and how. */
export type SheetOrder = ChartOrder | MatrixOrder | ScaleOrder | CardOrder | AnswersOrder | SlidesOrder;

/** Which sheet. */
export type SheetName = SheetOrder['sheet'];

/** How the paper of each sheet is held where nobody says: as its pages are best filled. Slides have a shape of their own. */
export const USUAL_TURNS: Readonly<Record<SheetName, PaperTurn>> = {
  chart: 'landscape',
  matrix: 'landscape',
  scale: 'portrait',
  card: 'portrait',
  answers: 'portrait',
  slides: 'landscape',
};

/** Sheets in the order in which they are offered. */
export const SHEET_NAMES: readonly SheetName[] = ['chart', 'matrix', 'scale', 'card', 'answers', 'slides'];
