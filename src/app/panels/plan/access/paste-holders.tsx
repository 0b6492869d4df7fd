import { useDeferredValue, useMemo, useState } from 'react';
import { countWord } from '../../../../family/count-word.ts';
import type { HoldersRead } from '../../../../interchange/csv/read-holders.ts';
import type { Refusal } from '../../../state/edit-document.ts';
import { takeTable } from '../../../state/plan/access/access-editing.ts';
import { accessLookOf } from '../../../state/plan/access/access-state.ts';
import { addedAreaWords } from '../../../state/plan/access/access-words.ts';
import { ChoiceField, TickField } from '../../form-fields.tsx';
import styles from '../../paste-table-sheet.module.css';
import { PasteTableSheet, RowFaults } from '../../paste-table-sheet.tsx';
import { useSession, useStore } from '../../use-store.ts';

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

const NOTES =
  'Ticks: x, 1, yes or ✓ where the blank must enter; * or ? where it is free; 0, - or nothing where it must not. An area in a group is written with it, “North / Hall”. Formulas are not worked out.';

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
    <PasteTableSheet
      title="Paste a table of holders and areas"
      text={table.text}
      onText={table.setText}
      how={HOW}
      notes={NOTES}
      foot={footWords(read)}
      main={{ label: 'Take the table', disabled: !isGood, press: add }}
      refusal={refusal}
      onClose={close}
    >
      {read && <Understood table={table} read={read} />}
    </PasteTableSheet>
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
  const unknown = useMemo(() => {
    if (!read?.ok || !file) return { names: [], count: '' };
    const names = doors.access.unknownAreas(file, read.areas).map(({ path }) => path.join(' / '));
    const added = doors.access.withAreas(file, read.areas).file;
    return { names, count: addedAreaWords(file.plan?.areas ?? [], added.plan?.areas ?? []) };
  }, [doors, read, file]);
  return { text, setText, setRows, addAreas, setAddAreas, read, unknown };
}

type Table = ReturnType<typeof useTable>;

const ROWS = [
  ['holders', 'holders'],
  ['areas', 'areas'],
] as const;

function Understood({ table, read }: { table: Table; read: HoldersRead }) {
  if (!read.ok) return <RowFaults alert title="It cannot be read as holders and areas" faults={read.faults} />;
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
          <p className={styles.note}>and {countWord(read.holders.length - MOST_SHOWN, 'holder')} more</p>
        )}
      </section>
      {table.unknown.names.length > 0 && <Unknown table={table} />}
      {read.leftOut > 0 && (
        <RowFaults
          title={`${countWord(read.leftOut, read.form === 'list' ? 'row' : 'cell')} left out`}
          faults={read.faults}
          count={read.leftOut}
        />
      )}
    </>
  );
}

function Unknown({ table }: { table: Table }) {
  const { unknown, addAreas, setAddAreas } = table;
  const shown = unknown.names.slice(0, MOST_SHOWN).join(', ');
  const more = unknown.names.length - MOST_SHOWN;
  return (
    <section className={styles.part}>
      <h3>{unknown.count} not in the plan yet</h3>
      <p className={styles.note}>
        {shown}
        {more > 0 && ` and ${more} more`}
      </p>
      <TickField label="Add them; otherwise what is said of them is left out" value={addAreas} onChange={setAddAreas} />
    </section>
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
  return `${countWord(read.holders.length, 'holder')}, ${countWord(read.areas.length, 'area')}${left}`;
}
