import { type CSSProperties, type KeyboardEvent, type ReactNode, useMemo, useRef } from 'react';
import type { NamedSite } from '../../../state/plan/sections/drawn-sections.ts';
import type { PlanRow } from '../../../state/plan/sections/sections-rows.ts';
import { rowAfter } from '../../rows/row-after.ts';
import { useFollowedRow } from '../../rows/use-followed-row.ts';
import { useWindowOfRows } from '../../rows/use-window-of-rows.ts';
import styles from './plan-rows.module.css';
import { SITE_WIDTH, SiteHeads, SiteStrip } from './site-strip.tsx';

/** Heights of a row and of the head, pixels; the style sheet has them too. */
const SIZES = { row: 46, head: 44 };

/** Width of the names, pixels. */
const NAMES = 210;

interface PlanRowsProps {
  readonly label: string;
  readonly rows: readonly PlanRow[];
  /** Place of the picked row. */
  readonly picked: number;
  readonly what: 'wards' | 'grooves';
  /** Whether a site has more than one depth. */
  readonly several: boolean;
  /** The head of the names. */
  readonly nameHead: string;
  readonly sites: readonly NamedSite[];
  onPick(place: number): void;
}

/** Sections or blanks with what they have at each site, of which only the rows in sight are drawn. */
export function PlanRows(props: PlanRowsProps) {
  const { label, rows, picked, what, several, nameHead, sites, onPick } = props;
  const frame = useRef<HTMLDivElement>(null);
  const { shown, total, reveal } = useWindowOfRows({
    count: rows.length,
    size: SIZES.row,
    frame,
    kept: picked,
    before: SIZES.head,
    after: 0,
  });
  useFollowedRow(frame, picked, picked, reveal);
  // Long names take the room that the sites leave.
  const names = useMemo(() => `max(22rem, ${longest(rows)}ch)`, [rows]);
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const next = rowAfter(event.key, picked, rows.length, SIZES, frame.current?.clientHeight ?? 0);
    if (next === null) return;
    event.preventDefault();
    onPick(next);
  };
  return (
    <div ref={frame} className={styles.frame}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose rows are walked is a grid
        role="grid"
        aria-label={label}
        aria-rowcount={rows.length + 1}
        className={styles.grid}
        style={{ height: total, minWidth: NAMES + sites.length * SITE_WIDTH + 24, '--names': names } as CSSProperties}
        onKeyDown={onKeyDown}
      >
        <thead className={styles.head}>
          <tr className={styles.cells}>
            <th scope="col">{nameHead}</th>
            <th scope="col">
              <span className="unseen">{what === 'wards' ? 'Wards at sites' : 'Grooves at sites'}</span>
              <SiteHeads sites={sites} />
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ index, start }) => {
            const row = rows[index];
            if (!row) return null;
            return (
              <OneRow key={row.key} row={row} place={index} top={start} picked={index === picked} onPick={onPick}>
                <SiteStrip depths={row.depths} sites={sites} several={several} what={what} />
              </OneRow>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** The letters of the longest name or what stands below it, with some air. */
function longest(rows: readonly PlanRow[]): number {
  return Math.max(0, ...rows.map(({ name, aside }) => Math.max(1.05 * name.length, 0.9 * aside.length))) + 4;
}

interface OneRowProps {
  readonly row: PlanRow;
  readonly place: number;
  /** Pixels from the beginning of the table. */
  readonly top: number;
  readonly picked: boolean;
  /** What it has at each site. */
  readonly children: ReactNode;
  onPick(place: number): void;
}

function OneRow({ row: { name, aside, reserve }, place, top, picked, children, onPick }: OneRowProps) {
  return (
    <tr
      className={`${styles.row} ${styles.cells}`}
      style={{ top }}
      aria-rowindex={place + 2}
      aria-selected={picked}
      data-plan-row={place}
      data-reserve={reserve || undefined}
      tabIndex={picked ? 0 : -1}
      onClick={() => onPick(place)}
    >
      <td className={styles.name} title={`${name}: ${aside}`}>
        <b>{name}</b>
        <span className={styles.aside}>{aside}</span>
      </td>
      <td>{children}</td>
    </tr>
  );
}
