import type { Family } from '../../../family/family.ts';
import { readingText, type Units } from '../../state/length-text.ts';
import type { KeywayAnswer } from '../../state/names/identify-state.ts';
import { keywayWords } from '../../state/names/identify-words.ts';
import { tryInKeyways } from '../../state/names/identifying.ts';
import { marginText, VERDICT_WORDS } from '../../state/pair-words.ts';
import styles from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import own from './identify-keyways.module.css';

/** What the unknown would enter, lying as it does on the candidate that is looked at. */
export function IdentifyKeyways({ family }: { family: Family }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const run = useStore(session.identify, (s) => s.keyways);
  const unknown = useStore(session.identify, (s) => s.unknown);
  if (unknown?.kind === 'opening' || !family.profiles.some(({ kind }) => kind === 'opening')) return null;
  return (
    <section className={styles.part} aria-labelledby="identify-keyways">
      <h2 id="identify-keyways" className={styles.title}>
        Would it go in?
      </h2>
      {run.phase !== 'done' && (
        <button
          type="button"
          className="key"
          disabled={run.phase === 'running'}
          onClick={() => tryInKeyways(session, family)}
        >
          Compare with keyways
        </button>
      )}
      <div role="status">
        {run.phase === 'running' && <p>Trying it in the keyways …</p>}
        {run.phase === 'failed' && <p>It could not be tried: {run.trouble}</p>}
        {run.phase === 'done' && <p>{keywayWords(run.answers, family)}</p>}
      </div>
      {run.phase === 'done' && (
        <ul className={styles.pairs}>
          {byClearance(run.answers).map((answer) => (
            <Row key={answer.openingId} answer={answer} family={family} units={units} />
          ))}
        </ul>
      )}
      {run.phase === 'none' && (
        <p className={styles.note}>
          It is tried as it lies on the section that is picked, turned and mirrored like that.
        </p>
      )}
    </section>
  );
}

function byClearance(answers: readonly KeywayAnswer[]): KeywayAnswer[] {
  return [...answers].sort((a, b) => b.fit.clearance - a.fit.clearance);
}

function Row({ answer, family, units }: { answer: KeywayAnswer; family: Family; units: Units }) {
  const { fit, openingId } = answer;
  return (
    <li className={own.row}>
      <VerdictMark verdict={fit.verdict} size={18} />
      <span className={styles.grow}>{family.profiles.find(({ id }) => id === openingId)?.name ?? openingId}</span>
      <span>
        {VERDICT_WORDS[fit.verdict]} {marginText(fit, units, '', readingText)}
      </span>
    </li>
  );
}
