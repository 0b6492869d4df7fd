import type { Family } from '../../../family/family.ts';
import { useSession, useStore } from '../use-store.ts';
import { LessonReadings } from './lesson-readings.tsx';
import { QuizReadings } from './quiz-readings.tsx';

/** The right side of the Teach view. */
export function TeachViewReadings({ family }: { family: Family }) {
  const { teach } = useSession();
  const sheet = useStore(teach, (s) => s.sheet);
  return (
    <>
      {sheet === 'lesson' && <LessonReadings family={family} />}
      {sheet === 'quiz' && <QuizReadings family={family} />}
    </>
  );
}
