import type { PlugFace } from '../../../family/plug-face.ts';
import type { CellMeasures } from '../../panels/wall/wall-cell.tsx';

/** How the cells of a wall stand. */
export interface WallLayout extends CellMeasures {
  readonly columns: number;
  readonly cellHeight: number;
  /** Sizes of the engraved name, the word and the margin, in pixels. */
  readonly type: { readonly name: number; readonly word: number; readonly margin: number };
}

/** A cell narrower than this could not hold "0.21 mm too deep" at 14 pixels. */
const LEAST_CELL_WIDTH = 122;
/** Below this scale wards can no longer be told apart across a desk; the wall scrolls instead. */
const LEAST_PX_PER_MM = 11;
/** With more plugs than this the blanks are simply there: so many moving at once would be late. */
const MOST_GLIDING = 24;
/** Beside a plug on both sides together: at least so many pixels, and this share of a cell. */
const SIDE_ROOM = 14;
const SIDE_SHARE = 0.1;
const TOP_ROOM = 20;

/**
 * The number of columns that shows `count` plugs largest in a wall of so many pixels; where even that is
 * too small to read, the cells keep a readable size and the wall scrolls.
 *
 * @check tests/unit/app/wall-layout.test.ts
 */
export function wallLayout(count: number, width: number, height: number, face: PlugFace): WallLayout {
  const mostColumns = Math.max(1, Math.min(count, Math.floor(width / LEAST_CELL_WIDTH)));
  let best: WallLayout | null = null;
  for (let columns = 1; columns <= mostColumns; columns++) {
    const rows = Math.ceil(count / columns);
    const layout = layOut(columns, width / columns, height / rows, face, count <= MOST_GLIDING);
    if (!best || layout.pxPerMm > best.pxPerMm) best = layout;
  }
  if (best && best.pxPerMm >= LEAST_PX_PER_MM) return best;
  const cellWidth = width / mostColumns;
  const scale = Math.max(LEAST_PX_PER_MM, Math.min(16, (cellWidth - SIDE_ROOM) / (2 * face.half)));
  const cellHeight = scale * 2 * face.radius + TOP_ROOM + wordsHeight(typeOf(cellWidth));
  return layOut(mostColumns, cellWidth, cellHeight, face, count <= MOST_GLIDING);
}

function layOut(columns: number, cellWidth: number, cellHeight: number, face: PlugFace, glides: boolean): WallLayout {
  const type = typeOf(cellWidth);
  const sideRoom = Math.max(SIDE_ROOM, SIDE_SHARE * cellWidth);
  const pictureWidth = Math.floor(cellWidth) - 10;
  const pictureHeight = Math.floor(cellHeight - TOP_ROOM - wordsHeight(type));
  const pxPerMm = Math.min((cellWidth - sideRoom) / (2 * face.half), (pictureHeight - 6) / (2 * face.radius));
  return {
    columns,
    cellHeight: Math.floor(cellHeight),
    pxPerMm: Math.max(1, pxPerMm),
    pictureWidth,
    pictureHeight: Math.max(24, Math.min(pictureHeight, Math.ceil(pxPerMm * 2 * face.radius) + 8)),
    glides,
    markSize: Math.round(type.word * 1.25),
    type,
  };
}

function typeOf(cellWidth: number): WallLayout['type'] {
  const name = clamp(cellWidth / 8.2, 16, 30);
  return { name, word: clamp(name * 0.92, 15, 26), margin: clamp(name * 0.82, 14, 24) };
}

function wordsHeight(type: WallLayout['type']): number {
  return 1.25 * (type.name + type.word * 1.05 + type.margin);
}

function clamp(value: number, least: number, most: number): number {
  return Math.round(Math.max(least, Math.min(most, value)));
}
