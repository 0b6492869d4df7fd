import { type KeyboardEvent, memo, useEffect, useRef } from 'react';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import type { Units } from '../state/length-text.ts';
import { marginText, pairLine, VERDICT_WORDS } from '../state/pair-words.ts';
import type { PlugFace } from '../state/plug-face.ts';
import { PlugPicture } from './plug-picture.tsx';
import { VerdictMark } from './verdict-mark.tsx';
import styles from './wall-cell.module.css';

/** Measures that all cells of a wall share, in pixels. */
export interface CellMeasures {
  readonly pxPerMm: number;
  readonly pictureWidth: number;
  readonly pictureHeight: number;
  readonly markSize: number;
}

interface WallCellProps {
  readonly opening: Profile;
  readonly entrant: Profile | null;
  readonly fit: Fit | undefined;
  readonly face: PlugFace;
  readonly measures: CellMeasures;
  readonly units: Units;
  readonly picked: boolean;
  onPick(openingId: string): void;
  onCompare(openingId: string): void;
}

/** One keyway of the block: its picture, its engraved name, mark, word and margin. Enter or a double click compares. */
export const WallCell = memo(function WallCell(props: WallCellProps) {
  const { opening, entrant, fit, face, measures, units, picked, onPick, onCompare } = props;
  const line = entrant ? pairLine(entrant.name, opening.name, fit, units) : opening.name;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    onCompare(opening.id);
  };
  const cell = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (picked) cell.current?.scrollIntoView({ block: 'nearest' });
  }, [picked]);
  return (
    <li ref={cell} className={styles.cell} data-picked={picked} data-verdict={fit?.verdict ?? 'unknown'}>
      <button
        type="button"
        className={styles.plate}
        data-opening={opening.id}
        aria-pressed={picked}
        tabIndex={picked ? 0 : -1}
        title={`${line}. Double click or Enter: compare`}
        onClick={() => onPick(opening.id)}
        onDoubleClick={() => onCompare(opening.id)}
        onKeyDown={onKeyDown}
      >
        <PlugPicture
          opening={opening}
          entrant={entrant}
          fit={fit}
          face={face}
          pxPerMm={measures.pxPerMm}
          width={measures.pictureWidth}
          height={measures.pictureHeight}
        />
        <span className={styles.name}>{opening.section ?? opening.name}</span>
        {entrant && <CellAnswer fit={fit} units={units} markSize={measures.markSize} />}
        <span className="unseen">
          {entrant ? `${entrant.name} in ` : ''}
          {opening.name}
        </span>
      </button>
    </li>
  );
});

function CellAnswer({ fit, units, markSize }: { fit: Fit | undefined; units: Units; markSize: number }) {
  const verdict = fit?.verdict ?? null;
  return (
    <>
      <span className={styles.word} data-verdict={verdict ?? 'unknown'}>
        <VerdictMark verdict={verdict} size={markSize} />
        {verdict ? VERDICT_WORDS[verdict] : 'waiting'}
      </span>
      <span className={styles.margin}>{fit ? marginText(fit, units) : '\u00a0'}</span>
    </>
  );
}
