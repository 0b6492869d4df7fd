import type { Family } from '../../../family/family.ts';
import { stepWithin, typeTitle } from '../../state/teach/lesson-editing.ts';
import styles from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { DraftField } from './draft-field.tsx';
import { StepForm } from './step-form.tsx';

/** The readings beside the script: what the picked step says and shows, and the title of the whole. */
export function LessonReadings({ family }: { family: Family }) {
  const session = useSession();
  const step = useStore(session.teach, (s) => s.step);
  const { lesson } = family;
  if (!lesson) return null;
  const at = stepWithin(step, lesson.steps);
  return (
    <>
      {at >= 0 && (
        <section className={styles.part} aria-labelledby="reading-step">
          <h2 id="reading-step" className={styles.title}>
            Step {at + 1} of {lesson.steps.length}
          </h2>
          <StepForm key={at} family={family} step={lesson.steps[at]} at={at} />
        </section>
      )}
      <section className={styles.part} aria-labelledby="reading-lesson">
        <h2 id="reading-lesson" className={styles.title}>
          Lesson
        </h2>
        <DraftField
          label="Title of the lesson"
          value={lesson.title}
          take={(text) => typeTitle(session, text)}
          needed="A lesson needs a title."
        />
        <p className={styles.note}>The lesson is kept in the family file, with the names of the sections it shows.</p>
      </section>
    </>
  );
}
