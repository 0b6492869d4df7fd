import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { CheckWeight, PrintCheck } from '../../../print3d/display-set.ts';
import { checksHeadline, checkWords, sortedChecks, WEIGHT_WORDS } from '../../state/publish/block-words.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './block-readings.module.css';

/** So many checks are told before more are asked for. */
const FIRST = 8;

interface BlockChecksProps {
  readonly family: Family;
  readonly checks: readonly PrintCheck[];
}

/** What a printer makes of the set: the section, the place, what to do. */
export function BlockChecks({ family, checks }: BlockChecksProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const [all, setAll] = useState(false);
  const sorted = sortedChecks(checks);
  const shown = all ? sorted : sorted.slice(0, FIRST);
  return (
    <section className={readings.part} aria-labelledby="reading-checks">
      <h2 id="reading-checks" className={readings.title}>
        {checksHeadline(checks)}
      </h2>
      <ul className={styles.checks}>
        {shown.map((check, i) => {
          const { about, what, cure } = checkWords(check, family, units);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: checks have no name of their own, and none is kept while others go
            <li key={`${i} ${about} ${what}`} data-weight={check.weight}>
              <p className={styles.checkHead}>
                <WeightMark weight={check.weight} />
                <b>{WEIGHT_WORDS[check.weight]}</b>
                {about && <span>{about}</span>}
              </p>
              <p>{what}</p>
              {cure && <p className={readings.note}>{cure}</p>}
            </li>
          );
        })}
      </ul>
      {sorted.length > FIRST && (
        <button type="button" className="key" onClick={() => setAll(!all)}>
          {all ? 'Fewer' : `All ${sorted.length}`}
        </button>
      )}
    </section>
  );
}

/** A filled triangle, an open one, a ring: apart in grey as well. Drawn beside its word. */
function WeightMark({ weight }: { readonly weight: CheckWeight }) {
  return (
    <svg className={styles.mark} data-weight={weight} viewBox="0 0 20 20" aria-hidden="true">
      {weight === 'note' ? <circle cx="10" cy="10" r="7" /> : <path d="M10 2 18.5 17.5H1.5Z" />}
    </svg>
  );
}
