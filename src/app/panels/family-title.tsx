import { type RefObject, useLayoutEffect, useRef } from 'react';
import { isEdited } from '../state/document-state.ts';
import { KeepStatusWords } from './keep/keep-status.tsx';
import styles from './top-bar.module.css';
import { useSession, useStore } from './use-store.ts';

/** In how many lines the name may be set, each smaller than the last. */
const LINES = ['1', '2', '3'] as const;

/** Whose family is open, and what has become of its edits. */
export function FamilyTitle() {
  const { documents } = useSession();
  const family = useStore(documents, (s) => s.document?.family ?? null);
  const edited = useStore(documents, isEdited);
  const name = useRef<HTMLParagraphElement>(null);
  useFewestLines(name);
  return (
    <div className={styles.title} title={family ? titleOf(family.name, edited) : undefined}>
      <p ref={name} className={styles.family}>
        {family?.name ?? 'No family open'}
      </p>
      <p className={styles.state}>
        {edited && <em className={styles.edited}>edited</em>}
        <KeepStatusWords />
      </p>
    </div>
  );
}

/** Sets a name in the fewest lines that hold it, as letters and windows differ in width; the style sheet has their sizes. */
function useFewestLines(name: RefObject<HTMLParagraphElement | null>): void {
  useLayoutEffect(() => fewestLines(name.current));
  useLayoutEffect(() => {
    const title = name.current?.parentElement;
    const bar = title?.closest('header');
    if (!title || !bar) return;
    const observer = new ResizeObserver(() => fewestLines(name.current));
    for (const element of [title, bar]) observer.observe(element);
    return () => observer.disconnect();
  }, [name]);
}

function fewestLines(name: HTMLElement | null): void {
  if (!name) return;
  for (const lines of LINES) {
    name.dataset.lines = lines;
    if (name.scrollWidth <= name.clientWidth && name.scrollHeight <= name.clientHeight) return;
  }
}

function titleOf(name: string, edited: boolean): string {
  return edited ? `${name}: the open family; its edits are not saved in a file` : `${name}: the open family`;
}
