import type { EntryMatrix } from '../family/entry-matrix.ts';
import { type Family, openingsOf } from '../family/family.ts';
import type { KnownFits } from '../family/known-fits.ts';
import { PairRefused } from '../family/pair-refused.ts';
import { writeMatrix } from '../interchange/csv/write-matrix.ts';
import { writeSlides } from '../interchange/html/write-slides.ts';
import { startPdf } from '../interchange/pdf/write.ts';
import { writePage } from '../interchange/svg/write-page.ts';
import { loadTypeface, type Typeface } from '../lettering/typeface.ts';
import type { Passage } from '../passage/passage.ts';
import { boxMissing } from '../publish/box-missing.ts';
import { marginsNeeded } from '../publish/margins-needed.ts';
import { orderFault } from '../publish/order-fault.ts';
import type { Mark, Page } from '../publish/page.ts';
import { type SheetGround, sheetGround } from '../publish/sheet-ground.ts';
import type { SheetOrder, SlidesOrder } from '../publish/sheet-order.ts';
import { sheetTitle } from '../publish/sheet-title.ts';
import { layOutSheet } from '../publish/sheets.ts';
import { passageKey } from '../publish/slides-passage.ts';
import { passagesShown } from '../publish/slides-sheet.ts';
import { type Job, JobCancelled, type JobContext, JobRefused, runInSlices } from './job.ts';
import { judgeKept } from './judge-kept.ts';
import { keptPassage } from './keep-passages.ts';

/** What is published, and in which form: values for a preview, a file a page, or one file. */
export interface PublishInput {
  readonly family: Family;
  readonly sheet: SheetOrder;
  /** `html`: slides only; `csv`: the matrix only. */
  readonly as: 'pages' | 'svg' | 'pdf' | 'html' | 'csv';
  /** Fits of the family, new and upright, that are known already: they are not judged again. */
  readonly known?: KnownFits;
  /** Pages that were laid out for this very order before: they are written as they are. */
  readonly laidOut?: readonly Page[];
}

/** What came out, in the form that was asked for. */
export interface Published {
  readonly pages?: readonly Page[];
  /** One text a page. */
  readonly svg?: readonly string[];
  readonly pdf?: Uint8Array;
  /** Slides in one file that runs by itself. */
  readonly html?: string;
  /** The matrix as a table. */
  readonly csv?: string;
  /** How many pages there are, in any form. */
  readonly pageCount: number;
  /** Letters that the typeface has not; a box stands for each on the pages. */
  readonly missingLetters: readonly string[];
}

/** Language of the words on pages. */
const LANGUAGE = 'en-GB';

/**
 * Lays out a sheet of a family, judged new and upright, and writes it in the form asked for. Refused where the order
 * cannot be met or a pair cannot be judged.
 *
 * @check tests/unit/jobs/publish-sheets.test.ts
 */
export const publishSheets: Job<PublishInput, Published> = async (input, context) => {
  const { family, sheet, as } = input;
  const fault = orderFault(family, sheet);
  if (fault !== null) throw new JobRefused(fault);
  if (as === 'csv') return writeCsv(input, context);
  const typeface = await loadTypeface();
  await breathe(context);
  const { pages, missingLetters } = input.laidOut
    ? { pages: input.laidOut, missingLetters: [] }
    : await layOut(input, typeface, context);
  const told = { pageCount: pages.length, missingLetters };
  await breathe(context);
  if (as === 'pages') return { pages, ...told };
  if (as === 'html') {
    const writing = { title: sheetTitle(family, sheet), language: LANGUAGE, palette: sheet.palette, typeface };
    return { html: writeSlides(pages, writing), ...told };
  }
  if (as === 'svg') return { svg: await writeEach(pages, family, sheet, typeface, context), ...told };
  return { pdf: await writePdf(pages, family, sheet, typeface, context), ...told };
};

/** The pages of a sheet, boxes in place of letters that the typeface has not, and those letters. */
async function layOut(
  { family, sheet, known }: PublishInput,
  typeface: Typeface,
  context: JobContext,
): Promise<Required<Pick<Published, 'pages' | 'missingLetters'>>> {
  const ground = sheetGround(family, await judge(family, sheet, known, context), typeface);
  const passages = sheet.sheet === 'slides' ? await findPassages(ground, sheet, context) : undefined;
  const laidOut = layOutSheet(passages ? { ...ground, passages } : ground, sheet);
  const pages = laidOut.map((page) => boxMissing(page, typeface.setLine));
  return { pages, missingLetters: missingIn(laidOut, typeface) };
}

