import type { Profile } from '../../../../profile/profile.ts';
import type { Material } from '../../../../strength/materials.ts';
import { type TorqueLimits, torqueLimits } from '../../../../strength/torque-limits.ts';
import { type ExaminingState, outlineKey } from '../strength/examining-strength.ts';

/** What is known of the strength of a plan's blanks, in one material. */
export interface PlanStrength {
  /** One for each blank, in order; null while it is examined. */
  readonly limits: readonly (TorqueLimits | null)[];
  /** Why a blank could not be examined, one for each; empty for those that were or are on their way. */
  readonly troubles: readonly string[];
  /** How many are examined. */
  readonly done: number;
  /** Place of the blank that yields first; -1 while not all are examined. */
  readonly weakest: number;
}

/**
 * The strength of a plan's blanks as far as they are examined; the weakest is named once all are.
 *
 * @check tests/unit/app/drawn-sections.test.ts
 */
export function planStrength(
  blanks: readonly Profile[],
  { known, failed }: Pick<ExaminingState, 'known' | 'failed'>,
  material: Material,
): PlanStrength {
  const limits = blanks.map((blank) => {
    const section = known.get(outlineKey(blank));
    return section ? torqueLimits(section, material) : null;
  });
  const troubles = blanks.map((blank, i) => (limits[i] ? '' : (failed.get(outlineKey(blank)) ?? '')));
  const done = limits.filter((one) => one !== null).length;
  const lows = limits.map((one) => one?.yieldNm.low ?? Number.POSITIVE_INFINITY);
  const weakest = done === blanks.length ? lows.indexOf(Math.min(...lows)) : -1;
  return { limits, troubles, done, weakest };
}
