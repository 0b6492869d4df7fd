import type { Family } from '../../../family/family.ts';
import { type DrawingImport, isReady, isSound, tickedLoops } from '../../state/exchange/import-state.ts';
import type { Importing, IncomingFile } from '../../state/exchange/importing.ts';
import { editedProfile } from '../../state/selection-state.ts';
import { FaultList } from '../fault-list.tsx';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './import-dialog.module.css';
import { ImportLoops } from './import-loops.tsx';
import { ImportPicture } from './import-picture.tsx';
import { ImportQuestions } from './import-questions.tsx';
import { countWords } from './import-words.ts';

interface ImportDrawingProps {
  readonly now: DrawingImport;
  readonly waiting: number;
  readonly family: Family;
  readonly importing: Importing<IncomingFile>;
}

/** A drawing before its outlines are taken: all its loops, what is wrong with them, and what only the user can know. */
export function ImportDrawing({ now, waiting, family, importing }: ImportDrawingProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const sections = [...new Set(family.profiles.flatMap(({ section }) => (section ? [section] : [])))];
  const toggle = (i: number) => {
    const ticked = isSound(now.drawing.loops[i]) && !now.choices[i].ticked;
    importing.chooseLoop(i, { ticked });
  };
  return (
    <ModalSheet
      large
      title={`Import ${now.name}`}
      aside={waiting > 0 && <span>{countWords(waiting, 'more file')} to come</span>}
      onClose={() => importing.cancel()}
      foot={<AddKeys now={now} family={family} importing={importing} />}
    >
      <div className={styles.drawing} aria-busy={now.rereading}>
        <div className={styles.left}>
          <ImportPicture now={now} onToggle={toggle} />
          <ImportQuestions now={now} units={units} importing={importing} />
        </div>
        <section className={styles.list} aria-label="What to take">
          <ImportLoops now={now} units={units} importing={importing} sections={sections} />
          <Notes now={now} />
        </section>
      </div>
      <FaultList faults={now.faults} />
    </ModalSheet>
  );
}

/** What the reader left out or found doubtful. */
function Notes({ now }: { now: DrawingImport }) {
  const { notes } = now.drawing;
  if (notes.length === 0) return null;
  return (
    <section className={styles.notes} aria-label="Notes on the drawing">
      <h3>{countWords(notes.length, 'note')} on the drawing</h3>
      <ul>
        {notes.slice(0, 60).map(({ path, what, cure }) => (
          <li key={`${path} ${what}`}>
            <b>{path}</b>: {what}. {cure}
          </li>
        ))}
      </ul>
      {notes.length > 60 && <p>and {notes.length - 60} more</p>}
    </section>
  );
}

interface AddKeysProps {
  readonly now: DrawingImport;
  readonly family: Family;
  readonly importing: Importing<IncomingFile>;
}

function AddKeys({ now, family, importing }: AddKeysProps) {
  const { selection, names } = useSession();
  const unknown = useStore(names, (s) => s.sheet === 'identify');
  const asked = useStore(selection, (s) => s.view === 'names') && unknown;
  const picked = editedProfile(
    family,
    useStore(selection, (s) => s),
  );
  const count = tickedLoops(now).length;
  const nameless = tickedLoops(now).some((i) => now.choices[i].name.trim() === '');
  const replaced = family.profiles.find(({ id }) => id === now.replacing) ?? null;
  return (
    <>
      <p role="status" className={styles.count}>
        {asked && count !== 1 && !now.rereading
          ? 'Tick the one loop to be identified.'
          : countLine(count, replaced?.name ?? null, nameless, now.rereading)}
      </p>
      {picked && (
        <label className={styles.replace} title={`Replace the outline of ${(replaced ?? picked).name}`}>
          <input
            type="checkbox"
            checked={replaced !== null}
            onChange={(event) => importing.choose({ replacing: event.target.checked ? picked.id : null })}
          />
          <span>Replace the outline of {(replaced ?? picked).name} instead</span>
        </label>
      )}
      <button type="button" className="key" onClick={() => importing.cancel()}>
        Cancel
      </button>
      <button
        type="button"
        className={asked ? `key ${styles.main}` : 'key'}
        disabled={count !== 1 || now.rereading}
        title={
          count === 1 ? 'What section of the family it is like; it is not added' : 'Tick the one loop to be identified'
        }
        onClick={() => importing.identifyLoop()}
      >
        Identify
      </button>
      <button
        type="button"
        className={asked ? 'key' : `key ${styles.main}`}
        disabled={!isReady(now)}
        onClick={() => importing.addLoops()}
      >
        {replaced ? 'Replace outline' : addLabel(count)}
      </button>
    </>
  );
}

function addLabel(count: number): string {
  return count === 0 ? 'Add' : `Add ${countWords(count, 'section')}`;
}

function countLine(count: number, replaced: string | null, nameless: boolean, rereading: boolean): string {
  if (rereading) return 'Reading it anew …';
  if (replaced !== null) {
    if (count === 1) return `The outline of ${replaced} will be replaced.`;
    return `Tick the one loop that is to be the outline of ${replaced}.`;
  }
  if (count === 0) return 'Nothing is ticked.';
  if (nameless) return 'Each section needs a name.';
  return `${countWords(count, 'section')} will be added.`;
}
