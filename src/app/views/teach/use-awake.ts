import { useEffect, useState } from 'react';

/** Milliseconds without a move of the mouse after which keys and cursor fade. */
const RESTING = 2500;

/** Whether the mouse was moved or the focus walked a moment ago. */
export function useAwake(): boolean {
  const [awake, setAwake] = useState(true);
  useEffect(() => {
    let timer = 0;
    const wake = () => {
      setAwake(true);
      clearTimeout(timer);
      timer = window.setTimeout(() => setAwake(false), RESTING);
    };
    const onKeyDown = ({ key }: KeyboardEvent) => key === 'Tab' && wake();
    wake();
    addEventListener('pointermove', wake);
    addEventListener('keydown', onKeyDown, { capture: true });
    return () => {
      clearTimeout(timer);
      removeEventListener('pointermove', wake);
      removeEventListener('keydown', onKeyDown, { capture: true });
    };
  }, []);
  return awake;
}
