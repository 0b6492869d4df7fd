import type { Fact } from '../state/profile-facts.ts';
import styles from './fact-list.module.css';

/** Terms and values on ruled lines, as in the title block of a drawing. */
export function FactList({ facts }: { facts: readonly Fact[] }) {
  return (
    <dl className={styles.facts}>
      {facts.map(({ term, value }) => (
        <div key={`${term} ${value}`} className={styles.line}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
