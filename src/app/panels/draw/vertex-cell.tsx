import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import styles from './vertex-table.module.css';

/** How an entry ends: where the focus goes. */
export type EntryEnd = 'down' | 'next' | 'back' | 'stay' | 'insert';

interface CellEntryProps {
  readonly label: string;
  readonly text: string;
  /** Whether what is in the cell is replaced by what is typed. */
  readonly replaced: boolean;
  /** What is wrong with what was typed, or true where the outline was refused. */
  readonly fault: string | boolean;
  /** The id of the place where the fault is told. */
  readonly faultId: string;
  /** Returns whether the entry is over. */
  onTake(text: string, end: EntryEnd): boolean;
  onGiveUp(): void;
}

/** The field in an edited cell. Enter takes the entry and goes down, Tab goes on, Escape gives it up. */
export function CellEntry({ label, text, replaced, fault, faultId, onTake, onGiveUp }: CellEntryProps) {
  const [draft, setDraft] = useState(text);
  const field = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  useEffect(() => {
    const input = field.current;
    input?.focus();
    if (replaced) input?.setSelectionRange(input.value.length, input.value.length);
    else input?.select();
  }, [replaced]);
  const take = (end: EntryEnd) => {
    // The field may lose the focus while it goes away: that is no second entry.
    done.current = true;
    done.current = onTake(draft, end);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const end = endOf(event);
    if (!end && event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    if (end) take(end);
    else {
      done.current = true;
      onGiveUp();
    }
  };
  return (
    <input
      ref={field}
      className={styles.entry}
      type="text"
      inputMode="text"
      autoComplete="off"
      spellCheck={false}
      aria-label={label}
      aria-invalid={fault !== false}
      aria-describedby={typeof fault === 'string' ? faultId : undefined}
      value={draft}
      onChange={(event) => setDraft(event.target.value)}
      onKeyDown={onKeyDown}
      onBlur={() => !done.current && take('stay')}
    />
  );
}

function endOf({ key, shiftKey }: KeyboardEvent): EntryEnd | null {
  if (key === 'Enter') return 'down';
  if (key === 'Insert') return 'insert';
  if (key === 'Tab') return shiftKey ? 'back' : 'next';
  return null;
}
