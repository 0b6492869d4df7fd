import type { Family } from '../../../family/family.ts';
import type { Profile } from '../../../profile/profile.ts';
import { heldAs } from '../../state/plan/taken-standing.ts';
import { useSession } from '../use-store.ts';

interface ComparePairKeyProps {
  readonly family: Family;
  /** The pair as the plan is drawn. */
  readonly blank: Profile | undefined;
  readonly opening: Profile | undefined;
}

/** Shows a pair of the plan in Compare, once its sections are in the family. */
export function ComparePairKey({ family, blank, opening }: ComparePairKeyProps) {
  const { selection } = useSession();
  const entrantId = blank && heldAs(family, blank)?.id;
  const openingId = opening && heldAs(family, opening)?.id;
  const isThere = entrantId !== undefined && openingId !== undefined;
  return (
    <button
      type="button"
      className="key"
      disabled={!isThere}
      title={
        isThere ? 'Look at this pair large' : 'Take these sections first; then the pair can be looked at in Compare'
      }
      onClick={() => isThere && selection.setState({ entrantId, openingId, part: 'entrant', view: 'compare' })}
    >
      Compare
    </button>
  );
}
