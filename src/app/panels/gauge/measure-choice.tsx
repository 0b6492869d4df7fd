import { useId } from 'react';
import type { TightBy } from '../../state/gauge/gauge-state.ts';
import fields from '../form-fields.module.css';
import { ChoiceSelect } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './gauge-bar.module.css';

const MEASURES: readonly (readonly [TightBy, string])[] = [
  ['height', 'strip of this height'],
  ['mean', 'mean over all heights'],
  ['sight', 'line of sight'],
];

/** What the keyways are ranked by. */
export function MeasureChoice() {
  const { gauge } = useSession();
  const id = useId();
  const measure = useStore(gauge, (s) => s.measure);
  return (
    <div className={styles.field}>
      <label htmlFor={id}>ranked by</label>
      <ChoiceSelect
        id={id}
        className={`${fields.select} ${styles.select}`}
        value={measure}
        choices={MEASURES}
        onChange={(next) => gauge.setState({ measure: next })}
      />
    </div>
  );
}
