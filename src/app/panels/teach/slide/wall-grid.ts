import type { PlugFace } from '../../../../family/plug-face.ts';

/** The space that a picture has, in pixels. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** How the cells of a wall stand on a slide. */
export interface WallGrid {
  readonly columns: number;
  /** How many cells there is room for. */
  readonly places: number;
  readonly pxPerMm: number;
  readonly pictureWidth: number;
  readonly pictureHeight: number;
  /** Size of type, in pixels. */
  readonly type: number;
}

/** Plugs smaller than this cannot be told apart from the last row. */
const LEAST_PX_PER_MM = 9;

/**
 * The grid that shows `count` plugs largest with two lines of type under each. Where even the smallest plugs that can be
 * told apart are too many, the grid has fewer places than asked for and leaves a line for what is said of the others.
 *
 * @check tests/unit/app/wall-grid.test.ts
 */
export function wallGrid(count: number, room: Room, face: PlugFace, type: number): WallGrid {
  const least = type * 5.2;
  const most = Math.max(1, Math.min(count, Math.floor(room.width / least)));
  let best: WallGrid | null = null;
  for (let columns = 1; columns <= most; columns++) {
    const grid = layOut(columns, Math.ceil(count / columns), room, face, type, count);
    if (!best || grid.pxPerMm > best.pxPerMm) best = grid;
  }
  if (best && best.pxPerMm >= LEAST_PX_PER_MM) return best;
  const lower = { ...room, height: room.height - type * 1.6 };
  const rows = Math.max(1, Math.floor(lower.height / (LEAST_PX_PER_MM * 2 * face.radius + type * 2.9)));
  return layOut(most, rows, lower, face, type, most * rows);
}

function layOut(columns: number, rows: number, room: Room, face: PlugFace, type: number, places: number): WallGrid {
  const pictureWidth = Math.floor(room.width / columns) - 8;
  const pictureHeight = Math.max(20, Math.floor(room.height / rows - type * 2.9));
  const pxPerMm = Math.min((pictureWidth - 8) / (2 * face.half), (pictureHeight - 8) / (2 * face.radius));
  return { columns, places, pxPerMm: Math.max(1, pxPerMm), pictureWidth, pictureHeight, type };
}
