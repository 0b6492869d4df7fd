import { VERDICT_WORDS } from '../family/margin-text.ts';
import type { Profile } from '../profile/profile.ts';
import { shortNameOf } from '../teach/teaching-knowledge.ts';
import { type Block, placeBlock, tablePart } from './block.ts';
import { type CellNeeds, matrixCell } from './matrix-figures.ts';
import { type ColumnHeads, columnHeads, HEAD_PAD, type HeadStyle, rowHead } from './matrix-heads.ts';
import type { Mark } from './page.ts';
import type { PageRoom } from './page-frame.ts';
import { layOutParagraph } from './paragraph.ts';
import { sizeOfRing } from './section-picture.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { MatrixOrder } from './sheet-order.ts';
import { drawn, polyline, rectangle } from './strokes.ts';

/** The rows and columns that are shown, in chart order. */
export interface MatrixShown {
  readonly ground: SheetGround;
  readonly units: MatrixOrder['units'];
  /** Rows of the ground's matrix, by their numbers. */
  readonly rows: readonly number[];
  readonly entrants: readonly Profile[];
  readonly openings: readonly Profile[];
  /** Of every cell, whatever the size of the type. */
  readonly needs: CellNeeds;
}

/** A matrix set in one size of type, parted into pages of so many columns and rows. */
export interface MatrixGrid {
  /** Height of the em, millimetres. */
  readonly size: number;
  readonly headWidth: number;
  readonly cellWidth: number;
  readonly heads: ColumnHeads;
  readonly rowHeads: readonly Block[];
  /** Numbers of columns and of rows that stand together. */
  readonly across: readonly (readonly number[])[];
  readonly down: readonly (readonly number[])[];
}

/** The least type on any paper, millimetres: 6 points. What is larger is a multiple of it. */
const LEAST = 2.12;
const STEP = 1.04;

/** Width of the names beside the rows, in heights of the em: no less and no more than so much. */
const NAME = { least: 9, most: 20 };

/** How much wider than its needs a cell may be made, so that a page is filled. */
const STRETCH = 2;

/**
 * The grid that takes fewest pages, in the largest type that takes no more.
 *
 * @param most the largest type, millimetres.
 */
export function matrixGrid(shown: MatrixShown, room: PageRoom, most: number): MatrixGrid {
  let best = gridOf(shown, room, LEAST);
  const pages = pagesOf(best);
  for (let size = LEAST * STEP; size <= most; size *= STEP) {
    const larger = gridOf(shown, room, size);
    if (pagesOf(larger) > pages) break;
    best = larger;
  }
  return best;
}

/** How many pages a grid takes. */
export function pagesOf({ across, down }: MatrixGrid): number {
  return across.length * down.length;
}

function gridOf(shown: MatrixShown, room: PageRoom, size: number): MatrixGrid {
  const { ground, entrants, openings, needs } = shown;
  const { measure } = ground;
  const style = headStyle(shown, size, needs.height);
  const names = openings.map(shortNameOf);
  const widest = Math.max(0, ...entrants.map(({ name }) => measure.width(name, size, true)));
  const nameWidth = Math.min(NAME.most * size, Math.max(NAME.least * size, widest));
  const headWidth = Math.min(room.width * 0.5, nameWidth + style.picture.width + 3.2 * HEAD_PAD * size);
  const rest = room.width - headWidth;
  const least = needs.width * size;
  const atOnce = Math.max(1, Math.floor((rest + 1e-9) / least));
  const across = evenly(openings.length, atOnce);
  const columns = Math.max(1, ...across.map(({ length }) => length));
  const cellWidth = Math.min(rest / columns, least * STRETCH);
  const heads = columnHeads(openings, names, cellWidth, Math.min(26 * size, room.height * 0.4), style);
  const counts = shown.rows.map((row) => countWords(ground, row));
  const rowHeads = entrants.map((profile, i) => rowHead(profile, counts[i], headWidth, style));
  const heights = rowHeads.map(({ height }) => Math.max(height, needs.height * size));
  const down = packed(heights, room.height - heads.height);
  return { size, headWidth, cellWidth, heads, rowHeads, across, down };
}

/** All sections at one scale, the tallest as high as a row. */
function headStyle({ ground, entrants, openings }: MatrixShown, size: number, rowHeight: number): HeadStyle {
  const sizes = [...entrants, ...openings].map(({ ring }) => sizeOfRing(ring));
  const widest = Math.max(0.1, ...sizes.map(({ width }) => width));
  const tallest = Math.max(0.1, ...sizes.map(({ height }) => height));
  const scale = Math.min((size * rowHeight * 0.92) / tallest, (size * 4.5) / widest);
  const metal = 0.6 * size;
  return {
    size,
    measure: ground.measure,
    scale,
    picture: { width: widest * scale, height: tallest * scale + metal },
  };
}

