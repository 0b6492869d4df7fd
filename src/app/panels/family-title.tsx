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
  const called = useStore(documents, (s) => s.document?.family.name);
  const edited = useStore(documents, isEdited);
  const name = useRef<HTMLParagraphElement>(null);
  useFewestLines(name, called);
  return (
    <div className={styles.title} title={called === undefined ? undefined : titleOf(called, edited)}>
      <p ref={name} className={styles.family}>
        {called ?? 'No family open'}
      </p>
      <p className={styles.state}>
        {edited && <em className={styles.edited}>edited</em>}
        <KeepStatusWords />
      </p>
    </div>
  );
}

/**
 * Sets a name in the fewest lines that hold it, as letters and windows differ in width; the style sheet has their sizes.
 */
function useFewestLines(name: RefObject<HTMLParagraphElement | null>, text: string | undefined): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: another name is what is set anew
  useLayoutEffect(() => {
    fewestLines(name.current);
    let gone = false;
    // The typeface may come after the name.
    document.fonts?.ready.then(() => !gone && fewestLines(name.current));
    return () => {
      gone = true;
    };
  }, [name, text]);
  useLayoutEffect(() => {
    const bar = name.current?.closest('header');
    if (!bar) return;
    const observer = new ResizeObserver(() => fewestLines(name.current));
    // What takes room beside the name; what the name stands in is as wide as its lines make it.
    const beside = [...bar.children].filter((part) => !part.contains(name.current));
    for (const part of [bar, ...beside]) observer.observe(part);
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
