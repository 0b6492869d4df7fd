import type { EntryMatrix } from '../family/entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { FitCache, isMeasured } from '../family/fit-cache.ts';
import { orRefuse, PairRefused } from '../family/pair-refused.ts';
import { plainConditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { blankUnder, judgePair, openingUnder } from '../fit/judge-pair.ts';
import type { Opening } from '../fit/prepare-opening.ts';
import { loadTypeface, type Typeface } from '../lettering/typeface.ts';
import type { Mark, Page } from '../publish/page.ts';
import { sheetGround } from '../publish/sheet-ground.ts';
import type { SheetOrder } from '../publish/sheet-order.ts';
import { layOutSheet } from '../publish/sheets.ts';
import { type Job, JobCancelled, type JobContext, JobRefused, runInSlices } from './job.ts';

/** What is published, and in which form: values for a preview, a file a page, or one file. */
export interface PublishInput {
  readonly family: Family;
  readonly sheet: SheetOrder;
  readonly as: 'pages' | 'svg' | 'pdf';
}

/** What came out, in the form that was asked for. */
export interface Published {
  readonly pages?: readonly Page[];
  /** One text a page. */
  readonly svg?: readonly string[];
  readonly pdf?: Uint8Array;
  /** How many pages there are, in any form. */
  readonly pageCount: number;
  /** Letters that the typeface has not; a box stands for each on the pages. */
  readonly missingLetters: readonly string[];
}

/** Fits of earlier orders: another paper or another sheet of the same family does not judge it again. */
const kept = new FitCache();

/** Lays out a sheet of a family, judged new and upright, and writes it in the form asked for. */
export const publishSheets: Job<PublishInput, Published> = async ({ family, sheet, as }, context) => {
  const fits = await judge(family, context);
  const typeface = await loadTypeface();
  await breathe(context);
  const pages = layOutSheet(sheetGround(family, fits, typeface), sheet);
  await breathe(context);
  const told = { pageCount: pages.length, missingLetters: missingIn(pages, typeface) };
  if (as === 'pages') return { pages, ...told };
  throw new JobRefused('not there yet');
};

async function breathe(context: JobContext): Promise<void> {
  await context.pause();
  if (context.cancelled()) throw new JobCancelled();
}

async function judge(family: Family, context: JobContext): Promise<EntryMatrix> {
  try {
    return await runInSlices(judged(family), context);
  } catch (error) {
    if (error instanceof PairRefused) throw new JobRefused(error.message);
    throw error;
  }
}

function* judged(family: Family): Generator<{ done: number; total: number }, EntryMatrix, void> {
  const conditions = plainConditions(family.runningClearance);
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  const shapes = new Map<string, Opening>();
  const shapeOf = ({ id, ring }: (typeof openings)[number]) => {
    const shape = shapes.get(id) ?? openingUnder(ring, conditions);
    shapes.set(id, shape);
    return shape;
  };
  const fits: Fit[][] = [];
  for (const entrant of entrants) {
    const row: Fit[] = [];
    for (const opening of openings) {
      const known = kept.get(opening.ring, entrant.ring, conditions);
      const fit =
        known && isMeasured(known)
          ? known
          : orRefuse(entrant.id, opening.id, () =>
              judgePair(shapeOf(opening), blankUnder(entrant.ring, conditions), conditions),
            );
      kept.set(opening.ring, entrant.ring, conditions, fit);
      row.push(fit);
      yield { done: fits.length * openings.length + row.length, total: entrants.length * openings.length };
    }
    fits.push(row);
  }
  return { openings: openings.map(({ id }) => id), profiles: entrants.map(({ id }) => id), fits };
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
