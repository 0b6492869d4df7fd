import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import { profilesOf } from '../../../../names/resolve.ts';
import { askQuestion } from '../../../state/names/asking.ts';
import { countRows, NAME_KINDS, type NameRow, nameRows } from '../../../state/names/name-rows.ts';
import { whatIs } from '../../../state/names/question-forms.ts';
import type { Fact } from '../../../state/profile-facts.ts';
import { FactList } from '../../fact-list.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { KindGlossary } from '../kind-glossary.tsx';
import { ThingReading } from '../thing-reading.tsx';

/** More things than this are not looked at one by one. */
const MOST_READ = 4;

/** The chosen name and what it stands for; and what the register holds. */
export function RegisterReadings({ family }: { family: Family }) {
  const chosen = useStore(useSession().names, (s) => s.look.chosen);
  const rows = nameRows(family);
  const row = useMemo(() => rows.find(({ key }) => key === chosen), [rows, chosen]);
  return (
    <>
      {row && <NameReading family={family} row={row} />}
      <Counts rows={rows} />
      <KindGlossary />
    </>
  );
}

function NameReading({ family, row }: { family: Family; row: NameRow }) {
  const session = useSession();
  const { sense, gone } = row;
  const things = useMemo(() => profilesOf(family, sense), [family, sense]);
  return (
    <>
      <section className={styles.part} aria-labelledby="reading-name">
        <h2 id="reading-name" className={styles.title}>
          {sense.text}
        </h2>
        <FactList facts={nameFacts(row)} />
        {sense.note && <p>{sense.note}</p>}
        {gone && <p>What it names is not in the family any more. Edit the entry, or delete it.</p>}
        {!gone && things.length === 0 && <p>Nothing in the family goes by it.</p>}
        <button type="button" className="key" onClick={() => askQuestion(session, whatIs(sense.text))}>
          Ask what it is
        </button>
      </section>
      {things.slice(0, MOST_READ).map((profile) => (
        <ThingReading key={profile.id} family={family} profile={profile} />
      ))}
      {things.length > MOST_READ && (
        <section className={styles.part}>
          <p>and {things.length - MOST_READ} more that it stands for</p>
        </section>
      )}
    </>
  );
}

/** The row in full, since cells of the table may be too narrow for it. */
function nameFacts({ sense, stands }: NameRow): Fact[] {
  const { kind, scheme, chambers, supersededBy } = sense;
  const facts: (Fact | null)[] = [
    { term: 'names a', value: kind },
    stands === '' ? null : { term: 'stands for', value: stands },
    scheme === null ? null : { term: 'scheme', value: scheme },
    chambers === null ? null : { term: 'chambers', value: String(chambers) },
    supersededBy === null ? null : { term: 'now', value: supersededBy },
  ];
  return facts.filter((fact) => fact !== null);
}

const PLURALS = { keyway: 'keyways', section: 'sections', blank: 'blanks', tool: 'tools', series: 'series' } as const;

function Counts({ rows }: { rows: readonly NameRow[] }) {
  const { all, kinds, inRegister, gone } = useMemo(() => countRows(rows), [rows]);
  const facts = NAME_KINDS.filter((kind) => kinds[kind] > 0).map((kind) => ({
    term: `of ${PLURALS[kind]}`,
    value: String(kinds[kind]),
  }));
  if (gone > 0) facts.push({ term: 'of what is gone', value: String(gone) });
  return (
    <section className={styles.part} aria-labelledby="reading-counts">
      <h2 id="reading-counts" className={styles.title}>
        {all} names
      </h2>
      <FactList facts={facts} />
      <p className={styles.note}>
        {inRegister === 0
          ? 'The register itself is empty: all of these are own names. Add what lists and people call the sections.'
          : `${inRegister} of them stand in the register, the others are own names of profiles and sections.`}
      </p>
    </section>
  );
}
