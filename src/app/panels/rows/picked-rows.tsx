import {
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  type ReactNode,
  useLayoutEffect,
  useRef,
} from 'react';
import { walkByKey } from '../../state/walk.ts';
import styles from './picked-rows.module.css';
import type { RowSizes } from './row-after.ts';
import { useWindowOfRows } from './use-window-of-rows.ts';

/** A row that is on the page. */
export interface PlacedRow {
  readonly index: number;
  /** For the `id` of its element. */
  readonly id: string;
  /** Pixels from the first row. */
  readonly top: number;
  readonly picked: boolean;
}

interface PickedRowsProps {
  readonly label: string;
  /** What the rows stand for, from top to bottom. */
  readonly ids: readonly string[];
  /** Goes before each of them in the `id` of its element. */
  readonly prefix: string;
  readonly pickedId: string | null;
  readonly sizes: RowSizes;
  /** Whether the top is in sight at first, wherever the picked row is. */
  readonly fromTop?: boolean;
  /** The row of the head. */
  readonly head: ReactNode;
  /** One row; its element has `aria-rowindex` = index + 2. */
  readonly row: (placed: PlacedRow) => ReactNode;
  onPick(id: string): void;
}

/**
 * A table whose rows are picked: arrows walk round its ends, Home and End go to them, a press picks. Only the rows in sight
 * are on the page.
 */
export function PickedRows({ label, ids, prefix, pickedId, sizes, fromTop, head, row, onPick }: PickedRowsProps) {
  const frame = useRef<HTMLDivElement>(null);
  const at = pickedId === null ? -1 : ids.indexOf(pickedId);
  const { shown, total, reveal } = useWindowOfRows({
    ...{ count: ids.length, size: sizes.row, frame, kept: at, before: sizes.head, after: 4 },
  });
  const before = useRef(fromTop ? pickedId : null);
  useLayoutEffect(() => {
    if (at >= 0 && pickedId !== before.current) reveal(at);
    before.current = pickedId;
  });
  const idAt = (index: number) => `${prefix}-${ids[index]}`;
  return (
    <div ref={frame} className={styles.frame}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the keys go along its rows, as the grid pattern asks
        role="grid"
        aria-label={label}
        aria-rowcount={ids.length + 1}
        aria-activedescendant={at < 0 ? undefined : idAt(at)}
        tabIndex={0}
        className={styles.grid}
        style={{ '--row': `${sizes.row}px`, '--head': `${sizes.head}px` } as CSSProperties}
        {...pickingHands(ids, ids[at] ?? null, onPick)}
      >
        <thead>{head}</thead>
        <tbody style={{ height: total - sizes.head }}>
          {shown.map(
            ({ index, start }) =>
              index < ids.length && row({ index, id: idAt(index), top: start - sizes.head, picked: index === at }),
          )}
        </tbody>
      </table>
    </div>
  );
}

/** What keys and the pointer do to the table. */
function pickingHands(ids: readonly string[], picked: string | null, pick: (id: string) => void) {
  const onKeyDown = (event: KeyboardEvent) => {
    const to = walkByKey(ids, picked, event.key);
    if (to === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    if (to !== null) pick(to);
  };
  const onClick = (event: MouseEvent) => {
    const row = event.target instanceof Element ? event.target.closest('tbody tr') : null;
    const id = ids[Number(row?.getAttribute('aria-rowindex')) - 2];
    if (id !== undefined) pick(id);
  };
  return { onKeyDown, onClick };
}
