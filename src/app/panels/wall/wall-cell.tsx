import { type KeyboardEvent, memo, useEffect, useRef } from 'react';
import type { Units } from '../../../family/length-text.ts';
import type { PlugFace } from '../../../family/plug-face.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { ThreeWay } from '../../../fit/judge-tolerance.ts';
import type { WearFigures } from '../../../jobs/judge-details.ts';
import type { Profile } from '../../../profile/profile.ts';
import { type CellAnswer, cellAnswer } from '../../state/cell-answer.ts';
import type { Telling } from '../../state/conditions-state.ts';
import { AnswerMark } from '../answer-mark.tsx';
import { PlugPicture } from './plug-picture.tsx';
import styles from './wall-cell.module.css';

/** Measures that all cells of a wall share, in pixels. */
export interface CellMeasures {
  readonly pxPerMm: number;
  readonly pictureWidth: number;
  readonly pictureHeight: number;
  readonly markSize: number;
  /** Whether another blank is seen to be laid in. */
  readonly glides: boolean;
}

interface WallCellProps {
  readonly opening: Profile;
  readonly entrant: Profile | null;
  readonly telling: Telling;
  readonly fit: Fit | undefined;
  readonly wornAway: boolean;
  readonly threeWay: ThreeWay | undefined;
  readonly wear: WearFigures | undefined;
  readonly halted: boolean;
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
  const answer = cellAnswer(props.telling, props, units);
  const line = entrant ? `${entrant.name} in ${opening.name}: ${answer.phrase}` : opening.name;
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
          tone={answer.tone}
          face={face}
          pxPerMm={measures.pxPerMm}
          width={measures.pictureWidth}
          height={measures.pictureHeight}
          glides={measures.glides}
        />
        <span className={styles.name}>{opening.section ?? opening.name}</span>
        {entrant && <AnswerLines answer={answer} markSize={measures.markSize} />}
        <span className="unseen">
          {entrant ? `${entrant.name} in ` : ''}
          {opening.name}
        </span>
      </button>
    </li>
  );
});

function AnswerLines({ answer, markSize }: { answer: CellAnswer; markSize: number }) {
  return (
    <>
      <span className={styles.word} data-verdict={answer.tone}>
        <AnswerMark mark={answer.mark} size={markSize} />
        {answer.word}
      </span>
      <span className={styles.margin}>{answer.figure}</span>
    </>
  );
}
