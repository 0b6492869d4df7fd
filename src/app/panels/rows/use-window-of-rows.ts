// The one file that imports the virtualizer: which rows, or columns, of a long list are seen.
import { type Range, useVirtualizer } from '@tanstack/react-virtual';
import { type RefObject, useCallback, useLayoutEffect } from 'react';

/** One row, or column, that is on the page. */
export interface ShownRow {
  readonly index: number;
  /** Pixels from the beginning of what scrolls. */
  readonly start: number;
}

/** The rows of a long list that are on the page. */
export interface WindowOfRows {
  /** The same value until another row comes or goes. */
  readonly shown: readonly ShownRow[];
  /** Length of all rows with what is before and after them, pixels. */
  readonly total: number;
  /** Scrolls a row into sight, no further than needed. */
  reveal(index: number): void;
}

interface WindowAsked {
  readonly count: number;
  /** Height, or width, of every row, pixels. */
  readonly size: number;
  /** What scrolls. */
  readonly frame: RefObject<HTMLElement | null>;
  /** A row that stays on the page wherever it is, since it has the focus; -1 for none. */
  readonly kept: number;
  readonly horizontal?: boolean;
  /** Room before the first row for a head that stays in sight, pixels. */
  readonly before: number;
  readonly after: number;
}

/** Rows beyond the edge that are on the page too. */
const BEYOND = 4;

/** Which rows, or columns, of a long list are to be put on the page. */
export function useWindowOfRows(asked: WindowAsked): WindowOfRows {
  const { count, size, frame, kept, horizontal = false, before, after } = asked;
  // The same function until it answers otherwise, or the rows would be new ones each time.
  const rangeExtractor = useCallback((range: Range) => withKept(range, kept), [kept]);
  const virtualizer = useVirtualizer({
    count,
    horizontal,
    getScrollElement: () => frame.current,
    estimateSize: () => size,
    overscan: BEYOND,
    paddingStart: before,
    paddingEnd: after,
    scrollPaddingStart: before,
    // What scrolls in both directions is drawn once for both.
    useFlushSync: false,
    rangeExtractor,
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: other sizes are what makes it measure again
  useLayoutEffect(() => virtualizer.measure(), [virtualizer, size, before]);
  return {
    shown: virtualizer.getVirtualItems(),
    total: virtualizer.getTotalSize(),
    reveal: (index) => virtualizer.scrollToIndex(index, { align: 'auto' }),
  };
}

/** The rows in sight, some beyond, and the one that stays. */
function withKept({ startIndex, endIndex, overscan, count }: Range, kept: number): number[] {
  const first = Math.max(0, startIndex - overscan);
  const last = Math.min(count - 1, endIndex + overscan);
  const rows = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  if (kept < 0 || kept >= count || (kept >= first && kept <= last)) return rows;
  return kept < first ? [kept, ...rows] : [...rows, kept];
}
