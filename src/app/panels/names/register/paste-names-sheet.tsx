import { type ChangeEvent, useId, useMemo, useState } from 'react';
import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { NameFile } from '../../../../interchange/json/schema.ts';
import { addEntries, newAmong, strangersAmong } from '../../../state/names/register-editing.ts';
import { ModalSheet } from '../../modal-sheet.tsx';
import { useSession } from '../../use-store.ts';
import styles from './paste-names-sheet.module.css';

interface PasteNamesSheetProps {
  /** What was pasted on the register itself; empty where the key was pressed. */
  readonly pasted: string;
  onClose(): void;
}

const EXAMPLE = 'name\tkind\tsection\tscheme\tchambers\tsuperseded by';

/** Takes in a table of names, pasted or from a file; every fault is told by its row before anything is added. */
export function PasteNamesSheet({ pasted, onClose }: PasteNamesSheetProps) {
  const session = useSession();
  const id = useId();
  const [text, setText] = useState(pasted);
  const [refused, setRefused] = useState<readonly FileFault[]>([]);
  const read = useMemo(() => (text.trim() === '' ? null : session.doors.names.readNames(text)), [session, text]);
  const fresh = useMemo(() => (read?.ok ? newAmong(session, read.names) : []), [session, read]);
  const strangers = useMemo(() => strangersAmong(session, fresh), [session, fresh]);
  const change = (next: string) => {
    setText(next);
    setRefused([]);
  };
  const add = () => {
    const faults = addEntries(session, fresh);
    setRefused(faults ?? []);
    if (!faults) onClose();
  };
  const foot = (
    <>
      <FileField onText={change} />
      <button type="button" className="key" onClick={onClose}>
        Cancel
      </button>
      <button type="button" className="key" aria-pressed="true" disabled={fresh.length === 0} onClick={add}>
        {fresh.length > 0 ? `Add ${fresh.length} ${fresh.length === 1 ? 'name' : 'names'}` : 'Add names'}
      </button>
    </>
  );
  return (
    <ModalSheet title="Paste a table of names" foot={foot} onClose={onClose}>
      <div className={styles.body}>
        <label htmlFor={id}>
          One row for each name. Columns, with or without a first row that names them: name, kind, section, scheme,
          chambers, superseded by. Kinds are keyway, section, blank, tool and series.
        </label>
        <textarea
          id={id}
          data-first=""
          className={styles.text}
          rows={8}
          spellCheck={false}
          placeholder={EXAMPLE}
          value={text}
          onChange={(event) => change(event.target.value)}
        />
        <div role="status">
          {read?.ok && <Found names={read.names} fresh={fresh} notes={[...strangers, ...read.notes]} />}
          {read && !read.ok && <Faults title="Nothing can be added yet" faults={read.faults} />}
          {refused.length > 0 && <Faults title="Not added" faults={refused} />}
        </div>
      </div>
    </ModalSheet>
  );
}

interface FoundProps {
  readonly names: readonly NameFile[];
  readonly fresh: readonly NameFile[];
  readonly notes: readonly FileFault[];
}

function Found({ names, fresh, notes }: FoundProps) {
  const known = names.length - fresh.length;
  return (
    <>
      <p className={styles.found}>
        {names.length === 1 ? 'One name' : `${names.length} names`} read
        {known > 0 && `, ${known === names.length ? 'all' : known} in the register already`}.
      </p>
      {notes.length > 0 && <FaultRows faults={notes} />}
    </>
  );
}

function Faults({ title, faults }: { title: string; faults: readonly FileFault[] }) {
  return (
    <div className={styles.faults}>
      <p className={styles.found}>{title}:</p>
      <FaultRows faults={faults} />
    </div>
  );
}

function FaultRows({ faults }: { faults: readonly FileFault[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must take the keyboard
    <ul className={styles.rows} tabIndex={0} aria-label="What was found in the rows">
      {faults.map(({ path, what, cure }) => (
        <li key={`${path} ${what}`}>
          <b>{path}</b> {what}. {cure}
        </li>
      ))}
    </ul>
  );
}

function FileField({ onText }: { onText(text: string): void }) {
  const take = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    event.target.value = '';
    file?.text().then(onText);
  };
  return (
    <label className={`key ${styles.file}`}>
      From a file…
      <input type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" onChange={take} />
    </label>
  );
}
