import { readingText } from '../../../family/length-text.ts';
import { MEASURING, marginText, VERDICT_WORDS } from '../../../family/margin-text.ts';
import type { Verdict } from '../../../fit/fit.ts';
import type { MarkedAnswer, Said } from '../../../teach/quiz.ts';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './quiz.module.css';
import type { TaughtPair } from './use-teaching.ts';

interface QuizAnswerProps {
  readonly pair: TaughtPair | null;
  readonly said: Said;
  readonly answer: MarkedAnswer | null;
  /** Whether it is the last question of the round. */
  readonly last: boolean;
  next(): void;
}

/** What was said in words. */
export const SAID_WORDS: Readonly<Record<Verdict, string>> = {
  enters: 'it enters',
  tight: 'it is tight',
  blocked: 'it does not enter',
};

/** Right or wrong, the verdict, and why. */
export function QuizAnswer({ pair, said, answer, last, next }: QuizAnswerProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <div className={styles.answer} data-right={answer?.right ?? 'unknown'}>
      <div role="status" className={styles.why}>
        <p className={styles.marked}>
          <span className={styles.right}>{rightWords(answer)}</span>
          {answer && pair && (
            <span className={styles.verdict} data-verdict={answer.verdict}>
              <VerdictMark verdict={answer.verdict} size={26} />
              {VERDICT_WORDS[answer.verdict]}
              <span className={styles.margin}>{marginText(pair.fit, units, MEASURING, readingText)}</span>
            </span>
          )}
          <span className={styles.said}>You said: {SAID_WORDS[said]}.</span>
        </p>
        {pair && <p>{pair.sentence}</p>}
      </div>
      <button type="button" className="key" onClick={next}>
        {last ? 'How it went' : 'Next question'} <kbd>Enter</kbd>
      </button>
    </div>
  );
}

function rightWords(answer: MarkedAnswer | null): string {
  if (!answer) return 'Not counted';
  return answer.right ? '✓ Right' : '✗ Wrong';
}
