import type { Family } from '../../../family/family.ts';
import type { Plan } from '../../../family/plan.ts';
import type { MergeChoice, MergeRow, MergeStanding } from '../../../interchange/json/merge-families.ts';
import { keepOf } from '../../keep/keep-state.ts';
import type { FamilyImport } from '../../state/exchange/import-state.ts';
import type { Importing, IncomingFile } from '../../state/exchange/importing.ts';
import { FaultList } from '../fault-list.tsx';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './import-dialog.module.css';
import { countWords } from './import-words.ts';

interface ImportFamilyProps {
  readonly now: FamilyImport;
  readonly family: Family;
  readonly importing: Importing<IncomingFile>;
}

/** Another family while one is open: open it instead, or add its sections, each clash asked about. */
export function ImportFamily(props: ImportFamilyProps) {
  return props.now.merging ? <MergeSheet {...props} /> : <AskSheet {...props} />;
}

function AskSheet({ now, family, importing }: ImportFamilyProps) {
  const theirs = now.from.family;
  const kept = useStore(keepOf(useSession()), ({ status }) => status === 'kept');
  const addable = addableOf(family, theirs);
  return (
    <ModalSheet
      title={`${now.name} is another family`}
      onClose={() => importing.cancel()}
      foot={
        <>
          <button type="button" className="key" onClick={() => importing.cancel()}>
            Cancel
          </button>
          <button
            type="button"
            className="key"
            disabled={addable === ''}
            title={addable ? undefined : nothingWords(family, theirs)}
            onClick={() => importing.beginMerge()}
          >
            Add {addable || 'its sections'} …
          </button>
          <button type="button" data-first className={`key ${styles.main}`} onClick={() => importing.openInstead()}>
            Open it
          </button>
        </>
      }
    >
      <div className={styles.family}>
        <p>
          It holds <b>{theirs.name}</b> with {countWords(theirs.profiles.length, 'section')}
          {theirs.plan && ` and ${planWords(theirs.plan)}`}. Open it in place of <b>{family.name}</b>
          {addable && `, or add ${addable} to ${family.name}`}?
        </p>
        {kept && <p>What you did in {family.name} stays in this browser, under Family ▾, Recent families.</p>}
      </div>
    </ModalSheet>
  );
}

/** A family has one plan: another one's comes along only where there is none. */
function bringsPlan(ours: Family, theirs: Family): boolean {
  return theirs.plan !== undefined && ours.plan === undefined;
}

/** What of another family can be added to ours, in words; empty where nothing can. */
function addableOf(ours: Family, theirs: Family): string {
  if (theirs.profiles.length > 0) return 'its sections';
  return bringsPlan(ours, theirs) ? 'its plan' : '';
}

function nothingWords(ours: Family, theirs: Family): string {
  return theirs.plan ? `It has no section, and ${ours.name} keeps its own plan` : 'It has nothing to add';
}

function planWords({ areas, holders }: Plan): string {
  return `a plan of ${countWords(areas.length, 'area')} and ${countWords(holders.length, 'holder')}`;
}

const STANDING_WORDS: Readonly<Record<MergeStanding, string>> = {
  new: 'new',
  same: 'there already',
  clash: 'clash',
};

const KIND_WORDS = { opening: 'keyway', blank: 'blank', tool: 'tool' } as const;

function MergeSheet({ now, family, importing }: ImportFamilyProps) {
  const theirs = now.from.family;
  const kept = [...now.choices.values()];
  const added = kept.filter((choice) => choice === 'add').length;
  const replaced = kept.filter((choice) => choice === 'replace').length;
  return (
    <ModalSheet
      large
      title={`Add the sections of ${theirs.name} to ${family.name}`}
      onClose={() => importing.cancel()}
      foot={
        <>
          <p role="status" className={styles.count}>
            {mergeLine(added, replaced, bringsPlan(family, theirs))}
          </p>
          <button type="button" className="key" onClick={() => importing.cancel()}>
            Cancel
          </button>
          <button
            type="button"
            className={`key ${styles.main}`}
            disabled={added + replaced === 0 && !bringsPlan(family, theirs)}
            onClick={() => importing.mergeSections()}
          >
            Add to {family.name.length > 30 ? 'the open family' : family.name}
          </button>
        </>
      }
    >
      <div className={styles.family}>
        {now.plan.differences.length > 0 && (
          <ul className={styles.differences} aria-label="Differences of the two families">
            {now.plan.differences.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        )}
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls must take the keyboard */}
        <section className={styles.scroll} data-first tabIndex={0} aria-label="Sections of the other family">
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">Section</th>
                <th scope="col">In {family.name}</th>
                <th scope="col">What to do</th>
              </tr>
            </thead>
            <tbody>
              {now.plan.rows.map((row) => (
                <SectionRow key={row.id} row={row} now={now} family={family} importing={importing} />
              ))}
            </tbody>
          </table>
        </section>
      </div>
      <FaultList faults={now.faults} />
    </ModalSheet>
  );
}

function mergeLine(added: number, replaced: number, plan: boolean): string {
  if (added + replaced === 0) return plan ? 'Its plan will be added.' : 'Nothing will be added.';
  const parts: string[] = [];
  if (added > 0) parts.push(`${countWords(added, 'section')} will be added`);
  if (replaced > 0) parts.push(`${replaced} replaced`);
  return `${parts.join(', ')}.`;
}

function SectionRow({ row, now, family, importing }: ImportFamilyProps & { readonly row: MergeRow }) {
  const { id, name, kind, standing, namesake } = row;
  const choice = now.choices.get(id) ?? row.usual;
  const ours = family.profiles.find((profile) => profile.id === (standing === 'new' ? namesake : id));
  return (
    <tr>
      <th scope="row">
        {name}
        <small>
          {KIND_WORDS[kind]}, id {id}
        </small>
      </th>
      <td>
        <span className={styles.standing} data-standing={standing}>
          {STANDING_WORDS[standing]}
        </span>
        <small>{standingWords(row, ours?.name ?? '')}</small>
      </td>
      <td>
        <select
          className={styles.select}
          aria-label={`What to do with ${name}, id ${id}`}
          value={choice}
          onChange={(event) => importing.chooseSection(id, event.target.value as MergeChoice)}
        >
          <option value="add">{standing === 'new' ? 'Add it' : 'Keep both, named apart'}</option>
          {standing !== 'new' && <option value="replace">Replace ours</option>}
          <option value="skip">Leave it out</option>
        </select>
      </td>
    </tr>
  );
}

/** How a section of theirs stands to ours, in words. */
function standingWords({ standing, namesake, name }: MergeRow, ours: string): string {
  const words: string[] = [];
  if (standing === 'same') words.push(ours === name ? 'same id, same shape' : `same id, same shape, named ${ours}`);
  if (standing === 'clash') words.push(`same id, another shape, named ${ours}`);
  if (namesake !== null) words.push(`the name is also that of ${namesake}`);
  return words.join('; ');
}
