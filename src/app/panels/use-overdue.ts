import { useEffect, useState } from 'react';

/** Whether something has gone on for so many milliseconds: what is quicker is not worth a word. */
export function useOverdue(goesOn: boolean, ms = 400): boolean {
  const [late, setLate] = useState(false);
  useEffect(() => {
    setLate(false);
    if (!goesOn) return;
    const timer = setTimeout(() => setLate(true), ms);
    return () => clearTimeout(timer);
  }, [goesOn, ms]);
  return goesOn && late;
}
