import { type KeyboardEvent, memo, useEffect, useRef } from 'react';
import type { Palette } from '../../../publish/inks.ts';
import type { Page } from '../../../publish/page.ts';
import type { SheetsLook } from '../../state/publish/sheets-look.ts';
import type { Store } from '../../state/store.ts';
import styles from './page-desk.module.css';
import { PagePicture } from './page-picture.tsx';

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

const Thumb = memo(function Thumb({ page, palette }: { page: Page; palette: Palette }) {
  return (
    <span className={styles.small} aria-hidden="true" inert>
      <PagePicture page={page} palette={palette} />
    </span>
  );
});
