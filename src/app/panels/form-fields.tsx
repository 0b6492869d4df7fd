import { type ReactNode, useId, useState } from 'react';
import type { Units } from '../../family/length-text.ts';
import { readLength } from '../tools/draw/typed-length.ts';
import { exactLength } from './draw/vertex-entry.ts';
import styles from './form-fields.module.css';
import { useTyped } from './use-typed.ts';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  readonly lines?: number;
  readonly autoFocus?: boolean;
  onChange(value: string): void;
}

/** A line of text, or several. */
export function TextField({ label, value, hint, lines = 1, autoFocus = false, onChange }: TextFieldProps) {
  const id = useId();
  const common = {
    id,
    value,
    className: styles.text,
    autoComplete: 'off',
    'aria-describedby': hint ? `${id}-hint` : undefined,
    'data-first': autoFocus || undefined,
    onChange: (event: { target: { value: string } }) => onChange(event.target.value),
  };
  return (
    <Field id={id} label={label} hint={hint}>
      {lines > 1 ? <textarea {...common} rows={lines} /> : <input type="text" maxLength={200} {...common} />}
    </Field>
  );
}

interface LengthFieldProps {
  readonly label: string;
  /** What is in the field. */
  readonly text: string;
  readonly units: Units;
  /** Shown in place of the unit of length: "°". */
  readonly unit?: string;
  readonly fault?: string;
  readonly hint?: string;
  onChange(text: string): void;
}

/** A length to be typed, with its unit behind it; what is wrong with it is told below. */
export function LengthField({ label, text, units, unit, fault, hint, onChange }: LengthFieldProps) {
  const id = useId();
  const told = [fault ? `${id}-fault` : '', hint ? `${id}-hint` : ''].filter(Boolean).join(' ');
  return (
    <Field id={id} label={label} hint={hint}>
      <span className={styles.length}>
        <input
          id={id}
          className={styles.number}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          value={text}
          aria-invalid={Boolean(fault)}
          aria-describedby={told || undefined}
          onChange={(event) => onChange(event.target.value)}
        />
        <span>{unit ?? units}</span>
      </span>
      {fault && (
        <span id={`${id}-fault`} role="alert" className={styles.fault}>
          {fault}
        </span>
      )}
    </Field>
  );
}

interface WholeNumberLook {
  readonly label: string;
  readonly least: number;
  readonly most: number;
  readonly unit?: string;
  readonly hint?: string;
  readonly title?: string;
  /** Beside its label, in a bar. */
  readonly inline?: boolean;
  /** Taken with every key; else when the field is left, by Enter or by the arrows. */
  readonly atOnce?: boolean;
}

type WholeNumberProps = WholeNumberLook &
  (
    | { readonly value: number; readonly none?: undefined; onChange(value: number): void }
    /** With what an empty field means, which is null. */
    | { readonly value: number | null; readonly none: string; onChange(value: number | null): void }
  );

/** A whole number, typed or stepped with the arrow keys; what is none stays to be mended. */
export function WholeNumberField(props: WholeNumberProps) {
  const { label, least, most, none, unit, hint, title, inline = false, atOnce = false } = props;
  const id = useId();
  const { text, isSound, type, take, onKeyDown } = useWholeNumber(props);
  const fault = isSound ? '' : `A whole number from ${least} to ${most}${none === undefined ? '' : ', or empty'}.`;
  const told = fault || (none !== undefined && text.trim() === '' ? none : (hint ?? ''));
  return (
    <div className={`${styles.field} ${inline ? styles.inline : ''}`} title={title}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={styles.number}
        {...(atOnce ? { type: 'number', min: least, max: most, step: 1 } : { type: 'text', inputMode: 'numeric' })}
        autoComplete="off"
        value={text}
        aria-invalid={!isSound}
        aria-describedby={told ? `${id}-told` : undefined}
        onChange={(event) => type(event.target.value)}
        onBlur={take}
        onKeyDown={onKeyDown}
      />
      {unit && <span>{unit}</span>}
      {told && (
        <span id={`${id}-told`} className={fault ? styles.fault : styles.hint} role={fault ? 'alert' : undefined}>
          {told}
        </span>
      )}
    </div>
  );
}

