import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import styles from './name-field.module.css';

interface NameFieldProps {
  readonly label: string;
  readonly start: string;
  /** By Enter, or by going elsewhere. */
  onTake(name: string, by: 'key' | 'going'): void;
  onLeave(by: 'key' | 'going'): void;
}

/** A name that is typed in its place: Enter takes it, Escape leaves it; so does leaving the field. */
export function NameField({ label, start, onTake, onLeave }: NameFieldProps) {
  const [name, setName] = useState(start);
  const field = useRef<HTMLInputElement>(null);
  const isDone = useRef(false);
  useEffect(() => {
    field.current?.focus();
    field.current?.select();
    field.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, []);
  const end = (act: () => void) => {
    if (isDone.current) return;
    isDone.current = true;
    act();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.key === 'Enter') {
      event.preventDefault();
      end(() => onTake(name, 'key'));
    } else if (event.key === 'Escape') {
      event.preventDefault();
      end(() => onLeave('key'));
    }
  };
  return (
    <input
      ref={field}
      type="text"
      className={styles.field}
      aria-label={label}
      placeholder={label}
      maxLength={200}
      autoComplete="off"
      value={name}
      onChange={(event) => setName(event.target.value)}
      onKeyDown={onKeyDown}
      onBlur={() => end(() => (name.trim() === '' || name === start ? onLeave('going') : onTake(name, 'going')))}
    />
  );
}
