import { ModalSheet } from '../modal-sheet.tsx';
import { useFamily } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './import-dialog.module.css';
import { ImportDrawing } from './import-drawing.tsx';
import { ImportFamily } from './import-family.tsx';
import { importingOf } from './import-files.ts';
import { usePaste } from './import-paste.ts';

/** Whatever is coming in: shows that it is read, asks what it cannot know, and nothing at all in between. */
export function ImportDialog() {
  const session = useSession();
  const { now, waiting } = useStore(session.imports, (s) => s);
  const family = useFamily();
  const importing = importingOf(session);
  usePaste();
  if (now.stage === 'reading')
    return <ReadingSheet key={now.name} name={now.name} onCancel={() => importing.cancel()} />;
  if (!family) return null;
  if (now.stage === 'drawing')
    return <ImportDrawing key={now.name} now={now} waiting={waiting} family={family} importing={importing} />;
  if (now.stage === 'family') return <ImportFamily now={now} family={family} importing={importing} />;
  return null;
}

/** Comes late, so that a quick reading shows nothing. */
function ReadingSheet({ name, onCancel }: { name: string; onCancel(): void }) {
  return (
    <div className={styles.late}>
      <ModalSheet
        title={`Reading ${name} …`}
        onClose={onCancel}
        foot={
          <button type="button" className="key" onClick={onCancel}>
            Cancel
          </button>
        }
      >
        <div className={styles.reading}>
          <progress aria-label={`Reading ${name}`} />
          <p>Nothing is changed before you have seen what is in it.</p>
        </div>
      </ModalSheet>
    </div>
  );
}
