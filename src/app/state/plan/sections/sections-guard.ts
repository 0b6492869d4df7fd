import type { Fit } from '../../../../fit/fit.ts';
import { packOutline } from '../../../../jobs/packed-outline.ts';
import { outlineKey } from '../../../../profile/outline-key.ts';
import type { Profile } from '../../../../profile/profile.ts';
import type { Doors } from '../../doors.ts';
import type { SectionsQuestion } from './sections-question.ts';

/** A pair of a plan as it is drawn. */
export interface DrawnPair {
  readonly opening: Profile;
  readonly entrant: Profile;
}

type Gap = SectionsQuestion['gap'];

/** New parts, upright: what planned pairs are judged under. */
export function planConditions({ runningClearance }: Gap) {
  return { runningClearance, tiltLimit: 0, wear: 0 };
}

/**
 * Finds the wear of both parts at which a blocked pair goes in, in another thread.
 *
 * @param tell given the wear, nanometres.
 * @returns how to stop it. Without threads nothing is found; the report has the guard of all pairs.
 */
export function findPairGuard(
  { judgeDetails }: Pick<Doors, 'judgeDetails'>,
  { opening, entrant }: DrawnPair,
  fit: Fit,
  gap: Gap,
  tell: (wear: number) => void,
): () => void {
  const pack = ({ ring }: Profile) => packOutline(`plan ${outlineKey(ring)}`, ring);
  const bands = [{ blank: gap.tolerance, opening: gap.tolerance }];
  const asked = { entrant: pack(entrant), openings: [pack(opening)], fits: [fit], bands };
  try {
    const job = judgeDetails({ ...asked, conditions: planConditions(gap), wear: true }, ({ wear }) => {
      if (wear) tell(wear.both);
    });
    job.result.catch(() => {});
    return () => job.cancel();
  } catch {
    return () => {};
  }
}
