import { useState } from 'react';
import { keepOf } from '../../keep/keep-state.ts';
import { DeletedLine } from '../draw/deleted-line.tsx';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './kept-list.module.css';
import { momentWords, sizeWords } from './kept-words.ts';
import { SnapshotRow } from './snapshot-row.tsx';
import { type Snapshots, useSnapshots } from './use-snapshots.ts';

const NO_SNAPSHOT = 'No snapshot yet. Take one before you try something: restoring it is one step of undo.';
const NOT_OURS = 'This family is kept by another tab: take it over, or keep it as a copy, to use its snapshots.';

/** Named snapshots of the open family: take, restore, rename, delete. */
export function SnapshotsSheet({ onClose }: { onClose(): void }) {
  const ours = useStore(keepOf(useSession()), (s) => s.status !== 'elsewhere' && s.status !== 'taken');
  return (
    <ModalSheet title="Snapshots" onClose={onClose}>
      <div className={styles.body}>{ours ? <SnapshotList onClose={onClose} /> : <p>{NOT_OURS}</p>}</div>
    </ModalSheet>
  );
}

function SnapshotList({ onClose }: { onClose(): void }) {
  const snapshots = useSnapshots();
  const { all, fault, deleted } = snapshots;
  return (
    <>
      <TakeSnapshot take={snapshots.take} />
      {fault !== '' && (
        <p className={styles.fault} role="alert">
          {fault}
        </p>
      )}
      {deleted && <DeletedLine name={deleted.name} putBack={snapshots.putBack} />}
      {all.length === 0 ? (
        <p className={styles.hint}>{NO_SNAPSHOT}</p>
      ) : (
        <ul className={styles.list} aria-label="Snapshots">
          {all.map((snapshot) => (
            <SnapshotRow
              key={snapshot.id}
              title={snapshot.title}
              words={`${momentWords(snapshot.takenAt)} · ${sizeWords(snapshot)}`}
              restore={() => snapshots.restore(snapshot) && onClose()}
              rename={(title) => snapshots.rename(snapshot, title)}
              remove={() => snapshots.remove(snapshot)}
            />
          ))}
        </ul>
      )}
    </>
  );
}

/** The name of the next snapshot, and the key that takes it. */
function TakeSnapshot({ take }: Pick<Snapshots, 'take'>) {
  const [title, setTitle] = useState('');
  return (
    <form
      className={styles.entry}
      onSubmit={(event) => {
        event.preventDefault();
        const named = title.trim() || momentWords(Date.now());
        // The next name may be begun before this one is kept.
        take(named).then(() => setTitle((now) => (now === title ? '' : now)));
      }}
    >
      <label>
        Name of the snapshot
        <input
          className={styles.field}
          value={title}
          maxLength={100}
          placeholder="such as: before the new wards"
          onChange={(event) => setTitle(event.target.value)}
        />
      </label>
      <button type="submit" className="key">
        Take snapshot
      </button>
    </form>
  );
}
