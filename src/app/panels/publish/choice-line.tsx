import { useId } from 'react';
import styles from './choice-line.module.css';

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly (readonly [NoInfer<T>, string])[];
  onChange(value: NoInfer<T>): void;
}

/** One of a few, beside its label. */
export function Choice<T extends string>({ label, value, choices, onChange }: ChoiceProps<T>) {
  const id = useId();
  return (
    <div className={styles.line}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const chosen = choices.find(([name]) => name === event.target.value);
          if (chosen) onChange(chosen[0]);
        }}
      >
        {choices.map(([name, words]) => (
          <option key={name} value={name}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
