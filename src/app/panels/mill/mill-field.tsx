import { type KeyboardEvent, useId, useState } from 'react';
import styles from './mill-panel.module.css';

/** A typed value, or what is wrong with it. */
export type TypedValue = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly words: string };

interface MillFieldProps {
  /** The short name beside the field, and the whole one that is read out. */
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  /** The value as text, without its unit. */
  readonly text: string;
  /** Why the value in it cannot be milled; empty where it can. */
  readonly fault: string;
  read(text: string): TypedValue;
  /** The value so many steps on: 1 or -1 by an arrow key, ten times that with shift, a tenth with alt. */
  stepped(steps: number): number;
  onTake(value: number): void;
}

/**
 * A size in the table of grooves: taken with Enter or on leaving the field, counted up and down by the arrow keys. What
 * cannot be read stays and is named; what cannot be milled is taken as wanted, and its fault stands below.
 */
export function MillField(props: MillFieldProps) {
  const { name, label, unit, text, fault } = props;
  const id = useId();
  const { draft, refusal, type, take, onKeyDown } = useTyped(props);
  const words = refusal || fault;
  return (
    <label className={styles.field}>
      <span className={styles.name}>{name}</span>
      <input
        type="text"
        inputMode="decimal"
        autoComplete="off"
        aria-label={`${label}, ${unit}`}
        aria-invalid={words !== ''}
        aria-describedby={words ? id : undefined}
        value={draft ?? text}
        onChange={(event) => type(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={take}
      />
      {words && (
        <span id={id} role="alert" className={styles.fault}>
          {words}
        </span>
      )}
    </label>
  );
}

/** What is typed into a field and not taken yet, and why it was refused. */
function useTyped({ text, read, stepped, onTake }: MillFieldProps) {
  const [draft, setDraft] = useState<string | null>(null);
  const [refusal, setRefusal] = useState('');
  const [before, setBefore] = useState(text);
  const forget = () => {
    setDraft(null);
    setRefusal('');
  };
  if (text !== before) {
    // Set from elsewhere: what was typed is of the past.
    setBefore(text);
    forget();
  }
  const take = () => {
    if (draft === null || draft.trim() === text) {
      forget();
      return;
    }
    const typed = read(draft);
    setRefusal(typed.ok ? '' : typed.words);
    if (!typed.ok) return;
    setDraft(null);
    onTake(typed.value);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape' && draft !== null) {
      event.stopPropagation();
      forget();
    }
    const steps = { ArrowUp: 1, ArrowDown: -1 }[event.key] ?? 0;
    if (steps === 0) return;
    event.preventDefault();
    forget();
    onTake(stepped(steps * (event.shiftKey ? 10 : 1) * (event.altKey ? 0.1 : 1)));
  };
  return { draft, refusal, type: setDraft, take, onKeyDown };
}
