import type { Family } from '../../../family/family.ts';
import { SheetKeys } from '../../panels/sheet-keys.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import styles from '../sheeted-view.module.css';
import { BlockSheet } from './block-sheet.tsx';
import { SheetsSheet } from './sheets-sheet.tsx';
import { SlidesSheet } from './slides-sheet.tsx';

const SHEETS = [
  { sheet: 'sheets', label: 'Sheets', title: 'Charts, true-size sheets, answers and cards' },
  { sheet: 'slides', label: 'Slides', title: 'The lesson as pages and as a file' },
  { sheet: 'block', label: 'Display block', title: 'Openings and blanks as solids to print' },
] as const;

/** What leaves the computer on paper, on a screen or as a solid. */
export function Publish({ family }: { family: Family }) {
  const { publish } = useSession();
  const sheet = useStore(publish, (s) => s.sheet);
  return (
    <div className={styles.view}>
      <header className={styles.head}>
        <SheetKeys
          label="Sheets of Publish"
          sheets={SHEETS}
          shown={sheet}
          onShow={(next) => publish.setState({ sheet: next })}
        />
      </header>
      {sheet === 'sheets' && <SheetsSheet family={family} />}
      {sheet === 'slides' && <SlidesSheet family={family} />}
      {sheet === 'block' && <BlockSheet family={family} />}
    </div>
  );
}
