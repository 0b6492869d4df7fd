import { useMemo } from 'react';
import { openingsOf } from '../../../../family/family.ts';
import { plugFace } from '../../../../family/plug-face.ts';
import { useTaughtPair } from '../use-teaching.ts';
import { ApartScene } from './apart-scene.tsx';
import { FittedText } from './fitted-text.tsx';
import { PairScene } from './pair-scene.tsx';
import styles from './slide.module.css';
import { LEAST_TYPE, type SlideProps, SlideText } from './slide-text.tsx';
import { VerdictLine } from './verdict-line.tsx';

/** A pair apart, for the room to guess; then together with the answer and why. */
export function QuestionSlide({ family, step, parts, words, frame, unit }: SlideProps) {
  const pair = useTaughtPair(family, parts.blank, parts.opening);
  const face = useMemo(() => plugFace(openingsOf(family)), [family]);
  if (!pair) return <p className={styles.lost}>After that much wear nothing would be left of it.</p>;
  const told = frame.build > 0;
  const room = { face, width: frame.width * 0.56, height: frame.height - 92 * unit };
  const fitKey = `${step.title} ${words} ${told ? pair.sentence : ''} ${frame.width} ${frame.height}`;
  return (
    <div className={styles.beside} data-told={told}>
      {told ? (
        <PairScene pair={pair} {...room} line={Math.max(LEAST_TYPE, 26 * unit)} pushed={null} />
      ) : (
        <ApartScene entrant={pair.entrant} opening={pair.opening} {...room} />
      )}
      <FittedText className={styles.column} fitKey={fitKey}>
        <SlideText step={step} words={words} />
        {told && (
          <>
            <VerdictLine fit={pair.fit} size={Math.round(60 * unit)} />
            <p className={styles.answer}>{pair.sentence}</p>
          </>
        )}
      </FittedText>
    </div>
  );
}
