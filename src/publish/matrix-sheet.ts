import { entrantsOf, openingsOf } from '../family/family.ts';
import { gapText } from '../family/length-text.ts';
import { marginText, VERDICT_WORDS } from '../family/margin-text.ts';
import type { Verdict } from '../fit/fit.ts';
import { type Block, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import { cellNeeds, marginFigure, marginUnit, ownFrame } from './matrix-figures.ts';
import { gridPage, type MatrixGrid, type MatrixShown, matrixGrid, pagesOf } from './matrix-grid.ts';
import type { Page } from './page.ts';
import { framedPages, frameFor, type PageBody, type PageFrame, type PageRoom, roomIn } from './page-frame.ts';
import { layOutParagraph } from './paragraph.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { MatrixOrder } from './sheet-order.ts';
import { SHEET_TITLES } from './sheet-title.ts';
import { verdictMark } from './verdict-sign.ts';

/** Type of the legend and the largest of the matrix, millimetres on A4. */
const LEGEND = 2.5;
const LARGEST = 4.6;

/**
 * Every blank and tool in every keyway: mark, word and margin. As few pages as the paper allows, in the largest type that
 * takes no more of them, never smaller than 6 points; each page repeats the heads of its rows and columns and the legend.
 *
 * @check tests/unit/publish/class-sheets.test.ts
 */
export function matrixSheet(ground: SheetGround, order: MatrixOrder): Page[] {
  const { measure, family } = ground;
  const frame = frameFor(order, SHEET_TITLES.matrix, family.name);
  const whole = roomIn(frame, measure);
  const shown = shownOf(ground, order);
  if (shown.entrants.length === 0 || shown.openings.length === 0) return emptyPage(ground, frame, whole);
  const legend = legendBlock(shown, whole.width, LEGEND * frame.zoom);
  const above = legend.height + 2.2 * frame.zoom;
  // Where there are several pages, one line more says which part of the matrix each shows.
  const { grid, room } = fitted(shown, below(whole, above), LEGEND * frame.zoom * 1.6, LARGEST * frame.zoom);
  const bodies = grid.down.flatMap((rows) =>
    grid.across.map((columns): PageBody => {
      const part = partWords(shown, grid, columns, rows);
      const style = { width: whole.width, size: LEGEND * frame.zoom, bold: true, most: 1 };
      const head = stackBlocks([legend, ...(part === '' ? [] : [layOutParagraph(part, style, measure)])], frame.zoom);
      const page = gridPage(shown, grid, columns, rows);
      return {
        marks: [
          ...placeBlock(head, whole.x, whole.y),
          ...placeBlock(page, room.x + (room.width - page.width) / 2, room.y),
        ],
      };
    }),
  );
  const told = grid.down.flatMap((rows) => grid.across.map((columns) => toldOf(shown, columns, rows)));
  return framedPages(bodies, frame, measure).map((page, i) => ({ ...page, told: [page.title, ...told[i]] }));
}

function fitted(shown: MatrixShown, room: PageRoom, line: number, most: number) {
  const grid = matrixGrid(shown, room, most);
  if (pagesOf(grid) === 1) return { grid, room };
  const lower = below(room, line);
  return { grid: matrixGrid(shown, lower, most), room: lower };
}

function below({ y, height, ...room }: PageRoom, by: number): PageRoom {
  return { ...room, y: y + by, height: height - by };
}

function shownOf(ground: SheetGround, { blanksOnly, units }: MatrixOrder): MatrixShown {
  const entrants = entrantsOf(ground.family);
  const rows = entrants.flatMap(({ kind }, i) => (blanksOnly && kind === 'tool' ? [] : [i]));
  const figures = new Set(rows.flatMap((row) => ground.fits.fits[row].map((fit) => marginFigure(fit, units))));
  const needs = cellNeeds(figures, ground.measure);
  return { ground, units, rows, entrants: rows.map((i) => entrants[i]), openings: openingsOf(ground.family), needs };
}

function emptyPage({ measure }: SheetGround, frame: PageFrame, room: PageRoom): Page[] {
  const words = 'There is nothing to show: the family needs at least one keyway and one blank.';
  const block = layOutParagraph(words, { width: room.width, size: 4 * frame.zoom }, measure);
  return framedPages([{ marks: placeBlock(block, room.x, room.y) }], frame, measure);
}

/** "Keyways 1 to 12 of 73, rows 1 to 31 of 64"; '' where one page shows all. */
function partWords(
  { openings, entrants }: MatrixShown,
  { across, down }: MatrixGrid,
  columns: readonly number[],
  rows: readonly number[],
): string {
  const stretch = (what: string, of: readonly number[], all: number) =>
    `${what} ${of[0] + 1} to ${of[of.length - 1] + 1} of ${all}`;
  const parts = [
    ...(across.length > 1 ? [stretch('keyways', columns, openings.length)] : []),
    ...(down.length > 1 ? [stretch('blanks and tools', rows, entrants.length)] : []),
  ];
  const words = parts.join(', ');
  return words === '' ? '' : `${words[0].toUpperCase()}${words.slice(1)}`;
}

/** What the marks and the figures mean, in as many lines as the page needs. */
function legendBlock({ ground, units, entrants, openings }: MatrixShown, width: number, size: number): Block {
  const { measure, family } = ground;
  const running = gapText(family.runningClearance, units);
  const sections = new Set(openings.map(({ section }) => section));
  const meanings: readonly (readonly [Verdict, string])[] = [
    ['enters', `goes in, ${running} or more free all round`],
    ['tight', `goes in, less than ${running} free`],
    ['blocked', 'does not go in'],
  ];
  const items = meanings.map(([verdict, meaning]) =>
    rowOfBlocks([verdictMark(verdict, size), line(`${VERDICT_WORDS[verdict]}: ${meaning}`, size, measure)], size * 0.4),
  );
  items.push(
    line(`Figures in ${marginUnit(units)}: + free all round, − too deep`, size, measure),
    line('judged as new parts, held upright', size, measure),
    ...(entrants.some(({ section }) => section !== undefined && sections.has(section))
      ? [rowOfBlocks([ownSample(size), line('blank and keyway of one section', size, measure)], size * 0.4)]
      : []),
  );
  return inLines(items, width, size);
}

function line(text: string, size: number, measure: SheetGround['measure']): Block {
  return layOutParagraph(text, { width: measure.width(text, size) + 0.01, size }, measure);
}

function ownSample(size: number): Block {
  return { width: size * 1.7, height: size * 1.1, marks: [ownFrame(size * 1.7, size * 1.1, size)] };
}

/** Items beside each other as long as there is room, then on the next line. */
function inLines(items: readonly Block[], width: number, size: number): Block {
  const lines: Block[][] = [[]];
  let x = 0;
  for (const item of items) {
    if (x > 0 && x + item.width > width) {
      lines.push([]);
      x = 0;
    }
    lines[lines.length - 1].push(item);
    x += item.width + 2 * size;
  }
  return stackBlocks(
    lines.map((of) => rowOfBlocks(of, 2 * size)),
    size * 0.2,
  );
}

/** Row by row in words. */
function toldOf(
  { ground, units, rows, entrants, openings }: MatrixShown,
  columns: readonly number[],
  ofRows: readonly number[],
): string[] {
  return ofRows.map((i) => {
    const cells = columns.map((k) => {
      const fit = ground.fits.fits[rows[i]][k];
      return `${openings[k].name} ${VERDICT_WORDS[fit.verdict]}, ${marginText(fit, units, 'not measured')}`;
    });
    return `${entrants[i].name}: ${cells.join('; ')}.`;
  });
}