/** The matrix as a table; it has no pages. */
async function writeCsv({ family, sheet, known }: PublishInput, context: JobContext): Promise<Published> {
  const fits = shownFits(family, await judge(family, sheet, known, context), sheet);
  return { csv: writeMatrix(family, fits, { units: sheet.units }), pageCount: 0, missingLetters: [] };
}

/** The matrix with the rows that the sheet shows. */
function shownFits(family: Family, matrix: EntryMatrix, sheet: SheetOrder): EntryMatrix {
  if (sheet.sheet !== 'matrix' || !sheet.blanksOnly) return matrix;
  const blanks = new Set(family.profiles.flatMap(({ id, kind }) => (kind === 'blank' ? [id] : [])));
  const rows = matrix.profiles.flatMap((id, i) => (blanks.has(id) ? [i] : []));
  return {
    openings: matrix.openings,
    profiles: rows.map((i) => matrix.profiles[i]),
    fits: rows.map((i) => matrix.fits[i]),
  };
}

/** Lets a cancel arrive. */
async function breathe(context: JobContext): Promise<void> {
  await context.pause();
  if (context.cancelled()) throw new JobCancelled();
}

/** The common passages that the slides show: they take long, so that they are found before, a piece at a time. */
async function findPassages(
  ground: SheetGround,
  order: SlidesOrder,
  context: JobContext,
): Promise<ReadonlyMap<string, Passage>> {
  const { family } = ground;
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, ring }));
  const found = new Map<string, Passage>();
  for (const chosen of passagesShown(ground, order)) {
    const input = { openings, chosen, runningClearance: family.runningClearance };
    found.set(passageKey(chosen), await runInSlices(keptPassage(input), context));
  }
  return found;
}

async function judge(
  family: Family,
  sheet: SheetOrder,
  known: KnownFits | undefined,
  context: JobContext,
): Promise<EntryMatrix> {
  try {
    return await runInSlices(judgeKept(family, known, marginsNeeded(family, sheet)), context);
  } catch (error) {
    if (error instanceof PairRefused) throw new JobRefused(error.message);
    throw error;
  }
}

async function writeEach(
  pages: readonly Page[],
  family: Family,
  sheet: SheetOrder,
  typeface: Typeface,
  context: JobContext,
): Promise<string[]> {
  const title = sheetTitle(family, sheet);
  const texts: string[] = [];
  for (const [i, page] of pages.entries()) {
    const about = `${title}, page ${i + 1} of ${pages.length}. True scale: printed without scaling, 1 mm is 1 mm.`;
    texts.push(writePage(page, sheet.palette, typeface, about));
    context.progress(i + 1, pages.length);
    await breathe(context);
  }
  return texts;
}

async function writePdf(
  pages: readonly Page[],
  family: Family,
  sheet: SheetOrder,
  typeface: Typeface,
  context: JobContext,
): Promise<Uint8Array> {
  const telling = { title: sheetTitle(family, sheet), language: LANGUAGE, date: dayOf(sheet.date) };
  const draft = await startPdf(telling, typeface, sheet.palette);
  for (const [i, page] of pages.entries()) {
    draft.add(page);
    context.progress(i + 1, pages.length);
    await breathe(context);
  }
  return draft.finish();
}

/** The day that a date names, where it is written as a standard one. */
function dayOf(date: string | undefined): Date | undefined {
  const day = date !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(date) ? new Date(`${date}T00:00:00Z`) : undefined;
  return day && Number.isFinite(day.getTime()) ? day : undefined;
}

/** The letters of all pages that the typeface has not, each once. */
function missingIn(pages: readonly Page[], typeface: Typeface): string[] {
  const lines = pages.flatMap((page) => linesOf(page.marks));
  return [...new Set(lines.flatMap((line) => typeface.missing(line)))];
}

function linesOf(marks: readonly Mark[]): string[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return linesOf(mark.marks);
    return mark.kind === 'text' ? [mark.text] : [];
  });
}
