import { useCallback, useEffect, useState } from 'react';
import { keepOf } from '../../keep/keep-state.ts';
import { keepingOf } from '../../keep/start-keeping.ts';
import { listWorks, removeWork, type WorkHead } from '../../keep/work-records.ts';
import { DeletedLine } from '../draw/deleted-line.tsx';
import { mayReplace } from '../exchange/may-replace.ts';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './kept-list.module.css';
import { momentWords, sizeWords } from './kept-words.ts';
import type { Deleted } from './use-snapshots.ts';

/** Where a kept family is open: in this window, in another one, nowhere. */
type Place = 'here' | 'elsewhere' | 'closed';

const PLACE_WORDS: Readonly<Record<Place, string>> = {
  here: ' · open here',
  elsewhere: ' · open in another tab',
  closed: '',
};

const LOOK_AGAIN_MS = 1_000;

/** The families that this browser keeps: open one again, or delete it. */
export function RecentSheet({ onClose }: { onClose(): void }) {
  const { works, fault, deleted, open, remove, putBack } = useKeptWorks(onClose);
  return (
    <ModalSheet title="Recent families" onClose={onClose}>
      <div className={styles.body}>
        <p className={styles.hint}>
          Kept in this browser on this computer, with undo and snapshots. Only a file is safe when the browser’s data
          are cleared.
        </p>
        {fault !== '' && (
          <p className={styles.fault} role="alert">
            {fault}
          </p>
        )}
        {deleted && <DeletedLine name={deleted.name} putBack={putBack} />}
        {works?.length === 0 && <p>Nothing is kept yet. A family is kept from its first change on.</p>}
        {works && works.length > 0 && (
          <ul className={styles.list} aria-label="Kept families">
            {works.map(({ head, place }) => (
              <WorkRow key={head.id} head={head} place={place} open={() => open(head)} remove={() => remove(head)} />
            ))}
          </ul>
        )}
      </div>
    </ModalSheet>
  );
}

/** The kept families, and what can be done with them. */
function useKeptWorks(onClose: () => void) {
  const session = useSession();
  const keeping = keepingOf(session);
  const openId = useStore(keepOf(session), (s) => s.workId);
  const [works, setWorks] = useState<readonly { head: WorkHead; place: Place }[] | null>(null);
  const [deleted, setDeleted] = useState<Deleted | null>(null);
  const [fault, setFault] = useState('');
  const refresh = useCallback(async () => {
    if (!keeping) return;
    const held = await keeping.parts.tabs.held();
    const heads = await listWorks(keeping.parts.shelf);
    const elsewhere = (id: string): Place => (held.has(id) ? 'elsewhere' : 'closed');
    setWorks(heads.map((head) => ({ head, place: head.id === openId ? 'here' : elsewhere(head.id) })));
  }, [keeping, openId]);
  useEffect(() => {
    const look = () => refresh().catch(() => setFault('What is kept cannot be read.'));
    look();
    // Other tabs open and close families while this list is looked at.
    const timer = setInterval(look, LOOK_AGAIN_MS);
    return () => clearInterval(timer);
  }, [refresh]);
  const attempt = (work: () => Promise<unknown>) =>
    work().then(
      () => setFault(''),
      () => setFault('The browser’s storage did not answer. Try again.'),
    );
  return {
    works,
    deleted,
    fault,
    open: (head: WorkHead) =>
      attempt(async () => {
        if (!keeping || !mayReplace(session)) return;
        await keeping.open(head);
        onClose();
      }),
    remove: ({ id, name }: WorkHead) =>
      attempt(async () => {
        if (keeping) setDeleted({ name, putBack: await removeWork(keeping.parts.shelf, id) });
        await refresh();
      }),
    putBack: () => attempt(async () => deleted?.putBack().then(refresh)).then(() => setDeleted(null)),
  };
}

interface WorkRowProps {
  readonly head: WorkHead;
  readonly place: Place;
  open(): void;
  remove(): void;
}

function WorkRow({ head, place, open, remove }: WorkRowProps) {
  const mayDelete = place === 'closed';
  return (
    <li>
      <div className={styles.what}>
        <b>{head.name}</b>
        <span>
          {momentWords(head.keptAt)} · {sizeWords(head)}
          {head.edited ? ' · not saved in a file' : ''}
          {PLACE_WORDS[place]}
        </span>
      </div>
      <button type="button" className="key" aria-label={`Open ${head.name}`} disabled={place === 'here'} onClick={open}>
        Open
      </button>
      <button
        type="button"
        className="key"
        aria-label={`Delete ${head.name}`}
        title={mayDelete ? undefined : 'It is open: open another family here, or close the other tab, first'}
        disabled={!mayDelete}
        onClick={remove}
      >
        Delete
      </button>
    </li>
  );
}
