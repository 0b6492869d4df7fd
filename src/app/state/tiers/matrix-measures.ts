import { isMeasured } from '../../../family/fit-cache.ts';
import { shiftText, type Units } from '../../../family/length-text.ts';
import type { Fit } from '../../../fit/fit.ts';
import { textWidth, wrapWords } from './text-width.ts';
import type { CellSize } from './tiers-state.ts';

/** Sizes of the matrix's parts in pixels. */
export interface MatrixMeasures {
  readonly size: CellSize;
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly mark: number;
  /** Whether a cell has its margin beside the mark. */
  readonly margins: boolean;
  /** Width of the names at the left. */
  readonly nameWidth: number;
  /** Height of the names on top. */
  readonly headHeight: number;
  /** Whether the names on top stand aslant. */
  readonly aslant: boolean;
  /** Room at the right for the last name that stands aslant. */
  readonly overhang: number;
}

const CELLS: Readonly<Record<CellSize, Pick<MatrixMeasures, 'cellWidth' | 'cellHeight' | 'mark'>>> = {
  small: { cellWidth: 28, cellHeight: 32, mark: 18 },
  middle: { cellWidth: 44, cellHeight: 38, mark: 25 },
  large: { cellWidth: 96, cellHeight: 42, mark: 22 },
};

/** Names on top lean by this angle, degrees from level. */
export const LEAN_DEG = 58;

/** Type sizes of the names at the left and on top, pixels. */
const ROW_NAME = 15;
const COLUMN_NAME = 16;

/** What stands beside a name at the left: its edges and the count. */
const BESIDE_NAME = 54;

/** Names on top longer than this are cut. */
const MOST_COLUMN_NAME = 184;

const SCROLLBAR = 12;

/** What is to be laid out: names of rows and columns as they are written. */
export interface MatrixNames {
  readonly rows: readonly string[];
  readonly columns: readonly string[];
}

/** The parts of the width that a matrix of small cells would like: with names in one line, and in two. */
export interface MatrixWidths {
  readonly oneLine: number;
  readonly twoLines: number;
  /** Longest name on top, pixels along it. */
  readonly columnName: number;
  /** Everything but the names at the left, with small cells. */
  readonly rest: number;
}

/** How wide a matrix would like to be, by its names; measured once a family. */
export function matrixWidths({ rows, columns }: MatrixNames): MatrixWidths {
  const whole = Math.max(60, ...rows.map((name) => textWidth(name, ROW_NAME)));
  let half = 90;
  while (half < whole && rows.some((name) => wrapWords(name, ROW_NAME, half).length > 2)) half += 10;
  const word = Math.max(0, ...rows.flatMap((name) => name.split(/\s+/)).map((text) => textWidth(text, ROW_NAME)));
  const columnName = Math.min(
    MOST_COLUMN_NAME,
    12 + Math.max(0, ...columns.map((name) => textWidth(name, COLUMN_NAME))),
  );
  const rest = columns.length * CELLS.small.cellWidth + overhangOf(columnName);
  return {
    oneLine: whole + BESIDE_NAME,
    twoLines: Math.max(half, Math.min(word, 160)) + BESIDE_NAME,
    columnName,
    rest,
  };
}

/** The width with which nothing of a matrix of small cells need be scrolled sideways. */
export function wantedWidth({ twoLines, rest }: MatrixWidths): number {
  return Math.min(240, twoLines) + rest + SCROLLBAR;
}

function overhangOf(columnName: number): number {
  return Math.round(columnName * Math.cos((LEAN_DEG * Math.PI) / 180));
}

/**
 * How large the parts of a matrix are: cells of the size asked for, or the largest with which all columns are seen
 * without scrolling, margins left out; names in one line where there is room, else in two.
 *
 * @param asked null: as large as lets all columns be seen.
 * @param width of the whole matrix, pixels.
 * @check tests/unit/app/tiers-matrix.test.ts
 */
export function matrixMeasures(
  asked: CellSize | null,
  columns: number,
  widths: MatrixWidths,
  width: number,
): MatrixMeasures {
  const { oneLine, twoLines, columnName } = widths;
  const overhang = overhangOf(columnName);
  const most = Math.min(300, width * 0.45);
  const cells = (size: CellSize) => columns * CELLS[size].cellWidth + overhang;
  const size = asked ?? (cells('middle') + Math.min(twoLines, most) <= width ? 'middle' : 'small');
  const name = oneLine + cells(size) <= width ? Math.min(oneLine, 300) : Math.min(twoLines, most);
  const aslant = size !== 'large' || columnName > 120;
  const rise = columnName * Math.sin((LEAN_DEG * Math.PI) / 180) + 18;
  return {
    size,
    ...CELLS[size],
    margins: size === 'large',
    nameWidth: Math.round(Math.max(120, name)),
    headHeight: Math.round(Math.max(88, aslant ? rise : 0)),
    aslant,
    overhang: aslant ? overhang : 8,
  };
}

/** The margin of a pair with its sign and without its unit, for a cell: "+0.055", "−0.252"; dots where not measured. */
export function cellMargin(fit: Fit, units: Units): string {
  if (!isMeasured(fit)) return '…';
  const signed = fit.verdict === 'blocked' ? -Math.abs(fit.clearance) : fit.clearance;
  return shiftText(signed, units).replace(/ .*$/, '');
}
