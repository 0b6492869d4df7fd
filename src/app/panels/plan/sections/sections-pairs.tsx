// biome-ignore-all lint/a11y/useSemanticElements: rows and cells are placed one by one, out of a table's flow, and most are not there
import { type KeyboardEvent, type MouseEvent, memo, useLayoutEffect, useMemo, useRef } from 'react';
import { wantedOf } from '../../../state/plan/sections/sections-rows.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { placeAfter } from '../../../state/tiers/matrix-keys.ts';
import { type ShownRow, useWindowOfRows, type WindowOfRows } from '../../rows/use-window-of-rows.ts';
import { MarkSource, useMarkPictures } from '../../tiers/matrix/mark-pictures.tsx';
import { useSize } from '../../use-size.ts';
import { useSession } from '../../use-store.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import styles from './sections-pairs.module.css';
import { type FoundSections, useSectionsLook } from './use-sections.ts';

/** Sizes in pixels; the style sheet has them too. */
const CELL = 30;
const NAMES = 190;
const HEAD = 132;
/** Room at the right for the last name, which stands aslant. */
const OVERHANG = 90;

const WORDS = { must: 'must enter', not: 'must not enter', free: 'may do either' } as const;
const MARKS = { must: 'enters', not: 'blocked', free: 'unknown' } as const;

/** Which blank must enter which section, must not, or may; only what is in sight is on the page. */
export function SectionsPairs({ found }: { found: FoundSections }) {
  const [frame, size] = useSize<HTMLDivElement>();
  const { source, pictures } = useMarkPictures();
  return (
    <>
      <p className={styles.legend}>
        <VerdictMark verdict="enters" size={18} /> must enter
        <VerdictMark verdict="blocked" size={15} /> must not
        <VerdictMark verdict={null} size={18} /> either
      </p>
      <div ref={frame} className={styles.frame} style={pictures}>
        <MarkSource source={source} />
        {size && size.width > 0 && <PairsGrid found={found} frame={frame} page={size} />}
      </div>
    </>
  );
}

interface PairsGridProps {
  readonly found: FoundSections;
  readonly frame: React.RefObject<HTMLDivElement | null>;
  readonly page: { readonly width: number; readonly height: number };
}

function PairsGrid({ found, frame, page }: PairsGridProps) {
  const { section, blank } = useSectionsLook(found);
  const { sections, blanks, question } = found;
  const grid = useRef<HTMLDivElement>(null);
  const rows = useWindowOfRows({ count: blanks.length, size: CELL, frame, kept: blank, before: HEAD, after: 0 });
  const columns = useWindowOfRows({
    count: sections.length,
    size: CELL,
    frame,
    kept: section,
    horizontal: true,
    before: NAMES,
    after: OVERHANG,
  });
  const hands = usePairsHands(found, grid, page, { rows, columns });
  const heads = useMemo(() => sections.map(({ name }) => name), [sections]);
  return (
    <div
      ref={grid}
      role="grid"
      aria-label="Pairs: blanks in sections"
      aria-rowcount={blanks.length + 1}
      aria-colcount={sections.length + 1}
      className={styles.grid}
      style={{ width: columns.total, height: rows.total }}
      {...hands}
    >
      <PairsHead names={heads} shown={columns.shown} width={columns.total} picked={section} />
      {rows.shown.map(({ index, start }) => (
        <PairsRow
          key={index}
          row={index}
          top={start}
          width={columns.total}
          name={blanks[index]?.name ?? ''}
          heads={heads}
          shown={columns.shown}
          table={question.table}
          picked={index === blank ? section : -1}
        />
      ))}
    </div>
  );
}

