import { useState } from 'react';
import styles from './kept-list.module.css';

interface SnapshotRowProps {
  readonly title: string;
  /** When it was taken, and how large it is. */
  readonly words: string;
  restore(): void;
  rename(title: string): void;
  remove(): void;
}

/** One snapshot with what can be done with it; its name can be typed over. */
export function SnapshotRow({ title, words, restore, rename, remove }: SnapshotRowProps) {
  const [draft, setDraft] = useState<string | null>(null);
  const take = () => {
    const named = draft?.trim();
    if (named && named !== title) rename(named);
    setDraft(null);
  };
  return (
    <li>
      <div className={styles.what}>
        {draft === null ? (
          <b>{title}</b>
        ) : (
          <input
            className={styles.field}
            aria-label={`New name of ${title}`}
            // biome-ignore lint/a11y/noAutofocus: the user has just asked to type here
            autoFocus
            value={draft}
            maxLength={100}
            onChange={(event) => setDraft(event.target.value)}
            onBlur={take}
            onKeyDown={(event) => {
              if (event.key === 'Enter') take();
              if (event.key !== 'Escape') return;
              event.preventDefault();
              event.stopPropagation();
              setDraft(null);
            }}
          />
        )}
        <span>{words}</span>
      </div>
      <button type="button" className="key" aria-label={`Restore ${title}`} onClick={restore}>
        Restore
      </button>
      <button type="button" className="key" aria-label={`Rename ${title}`} onClick={() => setDraft(title)}>
        Rename
      </button>
      <button type="button" className="key" aria-label={`Delete ${title}`} onClick={remove}>
        Delete
      </button>
    </li>
  );
}
