import type { Family } from '../../../family/family.ts';
import type { Published, PublishInput } from '../../../jobs/publish-sheets.ts';
import type { Page } from '../../../publish/page.ts';
import type { SheetOrder } from '../../../publish/sheet-order.ts';
import { pagePng } from '../../canvas/page/draw-page.ts';
import { makingFileOf } from '../../state/publish/making-file.ts';
import { fileNameOf } from '../../state/publish/sheet-words.ts';
import type { Session } from '../../state/session.ts';
import { handOver, ownBytes } from './hand-over.ts';

/** Pages that are to be saved, and the one that is shown. */
export interface PagesToSave {
  readonly session: Session;
  readonly family: Family;
  readonly order: SheetOrder;
  readonly pages: readonly Page[];
  /** From 0. */
  readonly number: number;
}

/** All pages as one PDF. */
export function savePdf(save: PagesToSave): Promise<void> {
  return make(save, 'pdf', ({ pdf = new Uint8Array() }) => handOver(ownBytes(pdf), 'pdf', nameOf(save, 'pdf')));
}

/** The page that is shown, as SVG. */
export function saveSvg(save: PagesToSave): Promise<void> {
  return make(save, 'svg', ({ svg = [] }) => handOver(svg[save.number] ?? '', 'svg', pageNameOf(save, 'svg')));
}

/** Every page as an SVG of its own, in one archive. */
export function saveSvgs(save: PagesToSave): Promise<void> {
  const { session, family, order } = save;
  return make(save, 'svg', ({ svg = [] }) => {
    const files = svg.map((text, i) => [fileNameOf(family, order, 'svg', [i + 1, svg.length]), text]);
    return handOver(ownBytes(session.doors.publish.zipTexts(Object.fromEntries(files))), 'zip', nameOf(save, 'zip'));
  });
}

/** The matrix as a table. */
export function saveCsv(save: PagesToSave): Promise<void> {
  return make(save, 'csv', ({ csv = '' }) => handOver(csv, 'csv', nameOf(save, 'csv')));
}

/** The slides as one web page that runs by itself. */
export function saveHtml(save: PagesToSave): Promise<void> {
  return make(save, 'html', ({ html = '' }) => handOver(html, 'html', nameOf(save, 'html')));
}

function make(
  { session, family, order, pages }: PagesToSave,
  as: Exclude<PublishInput['as'], 'pages'>,
  take: (published: Published) => Promise<string>,
): Promise<void> {
  return makingFileOf(session).make({
    what: as.toUpperCase(),
    start: (tell) => {
      const known = session.judging.knownAsDrawn(family);
      return session.doors.publish.publishSheets({ family, sheet: order, as, known, laidOut: pages }, tell);
    },
    take,
  });
}

function nameOf({ family, order }: PagesToSave, extension: string): string {
  return fileNameOf(family, order, extension);
}

function pageNameOf({ family, order, number, pages }: PagesToSave, extension: string): string {
  return fileNameOf(family, order, extension, [number + 1, pages.length]);
}

/** Picture points a millimetre: 300 dots an inch. */
const PRINT_POINTS = 300 / 25.4;

/** Width of a slide's picture, points. */
const SLIDE_POINTS = 1920;

/** Most points of a picture that a browser takes in its stride. */
const MOST_POINTS = 40e6;

/** Picture points a millimetre of a page: what printing takes, or a screen; fewer where the picture would be too large. */
function pngDensity({ width, height }: Pick<Page, 'width' | 'height'>, isSlide: boolean): number {
  const wanted = isSlide ? SLIDE_POINTS / width : PRINT_POINTS;
  return Math.min(wanted, Math.sqrt(MOST_POINTS / (width * height)));
}

/** The page that is shown, as a picture. */
export function savePng(save: PagesToSave): Promise<void> {
  const { session, order, pages, number } = save;
  const page = pages[number];
  return makingFileOf(session).make({
    what: 'PNG',
    start: () => ({
      result: pagePng(page, order.palette, pngDensity(page, order.sheet === 'slides')),
      cancel: () => {},
    }),
    take: async (picture) => {
      if (!picture) throw new Error('the browser has no room for a picture of this size; save it as PDF or SVG');
      return handOver(picture, 'png', pageNameOf(save, 'png'));
    },
  });
}
