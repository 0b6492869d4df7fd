import { useEffect, useId, useState } from 'react';
import fields from '../form-fields.module.css';

interface CountFieldProps {
  readonly label: string;
  /** Null where the field is left empty, if it may be. */
  readonly value: number | null;
  readonly least: number;
  readonly most: number;
  /** What an empty field means; without it there must be a number. */
  readonly none?: string;
  readonly hint?: string;
  onChange(value: number | null): void;
}

/** A whole number, typed or stepped with the arrow keys; empty for "no rule" where that may be. */
export function CountField({ label, value, least, most, none, hint, onChange }: CountFieldProps) {
  const id = useId();
  const [text, setText] = useState(value === null ? '' : String(value));
  const [fault, setFault] = useState('');
  // Another family, or a rule that followed another one.
  useEffect(() => {
    setText(value === null ? '' : String(value));
    setFault('');
  }, [value]);
  const put = (typed: string) => {
    setText(typed);
    const number = typed.trim() === '' ? null : Number(typed);
    const sound = number === null ? none !== undefined : Number.isInteger(number) && number >= least && number <= most;
    setFault(sound ? '' : `A whole number from ${least} to ${most}${none === undefined ? '' : `, or empty`}.`);
    if (sound && number !== value) onChange(number);
  };
  const told = fault || (none !== undefined && text.trim() === '' ? none : (hint ?? ''));
  return (
    <div className={fields.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={fields.number}
        type="number"
        min={least}
        max={most}
        step={1}
        autoComplete="off"
        value={text}
        aria-invalid={fault !== ''}
        aria-describedby={told ? `${id}-told` : undefined}
        onChange={(event) => put(event.target.value)}
      />
      {told && (
        <span id={`${id}-told`} className={fault ? fields.fault : fields.hint} role={fault ? 'alert' : undefined}>
          {told}
        </span>
      )}
    </div>
  );
}
