import { useEffect } from 'react';
import type { Palette } from '../../../publish/inks.ts';
import type { Page } from '../../../publish/page.ts';
import type { SheetsLook } from '../../state/publish/sheets-look.ts';
import type { Store } from '../../state/store.ts';
import { useStore } from '../use-store.ts';
import { PagePicture } from './page-picture.tsx';
import styles from './printed-pages.module.css';

interface PrintedPagesProps {
  readonly look: Store<SheetsLook>;
  /** Null while they are laid out: then the window is printed as it stands. */
  readonly pages: readonly Page[] | null;
  readonly palette: Palette;
  /** Names the paper in styles/print.css: `A4-portrait`, `slide`. */
  readonly paper: string;
}

/**
 * The pages as the printer gets them: each on a sheet of its own size, without a margin. They are on the page only while it
 * is printed, whether the Print key or the browser's own menu asks for it.
 */
export function PrintedPages({ look, pages, palette, paper }: PrintedPagesProps) {
  const printing = useStore(look, (s) => s.printing);
  useEffect(() => {
    const before = () => look.setState({ printing: true });
    const after = () => look.setState({ printing: false });
    addEventListener('beforeprint', before);
    addEventListener('afterprint', after);
    return () => {
      removeEventListener('beforeprint', before);
      removeEventListener('afterprint', after);
      after();
    };
  }, [look]);
  if (!printing || !pages) return null;
  return (
    <div className={styles.pages} data-printed="" data-paper="" style={{ page: paper }}>
      {pages.map((page, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a page is known by its number
        <div key={i} className={styles.page} style={{ width: `${page.width}mm`, height: `${page.height}mm` }}>
          <PagePicture page={page} palette={palette} />
        </div>
      ))}
    </div>
  );
}

/** Prints once the pages are on the page. */
export async function printPages(look: Store<SheetsLook>): Promise<void> {
  look.setState({ printing: true });
  // What stands on the page is drawn in one of the next two frames.
  await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  window.print();
}
