import { type KeyboardEvent, type MouseEvent, memo, useEffect, useRef } from 'react';
import type { Family } from '../../../../family/family.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import { MATERIALS } from '../../../../strength/materials.ts';
import { barEnd, type StrengthRow } from '../../../state/plan/strength-rows.ts';
import {
  momentText,
  sectionAreaText,
  torqueNumber,
  torqueText,
  verdictWords,
} from '../../../state/plan/strength-words.ts';
import { pickProfile } from '../../../state/selection-state.ts';
import { walkByKey } from '../../../state/walk.ts';
import { useWindowOfRows } from '../../rows/use-window-of-rows.ts';
import { useSession, useStore } from '../../use-store.ts';
import { StrengthBar } from './strength-bar.tsx';
import styles from './strength-table.module.css';
import { TorqueMark } from './torque-mark.tsx';
import { useStrengthSettings } from './use-strength.ts';

/** Height of a row and of the head, pixels. */
const ROW = 54;
const HEAD = 44;

/** A row for each blank and tool; arrows, Home and End walk, as in the tray. Only the rows in sight are on the page. */
export function StrengthTable({ family, rows }: { family: Family; rows: readonly StrengthRow[] }) {
  const { selection, settings } = useSession();
  const picked = useStore(selection, (s) => s.entrantId);
  const units = useStore(settings, (s) => s.units);
  const { torqueNm } = useStrengthSettings(family);
  const frame = useRef<HTMLDivElement>(null);
  const ids = rows.map(({ profile }) => profile.id);
  const at = picked === null ? -1 : ids.indexOf(picked);
  const { shown, total, reveal } = useWindowOfRows({
    ...{ count: rows.length, size: ROW, frame, kept: at, before: HEAD, after: 4 },
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the row is looked up once it is another one
  useEffect(() => {
    if (at >= 0) reveal(at);
  }, [at]);
  const end = barEnd(rows, torqueNm);
  const { onKeyDown, onClick } = tableHands(rows, picked, (row) => pickProfile(selection, row.profile));
  return (
    <div ref={frame} className={styles.frame}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the keys go along its rows, as the grid pattern asks
        role="grid"
        aria-label="Strength of each blade"
        aria-rowcount={rows.length + 1}
        aria-activedescendant={at < 0 ? undefined : rowId(ids[at])}
        tabIndex={0}
        className={styles.grid}
        onKeyDown={onKeyDown}
        onClick={onClick}
      >
        <Head units={units} torqueNm={torqueNm} />
        <tbody className={styles.rows} style={{ height: total - HEAD }}>
          {shown.map(({ index, start }) => {
            const row = rows[index];
            return (
              row && (
                <Row
                  key={row.profile.id}
                  row={row}
                  index={index}
                  top={start - HEAD}
                  picked={index === at}
                  units={units}
                  torqueNm={torqueNm}
                  end={end}
                />
              )
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** What keys and the pointer do to the table. */
function tableHands(rows: readonly StrengthRow[], picked: string | null, pick: (row: StrengthRow) => void) {
  const ids = rows.map(({ profile }) => profile.id);
  const onKeyDown = (event: KeyboardEvent) => {
    const to = walkByKey(ids, picked, event.key);
    if (to === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    const row = rows.find(({ profile }) => profile.id === to);
    if (row) pick(row);
  };
  const onClick = (event: MouseEvent) => {
    const target = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-row]') : null;
    const row = target && rows[Number(target.dataset.row)];
    if (row) pick(row);
  };
  return { onKeyDown, onClick };
}

const rowId = (id: string) => `strength-${id}`;

function Head({ units, torqueNm }: { units: Units; torqueNm: number }) {
  return (
    <thead>
      <tr aria-rowindex={1} className={`${styles.row} ${styles.head}`}>
        <th scope="col" className={styles.first}>
          Blade
        </th>
        <th scope="col" className={styles.wide}>
          Area
        </th>
        <th scope="col" className={styles.wide}>
          Thinnest web
        </th>
        <th scope="col" className={styles.wide}>
          J
        </th>
        <th scope="col">Least torque to yield, then to full plasticity</th>
        <th scope="col">At {torqueText(torqueNm, units)}</th>
        <th scope="col" className={styles.materials}>
          Materials that do
        </th>
      </tr>
    </thead>
  );
}

interface RowProps {
  readonly row: StrengthRow;
  readonly index: number;
  readonly top: number;
  readonly picked: boolean;
  readonly units: Units;
  readonly torqueNm: number;
  readonly end: number;
}

const Row = memo(function Row({ row, index, top, picked, units, torqueNm, end }: RowProps) {
  const { profile, section, web, limits, verdict, doing, trouble } = row;
  return (
    <tr
      id={rowId(profile.id)}
      aria-rowindex={index + 2}
      aria-selected={picked}
      className={styles.row}
      data-row={index}
      style={{ top }}
      data-verdict={verdict ?? 'unknown'}
    >
      <td className={styles.name}>
        <span className={styles.text}>{profile.name}</span>
        <span className={styles.below} aria-hidden="true">
          {section && `${sectionAreaText(section.area, units)}, `}web {readingText(web.thickness, units)}
          {section && `, J ${momentText(section.torsion.best, units)}`}
        </span>
      </td>
      <td className={`${styles.wide} ${styles.figure}`}>{section ? sectionAreaText(section.area, units) : '…'}</td>
      <td className={`${styles.wide} ${styles.figure}`}>{readingText(web.thickness, units)}</td>
      <td className={`${styles.wide} ${styles.figure}`}>{section ? momentText(section.torsion.best, units) : '…'}</td>
      <td className={styles.bar}>
        {limits && <StrengthBar limits={limits} torqueNm={torqueNm} end={end} />}
        {limits ? (
          <span>
            {torqueNumber(limits.yieldNm.low, units)} then {torqueText(limits.plasticNm.low, units)}
          </span>
        ) : (
          <span>{trouble || 'not solved yet'}</span>
        )}
      </td>
      <td className={styles.verdict}>
        <TorqueMark verdict={verdict} size={18} />
        {verdict ? verdictWords(verdict) : '…'}
      </td>
      <td className={`${styles.materials} ${styles.figure}`}>
        {doing ? `${doing.elastic} of ${MATERIALS.length}` : '…'}
        {doing && <span className="unseen"> bear it without yielding</span>}
      </td>
    </tr>
  );
});
