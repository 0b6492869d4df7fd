import { useDeferredValue, useMemo, useState } from 'react';
import type { Claim } from '../../../../family/claim.ts';
import type { Family } from '../../../../family/family.ts';
import type { ClaimsRead } from '../../../../interchange/csv/read-claims.ts';
import type { Refusal } from '../../../state/edit-document.ts';
import { countText, takeClaims } from '../../../state/tiers/claims-editing.ts';
import {
  nameKey,
  type OddName,
  oddNames,
  seemsSwapped,
  withNames,
  withSource,
} from '../../../state/tiers/claims-names.ts';
import { endIncoming, type IncomingClaims } from '../../../state/tiers/claims-state.ts';
import { claimLine } from '../../../state/tiers/claims-words.ts';
import { TextField, TickField } from '../../form-fields.tsx';
import styles from '../../paste-table-sheet.module.css';
import { PasteTableSheet, RowFaults } from '../../paste-table-sheet.tsx';
import { useSession, useStore } from '../../use-store.ts';
import own from './claims-paste.module.css';

/** So many rows are shown of what was understood. */
const MOST_SHOWN_ROWS = 6;

/** So many odd names are asked about. */
const MOST_ASKED = 40;

const HOW = `A list:
blank	keyway	enters	source
Heron	Heron	yes	Porter's wall chart

or a matrix:
	Heron	Smew
Heron	x	-
Smew	-	x`;

const NOTES =
  'For what is said write yes or no, x or -, 1 or 0, enters or blocked. An empty cell of a matrix says nothing. Formulas are not worked out.';

/** A table of claims before it is taken: what form it has, what it says, what is wrong, which names are not known. */
export function ClaimsPaste({ family, incoming }: { family: Family; incoming: IncomingClaims }) {
  const session = useSession();
  const table = useTable(family, incoming);
  const [refusal, setRefusal] = useState<Refusal>(null);
  const close = () => endIncoming(session);
  const add = () => {
    const refused = takeClaims(session, table.claims);
    setRefusal(refused);
    if (!refused) close();
  };
  const { read, claims, fresh } = table;
  return (
    <PasteTableSheet
      title={incoming.name ? `Claims from ${incoming.name}` : 'Paste a table of claims'}
      text={table.text}
      onText={table.setText}
      how={HOW}
      notes={NOTES}
      foot={footWords(read, fresh, claims.length - fresh)}
      main={{ label: fresh === 0 ? 'Add' : `Add ${countText(fresh)}`, disabled: fresh === 0, press: add }}
      refusal={refusal}
      onClose={close}
    >
      {read && <Understood read={read} table={table} />}
    </PasteTableSheet>
  );
}

/** What is typed and chosen in the dialog, and what it comes to. */
function useTable(family: Family, incoming: IncomingClaims) {
  const { doors, documents } = useSession();
  const [text, setText] = useState(incoming.text);
  const [by, setBy] = useState('');
  const [swap, setSwap] = useState<boolean | null>(null);
  const [names, setNames] = useState<ReadonlyMap<string, string>>(new Map());
  const looked = useDeferredValue(text);
  const plain = useMemo(() => (looked.trim() === '' ? null : doors.claims.readClaims(looked)), [doors, looked]);
  const usual = useMemo(
    () => plain?.ok === true && plain.form === 'matrix' && seemsSwapped(family, plain.claims),
    [family, plain],
  );
  const swapped = swap ?? usual;
  const read = useMemo(
    () => (plain && swapped ? doors.claims.readClaims(looked, { swapped }) : plain),
    [doors, looked, plain, swapped],
  );
  const told = useMemo(() => (read?.ok ? withSource(read.claims, by) : []), [read, by]);
  const odd = useMemo(() => oddNames(family, told), [family, told]);
  const claims = useMemo(() => withNames(told, names), [told, names]);
  const file = useStore(documents, (s) => s.document?.file);
  const fresh = useMemo(
    () =>
      file ? (doors.claims.addClaims(file, claims).claims?.length ?? 0) - (file.claims?.length ?? 0) : claims.length,
    [doors, file, claims],
  );
  const rename = (side: OddName['side'], from: string, to: string) =>
    setNames((before) => {
      const after = new Map(before);
      if (to === '') after.delete(nameKey(side, from));
      else after.set(nameKey(side, from), to);
      return after;
    });
  return { text, setText, by, setBy, swapped, setSwap, names, rename, read, odd, claims, fresh };
}

