import { useId } from 'react';
import { type ChoiceFieldProps, ChoiceSelect } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './choice-line.module.css';

interface ChoiceProps<T extends string> extends ChoiceFieldProps<T> {
  /** Whether it chooses among names, which may be long. */
  readonly names?: boolean;
}

/** One of a few, beside its label. */
export function Choice<T extends string>({ label, names = false, ...choice }: ChoiceProps<T>) {
  const id = useId();
  return (
    <div className={styles.line} data-names={names || undefined}>
      <label htmlFor={id}>{label}</label>
      <ChoiceSelect id={id} {...choice} />
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
