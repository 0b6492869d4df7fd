import { useEffect, useRef } from 'react';
import type { Family } from '../../../family/family.ts';
import { marginText, VERDICT_WORDS } from '../../../family/margin-text.ts';
import { walkEntrants, walkOpenings } from '../../state/selection-state.ts';
import type { ShownPair } from '../use-pair.ts';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './compare-head.module.css';

/** Which blank in which keyway, with the way to the next of each; the verdict; and what holds where the blank lies now. */
export function CompareHead({ family, pair }: { family: Family; pair: ShownPair }) {
  const { selection, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { entrant, opening, fit, settled } = pair;
  return (
    <header className={styles.head}>
      <div className={styles.pair}>
        <Walker name={entrant.name} what="blank or tool" onWalk={(steps) => walkEntrants(selection, family, steps)} />
        <span className={styles.in}>in</span>
        <Walker name={opening.name} what="keyway" onWalk={(steps) => walkOpenings(selection, family, steps)} />
      </div>
      <h1 className={styles.verdict} data-verdict={fit.verdict} aria-busy={!settled}>
        <span className="unseen">
          {entrant.name} in {opening.name}:{' '}
        </span>
        <span className={styles.word}>
          <VerdictMark verdict={fit.verdict} size={36} />
          {VERDICT_WORDS[fit.verdict]}
        </span>
        <span className={styles.margin}>{marginText(fit, units)}</span>
      </h1>
      <Sentence pair={pair} />
    </header>
  );
}

/** What holds where the blank lies now. The room of what is said of its best placement stays while it is dragged. */
function Sentence({ pair: { sentence, byHand } }: { pair: ShownPair }) {
  const usual = useRef(sentence);
  useEffect(() => {
    if (!byHand) usual.current = sentence;
  });
  return (
    <div className={styles.sentence}>
      {byHand && (
        <span className={styles.room} aria-hidden="true">
          {usual.current}
        </span>
      )}
      <p role="status">{sentence}</p>
    </div>
  );
}

function Walker({ name, what, onWalk }: { name: string; what: string; onWalk(steps: number): void }) {
  return (
    <span className={styles.walker}>
      <span className="key-row">
        <button
          type="button"
          className="key"
          title={`Previous ${what}`}
          aria-label={`Previous ${what}`}
          onClick={() => onWalk(-1)}
        >
          ◀
        </button>
        <button
          type="button"
          className="key"
          title={`Next ${what}`}
          aria-label={`Next ${what}`}
          onClick={() => onWalk(1)}
        >
          ▶
        </button>
      </span>
      <b title={name}>{name}</b>
    </span>
  );
}
