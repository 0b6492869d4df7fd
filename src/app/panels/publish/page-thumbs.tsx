import { type KeyboardEvent, memo, useEffect, useRef } from 'react';
import type { Palette } from '../../../publish/inks.ts';
import type { Page } from '../../../publish/page.ts';
import { drawPage } from '../../canvas/page/draw-page.ts';
import type { SheetsLook } from '../../state/publish/sheets-look.ts';
import type { Store } from '../../state/store.ts';
import styles from './page-desk.module.css';

interface PageThumbsProps {
  readonly look: Store<SheetsLook>;
  readonly pages: readonly Page[];
  readonly palette: Palette;
  /** The page that is shown, from 0. */
  readonly number: number;
  readonly word: string;
}

/** Small pictures of all pages; one press shows a page, the arrow keys go along them. */
export function PageThumbs({ look, pages, palette, number, word }: PageThumbsProps) {
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    list.current?.children[number]?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [number]);
  const onKeyDown = (event: KeyboardEvent) => {
    const [before, after] = [number - 1, number + 1];
    const to = {
      ArrowUp: before,
      ArrowLeft: before,
      ArrowDown: after,
      ArrowRight: after,
      Home: 0,
      End: pages.length - 1,
    }[event.key];
    if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const next = Math.max(0, Math.min(pages.length - 1, to));
    look.setState({ page: next });
    list.current?.children[next]?.querySelector('button')?.focus({ preventScroll: true });
  };
  return (
    <ol ref={list} className={styles.thumbs} aria-label={`All ${word}s`} onKeyDown={onKeyDown}>
      {pages.map((page, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a page is known by its number
        <li key={i}>
          <button
            type="button"
            className={styles.thumb}
            aria-label={`${word} ${i + 1}: ${page.title}`}
            aria-current={i === number ? 'page' : undefined}
            tabIndex={i === number ? 0 : -1}
            onClick={() => look.setState({ page: i })}
          >
            <Thumb page={page} palette={palette} />
            <span aria-hidden="true">{i + 1}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}

/** Picture points a CSS pixel: sharp on fine screens too. */
const POINTS = 2;

/** Width and height of the room for a small picture, CSS pixels. */
const ROOM = { width: 72, height: 100 };

const Thumb = memo(function Thumb({ page, palette }: { page: Page; palette: Palette }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const scale = Math.min(ROOM.width / page.width, ROOM.height / page.height);
  useEffect(() => {
    let live = true;
    // Drawn with the letters of the page, which may be on their way.
    document.fonts.ready.then(() => {
      const pen = live && canvas.current?.getContext('2d');
      if (pen) drawPage(page, palette, pen, scale * POINTS);
    });
    return () => {
      live = false;
    };
  }, [page, palette, scale]);
  const [width, height] = [page.width * scale, page.height * scale];
  return (
    <canvas
      ref={canvas}
      className={styles.small}
      width={Math.round(width * POINTS)}
      height={Math.round(height * POINTS)}
      style={{ width, height }}
    />
  );
});
