import { type RefObject, useLayoutEffect, useRef } from 'react';
import { isEdited } from '../state/document-state.ts';
import { isPair } from '../state/selection-state.ts';
import { KeepStatusWords } from './keep/keep-status.tsx';
import styles from './top-bar.module.css';
import { useSession, useStore } from './use-store.ts';

/** In how many lines the name may be set, each smaller than the last. */
const LINES = ['1', '2', '3'] as const;

/** Whose family is open, and what has become of its edits. */
export function FamilyTitle() {
  const { documents, selection } = useSession();
  const called = useStore(documents, (s) => s.document?.family.name);
  const edited = useStore(documents, isEdited);
  const name = useRef<HTMLParagraphElement>(null);
  // The key of Compare comes and goes in the row beside it.
  const canCompare = useStore(selection, isPair);
  useFewestLines(name, called, canCompare);
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
 * @param beside whatever takes room beside the name when it changes.
 */
function useFewestLines(name: RefObject<HTMLParagraphElement | null>, text: string | undefined, beside: boolean): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: another name or another neighbour is what it is set anew for
  useLayoutEffect(() => {
    const set = () => fewestLines(name.current);
    set();
    // The typeface may come after the name. No observer of sizes: the head stands where a view cannot be drawn.
    document.fonts?.ready.then(set);
    addEventListener('resize', set);
    return () => removeEventListener('resize', set);
  }, [name, text, beside]);
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
