import { useId } from 'react';
import { useSession, useStore } from '../use-store.ts';
import styles from './choice-line.module.css';

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly (readonly [NoInfer<T>, string])[];
  /** Whether it chooses among names, which may be long. */
  readonly names?: boolean;
  onChange(value: NoInfer<T>): void;
}

/** One of a few, beside its label. */
export function Choice<T extends string>({ label, value, choices, names = false, onChange }: ChoiceProps<T>) {
  const id = useId();
  return (
    <div className={styles.line} data-names={names || undefined}>
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

/** Colours, or greys that any printer keeps apart. */
export function InksChoice() {
  const { sheetChoice } = useSession();
  return (
    <Choice
      label="Inks"
      value={useStore(sheetChoice, (s) => s.palette)}
      choices={[
        ['colour', 'Colour'],
        ['grey', 'Grey'],
      ]}
      onChange={(palette) => sheetChoice.setState({ palette })}
    />
  );
}

/** The unit that is written: that of the window until another is chosen. */
export function LengthsChoice() {
  const { sheetChoice, settings } = useSession();
  const ofWindow = useStore(settings, (s) => s.units);
  const chosen = useStore(sheetChoice, (s) => s.units);
  return (
    <Choice
      label="Lengths"
      value={chosen ?? ofWindow}
      choices={[
        ['mm', 'mm'],
        ['in', 'inch'],
      ]}
      onChange={(units) => sheetChoice.setState({ units: units === ofWindow ? null : units })}
    />
  );
}