type Table = ReturnType<typeof useTable>;

function Understood({ read, table }: { read: ClaimsRead; table: Table }) {
  if (!read.ok) return <RowFaults alert title="It cannot be read as claims" faults={read.faults} />;
  return (
    <>
      <section className={styles.part}>
        <h3>{formWords(read, table.swapped)}</h3>
        <ol className={styles.rows}>
          {table.claims.slice(0, MOST_SHOWN_ROWS).map((claim, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the rows of a table have no other name than their place
            <ClaimLine key={i} claim={claim} />
          ))}
        </ol>
        {table.claims.length > MOST_SHOWN_ROWS && (
          <p className={styles.note}>and {countText(table.claims.length - MOST_SHOWN_ROWS)} more</p>
        )}
        {read.form === 'matrix' && (
          <TickField
            label="The first row has the blanks, the first column the keyways"
            value={table.swapped}
            onChange={table.setSwap}
          />
        )}
      </section>
      {!read.namesSource && (
        <section className={styles.part}>
          <TextField
            label="Who says so"
            value={table.by}
            hint="The table does not say it. It is put to every claim."
            onChange={table.setBy}
          />
        </section>
      )}
      {table.odd.length > 0 && <OddNames table={table} />}
      {read.leftOut > 0 && (
        <RowFaults
          title={`${read.leftOut} ${plural(read.leftOut, read.form === 'list' ? 'row' : 'cell')} left out`}
          faults={read.faults}
          count={read.leftOut}
        />
      )}
    </>
  );
}

function ClaimLine({ claim }: { claim: Claim }) {
  return (
    <li>
      {claimLine(claim)}
      {claim.by && <small> {claim.by}</small>}
    </li>
  );
}

/** Names that stand for nothing or for several things, each with those that may be meant. */
function OddNames({ table: { odd, names, rename } }: { table: Table }) {
  return (
    <section className={styles.part} aria-label="Names that are not known">
      <h3>
        {odd.length} {plural(odd.length, 'name')} to look at
      </h3>
      <p className={styles.note}>They may be added as they are and mended later.</p>
      <ul className={own.names}>
        {odd.slice(0, MOST_ASKED).map(({ side, text, standing, candidates, count }) => (
          <li key={nameKey(side, text)}>
            <label>
              <span>
                <b>{text}</b>{' '}
                <small>
                  {side === 'blank' ? 'blank' : 'keyway'},{' '}
                  {standing === 'other kind' ? 'names something else' : standing}, {countText(count)}
                </small>
              </span>
              <select
                value={names.get(nameKey(side, text)) ?? ''}
                disabled={candidates.length === 0}
                onChange={(event) => rename(side, text, event.target.value)}
              >
                <option value="">{candidates.length === 0 ? 'nothing near it is known' : 'as it is'}</option>
                {candidates.map((name) => (
                  <option key={name}>{name}</option>
                ))}
              </select>
            </label>
          </li>
        ))}
      </ul>
      {odd.length > MOST_ASKED && <p className={styles.note}>and {odd.length - MOST_ASKED} more</p>}
    </section>
  );
}

function formWords({ form, claims }: Extract<ClaimsRead, { ok: true }>, swapped: boolean): string {
  if (form === 'list') return `A list with ${countText(claims.length)}`;
  return `A matrix with ${countText(claims.length)}${swapped ? ', blanks along the first row' : ''}`;
}

function footWords(read: ClaimsRead | null, count: number, had: number): string {
  if (!read) return 'Nothing is pasted yet.';
  if (!read.ok) return 'Nothing can be added.';
  const left = read.leftOut > 0 ? `; ${read.leftOut} left out` : '';
  const known = had > 0 ? `; ${had} ${had === 1 ? 'is' : 'are'} there already` : '';
  return `${countText(count)} to add${known}${left}.`;
}

function plural(count: number, one: string): string {
  return count === 1 ? one : `${one}s`;
}
