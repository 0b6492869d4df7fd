import type { Telling } from '../../state/conditions-state.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './tells-keys.module.css';

const CHOICES: readonly { telling: Telling; label: string; title: string }[] = [
  { telling: 'margin', label: 'margin', title: 'The gap all round, or how much too deep' },
  { telling: 'guard', label: 'wear guard', title: 'How much both parts must wear before a blocked blank goes in' },
  { telling: 'parts', label: 'all parts', title: 'Whether all, some or none of the parts within tolerance go in' },
];

/** What the wall tells of each pair. */
export function TellsKeys() {
  const { conditions } = useSession();
  const now = useStore(conditions, (s) => s.telling);
  return (
    <fieldset className={`bare ${styles.choice}`}>
      <legend className={styles.legend}>tells</legend>
      <span className="key-row">
        {CHOICES.map(({ telling, label, title }) => (
          <button
            key={telling}
            type="button"
            className="key"
            aria-pressed={now === telling}
            title={title}
            onClick={() => conditions.setState({ telling })}
          >
            {label}
          </button>
        ))}
      </span>
    </fieldset>
  );
}
