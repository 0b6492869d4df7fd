import { useDeferredValue, useId, useMemo, useState } from 'react';
import type { HoldersRead } from '../../../interchange/csv/read-holders.ts';
import { counted, type Refusal, takeTable } from '../../state/plan/access-editing.ts';
import { accessLookOf } from '../../state/plan/access-state.ts';
import { FaultList } from '../exchange/import-drawing.tsx';
import { ChoiceField, TickField } from '../form-fields.tsx';
import { ModalSheet } from '../modal-sheet.tsx';
import styles from '../tiers/claims-paste.module.css';
import { useSession, useStore } from '../use-store.ts';

/** So many rows are shown of what was understood. */
const MOST_SHOWN = 8;

const HOW = `A list:
holder	area
Porter	Old court / Gatehouse
Porter	Old court / Library

or a matrix:
	Gatehouse	Library
Porter	x	x
Librarian		x`;

/** A table of holders before it is taken: what it says, which areas are new, what is left out. */
export function PasteHolders() {
  const session = useSession();
  const look = accessLookOf(session);
  const table = useTable();
  const [refusal, setRefusal] = useState<Refusal>(null);
  const { read, addAreas } = table;
  const close = () => look.setState((s) => ({ pasting: false, grasp: s.grasp + 1 }));
  const isGood = read?.ok === true && read.areas.length + read.holders.length > 0;
  const add = () => {
    if (read?.ok) setRefusal(takeTable(session, read, addAreas));
  };
  return (
    <ModalSheet
      large
      title="Paste a table of holders and areas"
      onClose={close}
      foot={
        <>
          <p role="status" className={styles.count}>
            {footWords(read)}
          </p>
          <button type="button" className="key" onClick={close}>
            Cancel
          </button>
          <button type="button" className={`key ${styles.main}`} disabled={!isGood} onClick={add}>
            Take the table
          </button>
        </>
      }
    >
      <div className={styles.sheet}>
        <div className={styles.left}>
          <TableText text={table.text} onChange={table.setText} />
        </div>
        <section className={styles.right} aria-label="What was understood">
          {read && <Understood table={table} read={read} />}
          {!read && <p className={styles.note}>What is understood of it is shown here, before anything is added.</p>}
        </section>
      </div>
      <FaultList faults={refusal ?? []} />
    </ModalSheet>
  );
}

/** What is typed and chosen in the dialog, and what it comes to. */
function useTable() {
  const { doors, documents } = useSession();
  const [text, setText] = useState('');
  const [rows, setRows] = useState<'holders' | 'areas' | undefined>(undefined);
  const [addAreas, setAddAreas] = useState(true);
  const looked = useDeferredValue(text);
  const file = useStore(documents, (s) => s.document?.file);
  const read = useMemo(() => {
    const areas = file?.plan?.areas.map(({ name }) => name) ?? [];
    return looked.trim() === '' ? null : doors.access.readHolders(looked, { areas, ...(rows && { rows }) });
  }, [doors, looked, rows, file]);
  const unknown = useMemo(
    () => (read?.ok && file ? doors.access.unknownAreas(file, read.areas).map(({ path }) => path.join(' / ')) : []),
    [doors, read, file],
  );
  return { text, setText, setRows, addAreas, setAddAreas, read, unknown };
}

type Table = ReturnType<typeof useTable>;

function TableText({ text, onChange }: { text: string; onChange(text: string): void }) {
  const id = useId();
  return (
    <>
      <label htmlFor={id} className={styles.label}>
        The table: from a spreadsheet, or CSV with commas, semicolons or tabs
      </label>
      <textarea
        id={id}
        data-first
        className={styles.text}
        spellCheck={false}
        value={text}
        placeholder={HOW}
        onChange={(event) => onChange(event.target.value)}
      />
      <p className={styles.note}>
        Ticks: x, 1, yes or ✓ where the blank must enter; * or ? where it is free; 0, - or nothing where it must not. An
        area in a group is written with it, “North / Hall”. Formulas are not worked out.
      </p>
    </>
  );
}

const ROWS = [
  ['holders', 'holders'],
  ['areas', 'areas'],
] as const;

function Understood({ table, read }: { table: Table; read: HoldersRead }) {
  if (!read.ok)
    return (
      <section className={styles.part} role="alert">
        <h3>It cannot be read as holders and areas</h3>
        <Faults faults={read.faults} />
      </section>
    );
  return (
    <>
      <section className={styles.part}>
        <h3>{read.form === 'list' ? 'A list of holders and areas' : `A matrix with ${read.rows} in its rows`}</h3>
        {read.form === 'matrix' && (
          <ChoiceField label="Its rows are" value={read.rows} choices={ROWS} onChange={table.setRows} />
        )}
        <ul className={styles.rows}>
          {read.holders.slice(0, MOST_SHOWN).map((holder, h) => (
            <li key={holder}>
              <b>{holder}</b> <small>{entersWords(read, h)}</small>
            </li>
          ))}
        </ul>
        {read.holders.length > MOST_SHOWN && (
          <p className={styles.note}>and {counted(read.holders.length - MOST_SHOWN, 'holder')} more</p>
        )}
      </section>
      {table.unknown.length > 0 && <Unknown table={table} />}
      {read.leftOut > 0 && (
        <section className={styles.part}>
          <h3>{counted(read.leftOut, read.form === 'list' ? 'row' : 'cell')} left out</h3>
          <Faults faults={read.faults} />
          {read.leftOut > read.faults.length && (
            <p className={styles.note}>and {read.leftOut - read.faults.length} more</p>
          )}
        </section>
      )}
    </>
  );
}

function Unknown({ table }: { table: Table }) {
  const { unknown, addAreas, setAddAreas } = table;
  const shown = unknown.slice(0, MOST_SHOWN).join(', ');
  const more = unknown.length - MOST_SHOWN;
  return (
    <section className={styles.part}>
      <h3>{counted(unknown.length, 'area')} not in the plan yet</h3>
      <p className={styles.note}>
        {shown}
        {more > 0 && ` and ${more} more`}
      </p>
      <TickField label="Add them; otherwise what is said of them is left out" value={addAreas} onChange={setAddAreas} />
    </section>
  );
}

function Faults({ faults }: { faults: HoldersRead['faults'] }) {
  return (
    <ul className={styles.faults}>
      {faults.map(({ path, what, cure }) => (
        <li key={`${path} ${what}`}>
          <b>{path}</b> {what}. {cure}
        </li>
      ))}
    </ul>
  );
}

function entersWords({ said, areas }: HoldersRead & { ok: true }, holder: number): string {
  const of = (tick: 'must' | 'free') =>
    said.filter((one) => one.holder === holder && one.tick === tick).map(({ area }) => areas[area].path.join(' / '));
  const [must, free] = [of('must'), of('free')];
  const listed = (names: readonly string[]) =>
    names.length > 4 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', ');
  const words = must.length > 0 ? `enters ${listed(must)}` : 'enters nothing';
  return free.length > 0 ? `${words}; free: ${listed(free)}` : words;
}

function footWords(read: HoldersRead | null): string {
  if (!read) return 'Nothing is pasted yet.';
  if (!read.ok) return 'It cannot be read.';
  const left = read.leftOut > 0 ? `, ${read.leftOut} left out` : '';
  return `${counted(read.holders.length, 'holder')}, ${counted(read.areas.length, 'area')}${left}`;
}
