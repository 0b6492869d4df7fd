import type { Family } from '../../../family/family.ts';
import { SheetKeys } from '../../panels/sheet-keys.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import styles from '../sheeted-view.module.css';
import { AccessSheet } from './access-sheet.tsx';
import { BladeSheet } from './blade-sheet.tsx';
import { CapacitySheet } from './capacity-sheet.tsx';
import { GrowSheet } from './grow-sheet.tsx';
import { SectionsSheet } from './sections-sheet.tsx';
import { StrengthSheet } from './strength-sheet.tsx';

const SHEETS = [
  { sheet: 'access', label: 'Areas and holders', title: 'Areas, holders, and the blanks that they need' },
  { sheet: 'blade', label: 'Blade', title: 'What the blades may be made like, and the places for wards' },
  { sheet: 'sections', label: 'Sections', title: 'The wards of each section, proved, drawn and judged' },
  { sheet: 'grow', label: 'Room to grow', title: 'How many sections more, and where the next ones go' },
  { sheet: 'strength', label: 'Strength', title: 'What each blade bears, by material' },
  { sheet: 'capacity', label: 'Capacity', title: 'How many keys the family has' },
] as const;

/** A family planned from its areas and holders; strength, capacity and room of any family. */
export function Plan({ family }: { family: Family }) {
  const { plan } = useSession();
  const sheet = useStore(plan, (s) => s.sheet);
  return (
    <div className={styles.view}>
      <header className={styles.head}>
        <SheetKeys
          label="Sheets of Plan"
          sheets={SHEETS}
          shown={sheet}
          onShow={(next) => plan.setState({ sheet: next })}
        />
      </header>
      {sheet === 'access' && <AccessSheet family={family} />}
      {sheet === 'blade' && <BladeSheet family={family} />}
      {sheet === 'sections' && <SectionsSheet family={family} />}
      {sheet === 'grow' && <GrowSheet family={family} />}
      {sheet === 'strength' && <StrengthSheet family={family} />}
      {sheet === 'capacity' && <CapacitySheet family={family} />}
    </div>
  );
}
