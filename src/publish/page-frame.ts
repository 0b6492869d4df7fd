import { cautionsAbout } from '../family/cautions.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, placeBlock, stackBlocks } from './block.ts';
import type { Mark, Page } from './page.ts';
import { type PaperName, paperSize } from './paper.ts';
import { layOutParagraph } from './paragraph.ts';
import type { OrderOfAny } from './sheet-order.ts';
import { drawn, polyline } from './strokes.ts';

/** What stands round every page of a sheet. */
export interface PageFrame {
  /** What the sheet is: "Section chart". */
  readonly title: string;
  readonly family: string;
  readonly date?: string;
  /** One sentence or two at the foot of every page. */
  readonly caution: string;
  readonly width: number;
  readonly height: number;
  /** Kept free at all four sides, millimetres. */
  readonly margin: number;
  /** How many times the usual size type and marks are: 1 on A4, more on a poster. */
  readonly zoom: number;
}

/** Room for a sheet's own marks: millimetres from the upper left corner of the page. */
export interface PageRoom {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a page shows beside its frame; a title of its own where it differs from the sheet's. */
export interface PageBody {
  readonly marks: readonly Mark[];
  readonly title?: string;
}

/** One line for sheets about what goes in where. */
export const SHEET_CAUTION = cautionsAbout('plan').slice(1).join(' ');

/** How many times the usual size type is: what hangs on a wall is read from further away. */
const ZOOM: Readonly<Record<PaperName, number>> = { A4: 1, Letter: 1, A3: 1.25, A1: 2 };

/** The frame of an order; type grows with the paper. */
export function frameFor(order: OrderOfAny, title: string, family: string, caution = SHEET_CAUTION): PageFrame {
  const { width, height } = paperSize(order.paper, order.turned);
  const zoom = ZOOM[order.paper];
  const frame = { title, family, caution, width, height, margin: 8 + 4 * zoom, zoom };
  return order.date ? { ...frame, date: order.date } : frame;
}

/** Height of type, millimetres at zoom 1. */
const TITLE = 5.6;
const HEAD = 3.2;
const FOOT = 2.3;
/** Between head or foot and what stands between them. */
const APART = 3;

/**
 * The room that the frame leaves on each page: the same for all pages.
 *
 * @check tests/unit/publish/page-parts.test.ts
 */
export function roomIn(frame: PageFrame, measure: TextMeasure): PageRoom {
  const { margin, zoom, width, height } = frame;
  const head = headOf(frame, measure).height + APART * zoom;
  const foot = footOf(frame, '', measure).height + APART * zoom;
  return { x: margin, y: margin + head, width: width - 2 * margin, height: height - 2 * margin - head - foot };
}

/** Bodies as pages of one sheet, with title, family, date, page n of m and the caution. */
export function framedPages(bodies: readonly PageBody[], frame: PageFrame, measure: TextMeasure): Page[] {
  return bodies.map(({ marks, title }, i) => {
    const told = title ? { ...frame, title } : frame;
    const head = headOf({ ...frame, title: told.title }, measure);
    const foot = footOf(frame, `Page ${i + 1} of ${bodies.length}`, measure);
    const { margin, width, height } = frame;
    return {
      title: bodies.length > 1 ? `${told.title}, page ${i + 1} of ${bodies.length}` : told.title,
      width,
      height,
      marks: [
        ...placeBlock(head, margin, margin),
        ...marks,
        ...placeBlock(foot, margin, height - margin - foot.height),
      ],
    };
  });
}

/** Title at the left, the family beside it or under it, a rule below. */
function headOf({ title, family, width, margin, zoom }: PageFrame, measure: TextMeasure): Block {
  const room = width - 2 * margin;
  const titleWidth = Math.min(measure.width(title, TITLE * zoom, true) + 0.01, room * 0.6);
  const gap = 4 * zoom;
  const headed = { width: titleWidth, size: TITLE * zoom, bold: true, most: 1, heading: 1 } as const;
  const left = layOutParagraph(title, headed, measure);
  const rest = room - titleWidth - gap;
  const style = { width: rest, size: HEAD * zoom, ink: 'soft', align: 'end', most: 1 } as const;
  const right = layOutParagraph(family, style, measure);
  const line = left.height + 0.6 * zoom;
  const marks = [
    ...left.marks,
    ...placeBlock(right, titleWidth + gap, left.height - right.height - 0.45 * zoom),
    drawn([polyline([0, line], [room, line])], 'ink', 0.35 * zoom),
  ];
  return { width: room, height: line + 0.2 * zoom, marks };
}

/** The caution, and at the right the date and the number of the page. */
function footOf({ caution, date, width, margin, zoom }: PageFrame, number: string, measure: TextMeasure): Block {
  const room = width - 2 * margin;
  const aside = 42 * zoom;
  const size = FOOT * zoom;
  const words = layOutParagraph(caution, { width: room - aside, size, ink: 'soft' }, measure);
  const ends = [...(date ? [date] : []), ...(number === '' && date ? [] : [number || ' '])];
  const style = { width: aside - 4 * zoom, size, ink: 'soft', align: 'end', most: 1 } as const;
  const right = stackBlocks(ends.map((text) => layOutParagraph(text, style, measure)));
  const two = layOutParagraph('x', style, measure).height * (date ? 2 : 1);
  const top = 1 * zoom;
  const marks = [
    drawn([polyline([0, 0], [room, 0])], 'rule', 0.2 * zoom),
    ...placeBlock(words, 0, top),
    ...placeBlock(right, room - right.width, top),
  ];
  return { width: room, height: top + Math.max(words.height, two), marks };
}
