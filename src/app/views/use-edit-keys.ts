import { useEffect } from 'react';
import { useSession } from '../panels/use-store.ts';
import { beginHold, endHold } from '../state/edit-document.ts';
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

/** Makes one step of undo of whatever a key does while it is held, wherever in the window. */
export function useHeldKeys(): void {
  const { documents } = useSession();
  useEffect(() => {
    // The key that began the hold, by its place on the keyboard; another that is let go meanwhile ends nothing.
    let heldCode: string | null = null;
    const letGo = () => {
      heldCode = null;
      endHold(documents);
    };
    const onKeyDown = ({ key, code, repeat }: KeyboardEvent) => {
      if (repeat || MODIFIERS.has(key)) return;
      heldCode = code;
      beginHold(documents);
    };
    const onKeyUp = ({ code }: KeyboardEvent) => {
      if (code === heldCode) letGo();
    };
    addEventListener('keydown', onKeyDown, true);
    addEventListener('keyup', onKeyUp, true);
    addEventListener('pointerdown', letGo, true);
    addEventListener('blur', letGo);
    return () => {
      removeEventListener('keydown', onKeyDown, true);
      removeEventListener('keyup', onKeyUp, true);
      removeEventListener('pointerdown', letGo, true);
      removeEventListener('blur', letGo);
    };
  }, [documents]);
}

/** Keys that do nothing by themselves; the pointer may do much while one is held. */
const MODIFIERS: ReadonlySet<string> = new Set(['Shift', 'Control', 'Alt', 'Meta', 'AltGraph', 'CapsLock']);

/** Fields that take text have an undo of their own. */
const OWN_UNDO = 'textarea, input:not([type=range], [type=checkbox], [type=radio], [type=file])';

function stepOf({ key, shiftKey }: KeyboardEvent): typeof stepBack | null {
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? stepOn : stepBack;
  return letter === 'y' && !shiftKey ? stepOn : null;
}
