import { type KeyboardEvent, useId, useState } from 'react';
import { MOST_GAUGED, type TypedMeasure, typedText, withUnit } from '../../state/gauge/gauge-lengths.ts';
import { readLength } from '../../tools/draw/typed-length.ts';
import fields from '../form-fields.module.css';
import { useTyped } from '../use-typed.ts';
import styles from './gauge-bar.module.css';

interface GaugeLengthFieldProps {
  readonly label: string;
  /** Nanometres; null for an empty field. */
  readonly nm: number | null;
  readonly measure: TypedMeasure;
  /** Whether the field may be left empty. */
  readonly mayBeEmpty: boolean;
  onTake(nm: number | null): void;
}

/** A length of the strip: taken with Enter or on leaving the field, stepped with the arrow keys; nonsense stays and is named. */
export function GaugeLengthField({ label, nm, measure, mayBeEmpty, onTake }: GaugeLengthFieldProps) {
  const id = useId();
  const shown = nm === null ? '' : typedText(nm, measure);
  const [typed, setTyped] = useTyped(shown);
  const [refused, setRefused] = useState(false);
  const read = readStripLength(typed ?? shown, measure, mayBeEmpty);
  const fault = typed !== null && refused && !read.ok ? read.words : '';
  const take = () => {
    if (typed === null) return;
    setRefused(!read.ok);
    if (!read.ok) return;
    setTyped(null);
    if (read.nm !== nm) onTake(read.nm);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape') setTyped(null);
    const way = { ArrowUp: 1, ArrowDown: -1 }[event.key] ?? 0;
    const from = read.ok ? read.nm : nm;
    if (way === 0 || from === null) return;
    event.preventDefault();
    setTyped(null);
    const next = from + way * (event.shiftKey ? measure.leap : measure.step);
    onTake(Math.min(MOST_GAUGED, Math.max(measure.step / 2, next)));
  };
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={`${fields.number} ${styles.number}`}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        value={typed ?? shown}
        placeholder={mayBeEmpty ? 'any' : undefined}
        aria-invalid={fault !== ''}
        aria-describedby={fault ? `${id}-fault` : undefined}
        onChange={(event) => {
          setRefused(false);
          setTyped(event.target.value);
        }}
        onBlur={take}
        onKeyDown={onKeyDown}
      />
      <span>{measure.unit}</span>
      {fault && (
        <span id={`${id}-fault`} role="alert" className={`${fields.fault} ${styles.fault}`}>
          {fault}
        </span>
      )}
    </div>
  );
}

type StripLength = { readonly ok: true; readonly nm: number | null } | { readonly ok: false; readonly words: string };

/** What was typed, nanometres; what is wrong with it otherwise. */
function readStripLength(text: string, measure: TypedMeasure, mayBeEmpty: boolean): StripLength {
  const least = typedText(measure.step / 10, measure);
  const range = `Type a length from ${least} to ${typedText(MOST_GAUGED, measure)} ${measure.unit}`;
  if (text.trim() === '') return mayBeEmpty ? { ok: true, nm: null } : { ok: false, words: `${range}.` };
  const read = readLength(withUnit(text, measure), 'mm', null);
  if (!read.ok) return { ok: false, words: `${range}; a unit may follow (mm, in, thou).` };
  if (read.nm < measure.step / 10 || read.nm > MOST_GAUGED) return { ok: false, words: `${range}.` };
  return { ok: true, nm: read.nm };
}
