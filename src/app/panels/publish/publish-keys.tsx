import { countWord } from '../../../family/count-word.ts';
import type { Family } from '../../../family/family.ts';
import type { Page } from '../../../publish/page.ts';
import type { SheetOrder } from '../../../publish/sheet-order.ts';
import type { SheetsLook } from '../../state/publish/sheets-look.ts';
import type { Store } from '../../state/store.ts';
import { HangingPanel } from '../hanging-panel.tsx';
import menu from '../menu-row.module.css';
import { MenuRow } from '../menu-row.tsx';
import { useSession } from '../use-store.ts';
import { usePageNumber } from './page-desk.tsx';
import { printPages } from './printed-pages.tsx';
import styles from './publish-keys.module.css';
import { type PagesToSave, saveCsv, saveHtml, savePdf, savePng, saveSvg, saveSvgs } from './save-pages.ts';

interface PublishKeysProps {
  readonly family: Family;
  readonly order: SheetOrder;
  readonly look: Store<SheetsLook>;
  /** Null while they are laid out. */
  readonly pages: readonly Page[] | null;
  readonly word: string;
}

/** What is done with the pages: saved in any form, printed. */
export function PublishKeys({ family, order, look, pages, word }: PublishKeysProps) {
  const session = useSession();
  const number = usePageNumber(look, pages?.length ?? 1);
  const off = pages === null;
  const save: PagesToSave = { session, family, order, pages: pages ?? [], number };
  return (
    <div className={styles.keys}>
      <button type="button" className={`key ${styles.main}`} disabled={off} onClick={() => savePdf(save)}>
        Save PDF
      </button>
      {order.sheet === 'slides' && (
        <button
          type="button"
          className="key"
          disabled={off}
          title="All slides as one web page that runs in any browser, without a network"
          onClick={() => saveHtml(save)}
        >
          Save HTML
        </button>
      )}
      <button
        type="button"
        className="key"
        disabled={off}
        title="Through the browser's own print window; choose 100 %, no margins"
        onClick={() => printPages(look)}
      >
        Print
      </button>
      <SvgKey save={save} off={off} word={word} />
      <button
        type="button"
        className="key"
        disabled={off}
        title={`This ${word} as a picture, 300 dots an inch where that is not too large`}
        onClick={() => savePng(save)}
      >
        Save PNG
      </button>
      {order.sheet === 'matrix' && (
        <button
          type="button"
          className="key"
          disabled={off}
          title="The matrix as a table for a spreadsheet: verdicts, and margins as plain numbers"
          onClick={() => saveCsv(save)}
        >
          Save CSV
        </button>
      )}
    </div>
  );
}

function SvgKey({ save, off, word }: { save: PagesToSave; off: boolean; word: string }) {
  const count = save.pages.length;
  if (off || count < 2)
    return (
      <button type="button" className="key" disabled={off} onClick={() => saveSvg(save)}>
        Save SVG
      </button>
    );
  return (
    <HangingPanel label="Save SVG ▾" title={`This ${word}, or all of them`}>
      {(close) => (
        <ul className={menu.menu}>
          <MenuRow
            name={`This ${word}`}
            hint={`${word} ${save.number + 1} as one drawing`}
            close={close}
            onPress={() => saveSvg(save)}
          />
          <MenuRow
            name={`All ${countWord(count, word)}`}
            hint="a drawing each, in one ZIP archive"
            close={close}
            onPress={() => saveSvgs(save)}
          />
        </ul>
      )}
    </HangingPanel>
  );
}
