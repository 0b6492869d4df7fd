import type { Family } from '../../../family/family.ts';
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
export function savePdf({ session, family, order }: PagesToSave): Promise<void> {
  return makingFileOf(session).make({
    what: 'PDF',
    start: (tell) => session.doors.publish.publishSheets({ family, sheet: order, as: 'pdf' }, tell),
    take: ({ pdf }) => handOver(ownBytes(pdf ?? new Uint8Array()), 'pdf', fileNameOf(family, order, 'pdf')),
  });
}

/** The page that is shown, as SVG. */
export function saveSvg({ session, family, order, pages, number }: PagesToSave): Promise<void> {
  return makingFileOf(session).make({
    what: 'SVG',
    start: (tell) => session.doors.publish.publishSheets({ family, sheet: order, as: 'svg' }, tell),
    take: ({ svg = [] }) =>
      handOver(svg[number] ?? '', 'svg', fileNameOf(family, order, 'svg', [number + 1, pages.length])),
  });
}

/** Every page as an SVG of its own, in one archive. */
export function saveSvgs({ session, family, order }: PagesToSave): Promise<void> {
  const { publish } = session.doors;
  return makingFileOf(session).make({
    what: 'SVG',
    start: (tell) => publish.publishSheets({ family, sheet: order, as: 'svg' }, tell),
    take: ({ svg = [] }) => {
      const files = svg.map((text, i) => [fileNameOf(family, order, 'svg', [i + 1, svg.length]), text]);
      const archive = publish.zipTexts(Object.fromEntries(files));
      return handOver(ownBytes(archive), 'zip', fileNameOf(family, order, 'zip'));
    },
  });
}

/** The matrix as a table. */
export function saveCsv({ session, family, order }: PagesToSave): Promise<void> {
  const { publish } = session.doors;
  return makingFileOf(session).make({
    what: 'CSV',
    start: (tell) => publish.fitFamily(family, tell),
    take: (matrix) =>
      handOver(publish.writeMatrix(family, matrix, { units: order.units }), 'csv', fileNameOf(family, order, 'csv')),
  });
}

/** Picture points a millimetre: 300 dots an inch. */
const PRINT_POINTS = 300 / 25.4;

/** Width of a slide's picture, points. */
const SLIDE_POINTS = 1920;

/** Most points of a picture that a browser takes in its stride. */
const MOST_POINTS = 40e6;

/** Picture points a millimetre of a page: what printing takes, or a screen; fewer where the picture would be too large. */
export function pngDensity({ width, height }: Pick<Page, 'width' | 'height'>, isSlide: boolean): number {
  const wanted = isSlide ? SLIDE_POINTS / width : PRINT_POINTS;
  return Math.min(wanted, Math.sqrt(MOST_POINTS / (width * height)));
}

/** The page that is shown, as a picture. */
export function savePng({ session, family, order, pages, number }: PagesToSave): Promise<void> {
  const page = pages[number];
  return makingFileOf(session).make({
    what: 'PNG',
    start: () => ({
      result: pagePng(page, order.palette, pngDensity(page, order.sheet === 'slides')),
      cancel: () => {},
    }),
    take: async (picture) => {
      if (!picture) throw new Error('the browser has no room for a picture of this size; save it as PDF or SVG');
      return handOver(picture, 'png', fileNameOf(family, order, 'png', [number + 1, pages.length]));
    },
  });
}
