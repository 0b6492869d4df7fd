import { useEffect } from 'react';
import type { Palette } from '../../../publish/inks.ts';
import type { Page } from '../../../publish/page.ts';
import type { PageZoom, SheetsLook } from '../../state/publish/sheets-look.ts';
import type { Store } from '../../state/store.ts';
import { useSize } from '../use-size.ts';
import { useStore } from '../use-store.ts';
import styles from './page-desk.module.css';
import { PagePicture } from './page-picture.tsx';
import { PageThumbs } from './page-thumbs.tsx';

interface PageDeskProps {
  readonly look: Store<SheetsLook>;
  readonly pages: readonly Page[];
  readonly palette: Palette;
  /** Whether these pages are those that were ordered; else others are on their way. */
  readonly current: boolean;
  /** What one of them is called: page, slide. */
  readonly word: string;
}

/** The pages, one at a time: the keys that turn them, small pictures of all, and the page as it will be. */
export function PageDesk({ look, pages, palette, current, word }: PageDeskProps) {
  const number = usePageNumber(look, pages.length);
  const zoom = useStore(look, (s) => s.zoom);
  const page = pages[number];
  return (
    <section className={styles.desk} aria-label="Preview" data-pages={current ? pages.length : ''}>
      <div className={styles.bar}>
        <TurnKeys look={look} number={number} count={pages.length} word={word} />
        <span className="key-row">
          <ZoomKey look={look} zoom="fit" label="Fit" title={`The whole ${word} (F)`} />
          <ZoomKey look={look} zoom="true" label="100 %" title="True size: a millimetre of paper is one here (1)" />
        </span>
      </div>
      <div className={styles.both} data-lying={page.width > page.height || undefined}>
        {pages.length > 1 && <PageThumbs look={look} pages={pages} palette={palette} number={number} word={word} />}
        <Paper page={page} palette={palette} zoom={zoom} current={current} number={number} />
      </div>
    </section>
  );
}

/** The number of the page that is shown, from 0; the last one where there are fewer now. */
export function usePageNumber(look: Store<SheetsLook>, count: number): number {
  return Math.max(
    0,
    Math.min(
      useStore(look, (s) => s.page),
      count - 1,
    ),
  );
}

interface TurnKeysProps {
  readonly look: Store<SheetsLook>;
  readonly number: number;
  readonly count: number;
  readonly word: string;
}

function TurnKeys({ look, number, count, word }: TurnKeysProps) {
  const turn = (to: number) => look.setState({ page: Math.max(0, Math.min(count - 1, to)) });
  const name = word[0].toUpperCase() + word.slice(1);
  return (
    <span className={styles.turn}>
      <button
        type="button"
        className="key"
        aria-label={`Previous ${word}`}
        title={`Previous ${word} (Page Up)`}
        disabled={number === 0}
        onClick={() => turn(number - 1)}
      >
        ◀
      </button>
      <span role="status" className={styles.number}>
        {name} {number + 1} of {count}
      </span>
      <button
        type="button"
        className="key"
        aria-label={`Next ${word}`}
        title={`Next ${word} (Page Down)`}
        disabled={number >= count - 1}
        onClick={() => turn(number + 1)}
      >
        ▶
      </button>
    </span>
  );
}

interface ZoomKeyProps {
  readonly look: Store<SheetsLook>;
  readonly zoom: PageZoom;
  readonly label: string;
  readonly title: string;
}

function ZoomKey({ look, zoom, label, title }: ZoomKeyProps) {
  const shown = useStore(look, (s) => s.zoom);
  return (
    <button
      type="button"
      className="key"
      title={title}
      aria-pressed={shown === zoom}
      onClick={() => look.setState({ zoom })}
    >
      {label}
    </button>
  );
}

interface PaperProps {
  readonly page: Page;
  readonly palette: Palette;
  readonly zoom: PageZoom;
  readonly current: boolean;
  readonly number: number;
}

/** Free space round a page that fits, pixels. */
const MARGIN = 28;

function Paper({ page, palette, zoom, current, number }: PaperProps) {
  const [frame, size] = useSize<HTMLElement>();
  useTop(frame, number, zoom);
  const scale = size
    ? Math.max(0.1, Math.min((size.width - MARGIN) / page.width, (size.height - MARGIN) / page.height))
    : 0;
  const shown = zoom === 'true' ? {} : { width: `${page.width * scale}px`, height: `${page.height * scale}px` };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keys must reach it
    <section ref={frame} className={styles.frame} data-zoom={zoom} tabIndex={0} aria-label="Page">
      {size && (
        <div className={styles.paper} data-old={!current || undefined} aria-busy={!current}>
          <PagePicture page={page} palette={palette} {...shown} />
        </div>
      )}
    </section>
  );
}

/** Another page is seen from its beginning. */
function useTop(frame: { readonly current: HTMLElement | null }, number: number, zoom: PageZoom): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page or size is what brings it up
  useEffect(() => {
    frame.current?.scrollTo(0, 0);
  }, [number, zoom]);
}
