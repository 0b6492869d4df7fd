import type { Family } from '../../../family/family.ts';
import { isMeasured } from '../../../family/fit-cache.ts';
import { readingText } from '../../../family/length-text.ts';
import { NO_SCORE } from '../../state/teach/quiz-score.ts';
import { FactList } from '../fact-list.tsx';
import styles from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';

/** The readings beside the quiz: how to answer, and what was done so far on this computer. */
export function QuizReadings({ family }: { family: Family }) {
  const { quizScore, settings, results } = useSession();
  const { rounds, right, of, longest } = useStore(quizScore, (s) => s);
  const units = useStore(settings, (s) => s.units);
  const fits = useStore(results, (s) => s.fits);
  const pairs = fits?.fits.flat().filter((fit) => fit && isMeasured(fit)).length ?? 0;
  return (
    <>
      <section className={styles.part} aria-labelledby="reading-quiz">
        <h2 id="reading-quiz" className={styles.title}>
          How to answer
        </h2>
        <FactList
          facts={[
            { term: 'It enters', value: 'E or 1' },
            { term: 'It is tight', value: 'T' },
            { term: 'It does not enter', value: 'D or 2' },
            { term: 'Next', value: 'Enter' },
          ]}
        />
        <p className={styles.note}>
          A tight one, with less than {readingText(family.runningClearance, units)} all round, goes in too: both answers
          count. The questions come from {pairs} judged pairs; about half of them go in.
        </p>
      </section>
      <section className={styles.part} aria-labelledby="reading-score">
        <h2 id="reading-score" className={styles.title}>
          Your score
        </h2>
        <FactList
          facts={[
            { term: 'Rounds', value: String(rounds) },
            { term: 'Right', value: of > 0 ? `${right} of ${of}` : '–' },
            { term: 'Longest row', value: String(longest) },
          ]}
        />
        <p className={styles.note}>Kept in this browser only.</p>
        <button type="button" className="key" disabled={rounds === 0} onClick={() => quizScore.setState(NO_SCORE)}>
          Wipe the score
        </button>
      </section>
    </>
  );
}
