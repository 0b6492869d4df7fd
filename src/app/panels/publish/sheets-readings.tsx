import type { Family } from '../../../family/family.ts';
import { lackFor, SHEET_WORDS } from '../../state/publish/sheet-words.ts';
import { Cautions } from '../cautions.tsx';
import readings from '../readings.module.css';
import { PageFacts, PageWords, PrintTrue, SheetCaution } from './page-readings.tsx';
import { useSheetOrder, useShownPages } from './use-sheet-order.ts';

/** What belongs beside the Sheets sheet: what the page is for, how to print it true, what to beware of. */
export function SheetsReadings({ family }: { family: Family }) {
  return lackFor('chart', family) ? null : <OfSheet family={family} />;
}

function OfSheet({ family }: { family: Family }) {
  const order = useSheetOrder(family);
  const shown = useShownPages(family, order);
  const words = SHEET_WORDS[order.sheet];
  return (
    <>
      <section className={readings.part}>
        <h2 className={readings.title}>{words.label}</h2>
        <p>{words.what}</p>
        <PageFacts shown={shown} />
      </section>
      <PrintTrue order={order} />
      <section className={readings.part} aria-label="Beware">
        <SheetCaution words={words.caution} />
        <Cautions about="plan" />
      </section>
      <PageWords shown={shown} />
    </>
  );
}
