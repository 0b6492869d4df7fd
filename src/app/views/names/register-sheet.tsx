import { type ClipboardEvent, useMemo, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { targetOf } from '../../../names/fresh-name.ts';
import { saveExported } from '../../panels/exchange/export-file.ts';
import { DoneLine } from '../../panels/names/register/done-line.tsx';
import { EntrySheet } from '../../panels/names/register/entry-sheet.tsx';
import { NamingSchemeSheet } from '../../panels/names/register/naming-scheme-sheet.tsx';
import { PasteNamesSheet } from '../../panels/names/register/paste-names-sheet.tsx';
import { RegisterTable } from '../../panels/names/register/register-table.tsx';
import { RenameSheet } from '../../panels/names/register/rename-sheet.tsx';
import { useKeptFocus } from '../../panels/use-kept-focus.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { lookedAt, type NameRow, nameRows } from '../../state/names/name-rows.ts';
import type { RegisterLook } from '../../state/names/names-state.ts';
import { entriesOf, removeEntry } from '../../state/names/register-editing.ts';
import type { Session } from '../../state/session.ts';
import styles from './register-sheet.module.css';

/** What lies over the register: a form for an entry (null a new one), a rename, a table to be pasted, a scheme. */
type Over =
  | { readonly sheet: 'entry'; readonly index: number | null }
  | { readonly sheet: 'rename'; readonly row: NameRow }
  | { readonly sheet: 'paste'; readonly text: string }
  | { readonly sheet: 'scheme' };

/** Every name of the family and what it stands for. */
export function RegisterSheet({ family }: { family: Family }) {
  const session = useSession();
  const look = useStore(session.names, (s) => s.look);
  const [over, setOver] = useState<Over | null>(null);
  const all = nameRows(family);
  const rows = useMemo(() => lookedAt(all, look), [all, look]);
  const chosen = all.find(({ key }) => key === look.chosen);
  const edit = (row: NameRow) => setOver(editing(row));
  const sheet = useRef<HTMLDivElement>(null);
  // A row that was edited or deleted may be out of sight.
  useKeptFocus(sheet, ROW_OR_SEARCH);
  const onPaste = (event: ClipboardEvent) => {
    const text = event.clipboardData.getData('text/plain');
    if (over || text.trim() === '' || (event.target instanceof Element && event.target.closest('input, textarea')))
      return;
    event.preventDefault();
    setOver({ sheet: 'paste', text });
  };
  return (
    <div ref={sheet} className={styles.sheet} onPaste={onPaste}>
      <RegisterTools look={look} shown={rows.length} all={all.length} show={setOver} />
      <DoneLine />
      {rows.length > 0 ? (
        <RegisterTable rows={rows} look={look} onEdit={edit} onDelete={(row) => remove(session, row)} />
      ) : (
        <NoRows look={look} />
      )}
      <RowKeys row={chosen} onEdit={edit} />
      {over && <OverSheet over={over} family={family} onClose={() => setOver(null)} />}
    </div>
  );
}

const ROW_OR_SEARCH = ['[data-name-row][tabindex="0"]', 'input[type="search"]'];

function editing(row: NameRow): Over {
  return row.sense.source === 'register' ? { sheet: 'entry', index: row.sense.index } : { sheet: 'rename', row };
}

function remove(session: Session, { sense }: NameRow): void {
  if (sense.source === 'register' && sense.index !== null) removeEntry(session, sense.index);
}

function OverSheet({ over, family, onClose }: { over: Over; family: Family; onClose(): void }) {
  switch (over.sheet) {
    case 'entry':
      return <EntrySheet family={family} index={over.index} onClose={onClose} />;
    case 'rename':
      return <RenameSheet family={family} target={targetOf(over.row.sense)} onClose={onClose} />;
    case 'paste':
      return <PasteNamesSheet pasted={over.text} onClose={onClose} />;
    case 'scheme':
      return <NamingSchemeSheet onClose={onClose} />;
  }
}

const ONLY = [
  ['all', 'all names'],
  ['own', 'own names of profiles and sections'],
  ['register', 'names of the register'],
  ['gone', 'names of what is gone'],
] as const;

interface RegisterToolsProps {
  readonly look: RegisterLook;
  readonly shown: number;
  readonly all: number;
  show(over: Over): void;
}

function RegisterTools({ look, shown, all, show }: RegisterToolsProps) {
  return (
    <div className={styles.tools}>
      <div className={styles.find}>
        <LookFields look={look} />
        <p role="status" className={styles.count}>
          {shown === all ? `${all} names` : `${shown} of ${all} names`}
        </p>
      </div>
      <RegisterKeys show={show} />
    </div>
  );
}

/** Which names are shown. */
function LookFields({ look }: { look: RegisterLook }) {
  const { names } = useSession();
  const set = (change: Partial<RegisterLook>) => names.setState((s) => ({ look: { ...s.look, ...change } }));
  return (
    <>
      <label className={styles.search}>
        <span>Find</span>
        <input
          type="search"
          value={look.search}
          placeholder="name, section, list"
          onChange={(event) => set({ search: event.target.value })}
        />
      </label>
      <label className={styles.only}>
        <span>Show</span>
        <select
          value={look.only}
          onChange={({ target }) => set({ only: ONLY.find(([only]) => only === target.value)?.[0] ?? 'all' })}
        >
          {ONLY.map(([only, words]) => (
            <option key={only} value={only}>
              {words}
            </option>
          ))}
        </select>
      </label>
    </>
  );
}

function RegisterKeys({ show }: Pick<RegisterToolsProps, 'show'>) {
  const session = useSession();
  const keys = [
    {
      label: 'Add a name…',
      title: 'A name and what it stands for',
      press: () => show({ sheet: 'entry', index: null }),
    },
    {
      label: 'Paste names…',
      title: 'A table of names, or press Ctrl+V on the register',
      press: () => show({ sheet: 'paste', text: '' }),
    },
    { label: 'Save as CSV', title: 'All names as a table for a spreadsheet', press: () => saveNames(session) },
    {
      label: 'Name the sections…',
      title: 'Names for all sections by one rule',
      press: () => show({ sheet: 'scheme' }),
    },
  ];
  return (
    <div className={styles.keys}>
      {keys.map(({ label, title, press }) => (
        <button key={label} type="button" className="key" title={title} onClick={press}>
          {label}
        </button>
      ))}
    </div>
  );
}

function saveNames({ documents, doors }: Session): void {
  const { document, fileName } = documents.getState();
  if (!document) return;
  const text = doors.names.writeNames(entriesOf(document.family));
  const name = `${fileName.replace(/\.json$/, '') || 'family'}-names.csv`;
  saveExported({ text, mime: 'text/csv;charset=utf-8', extension: 'csv' }, name);
}

function NoRows({ look }: { look: RegisterLook }) {
  const { names } = useSession();
  const all = () => names.setState((s) => ({ look: { ...s.look, search: '', only: 'all' } }));
  return (
    <div className={styles.none}>
      <h2>{look.only === 'gone' && look.search === '' ? 'Every name stands for something' : 'No such name'}</h2>
      <p>
        {look.only === 'gone' && look.search === ''
          ? 'No entry of the register names a section or a profile that the family has no longer.'
          : 'No name holds what you are looking for.'}
      </p>
      <button type="button" className="key" onClick={all}>
        Show all names
      </button>
    </div>
  );
}

/** What can be done with the chosen row. */
function RowKeys({ row, onEdit }: { row: NameRow | undefined; onEdit(row: NameRow): void }) {
  const session = useSession();
  const own = row !== undefined && row.sense.source !== 'register';
  return (
    <div className={styles.foot}>
      <button type="button" className="key" disabled={!row} onClick={() => row && onEdit(row)}>
        {own ? 'Rename…' : 'Edit…'}
      </button>
      <button
        type="button"
        className="key"
        disabled={!row || own}
        title={
          own
            ? 'A section has to be deleted in Draw; its name goes with it'
            : 'Take the name out of the register (Delete)'
        }
        onClick={() => row && remove(session, row)}
      >
        Delete
      </button>
      <p className={styles.hint}>Arrows walk the names, Enter edits, Delete takes one out of the register.</p>
    </div>
  );
}
