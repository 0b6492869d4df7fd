import type { Family } from '../../../family/family.ts';
import { SheetKeys } from '../../panels/sheet-keys.tsx';
import { ClaimMarksKey } from '../../panels/tiers/claims/claim-marks-key.tsx';
import { ShownKeys } from '../../panels/tiers/shown-keys.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import view from '../sheeted-view.module.css';
import { ClaimsSheet } from './claims-sheet.tsx';
import { PassageSheet } from './passage-sheet.tsx';
import styles from './tiers.module.css';
import { TiersSheet } from './tiers-sheet.tsx';

const SHEETS = [
  { sheet: 'tiers', label: 'Tiers', title: 'Who enters what: matrix and diagram' },
  { sheet: 'passage', label: 'Common passage', title: 'What several keyways have in common' },
  { sheet: 'claims', label: 'Claims', title: 'What charts and colleagues say, checked' },
] as const;

/** The whole family: who enters what, what keyways have in common, what is claimed. */
export function Tiers({ family }: { family: Family }) {
  const { tiers } = useSession();
  const sheet = useStore(tiers, (s) => s.sheet);
  const shown = useStore(tiers, (s) => s.shown);
  return (
    <div className={view.view}>
      <header className={styles.head}>
        <SheetKeys
          label="Sheets of Tiers"
          sheets={SHEETS}
          shown={sheet}
          onShow={(next) => tiers.setState({ sheet: next })}
        />
        {sheet === 'tiers' && shown !== 'diagram' && <ClaimMarksKey family={family} />}
        {sheet === 'tiers' && <ShownKeys />}
      </header>
      {sheet === 'tiers' && <TiersSheet family={family} />}
      {sheet === 'passage' && <PassageSheet family={family} />}
      {sheet === 'claims' && <ClaimsSheet family={family} />}
    </div>
  );
}
