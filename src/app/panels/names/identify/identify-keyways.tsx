import type { Family } from '../../../../family/family.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import { marginText, VERDICT_WORDS } from '../../../../family/margin-text.ts';
import { candidateWords } from '../../../../identify/say-identity.ts';
import type { KeywayAnswer } from '../../../state/names/identify-state.ts';
import { entryWords, keywayWords } from '../../../state/names/identify-words.ts';
import { answerOf, tryInKeyways } from '../../../state/names/identifying.ts';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import own from './identify-keyways.module.css';

/** What the unknown would enter, lying as it does on the candidate that is looked at. */
export function IdentifyKeyways({ family }: { family: Family }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const run = useStore(session.identify, (s) => s.keyways);
  const { unknown, error } = useStore(session.identify, (s) => s);
  const asItIs = family.profiles.some(({ id }) => id === unknown?.profileId);
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
        {run.phase === 'done' && <p>{keywayWords(run.answers, family, readingText(error, units))}</p>}
        {run.phase === 'done' && !asItIs && <KnownEntry family={family} />}
      </div>
      {run.phase === 'done' && (
        <ul className={styles.pairs}>
          {inOrder(run.answers).map((answer) => (
            <Row key={answer.openingId} answer={answer} family={family} units={units} />
          ))}
        </ul>
      )}
      {run.phase === 'none' && (
        <p className={styles.note}>
          {asItIs
            ? 'It is tried as the family has it.'
            : 'It is tried as it lies on the section that is picked, turned and mirrored like that.'}
        </p>
      )}
    </section>
  );
}

/** What the section that is looked at goes into itself, where the unknown may be that. */
function KnownEntry({ family }: { family: Family }) {
  const { identify, results } = useSession();
  const state = useStore(identify, (s) => s);
  const fits = useStore(results, (s) => s.fits);
  const answer = answerOf(state);
  const known = family.profiles.find(({ id }) => id === answer?.ranked[state.picked]?.ids[0]);
  const alike = answer && answer.likeness !== 'none' && candidateWords(answer, state.picked) !== '';
  const words = known && alike ? entryWords(fits, known, family) : '';
  return words === '' ? null : <p className={own.known}>{words}</p>;
}

const ORDER = { always: 0, depends: 1, never: 2 };

/** Those that it surely goes into first, then the close ones, then by how much is missing. */
function inOrder(answers: readonly KeywayAnswer[]): KeywayAnswer[] {
  return [...answers].sort((a, b) => ORDER[a.threeWay] - ORDER[b.threeWay] || b.fit.clearance - a.fit.clearance);
}

function Row({ answer, family, units }: { answer: KeywayAnswer; family: Family; units: Units }) {
  const { fit, openingId, threeWay } = answer;
  const close = threeWay === 'depends';
  const margin = marginText(fit, units, '', readingText);
  return (
    <li className={own.row} data-three-way={threeWay}>
      <VerdictMark verdict={close ? null : fit.verdict} size={18} />
      <span className={styles.grow}>{family.profiles.find(({ id }) => id === openingId)?.name ?? openingId}</span>
      <span>
        {close ? 'too close to call: as drawn' : VERDICT_WORDS[fit.verdict]} {margin}
      </span>
    </li>
  );
}
