import type { Explanation } from '../../fit/explain-placement.ts';
import type { Placement } from '../../fit/fit.ts';
import type { Region } from '../../geom/region.ts';
import type { Ring } from '../../geom/ring.ts';
import type { Doors } from './doors.ts';

interface Kept {
  readonly opening: Ring | Region;
  readonly blank: Ring | readonly Ring[];
  readonly explanation: Explanation;
}

/**
 * The same explanations, but each computed once for a placement value: in a drag the hand, the drawing and
 * the readings all ask for the one that is shown.
 */
export function explainOnce(explain: Doors['explainPlacement']): Doors['explainPlacement'] {
  const kept = new WeakMap<Placement, Kept>();
  return (opening, blank, placement) => {
    const known = kept.get(placement);
    if (known && known.opening === opening && known.blank === blank) return known.explanation;
    const explanation = explain(opening, blank, placement);
    kept.set(placement, { opening, blank, explanation });
    return explanation;
  };
}
