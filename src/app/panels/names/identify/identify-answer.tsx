import type { Family } from '../../../../family/family.ts';
import { readingText } from '../../../../family/length-text.ts';
import { sayIdentity } from '../../../../identify/say-identity.ts';
import type { UnknownOutline } from '../../../state/names/identify-state.ts';
import { changeQuestion, identifyNow, stopIdentifying } from '../../../state/names/identifying.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './identify-answer.module.css';
import { IdentifyList } from './identify-list.tsx';
import { IdentifyPicture } from './identify-picture.tsx';

/** The answer: in a sentence, as a list of sections, and as the picture of the one that is looked at. */
export function IdentifyAnswer({ family, unknown }: { family: Family; unknown: UnknownOutline }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { run, error, picked } = useStore(session.identify, (s) => s);
  if (run.phase !== 'done') return <Waiting family={family} />;
  const { answer, profiles } = run;
  const whole = unknown.profileId === null ? 'none of the family' : 'no other of the family';
  const [first, ...rest] = sayIdentity(answer, profiles, error, (nm) => readingText(nm, units), whole);
  const candidate = answer.ranked[picked];
  if (!candidate) return <NothingLike family={family} unknown={unknown} />;
  const known = profiles.find(({ id }) => id === candidate?.ids[0]);
  return (
    <div className={styles.answer}>
      <div role="status" className={styles.words} data-likeness={answer.likeness}>
        <p className={styles.first}>{first}</p>
        {rest.length > 0 && <p>{rest.join(' ')}</p>}
      </div>
      {candidate && known && (
        <div className={styles.shown}>
          <IdentifyPicture
            key={unknown.name}
            unknownName={unknown.name}
            known={known}
            comparison={candidate.comparison}
          />
          <IdentifyList family={family} answer={answer} profiles={profiles} picked={picked} />
        </div>
      )}
    </div>
  );
}

/** Said where the family has no section of the kind that is asked for. */
function NothingLike({ family, unknown }: { family: Family; unknown: UnknownOutline }) {
  const session = useSession();
  const among = useStore(session.identify, (s) => s.among);
  const others = family.profiles.some(({ id }) => id !== unknown.profileId);
  const kind = among === 'openings' ? 'keyway' : 'blank or tool';
  return (
    <div className={styles.waiting}>
      <p role="status" className={styles.first}>
        {others
          ? `There is nothing to compare it with: this family has no ${unknown.profileId ? 'other ' : ''}${kind}.`
          : 'There is nothing to compare it with: this family has no other section.'}
      </p>
      {others ? (
        <button type="button" className="key" onClick={() => changeQuestion(session, { among: 'all' })}>
          Compare with all sections
        </button>
      ) : (
        <p>Draw or import more sections, or open another family.</p>
      )}
    </div>
  );
}

/** What stands in place of the answer until it is there. */
function Waiting({ family }: { family: Family }) {
  const session = useSession();
  const run = useStore(session.identify, (s) => s.run);
  const again = (label: string) => (
    <button type="button" className="key" onClick={() => identifyNow(session, family)}>
      {label}
    </button>
  );
  if (run.phase === 'running')
    return (
      <div className={styles.waiting}>
        <p role="status">Comparing with the sections of the family …</p>
        <progress aria-label="Comparing" max={run.total} value={run.done} />
        <button type="button" className="key" onClick={() => stopIdentifying(session)}>
          Cancel
        </button>
      </div>
    );
  if (run.phase === 'stopped')
    return (
      <div className={styles.waiting}>
        <p role="status">The comparison was stopped.</p>
        {again('Compare')}
      </div>
    );
  if (run.phase === 'failed')
    return (
      <div className={styles.waiting}>
        <p role="alert">It could not be compared: {run.trouble}</p>
        {again('Try again')}
      </div>
    );
  return <div className={styles.waiting} />;
}
