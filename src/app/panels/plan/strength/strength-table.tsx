import { memo } from 'react';
import type { Family } from '../../../../family/family.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import { MATERIALS } from '../../../../strength/materials.ts';
import { barEnd, type StrengthRow } from '../../../state/plan/strength/strength-rows.ts';
import {
  momentText,
  sectionAreaText,
  torqueNumber,
  torqueText,
  verdictWords,
} from '../../../state/plan/strength/strength-words.ts';
import { pickProfile } from '../../../state/selection-state.ts';
import { PickedRows, type PlacedRow } from '../../rows/picked-rows.tsx';
import { useSession, useStore } from '../../use-store.ts';
import { StrengthBar } from './strength-bar.tsx';
import styles from './strength-table.module.css';
import { TorqueMark } from './torque-mark.tsx';
import { useStrengthSettings } from './use-strength.ts';

const SIZES = { row: 54, head: 44 };

/** A row for each blank and tool; arrows, Home and End walk, as in the tray. */
export function StrengthTable({ family, rows }: { family: Family; rows: readonly StrengthRow[] }) {
  const { selection, settings } = useSession();
  const picked = useStore(selection, (s) => s.entrantId);
  const units = useStore(settings, (s) => s.units);
  const { torqueNm } = useStrengthSettings(family);
  const end = barEnd(rows, torqueNm);
  const pick = (id: string) => {
    const row = rows.find(({ profile }) => profile.id === id);
    if (row) pickProfile(selection, row.profile);
  };
  return (
    <PickedRows
      label="Strength of each blade"
      ids={rows.map(({ profile }) => profile.id)}
      prefix="strength"
      pickedId={picked}
      sizes={SIZES}
      head={<Head units={units} torqueNm={torqueNm} />}
      row={({ index, ...placed }) => (
        <Row key={rows[index].profile.id} {...{ ...placed, index, units, torqueNm, end }} row={rows[index]} />
      )}
      onPick={pick}
    />
  );
}

function Head({ units, torqueNm }: { units: Units; torqueNm: number }) {
  return (
    <tr aria-rowindex={1} className={styles.row}>
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
  );
}

interface RowProps extends PlacedRow {
  readonly row: StrengthRow;
  readonly units: Units;
  readonly torqueNm: number;
  readonly end: number;
}

const Row = memo(function Row({ row, id, index, top, picked, units, torqueNm, end }: RowProps) {
  const { profile, section, web, limits, verdict, doing, trouble } = row;
  return (
    <tr
      id={id}
      aria-rowindex={index + 2}
      aria-selected={picked}
      className={styles.row}
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
