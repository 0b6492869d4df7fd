import { useEffect, useState } from 'react';
import { readSolidColours } from '../../canvas/solid/solid-colours.ts';
import type { SolidColours } from '../../canvas/solid/solid-picture.ts';

/** The colours in force, read again when the sheet turns light or dark. */
export function useSolidColours(): SolidColours | null {
  const [colours, setColours] = useState<SolidColours | null>(null);
  useEffect(() => {
    const read = () => setColours(readSolidColours());
    read();
    const observer = new MutationObserver(read);
    observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    return () => observer.disconnect();
  }, []);
  return colours;
}
