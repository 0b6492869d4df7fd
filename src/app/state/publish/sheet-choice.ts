import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { Units } from '../../../family/length-text.ts';
import type { Palette } from '../../../publish/inks.ts';
import { PAPER_NAMES, type PaperName, type PaperTurn } from '../../../publish/paper.ts';
import { SHEET_NAMES, type SheetName, type SheetOrder, USUAL_TURNS } from '../../../publish/sheet-order.ts';
import { makeKeptStore, oneOf, type Shelf, yesOrNo } from '../kept-store.ts';
import type { Store } from '../store.ts';

/** The sheets for paper; the lesson's pages have a sheet of the view to themselves. */
export type PaperSheet = Exclude<SheetName, 'slides'>;

/** See {@link PaperSheet}. */
export const PAPER_SHEETS: readonly PaperSheet[] = SHEET_NAMES.filter((name) => name !== 'slides');

/** How sheets are wanted. Not part of any family; kept by the browser as other settings are. */
export interface SheetChoice {
  readonly sheet: PaperSheet;
  readonly paper: PaperName;
  /** How the paper is held, for each sheet. */
  readonly turned: Readonly<Record<PaperSheet, PaperTurn>>;
  readonly palette: Palette;
  /** The unit that is written; null: that of the window. */
  readonly units: Units | null;
  /** Whether the day is written on each page. */
  readonly dated: boolean;
  /** Whether tools are left out of chart and matrix. */
  readonly blanksOnly: boolean;
  /** Whether the chart is made smaller until it stands on one page. */
  readonly onePage: boolean;
  /** How many times true size a section is drawn beside its true size; null: as many as there is good room for. */
  readonly enlarge: number | null;
  readonly questions: number;
  /** Which questions are drawn: the same number draws the same ones. */
  readonly seed: number;
}

/** Enlargements that are offered. */
export const ENLARGEMENTS = [2, 4, 6, 8, 10, 15, 20] as const;

/** Least and most questions on an answer sheet, and the highest number of a set of them. */
export const QUESTIONS = { least: 1, most: 40, sets: 9999 } as const;

const { slides: TURNED_SLIDES, ...TURNED } = USUAL_TURNS;

/** Before anything is chosen. */
export const USUAL_SHEET: SheetChoice = {
  sheet: 'chart',
  paper: 'A4',
  turned: TURNED,
  palette: 'colour',
  units: null,
  dated: true,
  blanksOnly: false,
  onePage: false,
  enlarge: null,
  questions: 10,
  seed: 1,
};

const SHELF_KEY = 'sectionary-sheets';

/**
 * A store of how sheets are wanted that starts with what the shelf holds; what of it is not sound is as usual.
 *
 * @check tests/unit/app/publish-choice.test.ts
 */
export function makeSheetChoiceStore(shelf: Shelf | null): Store<SheetChoice> {
  return makeKeptStore(shelf, SHELF_KEY, choiceOf);
}

function choiceOf(fields: Readonly<Record<string, unknown>>): SheetChoice {
  const { sheet, paper, turned, palette, units, dated, blanksOnly, onePage, enlarge, questions, seed } = fields;
  const held = typeof turned === 'object' && turned !== null ? (turned as Record<string, unknown>) : {};
  const turns = PAPER_SHEETS.map((name) => [
    name,
    oneOf(['portrait', 'landscape'] as const)(held[name]) ?? TURNED[name],
  ]);
  return {
    sheet: oneOf(PAPER_SHEETS)(sheet) ?? USUAL_SHEET.sheet,
    paper: oneOf(PAPER_NAMES)(paper) ?? USUAL_SHEET.paper,
    turned: Object.fromEntries(turns) as Record<PaperSheet, PaperTurn>,
    palette: oneOf(['colour', 'grey'] as const)(palette) ?? USUAL_SHEET.palette,
    units: oneOf(['mm', 'in'] as const)(units) ?? null,
    dated: yesOrNo(dated) ?? USUAL_SHEET.dated,
    blanksOnly: blanksOnly === true,
    onePage: onePage === true,
    enlarge: oneOf(ENLARGEMENTS)(enlarge) ?? USUAL_SHEET.enlarge,
    questions: wholeWithin(QUESTIONS.least, QUESTIONS.most, questions) ?? USUAL_SHEET.questions,
    seed: wholeWithin(1, QUESTIONS.sets, seed) ?? USUAL_SHEET.seed,
  };
}

