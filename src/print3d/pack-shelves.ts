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

/**
 * Places footprints in rows on as few sheets as rows in the given order take; none overlap, and `apart` is left between
 * neighbours. One that is larger than a sheet gets a sheet of its own.
 *
 * @param sheet the room of one sheet.
 * @returns a spot each, in the order given.
 * @check tests/unit/print3d/pack-shelves.test.ts
 */
export function packShelves(footprints: readonly Footprint[], sheet: Footprint, apart: number): Spot[] {
  let [number, x, y, row] = [0, 0, 0, 0];
  return footprints.map(({ width, depth }) => {
    if (x > 0 && x + width > sheet.width) [x, y, row] = [0, y + row + apart, 0];
    if (x + y > 0 && y + depth > sheet.depth) [number, x, y, row] = [number + 1, 0, 0, 0];
    const spot = { sheet: number, x, y };
    x += width + apart;
    row = Math.max(row, depth);
    return spot;
  });
}
