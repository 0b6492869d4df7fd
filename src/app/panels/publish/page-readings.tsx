import { useMemo } from 'react';
import { countWord } from '../../../family/count-word.ts';
import type { SheetOrder } from '../../../publish/sheet-order.ts';
import type { Fact } from '../../state/profile-facts.ts';
import { pageWords, tinyTypeWords } from '../../state/publish/page-words.ts';
import { sheetCounts } from '../../state/publish/sheet-counts.ts';
import { missingWords, PAPER_LABELS, pageSizeText } from '../../state/publish/sheet-words.ts';
import { sheetsLookOf, slidesLookOf } from '../../state/publish/sheets-look.ts';
import { FactList } from '../fact-list.tsx';
import readings from '../readings.module.css';
import { useSession } from '../use-store.ts';
import { usePageNumber } from './page-desk.tsx';
import styles from './page-readings.module.css';
import type { ShownPages } from './use-sheet-order.ts';

/** How many pages, of what size, and of how much of the family. */
export function PageFacts({ shown: { found, current } }: { shown: ShownPages }) {
  if (!found?.output.pages?.length) return null;
  const { pages, missingLetters } = found.output;
  const { family, sheet } = found.input;
  const [{ width, height }] = pages;
  const isSlides = sheet.sheet === 'slides';
  const facts: Fact[] = [
    { term: isSlides ? 'slides' : 'pages', value: String(pages.length) },
    { term: isSlides ? '16 to 9' : PAPER_LABELS[sheet.paper], value: pageSizeText(width, height, sheet.units) },
    ...sheetCounts(family, sheet),
  ];
  const missing = missingWords(missingLetters);
  const tiny = tinyTypeWords(pages, sheet);
  return (
    <>
      <div data-busy={!current || undefined} className={styles.facts}>
        <FactList facts={facts} />
      </div>
      {tiny && <p className={styles.caution}>{tiny}</p>}
      {missing && (
        <p role="alert" className={styles.missing}>
          {missing}
        </p>
      )}
    </>
  );
}

/** Sheets with a bar to check the printer by. */
const HAS_BAR: ReadonlySet<string> = new Set(['scale']);

/** How a page keeps its size on the way through a printer. */
export function PrintTrue({ order }: { order: SheetOrder }) {
  const bar = order.units === 'in' ? '50 mm (1.97 in)' : '50 mm';
  const isPoster = order.paper === 'A1';
  return (
    <section className={readings.part}>
      <h3>Print it true</h3>
      <ol className={styles.steps}>
        <li>
          Print the PDF at <b>100 %</b> or “actual size”, never “fit to page”; with the Print key choose no margins and
          scale 100.
        </li>
        <li>
          {HAS_BAR.has(order.sheet) ? (
            <>
              Measure the bar on the page: it must be <b>{bar}</b> long.
            </>
          ) : (
            <>Nothing on this sheet is to be measured: a smaller print only reads smaller.</>
          )}
        </li>
        <li>
          {isPoster
            ? 'Have the poster printed from the PDF by a print shop, without scaling.'
            : `${PAPER_LABELS[order.paper]} must be in the printer: another paper makes it scale the page.`}
        </li>
      </ol>
    </section>
  );
}

/** What somebody could be misled by. */
export function SheetCaution({ words }: { words: string }) {
  return words === '' ? null : <p className={styles.caution}>{words}</p>;
}

/** The page in words, for whoever cannot see it or wants to read it out. */
export function PageWords({ shown: { found } }: { shown: ShownPages }) {
  const session = useSession();
  const isSlides = found?.input.sheet.sheet === 'slides';
  const pages = found?.output.pages ?? [];
  const number = usePageNumber(isSlides ? slidesLookOf(session) : sheetsLookOf(session), pages.length);
  const page = pages[number];
  const words = useMemo(() => (page ? pageWords(page) : []), [page]);
  if (words.length === 0) return null;
  return (
    <details className={`${readings.part} ${styles.words}`}>
      <summary>
        This {isSlides ? 'slide' : 'page'} in words <span>({countWord(words.length, 'line')})</span>
      </summary>
      <ul>
        {words.map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines may be alike, their order is fixed
          <li key={i}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
