import { useMemo } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import { ROUND_LENGTH } from '../../../teach/quiz.ts';
import { AlteredLine } from '../../panels/compare/altered-line.tsx';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { QuizEnd } from '../../panels/teach/quiz-end.tsx';
import { QuizQuestionPanel } from '../../panels/teach/quiz-question.tsx';
import { useTeaching } from '../../panels/teach/use-teaching.ts';
import { useHalted } from '../../panels/use-family.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { isRunning } from '../../state/results-state.ts';
import { answerNow, beginRound, goOn, markedAnswers, questionNow } from '../../state/teach/quiz-round.ts';
import styles from './quiz-sheet.module.css';
import { useQuizKeys } from './use-quiz-keys.ts';

/** Does it go in? Ten questions a round, answered by the core. */
export function QuizSheet({ family }: { family: Family }) {
  const session = useSession();
  const knowledge = useTeaching(family);
  const round = useStore(session.teach, (s) => s.round);
  const answers = useMemo(() => (round ? markedAnswers(round, knowledge) : []), [round, knowledge]);
  const now = round && questionNow(round);
  const begin = () => beginRound(session, knowledge, freshSeed());
  const next = () => goOn(session, knowledge);
  const ready = useReady(family);
  useQuizKeys({
    say: (said) => answerNow(session, said),
    next: () => (round && now ? next() : ready === '' && begin()),
  });
  if (entrantsOf(family).length === 0 || openingsOf(family).length === 0) return <NothingToAsk />;
  return (
    <div className={styles.sheet}>
      <AlteredLine />
      {!round && <Begin ready={ready} begin={begin} />}
      {round && now && (
        <QuizQuestionPanel
          family={family}
          round={round}
          at={now.at}
          answers={answers}
          say={(said) => answerNow(session, said)}
          next={next}
        />
      )}
      {round && !now && <QuizEnd family={family} round={round} answers={answers} begin={begin} />}
    </div>
  );
}

/** Another round each time: nothing of it has to be known beforehand. */
function freshSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0];
}

/** Why no round can begin yet; empty where one can. */
function useReady(family: Family): string {
  const { results } = useSession();
  const { phase, done, total } = useStore(results, (s) => s);
  const halted = useHalted();
  const known = useStore(results, (s) => s.fits?.fits.some((row) => row.some(Boolean)) ?? false);
  if (halted) return known ? '' : 'Judging was stopped before any pair was judged. Judge again, at the right.';
  if (!isRunning(phase) && known) return '';
  const of = total > 0 ? `: ${done} of ${total}` : '';
  return `The pairs of ${family.name} are being judged${of} …`;
}

function Begin({ ready, begin }: { ready: string; begin(): void }) {
  return (
    <section className={styles.begin}>
      <h1>Does it go in?</h1>
      <p>
        {ROUND_LENGTH} questions. You see a blank and a keyway at one scale, without their names. Say whether the one
        goes into the other; then they are laid together, and you are told why.
      </p>
      <button type="button" className="key" data-first disabled={ready !== ''} onClick={begin}>
        Begin a round (Enter)
      </button>
      {ready && <p role="status">{ready}</p>}
    </section>
  );
}

function NothingToAsk() {
  return (
    <div className={styles.sheet}>
      <EmptyNotice
        title="Nothing to ask"
        what="A quiz needs at least one keyway and one blank or tool. This family does not have both: add what is missing in Draw."
      />
    </div>
  );
}
