import type { Family } from '../../../../family/family.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { heldAs } from '../../../state/plan/sections/taken-standing.ts';
import { useSession } from '../../use-store.ts';
import styles from './compare-pair-key.module.css';

interface ComparePairKeyProps {
  readonly family: Family;
  /** The pair as the plan is drawn. */
  readonly blank: Profile | undefined;
  readonly opening: Profile | undefined;
}

const FIRST = 'Take these sections first; then each pair can be looked at in Compare.';

/** Shows a pair of the plan in Compare, once its sections are in the family; before that it says so. */
export function ComparePairKey({ family, blank, opening }: ComparePairKeyProps) {
  const session = useSession();
  const entrantId = blank && heldAs(family, blank)?.id;
  const openingId = opening && heldAs(family, opening)?.id;
  const isThere = entrantId !== undefined && openingId !== undefined;
  const press = () => {
    if (isThere) session.selection.setState({ entrantId, openingId, part: 'entrant', view: 'compare' });
    else sectionsLookOf(session).setState({ said: FIRST });
  };
  return (
    <button
      type="button"
      className={`key ${styles.key}`}
      aria-disabled={!isThere}
      title={isThere ? 'Look at this pair large' : FIRST}
      onClick={press}
    >
      Compare
    </button>
  );
}