function countWords({ table }: SheetGround, row: number): string {
  const inside = table.goesIn[row].filter((cell) => cell === true).length;
  return `goes into ${inside} of ${table.openings.length}`;
}

/** Numbers from 0 in as few runs as hold `most` each, all about as long. */
function evenly(count: number, most: number): number[][] {
  const runs = Math.max(1, Math.ceil(count / most));
  const each = Math.ceil(count / runs);
  const all = Array.from({ length: count }, (_, i) => i);
  return Array.from({ length: runs }, (_, r) => all.slice(r * each, (r + 1) * each));
}

/** Numbers of rows in runs no higher than a page, at least one row each. */
function packed(heights: readonly number[], room: number): number[][] {
  const runs: number[][] = [[]];
  let y = 0;
  for (const [i, height] of heights.entries()) {
    if (y > 0 && y + height > room + 1e-6) {
      runs.push([]);
      y = 0;
    }
    runs[runs.length - 1].push(i);
    y += height;
  }
  return runs;
}

/** One page of the grid, from its upper left corner. */
export function gridPage(
  shown: MatrixShown,
  grid: MatrixGrid,
  columns: readonly number[],
  rows: readonly number[],
): Block {
  const { size, headWidth, cellWidth, heads } = grid;
  const { ground, units, entrants, openings } = shown;
  const cellHeight = shown.needs.height * size;
  const width = headWidth + columns.length * cellWidth;
  const over = columns.map((k, n) => tablePart('head', placeBlock(heads.blocks[k], headWidth + n * cellWidth, 0)));
  const marks: Mark[] = [tablePart('row', [cornerHead(shown, grid), ...over])];
  const levels = [heads.height];
  for (const i of rows) {
    const y = levels[levels.length - 1];
    const height = Math.max(cellHeight, grid.rowHeads[i].height);
    const cells = columns.map((k, n) => {
      const own = entrants[i].section !== undefined && entrants[i].section === openings[k].section;
      const fit = ground.fits.fits[shown.rows[i]][k];
      const style = { size, width: cellWidth, height, units, measure: ground.measure, own };
      const label = `${entrants[i].name} in ${openings[k].name}: ${VERDICT_WORDS[fit.verdict]}`;
      const cell = placeBlock(matrixCell(fit, style), headWidth + n * cellWidth, y);
      return { ...tablePart('cell', cell), label };
    });
    const head = placeBlock(grid.rowHeads[i], 0, y + (height - grid.rowHeads[i].height) / 2);
    marks.push(tablePart('row', [tablePart('head', head), ...cells]));
    levels.push(y + height);
  }
  const height = levels[levels.length - 1];
  return { width, height, marks: [...marks, ...rules(levels, width, grid, columns.length)] };
}

/** What stands beside the rows, over them. */
function cornerHead({ ground, entrants }: MatrixShown, { size, headWidth, heads }: MatrixGrid): Mark {
  const words = entrants.some(({ kind }) => kind === 'tool') ? 'Blank or tool' : 'Blank';
  const pad = HEAD_PAD * size;
  const style = { width: headWidth - 2 * pad, size: size * 0.92, ink: 'soft' } as const;
  const told = layOutParagraph(words, style, ground.measure);
  return tablePart('head', placeBlock(told, pad, heads.height - told.height - pad));
}

function rules(levels: readonly number[], width: number, grid: MatrixGrid, columns: number): Mark[] {
  const { size, headWidth, cellWidth } = grid;
  const height = levels[levels.length - 1];
  const thin = size * 0.05;
  const inner = levels.slice(1, -1).map((y) => polyline([0, y], [width, y]));
  const upright = Array.from({ length: Math.max(0, columns - 1) }, (_, n) => headWidth + (n + 1) * cellWidth);
  return [
    drawn([...inner, ...upright.map((x) => polyline([x, 0], [x, height]))], 'rule', thin),
    drawn(
      [polyline([0, levels[0]], [width, levels[0]]), polyline([headWidth, 0], [headWidth, height])],
      'ink',
      size * 0.11,
    ),
    drawn([rectangle(0, 0, width, height)], 'ink', size * 0.11),
  ];
}
