import { useEffect, useRef } from 'react';
import { isFreeKey } from '../../panels/is-free-key.ts';

/** P presents, and F5 as in other programs that show slides, in place of loading the page again. */
export function useLessonKeys(present: () => void): void {
  const latest = useRef(present);
  useEffect(() => {
    latest.current = present;
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const asked =
        event.key === 'F5' ? !event.ctrlKey && !event.shiftKey : event.key.toLowerCase() === 'p' && isFreeKey(event);
      if (!asked || event.defaultPrevented) return;
      event.preventDefault();
      latest.current();
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, []);
}
