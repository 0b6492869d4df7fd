import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { CheckWeight, PrintCheck } from '../../../print3d/display-set.ts';
import { checksHeadline, type ToldChecks, toldChecks, WEIGHT_WORDS } from '../../state/publish/block-words.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './block-readings.module.css';

/** So many sections are told of one check before more are asked for. */
const FIRST = 4;

interface BlockChecksProps {
  readonly family: Family;
  readonly checks: readonly PrintCheck[];
}

/** What a printer makes of the set: what was found, at which sections and where, and what to do. */
export function BlockChecks({ family, checks }: BlockChecksProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const told = toldChecks(checks, family, units);
  return (
    <section className={readings.part} aria-labelledby="reading-checks">
      <h2 id="reading-checks" className={readings.title}>
        {checksHeadline(checks)}
      </h2>
      {told.length > 0 && (
        <ul className={styles.checks} aria-label="Checks before printing">
          {told.map((check) => (
            <ToldCheck key={`${check.weight} ${check.what}`} check={check} />
          ))}
        </ul>
      )}
    </section>
  );
}

function ToldCheck({ check: { weight, what, cure, about } }: { readonly check: ToldChecks }) {
  const [all, setAll] = useState(false);
  const shown = all ? about : about.slice(0, FIRST);
  return (
    <li data-weight={weight}>
      <p className={styles.checkHead}>
        <WeightMark weight={weight} />
        <b>{WEIGHT_WORDS[weight]}</b>
      </p>
      <p>{what}</p>
      {about.length > 0 && (
        <ul className={styles.about}>
          {shown.map(({ subjects, where }) => (
            <li key={`${subjects} ${where}`}>
              <b>{subjects}</b>
              {subjects && where ? ': ' : ''}
              {where}
            </li>
          ))}
        </ul>
      )}
      {about.length > FIRST && (
        <button type="button" className="key" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? 'Fewer' : `All ${about.length}`}
        </button>
      )}
      {cure && <p className={readings.note}>{cure}</p>}
    </li>
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