/** What the grid does with keys and pointer: it goes to a cell, picks it and gives it the focus. */
function usePairsHands(
  found: FoundSections,
  grid: React.RefObject<HTMLElement | null>,
  page: PairsGridProps['page'],
  { rows, columns }: { readonly rows: WindowOfRows; readonly columns: WindowOfRows },
) {
  const look = sectionsLookOf(useSession());
  const { section, blank } = useSectionsLook(found);
  const wantsFocus = useFocusAfter(grid);
  const go = (row: number, column: number) => {
    wantsFocus.current = true;
    rows.reveal(row);
    columns.reveal(column);
    look.setState({ blank: row, section: column });
  };
  return {
    onKeyDown: (event: KeyboardEvent) => {
      const size = {
        rows: found.blanks.length,
        columns: found.sections.length,
        pageRows: Math.max(1, Math.floor((page.height - HEAD) / CELL) - 1),
        pageColumns: Math.max(1, Math.floor((page.width - NAMES) / CELL) - 1),
      };
      const pressed = { key: event.key, command: event.ctrlKey || event.metaKey, alt: event.altKey };
      const next = placeAfter({ row: blank, column: section }, pressed, size);
      if (!next) return;
      event.preventDefault();
      go(Math.max(0, next.row), Math.max(0, next.column));
    },
    onClick: (event: MouseEvent) => {
      const cell = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-pair]') : null;
      if (cell?.dataset.row && cell.dataset.column) go(Number(cell.dataset.row), Number(cell.dataset.column));
    },
  };
}

/** Gives the picked cell the focus after a key or a press led to it. */
function useFocusAfter(grid: React.RefObject<HTMLElement | null>) {
  const wants = useRef(false);
  // In the same commit as the new pick: a later effect of the commit before would take the wish for its own.
  useLayoutEffect(() => {
    if (!wants.current) return;
    const cell = grid.current?.querySelector<HTMLElement>('[data-pair][tabindex="0"]');
    if (!cell) return;
    wants.current = false;
    cell.focus({ preventScroll: true });
  });
  return wants;
}

interface PairsHeadProps {
  readonly names: readonly string[];
  readonly shown: readonly ShownRow[];
  readonly width: number;
  readonly picked: number;
}

const PairsHead = memo(function PairsHead({ names, shown, width, picked }: PairsHeadProps) {
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: its cells have the focus, as the grid pattern asks
    <div role="row" aria-rowindex={1} className={styles.head} style={{ width }}>
      {/* biome-ignore lint/a11y/useFocusableInteractive: the grid begins at its cells */}
      <div role="columnheader" aria-colindex={1} className={styles.corner}>
        Blank
      </div>
      {shown.map(({ index, start }) => (
        // biome-ignore lint/a11y/useFocusableInteractive: the grid begins at its cells
        <div
          key={index}
          role="columnheader"
          aria-colindex={index + 2}
          className={styles.columnHead}
          data-picked={index === picked}
          style={{ left: start }}
          title={names[index]}
        >
          <span>{names[index]}</span>
        </div>
      ))}
    </div>
  );
});

interface PairsRowProps {
  readonly row: number;
  readonly top: number;
  readonly width: number;
  readonly name: string;
  readonly heads: readonly string[];
  readonly shown: readonly ShownRow[];
  readonly table: FoundSections['question']['table'];
  /** Column of the picked cell; -1 where it is in another row. */
  readonly picked: number;
}

const PairsRow = memo(function PairsRow({ row, top, width, name, heads, shown, table, picked }: PairsRowProps) {
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: its cells have the focus, as the grid pattern asks
    <div role="row" aria-rowindex={row + 2} className={styles.row} style={{ top, width }}>
      {/* biome-ignore lint/a11y/useFocusableInteractive: the grid begins at its cells */}
      <div role="rowheader" aria-colindex={1} className={styles.rowHead} data-picked={picked >= 0} title={name}>
        {name}
      </div>
      {shown.map(({ index, start }) => {
        const wanted = wantedOf(table[index]?.[row]);
        return (
          <div
            key={index}
            role="gridcell"
            aria-colindex={index + 2}
            aria-label={`${name} in ${heads[index]}: ${WORDS[wanted]}`}
            aria-selected={index === picked}
            className={styles.cell}
            data-pair={wanted}
            data-mark={MARKS[wanted]}
            data-row={row}
            data-column={index}
            tabIndex={index === picked ? 0 : -1}
            style={{ left: start }}
          />
        );
      })}
    </div>
  );
});
