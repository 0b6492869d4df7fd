import { useMemo } from 'react';
import { openingsOf } from '../../../../family/family.ts';
import { plugFace } from '../../../../family/plug-face.ts';
import { useTaughtPair } from '../use-teaching.ts';
import { FittedText } from './fitted-text.tsx';
import { PairScene } from './pair-scene.tsx';
import styles from './slide.module.css';
import { LEAST_TYPE, type SlideProps, SlideText } from './slide-text.tsx';
import { usePush } from './use-push.ts';
import { VerdictLine } from './verdict-line.tsx';

/** A blank in a keyway, large, at the left; what is said of it at the right. */
export function PairSlide({ family, step, parts, words, frame, unit }: SlideProps) {
  const pair = useTaughtPair(family, parts.blank, parts.opening);
  const face = useMemo(() => plugFace(openingsOf(family)), [family]);
  const moves = step.push === true && frame.run !== null && pair !== null;
  const pushed = usePush(moves ? pair.fit.verdict !== 'blocked' : null, frame.run ?? 0);
  const coming = pushed?.phase === 'coming';
  const line = Math.max(LEAST_TYPE, 26 * unit);
  const fitKey = `${step.title} ${words} ${frame.width} ${frame.height} ${pair?.fit.verdict}`;
  return (
    <div className={styles.beside}>
      {pair ? (
        <PairScene
          pair={pair}
          face={face}
          width={frame.width * 0.56}
          height={frame.height - 92 * unit}
          line={line}
          pushed={pushed}
        />
      ) : (
        <p className={styles.lost}>After that much wear nothing would be left of it.</p>
      )}
      <FittedText className={styles.column} fitKey={fitKey}>
        <SlideText step={step} words={words} />
        {pair && <VerdictLine fit={pair.fit} size={Math.round(60 * unit)} hidden={coming} />}
      </FittedText>
    </div>
  );
}
