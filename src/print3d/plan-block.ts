import type { Profile } from '../profile/profile.ts';
import type { DisplaySetup } from './display-setup.ts';
import type { Footprint } from './pack-shelves.ts';
import { printedBox } from './section-loops.ts';

/** An opening in its part of the block; millimetres. */
export interface BlockCell {
  readonly opening: Profile;
  /** Where the origin of its drawing lies. */
  readonly origin: readonly [number, number];
  /** The middle of the room for its name, below it, and how wide that is. */
  readonly label: { readonly x: number; readonly y: number; readonly width: number };
}

/** One part of the block: as much as the bed takes. */
export interface BlockTile extends Footprint {
  readonly cells: readonly BlockCell[];
}

/** How much of the letters' em a band for names is high. */
const BAND = 1.3;

/** Left between the names of two neighbours, millimetres. */
const LABELS_APART = 2.5;

/** Left between the grips of two coupons that are in neighbouring openings, millimetres. */
const GRIPS_APART = 1;

/**
 * Openings in rows from the top left, each in the middle of a cell that takes the largest of them with its walls, and the
 * largest grip; cut between cells where the bed is too small.
 *
 * @param grips of the coupons.
 * @check tests/unit/print3d/plan-block.test.ts
 */
export function planBlock(openings: readonly Profile[], grips: readonly Footprint[], setup: DisplaySetup): BlockTile[] {
  if (openings.length === 0) return [];
  const cell = cellOf(openings, grips, setup);
  const columns = Math.min(setup.columns, openings.length);
  const rows = Math.ceil(openings.length / columns);
  const across = sharesOf(columns, (setup.bed[0] - setup.wall) / cell.width);
  const down = sharesOf(rows, (setup.bed[1] - setup.wall) / cell.depth);
  return down.flatMap((rowsOf) =>
    across.flatMap((columnsOf) => {
      const tile = tileOf(openings, { columns, rowsOf, columnsOf }, cell, setup);
      return tile.cells.length > 0 ? [tile] : [];
    }),
  );
}

interface Cell extends Footprint {
  readonly band: number;
}

function cellOf(openings: readonly Profile[], grips: readonly Footprint[], setup: DisplaySetup): Cell {
  const boxes = openings.map(({ ring }) => printedBox(ring, setup.scale));
  const band = setup.letters ? setup.letterSize * BAND : 0;
  const width = Math.max(...boxes.map(({ minX, maxX }) => maxX - minX)) + setup.wall;
  const depth = Math.max(...boxes.map(({ minY, maxY }) => maxY - minY)) + setup.wall;
  return {
    width: Math.max(width, ...grips.map((grip) => grip.width + GRIPS_APART)),
    depth: Math.max(depth, ...grips.map((grip) => grip.depth + GRIPS_APART)) + band,
    band,
  };
}

/** Numbers from 0 in runs of nearly the same length, none longer than what there is room for. */
function sharesOf(count: number, room: number): number[][] {
  const runs = Math.ceil(count / Math.max(1, Math.floor(room)));
  const length = Math.ceil(count / runs);
  const numbers = Array.from({ length: count }, (_, i) => i);
  return Array.from({ length: runs }, (_, run) => numbers.slice(run * length, (run + 1) * length)).filter(
    (run) => run.length > 0,
  );
}

interface TileShare {
  readonly columns: number;
  readonly rowsOf: readonly number[];
  readonly columnsOf: readonly number[];
}

function tileOf(
  openings: readonly Profile[],
  { columns, rowsOf, columnsOf }: TileShare,
  cell: Cell,
  { wall, scale }: DisplaySetup,
): BlockTile {
  const cells = rowsOf.flatMap((row, down) =>
    columnsOf.flatMap((column, across) => {
      const number = row * columns + column;
      if (column >= columns || number >= openings.length) return [];
      const left = wall / 2 + across * cell.width;
      const low = wall / 2 + (rowsOf.length - 1 - down) * cell.depth;
      return [cellAt(openings[number], left, low, cell, scale)];
    }),
  );
  return { cells, width: columnsOf.length * cell.width + wall, depth: rowsOf.length * cell.depth + wall };
}

function cellAt(opening: Profile, left: number, low: number, cell: Cell, scale: number): BlockCell {
  const { minX, minY, maxX, maxY } = printedBox(opening.ring, scale);
  const middle = left + cell.width / 2;
  const height = low + cell.band + (cell.depth - cell.band) / 2;
  return {
    opening,
    origin: [middle - (minX + maxX) / 2, height - (minY + maxY) / 2],
    label: { x: middle, y: low + cell.band / 2, width: cell.width - LABELS_APART },
  };
}
