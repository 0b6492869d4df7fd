import { useEffect, useRef, useState } from 'react';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import { endEdit } from '../../state/edit-document.ts';
import { TextField } from '../form-fields.tsx';
import { useSession } from '../use-store.ts';
import styles from './step-form.module.css';

/** Who types no more for so long rests, milliseconds. */
const REST = 800;

interface DraftFieldProps {
  readonly label: string;
  readonly value: string;
  readonly hint?: string | undefined;
  readonly lines?: number;
  /** What is said of an empty field; it may be empty where this is absent. */
  readonly needed?: string;
  /** Takes what was typed; gives back what is wrong with it. */
  take(text: string): readonly FileFault[] | null;
}

/**
 * A text of the script. What is typed is taken at once and seen in the preview; all of it until a rest, or until the field is
 * left, is one step of undo, and kept. What cannot be taken stays in the field, with the reason.
 */
export function DraftField({ label, value, hint, lines = 1, needed, take }: DraftFieldProps) {
  const { documents } = useSession();
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState('');
  const rest = useRef(0);
  // The window may be closed with the field still open.
  useEffect(() => {
    const end = () => endEdit(documents);
    addEventListener('pagehide', end);
    return () => {
      clearTimeout(rest.current);
      removeEventListener('pagehide', end);
    };
  }, [documents]);
  const onChange = (text: string) => {
    clearTimeout(rest.current);
    rest.current = window.setTimeout(() => endEdit(documents), REST);
    setDraft(text);
    if (needed && text.trim() === '') return setFault(needed);
    const faults = take(text);
    setFault(faults ? faults.map(({ what, cure }) => `${what}. ${cure}`).join(' ') : '');
  };
  const leave = () => {
    clearTimeout(rest.current);
    endEdit(documents);
    setDraft(null);
    setFault('');
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the field in it is left, which ends the edit
    <div onBlur={leave}>
      <TextField label={label} value={draft ?? value} lines={lines} hint={hint} onChange={onChange} />
      {fault && (
        <p role="alert" className={styles.fault}>
          {fault}
        </p>
      )}
    </div>
  );
}
