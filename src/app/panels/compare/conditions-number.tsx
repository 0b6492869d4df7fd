import { type KeyboardEvent, useId, useState } from 'react';
import styles from './conditions.module.css';

interface NumberFieldProps {
  readonly label: string;
  /** In the unit shown. */
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  /** Most signs that the field shows. */
  readonly room?: number;
  readonly least: number;
  readonly most: number;
  /** What the up and down keys add; ten times that with shift. */
  readonly step: number;
  onChange(value: number): void;
}

/** A number to be typed exactly: taken with Enter or on leaving the field; up and down count. Nonsense stays and is named. */
export function NumberField(props: NumberFieldProps) {
  const { label, value, unit, decimals, room = 7, least, most, step, onChange } = props;
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [refused, setRefused] = useState(false);
  const [valueBefore, setValueBefore] = useState(value);
  if (value !== valueBefore) {
    // Set from elsewhere: what was typed is of the past.
    setValueBefore(value);
    setDraft(null);
    setRefused(false);
  }
  const typed = draft === null ? value : numberOf(draft, unit);
  const wrong = typed === null || typed < least || typed > most;
  const take = () => {
    setRefused(draft !== null && wrong);
    if (draft === null || typed === null || wrong) return;
    setDraft(null);
    if (draft !== textOf(value, decimals, room)) onChange(typed);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const steps = { ArrowUp: 1, ArrowDown: -1 }[event.key] ?? 0;
    if (event.key === 'Enter') take();
    if (event.key === 'Escape' || steps !== 0) {
      setDraft(null);
      setRefused(false);
    }
    if (steps === 0) return;
    event.preventDefault();
    const next = value + steps * step * (event.shiftKey ? 10 : 1);
    onChange(Math.min(most, Math.max(least, Number(next.toFixed(9)))));
  };
  return (
    <span className={styles.number}>
      <span className={styles.entry}>
        <input
          className={styles.field}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-label={`${label}, ${unit}`}
          aria-invalid={refused}
          aria-describedby={refused ? id : undefined}
          value={draft ?? textOf(value, decimals, room)}
          onChange={(event) => setDraft(event.target.value)}
          onKeyDown={onKeyDown}
          onBlur={take}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      {refused && (
        <span id={id} role="alert" className={styles.fault}>
          Type a number from {least} to {most}.
        </span>
      )}
    </span>
  );
}

/** A comma counts as a decimal point; the unit may be typed along. */
function numberOf(text: string, unit: string): number | null {
  const typed = text.trim();
  const bare = typed.endsWith(unit) ? typed.slice(0, -unit.length).trimEnd() : typed;
  const plain = bare.replace(',', '.').replace('−', '-');
  const number = Number(plain);
  return plain === '' || !Number.isFinite(number) ? null : number;
}

/** At least `decimals` decimals, and more where the value needs them to be exact and the field has room for them. */
function textOf(value: number, decimals: number, room: number): string {
  const fixed = value.toFixed(decimals);
  const exact = Number(value.toFixed(6));
  const text = String(exact);
  return Math.abs(exact - Number(fixed)) < 1e-9 || text.length > room ? fixed : text;
}
