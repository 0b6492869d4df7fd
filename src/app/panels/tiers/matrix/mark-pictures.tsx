import { type CSSProperties, type RefObject, useLayoutEffect, useRef, useState } from 'react';
import type { Verdict } from '../../../../fit/fit.ts';
import { useDark } from '../../use-dark.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import styles from './matrix.module.css';

const MARKS: readonly (Verdict | null)[] = ['enters', 'tight', 'blocked', null];

/** What of an element's look a picture of it must say itself, since no style sheet reaches into it. */
const LOOKS = ['fill', 'stroke', 'stroke-width', 'stroke-linejoin', 'stroke-linecap', 'stroke-dasharray'] as const;

/**
 * The marks as pictures that cells have for a background: hundreds of cells are scrolled, and a mark that is drawn anew in
 * each of them takes four elements to paint. They are taken from the marks themselves, in the colours of the sheet.
 *
 * @returns what the page must hold for it, and the properties that name the pictures: `--mark-enters` and so on.
 */
export function useMarkPictures(): { source: RefObject<HTMLDivElement | null>; pictures: CSSProperties } {
  const source = useRef<HTMLDivElement>(null);
  const dark = useDark();
  const [pictures, setPictures] = useState<CSSProperties>({});
  // biome-ignore lint/correctness/useExhaustiveDependencies: another sheet has other colours
  useLayoutEffect(() => {
    const marks = [...(source.current?.querySelectorAll('svg') ?? [])];
    setPictures(Object.fromEntries(marks.map((mark) => [`--mark-${mark.dataset.verdict}`, pictureOf(mark)])));
  }, [dark]);
  return { source, pictures };
}

/** The marks that the pictures are taken from; nobody sees them. */
export function MarkSource({ source }: { source: RefObject<HTMLDivElement | null> }) {
  return (
    <div ref={source} className={styles.source} aria-hidden="true">
      {MARKS.map((verdict) => (
        <VerdictMark key={verdict} verdict={verdict} size={24} />
      ))}
    </div>
  );
}

function pictureOf(mark: SVGSVGElement): string {
  const copy = mark.cloneNode(true) as SVGSVGElement;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  const drawn = [...mark.querySelectorAll('*')];
  for (const [at, element] of [...copy.querySelectorAll('*')].entries()) {
    const look = getComputedStyle(drawn[at]);
    for (const name of LOOKS) element.setAttribute(name, look.getPropertyValue(name));
    element.removeAttribute('class');
  }
  return `url("data:image/svg+xml,${encodeURIComponent(copy.outerHTML)}")`;
}
