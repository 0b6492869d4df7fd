import { useEffect } from 'react';
import { isFreeKey } from '../is-free-key.ts';
import { useSession } from '../use-store.ts';

/** A question mark opens the sheet of keys, where nothing takes text and nothing lies over the window. */
export function useHelpKey(): void {
  const { help, teach } = useSession();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== '?' || !isFreeKey(event)) return;
      if (teach.getState().presenting || document.querySelector('dialog[open]')) return;
      event.preventDefault();
      help.setState({ open: 'keys' });
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [help, teach]);
}
