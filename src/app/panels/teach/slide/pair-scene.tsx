import { useId } from 'react';
import type { PlugFace } from '../../../../family/plug-face.ts';
import type { Pushed } from '../../../tools/compare/pushing.ts';
import { useSession, useStore } from '../../use-store.ts';
import { ClashHatch, PlugPicture } from '../../wall/plug-picture.tsx';
import type { TaughtPair } from '../use-teaching.ts';
import { PairMarks } from './pair-marks.tsx';
import styles from './slide.module.css';

interface PairSceneProps {
  readonly pair: TaughtPair;
  readonly face: PlugFace;
  readonly width: number;
  readonly height: number;
  /** Height of a line of type on the marks, in pixels. */
  readonly line: number;
  /** A push that is under way or has ended; the blank lies in its best placement where null. */
  readonly pushed: Pushed | null;
}

/** The scale at which a plug fills a picture, in pixels a millimetre. */
export function sceneScale({ radius, half }: PlugFace, width: number, height: number): number {
  return Math.max(1, Math.min((width - 12) / (2 * half), (height - 12) / (2 * radius)));
}

/** One blank in one keyway for a room: the overlap hatched and named, or the narrowest gap marked. */
export function PairScene({ pair, face, width, height, line, pushed }: PairSceneProps) {
  const { doors, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const hatch = `${useId()}hatch`;
  const pxPerMm = sceneScale(face, width, height);
  const marked = pushed === null || (pushed.phase === 'stopped' && pushed.lit);
  return (
    <div className={styles.scene} style={{ width, height }} data-push={pushed?.phase}>
      <ClashHatch pxPerMm={pxPerMm / 2} name={hatch} />
      <PlugPicture
        opening={pair.opening}
        entrant={pair.entrant}
        fit={pair.fit}
        tone={pushed && pushed.phase === 'coming' ? 'unknown' : pair.fit.verdict}
        face={face}
        pxPerMm={pxPerMm}
        width={width}
        height={height}
        glides={false}
        pushed={pushed}
        hatch={hatch}
      />
      {marked && (
        <PairMarks
          pair={pair}
          pxPerMm={pxPerMm}
          width={width}
          height={height}
          line={line}
          units={units}
          partName={doors.partName}
        />
      )}
    </div>
  );
}
