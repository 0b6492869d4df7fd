import { useId } from 'react';
import { type Family, openingsOf } from '../../../../family/family.ts';
import type { GrowReport } from '../../../../plan/grow.ts';
import { growStateOf } from '../../../state/plan/grow/grow-state.ts';
import {
  countHeadline,
  enteredWords,
  namesOf,
  reissueWords,
  reserveWords,
  sureWords,
} from '../../../state/plan/grow/grow-words.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './grow-head.module.css';

/** The answer in words: how many sections more, how sure that is, and what enters them. */
export function GrowHead({ family, report }: { family: Family; report: GrowReport | null }) {
  if (!report || report.none)
    return (
      <header className={styles.head}>
        <h1 className={styles.title}>Room to grow</h1>
      </header>
    );
  const reserve = reserveWords(family, report.count);
  const reissue = reissueWords(report, namesOf(family));
  return (
    <header className={styles.head} data-grow-count={report.count.confirmed}>
      <h1 className={styles.title}>{countHeadline(report.count)}</h1>
      <p>
        {sureWords(report)} {enteredWords(report, namesOf(family))} {reserve && <strong>{reserve}</strong>}
      </p>
      {reissue && <p data-reissue>{reissue}</p>}
    </header>
  );
}

/** Between which two keyways the next sections are to lie. */
export function GrowNeighbours({ family }: { family: Family }) {
  const store = growStateOf(useSession());
  const { first, second } = useStore(store, (s) => s);
  const openings = openingsOf(family);
  const choose = (change: { first?: string | null; second?: string | null }) =>
    store.setState((s) => {
      const next = { ...s, ...change, picked: 0, trouble: '' };
      // One neighbour alone is none: the other one is then the next in the chart.
      const given = next.first ?? next.second;
      if (given === null || (next.first !== null && next.second !== null && next.first !== next.second)) return next;
      if (Object.values(change).includes(null)) return { ...next, first: null, second: null };
      const at = openings.findIndex(({ id }) => id === given);
      const other = openings[at + 1]?.id ?? openings[at - 1]?.id ?? null;
      return change.second ? { ...next, first: other } : { ...next, second: other };
    });
  return (
    <div className={styles.neighbours}>
      <Neighbour label="Next section between" value={first} family={family} onChoose={(id) => choose({ first: id })} />
      <Neighbour label="and" value={second} family={family} onChoose={(id) => choose({ second: id })} />
    </div>
  );
}

interface NeighbourProps {
  readonly label: string;
  readonly value: string | null;
  readonly family: Family;
  onChoose(id: string | null): void;
}

function Neighbour({ label, value, family, onChoose }: NeighbourProps) {
  const id = useId();
  const openings = openingsOf(family);
  const shown = openings.some((opening) => opening.id === value) ? (value ?? '') : '';
  return (
    <span className={styles.neighbour}>
      <label htmlFor={id}>{label}</label>
      <select id={id} className={styles.select} value={shown} onChange={(e) => onChoose(e.target.value || null)}>
        <option value="">anywhere</option>
        {openings.map((opening) => (
          <option key={opening.id} value={opening.id}>
            {opening.name}
          </option>
        ))}
      </select>
    </span>
  );
}
