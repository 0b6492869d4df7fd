import type { Family } from '../../../../family/family.ts';
import type { LessonStep } from '../../../../family/lesson.ts';
import type { StepParts } from '../../../../teach/lesson-words.ts';
import styles from './slide.module.css';

/** How a slide is shown. */
export interface SlideFrame {
  readonly width: number;
  readonly height: number;
  /** How much of the step is shown: 0 is its first state. */
  readonly build: number;
  /** Counts the pushes that were asked for; null where nothing moves, as in a preview. */
  readonly run: number | null;
}

/** What all kinds of slides get. */
export interface SlideProps {
  readonly family: Family;
  readonly step: LessonStep;
  readonly parts: StepParts;
  readonly words: string;
  readonly frame: SlideFrame;
  /** Pixels for one of the 1440 by 900 that slides are measured in. */
  readonly unit: number;
}

/** Smallest type on a slide, in pixels. */
export const LEAST_TYPE = 22;

/** The title and what is said under it. */
export function SlideText({ step, words }: Pick<SlideProps, 'step' | 'words'>) {
  return (
    <>
      <h1 className={styles.title}>{step.title}</h1>
      {words && <p className={styles.words}>{words}</p>}
    </>
  );
}
