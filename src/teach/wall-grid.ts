import type { PlugFace } from '../family/plug-face.ts';

/** The space that a wall has, in its own measure: pixels of a screen, millimetres of paper. */
export interface WallRoom {
  readonly width: number;
  readonly height: number;
}

/** What the cells of a wall are made of; lengths in the measure of its room. */
export interface WallCells {
  readonly face: PlugFace;
  /** Names are not read in a narrower cell. */
  readonly leastWidth: number;
  /** Plugs smaller than this, for a millimetre of the part, cannot be told apart from the last row. */
  readonly leastScale: number;
  /** What is kept free beside the picture. */
  readonly beside: number;
  /** Height of a line for what there is no room for. */
  readonly rest: number;
  /** Height of all that stands under the picture in a cell of this width. */
  under(width: number): number;
}

/** How the cells of a wall stand on a slide. */
export interface WallGrid {
  readonly columns: number;
  /** How many cells there is room for. */
  readonly places: number;
  /** How large a millimetre of the part is drawn. */
  readonly scale: number;
  /** Of a cell. */
  readonly width: number;
  readonly height: number;
}

/** Plugs this share of the largest possible are as good, where they fill more of the room. */
const AS_LARGE = 0.75;

/**
 * The grid that shows `count` plugs about as large as there is room for, with their words under each: of grids that are
 * nearly as good the one of most rows, so that a slide is not left empty over and under a single one. Where even the smallest
 * plugs that can be told apart are too many, the grid has fewer places than asked for and leaves a line for what is said
 * of the others.
 *
 * @check tests/unit/teach/wall-grid.test.ts
 */
export function wallGrid(count: number, room: WallRoom, cells: WallCells): WallGrid {
  const most = Math.max(1, Math.min(count, Math.floor(room.width / cells.leastWidth)));
  const grids = Array.from({ length: most }, (_, i) =>
    layOut(i + 1, Math.ceil(count / (i + 1)), room, cells, Math.max(1, count)),
  );
  const largest = Math.max(...grids.map(({ scale }) => scale));
  if (largest >= cells.leastScale) {
    const enough = Math.max(cells.leastScale, AS_LARGE * largest);
    return grids.find(({ scale }) => scale >= enough) ?? grids[most - 1];
  }
  const lower = { ...room, height: room.height - cells.rest };
  const tall = cells.leastScale * 2 * cells.face.radius + cells.under(room.width / most);
  const rows = Math.max(1, Math.floor(lower.height / tall));
  return layOut(most, rows, lower, cells, most * rows);
}

function layOut(columns: number, rows: number, room: WallRoom, cells: WallCells, places: number): WallGrid {
  const { face, beside, under } = cells;
  const width = room.width / columns;
  const height = room.height / rows;
  const scale = Math.min((width - beside) / (2 * face.half), (height - under(width)) / (2 * face.radius));
  return { columns, places, scale: Math.max(1 / (2 * face.radius), scale), width, height };
}
