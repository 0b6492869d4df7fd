import type { Family } from '../../../family/family.ts';
import { accessOf } from '../../../plan/access.ts';
import { AccessBar } from '../../panels/plan/access/access-bar.tsx';
import { AccessEmpty } from '../../panels/plan/access/access-empty.tsx';
import { AccessFoot } from '../../panels/plan/access/access-foot.tsx';
import { AccessGrid } from '../../panels/plan/access/access-grid.tsx';
import { PasteHolders } from '../../panels/plan/access/paste-holders.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import { planForView } from '../../state/plan/access/access-rows.ts';
import { accessLookOf } from '../../state/plan/access/access-state.ts';
import styles from './access-sheet.module.css';

/** Areas in their tree, holders, and who must enter what; below it what that comes to. */
export function AccessSheet({ family }: { family: Family }) {
  const look = accessLookOf(useSession());
  const isTyping = useStore(look, (s) => s.typing !== null);
  const isPasting = useStore(look, (s) => s.pasting);
  const plan = planForView(family.plan);
  const isEmpty = plan.areas.length === 0 && plan.holders.length === 0 && !isTyping;
  const access = accessOf(plan);
  return (
    <div className={styles.sheet}>
      {isEmpty ? (
        <AccessEmpty family={family} />
      ) : (
        <>
          <AccessBar plan={plan} />
          <AccessGrid plan={plan} access={access} />
          <AccessFoot plan={plan} access={access} />
        </>
      )}
      {isPasting && <PasteHolders />}
    </div>
  );
}
