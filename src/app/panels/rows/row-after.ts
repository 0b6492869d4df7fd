/** The sizes of a table whose rows are all alike, pixels. */
export interface RowSizes {
  readonly row: number;
  /** The head, which stays in sight. */
  readonly head: number;
}

/**
 * The row that a key leads to: arrows by one, the page keys by what is seen, Home and End to the first and the last.
 *
 * @param at the row that the key is pressed on; -1 for none.
 * @param height of what scrolls, pixels.
 * @returns null for any other key, and where there are no rows.
 * @source keys of a grid: W3C, ARIA Authoring Practices Guide, grid pattern.
 * @check tests/unit/app/row-after.test.ts
 */
export function rowAfter(key: string, at: number, count: number, sizes: RowSizes, height: number): number | null {
  const page = Math.max(1, Math.floor((height - sizes.head) / sizes.row) - 1);
  const to = new Map([
    ['ArrowDown', at + 1],
    ['ArrowUp', at - 1],
    ['PageDown', at + page],
    ['PageUp', at - page],
    ['Home', 0],
    ['End', count - 1],
  ]).get(key);
  return to === undefined || count === 0 ? null : Math.max(0, Math.min(count - 1, to));
}
