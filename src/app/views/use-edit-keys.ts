import { useEffect } from 'react';
import { useSession } from '../panels/use-store.ts';
import { stepBack, stepOn } from '../state/step-history.ts';

/** Ctrl or Cmd with Z takes back the last edit; with Shift and Z, or with Y, it is done again. */
export function useEditKeys(): void {
  const session = useSession();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.altKey || !(event.ctrlKey || event.metaKey)) return;
      if (event.target instanceof Element && event.target.closest(OWN_UNDO)) return;
      const step = stepOf(event);
      if (!step) return;
      event.preventDefault();
      step(session);
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [session]);
}

/** Fields that take text have an undo of their own. */
const OWN_UNDO = 'textarea, input:not([type=range], [type=checkbox], [type=radio], [type=file])';

function stepOf({ key, shiftKey }: KeyboardEvent): typeof stepBack | null {
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? stepOn : stepBack;
  return letter === 'y' && !shiftKey ? stepOn : null;
}
