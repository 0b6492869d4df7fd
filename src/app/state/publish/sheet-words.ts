import { countWord } from '../../../family/count-word.ts';
import type { Family } from '../../../family/family.ts';
import type { Units } from '../../../family/length-text.ts';
import { fileNameText } from '../../../family/plain-name.ts';
import type { PaperName } from '../../../publish/paper.ts';
import type { SheetName, SheetOrder } from '../../../publish/sheet-order.ts';
import type { EveryCard } from './sheet-choice.ts';

/** How a sheet is spoken of. */
export interface SheetWords {
  readonly label: string;
  /** What it is for, in a few words beside its name. */
  readonly brief: string;
  /** What is on it, and who takes it along. */
  readonly what: string;
  /** What somebody could be misled by; empty where nothing is special to this sheet. */
  readonly caution: string;
}

/** Every sheet in words. */
export const SHEET_WORDS: Readonly<Record<SheetName, SheetWords>> = {
  chart: {
    label: 'Section chart',
    brief: 'the whole family on the wall',
    what: 'Every section, from the base row over the in-between sections and the groups to the blank that enters all, with lines and words for what enters what. For the wall of a workshop or a class; A3 or the poster reads from further away.',
    caution:
      'A chart shows the sections as they are drawn in this family. A cylinder made or worn otherwise may differ.',
  },
  matrix: {
    label: 'Verdict matrix',
    brief: 'every pair with its margin',
    what: 'A row for each blank and tool, a column for each keyway, and in each cell the verdict as a mark and its margin. For whoever orders or checks; as CSV it opens in a spreadsheet.',
    caution: 'Margins hold for new parts exactly as drawn, held upright: tolerance and wear are looked at in Compare.',
  },
  scale: {
    label: 'Opening and blank',
    brief: 'true size, and enlarged',
    what: 'One keyway and one blank, or every section of the family, at true size and enlarged, with a bar to check the printer by. Lay a blank on it, or look at the ward that stops it.',
    caution: 'Measure the bar before you compare anything with the page: many printers shrink a page to fit.',
  },
  card: {
    label: 'Door-side card',
    brief: 'what one blank enters',
    what: 'A card for one blank or one holder of the plan, or for all of them: which keyways it enters, and which not. For the folder at the counter or the inside of a key cabinet.',
    caution: 'A card tells which doors a blank may reach. Keep it where the key-control rules of the site allow.',
  },
  answers: {
    label: 'Answer sheet',
    brief: 'questions for a class',
    what: 'Does it go in? Pairs of blank and keyway to be answered on paper, and the answers with their margins on pages of their own, to be kept back.',
    caution: '',
  },
  slides: {
    label: 'Slides',
    brief: 'the lesson as pages',
    what: 'The steps of the lesson, a page each, 16 to 9, with what the presenter shows. For a room without this app.',
    caution: '',
  },
};

/** The papers as they are called; the largest is for a wall. */
export const PAPER_LABELS: Readonly<Record<PaperName, string>> = {
  A4: 'A4',
  A3: 'A3',
  Letter: 'Letter',
  A1: 'A1 poster',
};

/** The size of a page, given in millimetres: "210 × 297 mm", or "8.27 × 11.69 in"; no more digits than it has. */
export function pageSizeText(width: number, height: number, units: Units): string {
  const digits = units === 'in' ? 2 : 1;
  const [w, h] = [width, height].map((mm) => Number((units === 'in' ? mm / 25.4 : mm).toFixed(digits)));
  return `${w} × ${h} ${units}`;
}

/** Why a sheet cannot be made of a family, and what to do; null where it can. */
export interface NoSheet {
  readonly title: string;
  readonly what: string;
}

/**
 * What a family lacks for a sheet.
 *
 * @check tests/unit/app/publish-choice.test.ts
 */
export function lackFor(sheet: SheetName, family: Family): NoSheet | null {
  const openings = family.profiles.filter(({ kind }) => kind === 'opening').length;
  const blanks = family.profiles.filter(({ kind }) => kind === 'blank').length;
  const entrants = family.profiles.length - openings;
  if (openings === 0)
    return { title: 'This family has no keyways', what: 'Every sheet is about keyways. Draw one, or import one.' };
  if (sheet === 'card' && blanks === 0 && !family.plan?.holders.length)
    return {
      title: 'No blank to make a card for',
      what: 'A card tells what one blank enters. Make a blank in Draw, or import one; or plan holders.',
    };
  if (entrants === 0)
    return {
      title: 'This family has no blanks',
      what: 'A sheet tells which blank enters which keyway. Make a blank in Draw, or import one.',
    };
  if (sheet === 'slides' && !family.lesson?.steps.length)
    return { title: 'No lesson yet', what: 'Slides are the steps of the lesson. Make one in Teach.' };
  return null;
}

/** What was not in the typeface: null where all letters are there. */
export function missingWords(letters: readonly string[]): string | null {
  if (letters.length === 0) return null;
  const shown = letters.slice(0, MOST_LETTERS).map((letter) => `“${letter}”`);
  const rest = letters.length - shown.length;
  const list = shown.join(' ') + (rest > 0 ? ` and ${countWord(rest, 'other')}` : '');
  return `The typeface has no letter for ${list}. A box stands for ${letters.length === 1 ? 'it' : 'each'} in what is saved; rename the section, or write its name beside.`;
}

const MOST_LETTERS = 12;

/**
 * What a file of a sheet is called: the family, whose card or which pair it is, the sheet, and the number of the page where
 * it holds one of several.
 *
 * @param page its number from 1, and how many there are.
 * @check tests/unit/app/publish-choice.test.ts
 */
export function fileNameOf(
  family: Family,
  order: SheetOrder,
  extension: string,
  page: readonly [number: number, count: number] = [1, 1],
): string {
  const [number, count] = page;
  const label = SHEET_WORDS[order.sheet].label.toLowerCase();
  const parts = [fileNameText(family.name) || 'Family', fileNameText(subjectName(family, order)), label].filter(
    Boolean,
  );
  const counted = count > 1 ? ` ${String(number).padStart(String(count).length, '0')}` : '';
  return `${parts.join(' - ')}${counted}.${extension}`;
}

/** Whose cards are made all at once, in words. */
const EVERY_CARD: Readonly<Record<EveryCard, string>> = { holders: 'all holders', blanks: 'all blanks' };

/** What a sheet is of, besides the family: the pair at true size, whose card; empty where it is of the whole family. */
export function subjectName(family: Family, order: SheetOrder): string {
  const nameOf = (id: string | undefined) =>
    family.profiles.find((profile) => profile.id === id)?.name ??
    family.plan?.holders.find((holder) => holder.id === id)?.name;
  if (order.sheet === 'card') return nameOf(order.of) ?? (order.every ? EVERY_CARD[order.every] : '');
  if (order.sheet !== 'scale') return '';
  if (order.all) return 'the whole family';
  return [nameOf(order.blank), nameOf(order.opening)].filter(Boolean).join(' in ');
}
