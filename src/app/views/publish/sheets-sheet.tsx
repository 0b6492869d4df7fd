import type { Family } from '../../../family/family.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { PageDesk } from '../../panels/publish/page-desk.tsx';
import { PrintedPages } from '../../panels/publish/printed-pages.tsx';
import { PublishKeys } from '../../panels/publish/publish-keys.tsx';
import { PublishProgress } from '../../panels/publish/publish-progress.tsx';
import { PublishTold } from '../../panels/publish/publish-told.tsx';
import { SheetForm } from '../../panels/publish/sheet-form.tsx';
import { useAskedPages, useSheetOrder } from '../../panels/publish/use-sheet-order.ts';
import { useSession } from '../../panels/use-store.ts';
import { lackFor, SHEET_WORDS, subjectName } from '../../state/publish/sheet-words.ts';
import { sheetsLookOf } from '../../state/publish/sheets-look.ts';
import styles from './sheets-sheet.module.css';
import { usePageKeys } from './use-page-keys.ts';

/** Charts, true-size sheets, answers and cards. */
export function SheetsSheet({ family }: { family: Family }) {
  // Without keyways there is no sheet of any kind; what one kind lacks is told in its place.
  const lack = lackFor('chart', family);
  return lack ? <EmptyNotice {...lack} /> : <Sheets family={family} />;
}

function Sheets({ family }: { family: Family }) {
  const look = sheetsLookOf(useSession());
  const order = useSheetOrder(family);
  const shown = useAskedPages(family, order);
  const pages = shown.found?.output.pages ?? null;
  const ready = shown.current ? pages : null;
  usePageKeys(look, pages?.length ?? 0);
  const subject = subjectName(family, order);
  return (
    <div className={styles.sheet} data-publish={shown.current ? order.sheet : ''}>
      <header className={styles.head}>
        <h1>
          {SHEET_WORDS[order.sheet].label}
          {subject && <small>{subject}</small>}
        </h1>
        <PublishKeys family={family} order={order} look={look} pages={ready} word="page" />
        <PublishTold family={family} order={order} />
      </header>
      <SheetForm family={family} />
      <div className={styles.pages}>
        <PublishProgress shown={shown} word="page" />
        {pages && pages.length > 0 ? (
          <PageDesk look={look} pages={pages} palette={order.palette} current={shown.current} word="page" />
        ) : (
          <p className={styles.waiting}>{ready ? 'This sheet has no page.' : ''}</p>
        )}
      </div>
      <PrintedPages look={look} pages={ready} palette={order.palette} paper={`${order.paper}-${order.turned}`} />
    </div>
  );
}
