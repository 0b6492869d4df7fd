import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { LessonStep } from '../../../family/lesson.ts';
import { buildsOf } from '../../state/teach/show-place.ts';
import { useSize } from '../use-size.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './lesson-preview.module.css';
import { StepSlide } from './slide/step-slide.tsx';

/** The window that a preview stands for. */
const WIDTH = 1440;
const HEIGHT = 900;

/** The picked step as the room will see it, smaller and still. */
export function LessonPreview({ family, step, number }: { family: Family; step: LessonStep; number: number }) {
  const { results } = useSession();
  const [frame, size] = useSize<HTMLDivElement>();
  const fits = useStore(results, (s) => s.fits);
  const [early, setEarly] = useState(false);
  const builds = buildsOf(step, family, fits);
  const scale = size ? Math.min((size.width - 4) / WIDTH, (size.height - 4) / HEIGHT) : 0;
  return (
    <section className={styles.preview} aria-label={`Preview of step ${number}: ${step.title}`}>
      <div ref={frame} className={styles.frame}>
        {scale > 0 && (
          <div
            className={styles.screen}
            style={{ width: WIDTH * scale, height: HEIGHT * scale }}
            aria-hidden="true"
            inert
          >
            <div className={styles.scaled} style={{ width: WIDTH, height: HEIGHT, transform: `scale(${scale})` }}>
              <StepSlide
                key={number}
                family={family}
                step={step}
                frame={{ width: WIDTH, height: HEIGHT, build: early ? 0 : builds - 1, run: null }}
              />
            </div>
          </div>
        )}
      </div>
      {builds > 1 && (
        <span className="key-row">
          <button type="button" className="key" aria-pressed={early} onClick={() => setEarly(true)}>
            As it begins
          </button>
          <button type="button" className="key" aria-pressed={!early} onClick={() => setEarly(false)}>
            {step.show === 'question' ? 'With the answer' : 'In full'}
          </button>
        </span>
      )}
    </section>
  );
}
