import type { DisplaySetup } from './display-setup.ts';
import { type Footprint, packShelves } from './pack-shelves.ts';

/** A slot of a board: its corner at the left front, its size, and which of the things it is for; millimetres. */
export interface BoardSlot extends Footprint {
  readonly x: number;
  readonly y: number;
  /** Number of what stands in it. */
  readonly holds: number;
}

/** A board, or one piece of it where the bed is too small for all. */
export interface BoardPiece extends Footprint {
  readonly slots: readonly BoardSlot[];
  /** How high the strip for the title is, at the front. */
  readonly strip: number;
}

/** How much of the letters' em the strip for the title is high. */
const STRIP = 1.5;

/**
 * A board with a slot for each thing that stands on it, the fitting gap round it, walls between.
 *
 * @param things what stands on it.
 * @check tests/unit/print3d/plan-board.test.ts
 */
export function planBoard(things: readonly Footprint[], setup: DisplaySetup): BoardPiece[] {
  if (things.length === 0) return [];
  const { gap, wall, bed, letters, letterSize } = setup;
  const strip = letters ? letterSize * STRIP : 0;
  const slots = things.map(({ width, depth }) => ({ width: width + 2 * gap, depth: depth + 2 * gap }));
  const room = { width: bed[0] - 2 * wall, depth: bed[1] - 2 * wall - strip };
  const spots = packShelves(slots, room, wall);
  const pieces = Math.max(...spots.map(({ sheet }) => sheet)) + 1;
  return Array.from({ length: pieces }, (_, piece) => {
    const own = spots.flatMap(({ sheet, x, y }, holds) =>
      sheet === piece ? [{ ...slots[holds], x: wall + x, y: wall + strip + y, holds }] : [],
    );
    return {
      slots: own,
      strip,
      width: Math.max(...own.map((slot) => slot.x + slot.width)) + wall,
      depth: Math.max(...own.map((slot) => slot.y + slot.depth)) + wall,
    };
  });
}
