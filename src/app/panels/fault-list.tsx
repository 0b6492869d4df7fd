import styles from './fault-list.module.css';

/** So many faults are told. */
const MOST_TOLD = 5;

interface FaultListProps {
  readonly faults: readonly { path: string; what: string; cure: string }[];
}

/** Why the answer of a sheet could not be carried out; nothing where it was. */
export function FaultList({ faults }: FaultListProps) {
  if (faults.length === 0) return null;
  return (
    <ul className={styles.faults} role="alert">
      {faults.slice(0, MOST_TOLD).map(({ path, what, cure }) => (
        <li key={`${path} ${what}`}>
          <b>{path}</b>: {what}. {cure}
        </li>
      ))}
      {faults.length > MOST_TOLD && <li>and {faults.length - MOST_TOLD} more</li>}
    </ul>
  );
}
