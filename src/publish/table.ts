import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, placeBlock, tablePart } from './block.ts';
import type { FlowItem } from './flow-blocks.ts';
import { layOutParagraph, SHARE_BEFORE } from './paragraph.ts';
import { drawn, filled, polyline, rectangle } from './strokes.ts';

/** A column of a table. */
export interface TableColumn {
  readonly head: string;
  /** Millimetres. */
  readonly width: number;
  readonly align?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
}

/** A cell: words that are wrapped, or a block no wider than its column. */
export type TableCell = string | Block;

/** How a table is set. */
export interface TableStyle {
  /** Height of the em, millimetres. */
  readonly size: number;
  readonly measure: TextMeasure;
}

/** A table with its head apart, so that each page can open with it. */
export interface LaidOutTable {
  readonly head: Block;
  readonly rows: readonly Block[];
}

/**
 * A table: a head in bold, rows with a rule under each.
 *
 * @param rows cells in the order of the columns.
 * @returns rows as wide as the columns together; cells are wrapped, never cut.
 * @check tests/unit/publish/page-parts.test.ts
 */
export function layOutTable(
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
  style: TableStyle,
): LaidOutTable {
  const heads = columns.map(({ head }) => head);
  return {
    head: rowBlock(
      columns.map((column) => ({ ...column, bold: true })),
      heads,
      style,
      true,
    ),
    rows: rows.map((cells) => rowBlock(columns, cells, style, false)),
  };
}

/** The table for {@link flowBlocks} where it need not be parted: its head stays with its first row. */
export function tableItems({ head, rows }: LaidOutTable, gap = 0): FlowItem[] {
  return [{ block: head, gap, keep: true }, ...rows.map((block) => ({ block }))];
}

/** Room round the words of a cell, in heights of the em. */
const PAD = { x: 0.4, y: 0.25 };

function rowBlock(
  columns: readonly TableColumn[],
  cells: readonly TableCell[],
  { size, measure }: TableStyle,
  isHead: boolean,
): Block {
  const pad = { x: PAD.x * size, y: PAD.y * size };
  const blocks = columns.map(({ width, align, bold }, i): Block => {
    const cell = cells[i] ?? '';
    if (typeof cell !== 'string') return cell;
    const style = { width: width - 2 * pad.x, size, ...(align && { align }), ...(bold && { bold }) };
    return layOutParagraph(cell, style, measure);
  });
  const height = Math.max(size, ...blocks.map((block) => block.height)) + 2 * pad.y;
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  let x = 0;
  const marks = blocks.map((block, i) => {
    const { width: wide, align = 'start' } = columns[i];
    const spare = wide - 2 * pad.x - block.width;
    const from = x + pad.x + SHARE_BEFORE[align] * spare;
    x += wide;
    return tablePart(isHead ? 'head' : 'cell', placeBlock(block, from, (height - block.height) / 2));
  });
  const under = drawn([polyline([0, height], [width, height])], isHead ? 'ink' : 'faint', isHead ? 0.25 : 0.18);
  return {
    width,
    height,
    marks: [
      ...(isHead ? [filled([rectangle(0, 0, width, height)], 'faint')] : []),
      tablePart('row', [...marks, under]),
    ],
  };
}
