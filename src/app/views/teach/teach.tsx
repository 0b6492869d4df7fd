import type { Family } from '../../../family/family.ts';
import { SheetKeys } from '../../panels/sheet-keys.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import { LessonSheet } from './lesson-sheet.tsx';
import { QuizSheet } from './quiz-sheet.tsx';
import styles from './teach.module.css';

const SHEETS = [
  { sheet: 'lesson', label: 'Lesson', title: 'The script, step by step' },
  { sheet: 'quiz', label: 'Quiz', title: 'Does it go in?' },
] as const;

/** A lesson for a room, and a quiz. */
export function Teach({ family }: { family: Family }) {
  const { teach } = useSession();
  const sheet = useStore(teach, (s) => s.sheet);
  return (
    <div className={styles.teach}>
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
