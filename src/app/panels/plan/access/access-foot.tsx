import { memo, useId } from 'react';
import type { Plan } from '../../../../family/plan.ts';
import type { Access, AccessFault } from '../../../../plan/access.ts';
import {
  carrierWords,
  faultKind,
  faultWords,
  neededWords,
  rankWords,
  sectionWords,
  tallyPairs,
} from '../../../state/plan/access/access-words.ts';
import { hasPlace, showFault } from '../../../state/plan/access/show-fault.ts';
import { useSession } from '../../use-store.ts';
import styles from './access-foot.module.css';
import { FaultSign } from './access-row.tsx';

/** More are counted in words. */
const MOST_SHOWN = 60;

/** What the ticks come to: the blanks that are needed, the pairs, and what cannot be meant so. */
export const AccessFoot = memo(function AccessFoot({ plan, access }: { plan: Plan; access: Access }) {
  const { must, not, free } = tallyPairs(access);
  return (
    <section className={styles.foot} aria-label="What it comes to">
      <p className={styles.tally} aria-live="polite">
        <b>{neededWords(access)}.</b> Of the pairs <b>{must.toLocaleString('en')}</b> must enter,{' '}
        <b>{not.toLocaleString('en')}</b> must not, <b>{free.toLocaleString('en')}</b> {free === 1 ? 'is' : 'are'} free.{' '}
        <span className={styles.count}>{faultWords(access.faults)}.</span>
      </p>
      <div className={styles.lists}>
        <Blanks plan={plan} access={access} />
        <Faults plan={plan} faults={access.faults} />
      </div>
    </section>
  );
});

function Blanks({ plan, access }: { plan: Plan; access: Access }) {
  const id = useId();
  const { blanks } = access;
  const first = [...blanks].sort((a, b) => weight(a.rank) - weight(b.rank));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls is reached by its keys
    <section className={styles.list} tabIndex={0} aria-labelledby={id}>
      <h3 id={id}>Blanks that are needed</h3>
      {blanks.length === 0 && <p className={styles.soft}>None yet: tick who enters what.</p>}
      <ul>
        {first.slice(0, MOST_SHOWN).map((blank) => (
          <li key={blank.id} title={`Enters ${sectionWords(blank, access)}`}>
            <b>{blank.name}</b> <span className={styles.soft}>{rankWords(blank)}</span>
            <span className={styles.carriers}>{carrierWords(blank, plan)}</span>
          </li>
        ))}
      </ul>
      {blanks.length > MOST_SHOWN && <p className={styles.soft}>and {blanks.length - MOST_SHOWN} more</p>}
    </section>
  );
}

/** Group and all-section blanks come first: base blanks are as many as sections, and alike. */
function weight(rank: 'base' | 'group' | 'all-section'): number {
  return { 'all-section': 0, group: 1, base: 2 }[rank];
}

function Faults({ plan, faults }: { plan: Plan; faults: readonly AccessFault[] }) {
  const session = useSession();
  const id = useId();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls is reached by its keys
    <section className={styles.list} tabIndex={0} aria-labelledby={id}>
      <h3 id={id}>What to look at</h3>
      {faults.length === 0 && <p className={styles.soft}>Nothing: every tick can be meant so.</p>}
      <ul>
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <li key={`${fault.what} ${fault.areas.join()} ${fault.holders.join()}`} data-kind={fault.kind}>
            <span className={styles.fault}>
              {fault.kind === 'contradiction' && <FaultSign />}
              <span>
                <b>{faultKind(fault)}:</b> {fault.what} <i>{fault.cure}</i>
              </span>
            </span>
            {hasPlace(fault) && (
              <button
                type="button"
                className="key"
                aria-label={`Show where: ${fault.what}`}
                onClick={() => showFault(session, plan, fault)}
              >
                Show
              </button>
            )}
          </li>
        ))}
      </ul>
      {faults.length > MOST_SHOWN && <p className={styles.soft}>and {faults.length - MOST_SHOWN} more</p>}
    </section>
  );
}
