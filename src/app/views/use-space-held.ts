import { type RefObject, useEffect, useRef } from 'react';

/** A ref that is true while the space bar is down. */
export function useSpaceHeld(): RefObject<boolean> {
  const held = useRef(false);
  useEffect(() => {
    const follow = (event: KeyboardEvent) => {
      if (event.key === ' ') held.current = event.type === 'keydown';
    };
    const letGo = () => {
      held.current = false;
    };
    addEventListener('keydown', follow);
    addEventListener('keyup', follow);
    addEventListener('blur', letGo);
    return () => {
      removeEventListener('blur', letGo);
      removeEventListener('keydown', follow);
      removeEventListener('keyup', follow);
    };
  }, []);
  return held;
}
