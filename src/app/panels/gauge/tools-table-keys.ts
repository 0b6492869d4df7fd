/** A cell: row -1 is the head, column 0 the names. */
export interface TablePlace {
  readonly row: number;
  readonly column: number;
}

/** So many rows are a page. */
const PAGE = 8;

/**
 * The cell that a key leads to; null for keys that lead nowhere.
 *
 * @check tests/unit/app/gauge-tools.test.ts
 */
export function placeAfter({ row, column }: TablePlace, key: string, rows: number, columns: number): TablePlace | null {
  const to = (r: number, c: number) => ({
    row: Math.min(rows - 1, Math.max(-1, r)),
    column: Math.min(columns, Math.max(0, c)),
  });
  switch (key) {
    case 'ArrowDown':
      return to(row + 1, column);
    case 'ArrowUp':
      return to(row - 1, column);
    case 'ArrowRight':
      return to(row, column + 1);
    case 'ArrowLeft':
      return to(row, column - 1);
    case 'Home':
      return to(row, 0);
    case 'End':
      return to(row, columns);
    case 'PageDown':
      return to(row + PAGE, column);
    case 'PageUp':
      return to(row - PAGE, column);
    default:
      return null;
  }
}