function wholeWithin(least: number, most: number, value: unknown): number | undefined {
  return Number.isInteger(value) && Number(value) >= least && Number(value) <= most ? Number(value) : undefined;
}

/** Whose cards are made all at once. */
export type EveryCard = 'holders' | 'blanks';

/** What a sheet is made of besides the choice: what is picked in the window, and the day. */
export interface SheetSubjects {
  /** Ids of what is picked in the tray. */
  readonly openingId: string | null;
  readonly entrantId: string | null;
  /** Whether the true-size sheet is of every section, instead of the picked pair. */
  readonly wholeFamily: boolean;
  /** Id of the holder whose card is made; null: the picked blank's. */
  readonly holderId: string | null;
  /** Whose cards are made all at once; null: one card. */
  readonly everyCard: EveryCard | null;
  readonly units: Units;
  /** As it is written; null where it is not. */
  readonly today: string | null;
}

/**
 * The order of the chosen sheet. A card for a blank that the family has not, or for a tool, is that of its first blank.
 *
 * @check tests/unit/app/publish-choice.test.ts
 */
export function orderOf(choice: SheetChoice, subjects: SheetSubjects, family: Family): SheetOrder {
  const { sheet, paper, palette, onePage, enlarge, questions, seed } = choice;
  // Where there are tools only they are what the sheet is about.
  const blanksOnly = choice.blanksOnly && family.profiles.some(({ kind }) => kind === 'blank');
  const any = {
    paper,
    turned: choice.turned[sheet],
    palette,
    units: choice.units ?? subjects.units,
    ...(choice.dated && subjects.today !== null && { date: subjects.today }),
  };
  switch (sheet) {
    case 'chart':
      return { sheet, ...any, blanksOnly, onePage };
    case 'matrix':
      return { sheet, ...any, blanksOnly };
    case 'scale': {
      const enlarged = enlarge === null ? {} : { enlarge };
      if (subjects.wholeFamily) return { sheet, ...any, ...enlarged, all: true };
      const opening = openingsOf(family).find(({ id }) => id === subjects.openingId);
      const blank = entrantsOf(family).find(({ id }) => id === subjects.entrantId);
      const pair = { ...(opening && { opening: opening.id }), ...(blank && { blank: blank.id }) };
      return { sheet, ...any, ...enlarged, ...pair };
    }
    case 'card': {
      const every = everyCardOf(family, subjects);
      if (every !== null) return { sheet, ...any, every };
      const of = cardSubject(family, subjects);
      return { sheet, ...any, ...(of !== null && { of }) };
    }
    case 'answers':
      return { sheet, ...any, questions, seed };
  }
}

/** The order of the slides: inks, unit and date as for paper. */
export function slidesOrder({ palette, units, dated }: SheetChoice, ofWindow: Units, today: string): SheetOrder {
  // Their size is their own; a paper is part of any order.
  const paper = { paper: 'A4', turned: TURNED_SLIDES } as const;
  return { sheet: 'slides', ...paper, palette, units: units ?? ofWindow, ...(dated && { date: today }) };
}

/** Whose cards are made all at once; null where one is wanted, or where the family has none of them. */
export function everyCardOf(family: Family, { everyCard }: Pick<SheetSubjects, 'everyCard'>): EveryCard | null {
  const has = {
    holders: Boolean(family.plan?.holders.length),
    blanks: family.profiles.some(({ kind }) => kind === 'blank'),
  };
  return everyCard !== null && has[everyCard] ? everyCard : null;
}

/** Id of the holder or blank that a card is for; null where the family has neither. */
export function cardSubject(family: Family, { holderId, entrantId }: SheetSubjects): string | null {
  if (family.plan?.holders.some(({ id }) => id === holderId)) return holderId;
  const blanks = family.profiles.filter(({ kind }) => kind === 'blank');
  const blank = blanks.find(({ id }) => id === entrantId) ?? blanks[0];
  return blank?.id ?? family.plan?.holders[0]?.id ?? null;
}
