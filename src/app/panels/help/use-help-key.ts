import { useEffect } from 'react';
import { useSession } from '../use-store.ts';

/** A question mark opens the sheet of keys, where nothing takes text and nothing lies over the window. */
export function useHelpKey(): void {
  const { help, teach } = useSession();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== '?' || event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey) return;
      if (teach.getState().presenting || document.querySelector('dialog[open]')) return;
      if (event.target instanceof Element && event.target.closest('input, select, textarea, [popover]')) return;
      event.preventDefault();
      help.setState({ open: 'keys' });
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [help, teach]);
}