/** What is in a field for a whole number, and what its keys do. */
function useWholeNumber(props: WholeNumberProps) {
  const { value, least, most, none, atOnce = false } = props;
  const shown = value === null ? '' : String(value);
  const [typed, setTyped] = useTyped(shown);
  const text = typed ?? shown;
  const number = wholeNumber(text);
  const sound = (n: number | null) => (n === null ? none !== undefined : n >= least && n <= most);
  const put = (n: number | null) => {
    if (n === value || !sound(n)) return;
    if (props.none !== undefined) props.onChange(n);
    else if (n !== null) props.onChange(n);
  };
  const type = (next: string) => {
    setTyped(next);
    if (atOnce) put(wholeNumber(next));
  };
  const take = () => {
    put(number);
    if (sound(number)) setTyped(null);
  };
  const onKeyDown = (event: { readonly key: string; preventDefault(): void }) => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape') setTyped(null);
    // A field of the browser's own for numbers steps by itself.
    const step = atOnce ? 0 : ({ ArrowUp: 1, ArrowDown: -1 }[event.key] ?? 0);
    if (step === 0 || number === null || !sound(number)) return;
    event.preventDefault();
    setTyped(null);
    put(Math.min(most, Math.max(least, number + step)));
  };
  return { text, isSound: sound(number), type, take, onKeyDown };
}

/** Null for an empty text, NaN for what is no whole number. */
function wholeNumber(text: string): number | null {
  if (text.trim() === '') return null;
  const number = Number(text);
  return Number.isInteger(number) ? number : Number.NaN;
}

/** What a choice is among. */
export interface ChoiceFieldProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly (readonly [NoInfer<T>, string])[];
  onChange(value: NoInfer<T>): void;
}

/** One of a few. */
export function ChoiceField<T extends string>({ label, ...choice }: ChoiceFieldProps<T>) {
  const id = useId();
  return (
    <Field id={id} label={label}>
      <ChoiceSelect id={id} className={styles.select} {...choice} />
    </Field>
  );
}

interface ChoiceSelectProps<T extends string> extends Omit<ChoiceFieldProps<T>, 'label'> {
  readonly id: string;
  readonly className?: string;
}

/** The list of a choice alone, for a label that stands elsewhere. */
export function ChoiceSelect<T extends string>({ id, className, value, choices, onChange }: ChoiceSelectProps<T>) {
  return (
    <select
      id={id}
      className={className}
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
  );
}

interface TickFieldProps {
  readonly label: string;
  readonly value: boolean;
  onChange(value: boolean): void;
}

/** Yes or no. */
export function TickField({ label, value, onChange }: TickFieldProps) {
  return (
    <label className={styles.tick}>
      <input type="checkbox" checked={value} onChange={(event) => onChange(event.target.checked)} />
      {label}
    </label>
  );
}

interface FieldProps {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  readonly children: ReactNode;
}

function Field({ id, label, hint, children }: FieldProps) {
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      {children}
      {hint && (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
    </div>
  );
}

/** A length that is being typed: its text, what it comes to, and what is wrong with it. */
export interface TypedField {
  readonly text: string;
  /** Nanometres; null where nothing or nonsense is typed. */
  readonly nm: number | null;
  readonly fault: string | undefined;
  set(text: string): void;
}

/** The state of a {@link LengthField} that begins with a length; an empty field is no fault. */
export function useTypedLength(start: number | null, units: Units): TypedField {
  const [text, set] = useState(start === null ? '' : exactLength(start, units));
  return typedField(text, units, set);
}

/** The same for a length that may become known later: the field shows it until something is typed. */
export function useFollowingLength(start: number | null, units: Units): TypedField {
  const [typed, set] = useState<string | null>(null);
  return typedField(typed ?? (start === null ? '' : exactLength(start, units)), units, set);
}

function typedField(text: string, units: Units, set: (text: string) => void): TypedField {
  if (text.trim() === '') return { text, nm: null, fault: undefined, set };
  const typed = readLength(text, units, null);
  return { text, nm: typed.ok ? typed.nm : null, fault: typed.ok ? undefined : typed.words, set };
}

/** A number without a unit of length, such as an angle in degrees. */
export function useTypedNumber(start: number | null): TypedField & { readonly value: number | null } {
  const [text, set] = useState(start === null ? '' : String(start));
  const plain = text.trim().replace('−', '-').replace(',', '.');
  const number = plain === '' ? null : Number(plain);
  const ok = number === null || Number.isFinite(number);
  return { text, nm: null, value: ok ? number : null, fault: ok ? undefined : 'Not a number: type 2.5.', set };
}
