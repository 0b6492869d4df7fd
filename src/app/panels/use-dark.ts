import { useEffect, useLayoutEffect, useState } from 'react';
import { useSession, useStore } from './use-store.ts';

const NIGHT = '(prefers-color-scheme: dark)';

/** True on the dark sheet: by the user's choice, else by the computer's. Marks the page so that the palette follows. */
export function useDark(): boolean {
  const { settings } = useSession();
  const choice = useStore(settings, (s) => s.theme);
  const [night, setNight] = useState(() => matchMedia(NIGHT).matches);
  useEffect(() => {
    const query = matchMedia(NIGHT);
    const follow = () => setNight(query.matches);
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  const dark = choice === 'system' ? night : choice === 'dark';
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = dark ? 'dark' : 'light';
  }, [dark]);
  return dark;
}
