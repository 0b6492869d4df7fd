import { type CSSProperties, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { LessonStep } from '../../../../family/lesson.ts';
import { stepFaults } from '../../../../teach/check-lesson.ts';
import { partsOf, wordsOf } from '../../../../teach/lesson-words.ts';
import { useTeaching } from '../use-teaching.ts';
import { FittedText } from './fitted-text.tsx';
import { PairSlide } from './pair-slide.tsx';
import { PassageRoom } from './passage-room.tsx';
import { QuestionSlide } from './question-slide.tsx';
import styles from './slide.module.css';
import { type SlideFrame, type SlideProps, SlideText } from './slide-text.tsx';
import { TiersPicture } from './tiers-picture.tsx';
import { WallPicture } from './wall-picture.tsx';

/** One step of the lesson, set for a window of any size. */
export function StepSlide({ family, step, frame }: { family: Family; step: LessonStep; frame: SlideFrame }) {
  const { width, height } = frame;
  const knowledge = useTeaching(family);
  const parts = useMemo(() => partsOf(family, step), [family, step]);
  const words = useMemo(() => wordsOf(step, knowledge), [step, knowledge]);
  const unit = Math.min(width / 1440, height / 900);
  const style = { width, height, '--u': `${unit}px` } as CSSProperties;
  return (
    <article className={styles.slide} style={style} data-show={step.show}>
      <SlideBody {...{ family, step, parts, words, frame, unit }} />
    </article>
  );
}

function SlideBody(props: SlideProps) {
  const { family, step, parts, frame } = props;
  const faults = stepFaults(family, step);
  const lost = faults.length > 0 && (step.show !== 'wall' || !parts.blank || parts.openings.length === 0);
  if (lost && step.show !== 'passage') return <LostSlide {...props} faults={faults.map(({ field }) => LOST[field])} />;
  if (step.show === 'pair') return <PairSlide {...props} />;
  if (step.show === 'question') return <QuestionSlide {...props} />;
  if (step.show === 'words')
    return (
      <FittedText className={styles.alone} fitKey={`${step.title} ${props.words} ${frame.width} ${frame.height}`}>
        <SlideText {...props} />
      </FittedText>
    );
  return <PictureSlide {...props} />;
}

/** Title and words over a picture of the whole width. */
function PictureSlide(props: SlideProps) {
  const { step, words, frame, unit } = props;
  const head = Math.round(frame.height * 0.235);
  const room = { width: frame.width - 48 * unit, height: frame.height - head - 70 * unit };
  return (
    <>
      <FittedText className={styles.head} fitKey={`${step.title} ${words} ${frame.width} ${frame.height}`}>
        <SlideText {...props} />
      </FittedText>
      <div className={styles.picture}>
        {step.show === 'wall' && <WallPicture {...props} room={room} />}
        {step.show === 'tiers' && <TiersPicture {...props} room={room} />}
        {step.show === 'passage' && <PassageRoom {...props} room={room} />}
      </div>
    </>
  );
}

/** What a room is told; the script tells who made it what is missing. */
const LOST = {
  blank: 'The blank of this step is not in this family.',
  opening: 'The keyway of this step is not in this family.',
  openings: 'The keyways of this step are not in this family.',
} as const;

/** What cannot be shown, said in place of it; the words of the step are still there. */
function LostSlide({ faults, ...props }: SlideProps & { faults: readonly string[] }) {
  const { step, words, frame } = props;
  return (
    <FittedText className={styles.alone} fitKey={`${step.title} ${words} ${faults} ${frame.width} ${frame.height}`}>
      <SlideText {...props} />
      {faults.map((fault) => (
        <p key={fault} className={styles.lost}>
          {fault}
        </p>
      ))}
    </FittedText>
  );
}
