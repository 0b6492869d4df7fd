import { useEffect, useState } from 'react';
import { type Palette, readPalette } from '../canvas/palette.ts';

/** The palette in force, read again when the sheet turns or the typeface has arrived. */
export function usePalette(): Palette | null {
  const [palette, setPalette] = useState<Palette | null>(null);
  useEffect(() => {
    const read = () => setPalette(readPalette());
    read();
    document.fonts.ready.then(read);
    const observer = new MutationObserver(read);
    observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    return () => observer.disconnect();
  }, []);
  return palette;
}
