import { memo } from 'react';
import { readingText, type Units } from '../../../family/length-text.ts';
import { thicknessFigure } from '../../state/gauge/gauge-lengths.ts';
import type { TightBy } from '../../state/gauge/gauge-state.ts';
import { shortName } from '../../state/gauge/gauge-words.ts';
import { rankText, reachText, sightText, type TightRow } from '../../state/gauge/tight-rows.ts';
import { PickedRows, type PlacedRow } from '../rows/picked-rows.tsx';
import { SectionThumb } from '../section-thumb.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './tightness-table.module.css';

const SIZES = { row: 56, head: 46 };

interface TightnessTableProps {
  readonly rows: readonly TightRow[];
  readonly by: TightBy;
  readonly heightText: string;
  readonly measureHead: string;
  readonly reach: { readonly x: number; readonly y: number };
  readonly pickedId: string | null;
}

/** The keyways from tight to wide; arrows, Home and End walk. */
export function TightnessTable({ rows, by, heightText, measureHead, reach, pickedId }: TightnessTableProps) {
  const { settings, selection } = useSession();
  const units = useStore(settings, (s) => s.units);
  const end = Math.max(1, ...rows.map(({ measure }) => Math.abs(measure)));
  return (
    <PickedRows
      label="Keyways from tight to wide"
      ids={rows.map(({ opening }) => opening.id)}
      prefix="tight"
      pickedId={pickedId}
      sizes={SIZES}
      fromTop
      head={<Head by={by} heightText={heightText} measureHead={measureHead} />}
      row={({ index, ...placed }) => (
        <Row
          key={rows[index].opening.id}
          {...{ ...placed, index, by, units, end, reach }}
          row={rows[index]}
          rank={rankText(rows[index], rows)}
        />
      )}
      onPick={(openingId) => selection.setState({ openingId, part: 'opening' })}
    />
  );
}

interface HeadProps {
  readonly by: TightBy;
  readonly heightText: string;
  readonly measureHead: string;
}

function Head({ by, heightText, measureHead }: HeadProps) {
  return (
    <tr aria-rowindex={1} className={styles.row} data-by={by}>
      <th scope="col" className={styles.rank}>
        <span className="unseen">Rank</span>
      </th>
      <th scope="col">Keyway</th>
      <th scope="col">{measureHead}</th>
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
  );
}

interface RowProps extends PlacedRow {
  readonly row: TightRow;
  /** As it is written. */
  readonly rank: string;
  readonly by: TightBy;
  readonly units: Units;
  /** The measure at the right end of the bars, nanometres. */
  readonly end: number;
  readonly reach: { readonly x: number; readonly y: number };
}

const Row = memo(function Row({ row, rank, by, id, index, top, picked, units, end, reach }: RowProps) {
  const { opening, measure, most, sight } = row;
  return (
    <tr id={id} aria-rowindex={index + 2} aria-selected={picked} className={styles.row} data-by={by} style={{ top }}>
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
