import type { Family } from '../../../family/family.ts';
import { SheetKeys } from '../../panels/sheet-keys.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import styles from '../sheeted-view.module.css';
import { LessonSheet } from './lesson-sheet.tsx';
import { QuizSheet } from './quiz-sheet.tsx';

const SHEETS = [
  { sheet: 'lesson', label: 'Lesson', title: 'The script, step by step' },
  { sheet: 'quiz', label: 'Quiz', title: 'Does it go in?' },
] as const;

/** A lesson for a room, and a quiz. */
export function Teach({ family }: { family: Family }) {
  const { teach } = useSession();
  const sheet = useStore(teach, (s) => s.sheet);
  return (
    <div className={styles.view}>
      <header className={styles.head}>
        <SheetKeys
          label="Sheets of Teach"
          sheets={SHEETS}
          shown={sheet}
          onShow={(next) => teach.setState({ sheet: next })}
        />
      </header>
      {sheet === 'lesson' && <LessonSheet family={family} />}
      {sheet === 'quiz' && <QuizSheet family={family} />}
    </div>
  );
}
