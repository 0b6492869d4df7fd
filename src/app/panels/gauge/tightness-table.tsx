import { type KeyboardEvent, type MouseEvent, memo, useEffect, useRef } from 'react';
import { readingText, type Units } from '../../../family/length-text.ts';
import { thicknessFigure } from '../../state/gauge/gauge-lengths.ts';
import type { TightBy } from '../../state/gauge/gauge-state.ts';
import { shortName } from '../../state/gauge/gauge-words.ts';
import { reachText, sightText, type TightRow } from '../../state/gauge/tight-rows.ts';
import { walkByKey } from '../../state/walk.ts';
import { useWindowOfRows } from '../rows/use-window-of-rows.ts';
import { SectionThumb } from '../section-thumb.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './tightness-table.module.css';

/** Height of a row and of the head, pixels; the style sheet has them too. */
const ROW = 56;
const HEAD = 46;

interface TightnessTableProps {
  readonly rows: readonly TightRow[];
  readonly by: TightBy;
  readonly heightText: string;
  readonly measureHead: string;
  readonly reach: { readonly x: number; readonly y: number };
  readonly pickedId: string | null;
}

/** The keyways from tight to wide; arrows, Home and End walk. Only the rows in sight are on the page. */
export function TightnessTable({ rows, by, heightText, measureHead, reach, pickedId }: TightnessTableProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const frame = useRef<HTMLDivElement>(null);
  const ids = rows.map(({ opening }) => opening.id);
  const at = pickedId === null ? -1 : ids.indexOf(pickedId);
  const { shown, total, reveal } = useWindowOfRows({
    ...{ count: rows.length, size: ROW, frame, kept: at, before: HEAD, after: 4 },
  });
  const before = useRef(pickedId);
  // The tightest stands in sight until another keyway is picked.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the row is looked up once it is another one
  useEffect(() => {
    if (at >= 0 && pickedId !== before.current) reveal(at);
    before.current = pickedId;
  }, [at, pickedId]);
  const hands = useTableHands(ids, ids[at] ?? null);
  const end = Math.max(1, ...rows.map(({ measure }) => Math.abs(measure)));
  return (
    <div ref={frame} className={styles.frame}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the keys go along its rows, as the grid pattern asks
        role="grid"
        aria-label="Keyways from tight to wide"
        aria-rowcount={rows.length + 1}
        aria-activedescendant={at < 0 ? undefined : rowId(ids[at])}
        tabIndex={0}
        className={styles.grid}
        data-by={by}
        {...hands}
      >
        <Head heightText={heightText} measureHead={measureHead} />
        <tbody className={styles.rows} style={{ height: total - HEAD }}>
          {shown.map(({ index, start }) => {
            const row = rows[index];
            return (
              row && (
                <Row
                  key={row.opening.id}
                  row={row}
                  index={index}
                  top={start - HEAD}
                  picked={index === at}
                  units={units}
                  end={end}
                  reach={reach}
                />
              )
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** What keys and the pointer do to the table: they pick a keyway. */
function useTableHands(ids: readonly string[], picked: string | null) {
  const { selection } = useSession();
  const pick = (openingId: string | null) => {
    if (openingId !== null) selection.setState({ openingId, part: 'opening' });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const to = walkByKey(ids, picked, event.key);
    if (to === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    pick(to);
  };
  const onClick = (event: MouseEvent) => {
    const row = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-tight-row]') : null;
    pick(row?.dataset.tightRow ?? null);
  };
  return { onKeyDown, onClick };
}

function Head({ heightText, measureHead }: { heightText: string; measureHead: string }) {
  return (
    <thead>
      <tr aria-rowindex={1} className={`${styles.row} ${styles.head}`}>
        <th scope="col" className={styles.rank}>
          <span className="unseen">Rank</span>
        </th>
        <th scope="col" className={styles.name}>
          Keyway
        </th>
        <th scope="col" className={styles.bar}>
          {measureHead}
        </th>
        <th scope="col" className={styles.most}>
          Strip {heightText} tall
        </th>
        <th scope="col" className={styles.sight}>
          Line of sight
        </th>
        <th scope="col" className={styles.reach}>
          Past the centre line
        </th>
      </tr>
    </thead>
  );
}

const rowId = (id: string) => `tight-${id}`;

interface RowProps {
  readonly row: TightRow;
  readonly index: number;
  readonly top: number;
  readonly picked: boolean;
  readonly units: Units;
  /** The measure at the right end of the bars, nanometres. */
  readonly end: number;
  readonly reach: { readonly x: number; readonly y: number };
}

const Row = memo(function Row({ row, index, top, picked, units, end, reach }: RowProps) {
  const { opening, rank, measure, most, sight } = row;
  return (
    <tr
      id={rowId(opening.id)}
      aria-rowindex={index + 2}
      aria-selected={picked}
      className={styles.row}
      data-tight-row={opening.id}
      style={{ top }}
    >
      <td className={styles.rank}>{rank}</td>
      <td className={styles.name} title={opening.name}>
        <SectionThumb profile={opening} reachX={reach.x} reachY={reach.y} width={24} height={50} />
        <span>{shortName(opening)}</span>
      </td>
      <td className={styles.bar}>
        <span>{measure < 0 ? `−${readingText(measure, units)}` : thicknessFigure(measure, units)}</span>
        <span className={styles.track} aria-hidden="true">
          <span
            className={styles.fill}
            data-below={measure < 0 || undefined}
            style={{ width: `${(100 * Math.abs(measure)) / end}%` }}
          />
        </span>
      </td>
      <td className={styles.most}>{most > 0 ? thicknessFigure(most, units) : 'none so tall'}</td>
      <td className={styles.sight}>{sightText(sight, units)}</td>
      <td className={styles.reach}>{reachText(sight, units)}</td>
    </tr>
  );
});
