import { entrantsOf, type Family } from '../../../family/family.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { ShearPanel } from '../../panels/plan/strength/shear-panel.tsx';
import { StrengthHead } from '../../panels/plan/strength/strength-head.tsx';
import { StrengthProgress } from '../../panels/plan/strength/strength-progress.tsx';
import { StrengthTable } from '../../panels/plan/strength/strength-table.tsx';
import { useExamining, usePickedRow, useStrengthRows } from '../../panels/plan/strength/use-strength.ts';
import { useStore } from '../../panels/use-store.ts';
import styles from './strength-sheet.module.css';

/** What each blade bears, by material. */
export function StrengthSheet({ family }: { family: Family }) {
  if (entrantsOf(family).length === 0)
    return (
      <EmptyNotice
        title="This family has no blanks"
        what="Strength is that of blades. Make a blank in Draw, import one, or plan the family from its areas."
      />
    );
  return <Blades family={family} />;
}

function Blades({ family }: { family: Family }) {
  const examining = useExamining(family);
  const phase = useStore(examining.store, (s) => s.phase);
  const rows = useStrengthRows(family);
  const row = usePickedRow(rows);
  return (
    <div className={styles.sheet} data-strength={phase}>
      <StrengthHead family={family} rows={rows} />
      <StrengthProgress />
      <div className={styles.both}>
        <StrengthTable family={family} rows={rows} />
        {row && <ShearPanel family={family} row={row} />}
      </div>
    </div>
  );
}
