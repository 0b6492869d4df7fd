import type { Family } from '../../../../family/family.ts';
import { VERDICT_WORDS } from '../../../../family/margin-text.ts';
import type { Verdict } from '../../../../fit/fit.ts';
import type { Answer } from '../../../../names/answer.ts';
import type { Knowledge } from '../../../../names/knowledge.ts';
import { askQuestion } from '../../../state/names/asking.ts';
import { isRunning } from '../../../state/results-state.ts';
import { pickProfile } from '../../../state/selection-state.ts';
import { AlteredLine } from '../../compare/altered-line.tsx';
import { useSession, useStore } from '../../use-store.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import { AnswerPicture } from './answer-picture.tsx';
import styles from './answer-plate.module.css';

interface AnswerPlateProps {
  readonly family: Family;
  readonly answer: Answer;
  readonly knowledge: Knowledge;
}

/** The answer, large enough for a room: mark, sentences, picture, and what can be done with it. */
export function AnswerPlate({ family, answer, knowledge }: AnswerPlateProps) {
  const hasPicture = answer.pair !== undefined || answer.profiles.length > 0;
  const isFew = hasPicture && answer.profiles.length <= 2;
  return (
    <section className={styles.plate} aria-label="Answer" data-pair={Boolean(answer.pair)} data-few={isFew}>
      <div className={styles.words}>
        <Said answer={answer} />
        {/* Heard on the way through the page, not called out. */}
        <div className={styles.words} aria-live="off">
          {answer.choices.length > 0 && <Choices answer={answer} />}
          <AlteredLine />
          <AnswerKeys family={family} answer={answer} />
        </div>
      </div>
      {hasPicture && (
        <div className={styles.picture} aria-live="off">
          <AnswerPicture family={family} answer={answer} knowledge={knowledge} />
        </div>
      )}
    </section>
  );
}

/** A sentence of more characters than this is set smaller. */
const LONG = 180;

/** What is said; the sheet round it tells it to those who hear the page. */
function Said({ answer }: { answer: Answer }) {
  const { kind, sentences, verdict } = answer;
  const [first = '', ...rest] = sentences;
  return (
    <div className={styles.said} data-kind={kind}>
      {verdict && <VerdictLine verdict={verdict} />}
      {kind === 'not judged yet' && <Waiting />}
      <p className={styles.first} data-long={first.length > LONG}>
        {first}
      </p>
      {rest.length > 0 && (
        <ul className={styles.rest}>
          {rest.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

function VerdictLine({ verdict }: { verdict: Verdict }) {
  return (
    <p className={styles.verdict} data-verdict={verdict}>
      <VerdictMark verdict={verdict} size={44} />
      {VERDICT_WORDS[verdict]}
    </p>
  );
}

/** An answer that is on its way comes by itself; one of a judging that was stopped has to be asked for. */
function Waiting() {
  const { results, judging } = useSession();
  const running = useStore(results, (s) => isRunning(s.phase));
  if (running)
    return (
      <p className={styles.verdict}>
        <VerdictMark verdict={null} size={44} />
        being judged…
      </p>
    );
  return (
    <p className={styles.verdict}>
      <VerdictMark verdict={null} size={44} />
      not judged
      <button type="button" className="key" onClick={() => judging.again()}>
        Judge now
      </button>
    </p>
  );
}

function Choices({ answer }: { answer: Answer }) {
  const session = useSession();
  return (
    <ul className={styles.choices} aria-label="Questions to ask instead">
      {answer.choices.map(({ label, question }) => (
        <li key={question}>
          <button type="button" className="key" title={question} onClick={() => askQuestion(session, question)}>
            {label}
          </button>
        </li>
      ))}
    </ul>
  );
}

/** The other views in which what was asked about is seen. */
function AnswerKeys({ family, answer: { pair, profiles, kind } }: Omit<AnswerPlateProps, 'knowledge'>) {
  const { selection, names } = useSession();
  const first = family.profiles.find(({ id }) => id === (pair?.entrantId ?? profiles[0]));
  if (!first || kind === 'choose') return null;
  const show = (view: 'compare' | 'wall') => {
    if (pair) selection.setState({ ...pair, part: 'entrant' });
    else pickProfile(selection, first);
    selection.setState({ view });
  };
  const lookUp = () =>
    names.setState(({ look }) => ({
      sheet: 'register',
      look: { ...look, search: first.section ?? first.name, only: 'all', chosen: `profile ${first.id}` },
    }));
  return (
    <div className={styles.keys}>
      {pair && (
        <button type="button" className="key" title="Look at this pair large" onClick={() => show('compare')}>
          Compare
        </button>
      )}
      <button type="button" className="key" title="See it among all keyways" onClick={() => show('wall')}>
        Show on the wall
      </button>
      <button type="button" className="key" title="All names of the same section" onClick={lookUp}>
        Look up in the register
      </button>
    </div>
  );
}
