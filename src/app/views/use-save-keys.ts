import { useEffect } from 'react';
import { saveFamily } from '../panels/exchange/save-file.ts';
import { useSession } from '../panels/use-store.ts';

/** Ctrl or Cmd with S saves the family, in place of the browser's own saving of the page. */
export function useSaveKeys(): void {
  const session = useSession();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const isSave = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && event.key === 's';
      if (!isSave) return;
      event.preventDefault();
      if (!event.repeat) saveFamily(session);
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [session]);
}
