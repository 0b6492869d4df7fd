import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, placeBlock } from './block.ts';
import type { ChartContent } from './chart-rows.ts';
import { baseName, type ChartSizes, columnName, rowWords } from './chart-sizes.ts';
import { type FlowItem, flowBlocks } from './flow-blocks.ts';
import type { Mark } from './page.ts';
import type { PageBody, PageRoom } from './page-frame.ts';
import { layOutTable, type TableColumn, type TableStyle } from './table.ts';

/** Whether some text of a block was shortened. */
function isShortened({ marks }: Pick<Block, 'marks'>): boolean {
  return marks.some((mark: Mark) =>
    mark.kind === 'text' ? mark.text.endsWith('…') : mark.kind === 'group' && isShortened(mark),
  );
}

/** Whether a chart at these sizes shortens a name or counts keyways away. */
export function leavesWordsOut(content: ChartContent, sizes: ChartSizes, measure: TextMeasure): boolean {
  const { rows, columns } = content;
  return (
    rows.some((row) => row.words !== row.allWords || isShortened(rowWords(row, sizes, measure))) ||
    columns.some((column) => {
      const base = baseName(column, sizes, measure);
      return isShortened(columnName(column, sizes, measure)) || (base !== null && isShortened(base));
    })
  );
}

/**
 * Who enters whom in words, nothing left out: a table of everything on the chart.
 *
 * @returns as few pages as it takes in type that can be read, in the largest type that takes no more.
 */
export function chartWordsPages(content: ChartContent, room: PageRoom, zoom: number, measure: TextMeasure): PageBody[] {
  const columns = [
    { head: 'Blank or tool', width: room.width * 0.36, bold: true },
    { head: 'What it enters', width: room.width * 0.64 },
  ];
  const alone = content.columns.flatMap(({ base, opening }) =>
    base ? [[base.name, `enters ${opening.name} alone`]] : [],
  );
  const several = [...content.rows].reverse().map(({ name, allWords }) => [name, allWords]);
  const outside = content.outside.map((name) => [name, 'enters no keyway']);
  const cells = [...several, ...alone, ...outside];
  const laid = SIZES.map((size) => tablePages(columns, cells, room, { size: size * zoom, measure }));
  const least = Math.min(...laid.map(({ length }) => length));
  const pages = laid.find(({ length }) => length === least) ?? laid[0];
  return pages.map((marks) => ({ title: 'Section chart, in words', marks }));
}

/** Sizes of type that are tried, millimetres at zoom 1: a few lines alone on a last page are worth smaller type. */
const SIZES = [2.9, 2.7, 2.5, 2.35];

/** The marks of each page of a table, its head on every page. */
function tablePages(
  columns: readonly TableColumn[],
  cells: readonly (readonly string[])[],
  room: PageRoom,
  style: TableStyle,
): Mark[][] {
  const { head, rows } = layOutTable(columns, cells, style);
  const below = { ...room, y: room.y + head.height, height: room.height - head.height };
  const items: FlowItem[] = rows.map((block) => ({ block }));
  return flowBlocks(items, below).map((marks) => [...placeBlock(head, room.x, room.y), ...marks]);
}
