import { useRef } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import { KeepStripInHand } from '../../panels/gauge/keep-strip-key.tsx';
import { SheetKeys } from '../../panels/sheet-keys.tsx';
import { useKeptFocus } from '../../panels/use-kept-focus.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import styles from '../sheeted-view.module.css';
import { CurvesSheet } from './curves-sheet.tsx';
import { TightnessSheet } from './tightness-sheet.tsx';
import { ToolsSheet } from './tools-sheet.tsx';

const SHEETS = [
  { sheet: 'curves', label: 'Thickness', title: 'Thickness against height' },
  { sheet: 'tools', label: 'Tools', title: 'Tools x openings, and the fewest that do' },
  { sheet: 'tightness', label: 'Tightness', title: 'Keyways from tight to wide' },
] as const;

/** Thickness of tools against their height; tools and keyways. */
export function Gauge({ family }: { family: Family }) {
  const { gauge } = useSession();
  const sheet = useStore(gauge, (s) => s.sheet);
  const view = useRef<HTMLDivElement>(null);
  // The key of the sheet without tools goes from the page as soon as it has made one.
  useKeptFocus(view, ['[role="grid"]', '[data-first]']);
  return (
    <div ref={view} className={styles.view}>
      <header className={styles.head}>
        <SheetKeys
          label="Sheets of Gauge"
          sheets={SHEETS}
          shown={sheet}
          onShow={(next) => gauge.setState({ sheet: next })}
        />
        {sheet === 'curves' && openingsOf(family).length > 0 && (
          <div className={styles.aside}>
            <KeepStripInHand family={family} />
          </div>
        )}
      </header>
      {sheet === 'curves' && <CurvesSheet family={family} />}
      {sheet === 'tools' && <ToolsSheet family={family} />}
      {sheet === 'tightness' && <TightnessSheet family={family} />}
    </div>
  );
}
