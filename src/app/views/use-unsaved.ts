import { useEffect } from 'react';
import { useFamily } from '../panels/use-family.ts';
import { useSession, useStore } from '../panels/use-store.ts';
import { isEdited } from '../state/document-state.ts';

/** Names the family in the window's title, with a word for edits that are not saved, and asks before they are lost. */
export function useUnsaved(): void {
  const { documents } = useSession();
  const edited = useStore(documents, isEdited);
  const name = useFamily()?.name;
  useEffect(() => {
    document.title = name ? `${name}${edited ? ' (edited)' : ''} – Sectionary` : 'Sectionary';
  }, [name, edited]);
  useEffect(() => {
    if (!edited) return;
    const warn = (event: BeforeUnloadEvent) => event.preventDefault();
    addEventListener('beforeunload', warn);
    return () => removeEventListener('beforeunload', warn);
  }, [edited]);
}
