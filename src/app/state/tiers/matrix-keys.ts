/** A place in the matrix; row or column -1 is a head. */
export interface MatrixPlace {
  readonly row: number;
  readonly column: number;
}

/** A key press, as far as the matrix asks. */
export interface MatrixKey {
  readonly key: string;
  /** Ctrl or Cmd. */
  readonly command: boolean;
  readonly alt: boolean;
}

/** How large the matrix is, and how much of it is seen at once. */
export interface MatrixMeasure {
  readonly rows: number;
  readonly columns: number;
  readonly pageRows: number;
  readonly pageColumns: number;
}

/**
 * Where a key leads in the matrix: arrows by one, with Ctrl to the end; Home and End along the row, with Ctrl to the
 * first or last cell of all; the page keys by what is seen, with Alt sideways. Heads are part of it.
 *
 * @returns null for a key that leads nowhere.
 * @source keys of a grid: W3C, ARIA Authoring Practices Guide, grid pattern.
 * @check tests/unit/app/tiers-matrix.test.ts
 */
export function placeAfter(
  from: MatrixPlace,
  { key, command, alt }: MatrixKey,
  size: MatrixMeasure,
): MatrixPlace | null {
  const { row, column } = from;
  const at = (toRow: number, toColumn: number): MatrixPlace => ({
    row: Math.min(size.rows - 1, Math.max(-1, toRow)),
    column: Math.min(size.columns - 1, Math.max(-1, toColumn)),
  });
  const far = Number.MAX_SAFE_INTEGER;
  switch (key) {
    case 'ArrowDown':
      return at(command ? far : row + 1, column);
    case 'ArrowUp':
      return at(command ? 0 : row - 1, column);
    case 'ArrowRight':
      return at(row, command ? far : column + 1);
    case 'ArrowLeft':
      return at(row, command ? 0 : column - 1);
    case 'Home':
      return at(command ? 0 : row, 0);
    case 'End':
      return at(command ? far : row, far);
    case 'PageDown':
      return alt ? at(row, column + size.pageColumns) : at(row + size.pageRows, column);
    case 'PageUp':
      return alt ? at(row, pageBack(column, size.pageColumns)) : at(pageBack(row, size.pageRows), column);
    default:
      return null;
  }
}

/** A page back ends at the first cell, not at the head. */
function pageBack(from: number, page: number): number {
  return from < 0 ? from : Math.max(0, from - page);
}
