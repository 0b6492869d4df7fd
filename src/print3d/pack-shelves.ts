/** Something with a width and a depth, in millimetres. */
export interface Footprint {
  readonly width: number;
  readonly depth: number;
}

/** Where a footprint lies: which sheet, and its corner at the left front. */
export interface Spot {
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
}

/** Where the next footprint may go: a row of columns, the last of them begun. */
interface Shelf {
  sheet: number;
  /** Front and depth of the row. */
  y: number;
  depth: number;
  /** Left edge and width of the column, and how much of the row's depth it has taken. */
  x: number;
  width: number;
  taken: number;
}

/**
 * Places footprints in rows of columns on sheets, in the order given: a row is as deep as its first footprint or deeper,
 * and smaller ones stand behind each other in it. None overlap, and `apart` is left between neighbours. One that is larger
 * than a sheet gets a sheet of its own.
 *
 * @param sheet the room of one sheet.
 * @returns a spot each, in the order given.
 * @check tests/unit/print3d/pack-shelves.test.ts
 */
export function packShelves(footprints: readonly Footprint[], sheet: Footprint, apart: number): Spot[] {
  const shelf: Shelf = { sheet: 0, y: 0, depth: 0, x: 0, width: 0, taken: 0 };
  return footprints.map((footprint, i) => {
    const behind = shelf.taken + apart + footprint.depth <= shelf.depth && footprint.width <= shelf.width;
    if (i > 0 && !behind) beginColumn(shelf, footprint, sheet, apart);
    const y = shelf.y + (i > 0 && behind ? shelf.taken + apart : 0);
    shelf.width = Math.max(shelf.width, footprint.width);
    shelf.taken = y - shelf.y + footprint.depth;
    shelf.depth = Math.max(shelf.depth, shelf.taken);
    return { sheet: shelf.sheet, x: shelf.x, y };
  });
}

/** The next column, in a new row or on a new sheet where there is no room for it. */
function beginColumn(shelf: Shelf, { width, depth }: Footprint, sheet: Footprint, apart: number): void {
  shelf.x += shelf.width + apart;
  if (shelf.x + width > sheet.width) Object.assign(shelf, { x: 0, y: shelf.y + shelf.depth + apart, depth: 0 });
  if (shelf.y + depth > sheet.depth) Object.assign(shelf, { sheet: shelf.sheet + 1, x: 0, y: 0, depth: 0 });
  Object.assign(shelf, { width: 0, taken: 0 });
}
