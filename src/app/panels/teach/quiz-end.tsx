import type { Family } from '../../../family/family.ts';
import { type MarkedAnswer, scoreOf } from '../../../teach/quiz.ts';
import type { QuizRound } from '../../state/teach/teach-state.ts';
import { useSession } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './quiz.module.css';
import { SAID_WORDS } from './quiz-answer.tsx';

interface QuizEndProps {
  readonly family: Family;
  readonly round: QuizRound;
  readonly answers: readonly (MarkedAnswer | null)[];
  begin(): void;
}

/** How the round went, and what to look at again. */
export function QuizEnd({ family, round, answers, begin }: QuizEndProps) {
  const { right, of, longest } = scoreOf(answers);
  const wrong = answers.flatMap((answer, i) => (answer && !answer.right ? [{ answer, i }] : []));
  return (
    <section className={styles.end} aria-labelledby="quiz-end">
      <h1 id="quiz-end">
        {right} of {of} right
      </h1>
      <button type="button" className="key" data-first onClick={begin}>
        Another round <kbd>Enter</kbd>
      </button>
      <p className={styles.sum}>
        {longest > 1 ? `Longest row of right answers: ${longest}. ` : ''}
        {wrong.length === 0 ? 'Nothing went wrong.' : 'Look at these again:'}
      </p>
      <ol className={styles.wrong}>
        {wrong.map(({ answer, i }) => (
          <WrongRow key={`${i + 1}`} family={family} round={round} answer={answer} at={i} />
        ))}
      </ol>
    </section>
  );
}

interface WrongRowProps {
  readonly family: Family;
  readonly round: QuizRound;
  readonly answer: MarkedAnswer;
  readonly at: number;
}

function WrongRow({ family, round, answer, at }: WrongRowProps) {
  const { selection } = useSession();
  const { entrantId, openingId } = round.questions[at];
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  return (
    <li>
      <VerdictMark verdict={answer.verdict} size={26} />
      <span className={styles.wrongWords}>
        <b>
          {nameOf(entrantId)} in {nameOf(openingId)}
        </b>
        <span>{answer.sentence}</span>
        <span className={styles.said}>You said: {SAID_WORDS[round.said[at]]}.</span>
      </span>
      <button
        type="button"
        className="key"
        title={`Look at ${nameOf(entrantId)} in ${nameOf(openingId)}`}
        onClick={() => selection.setState({ entrantId, openingId, view: 'compare' })}
      >
        Compare
      </button>
    </li>
  );
}
