import { useEffect } from 'react';
import { isSafe, keepOf } from '../keep/keep-state.ts';
import { useFamily } from '../panels/use-family.ts';
import { useSession, useStore } from '../panels/use-store.ts';
import { isEdited } from '../state/document-state.ts';

/**
 * Names the family in the window's title, with a word for edits that no file holds. Asks before the window goes where
 * they would be lost with it: not where this browser keeps them.
 */
export function useUnsaved(): void {
  const session = useSession();
  const { documents } = session;
  const edited = useStore(documents, isEdited);
  const safe = useStore(keepOf(session), isSafe);
  const name = useFamily()?.name;
  useEffect(() => {
    document.title = name ? `${name}${edited ? ' (edited)' : ''} – Sectionary` : 'Sectionary';
  }, [name, edited]);
  useEffect(() => {
    if (!edited || safe) return;
    const warn = (event: BeforeUnloadEvent) => event.preventDefault();
    addEventListener('beforeunload', warn);
    return () => removeEventListener('beforeunload', warn);
  }, [edited, safe]);
}
