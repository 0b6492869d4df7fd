import type { Profile } from '../profile/profile.ts';
import { findingCurve, type ThicknessCurve } from './thickness-curve.ts';

/**
 * The curves of some openings, one after the other.
 *
 * @param tiltLimit greatest tilt of a strip either way, radians; 0: strips stand upright.
 * @param tell gets each curve as it comes.
 * @yields how much is done, of how much.
 * @check tests/unit/jobs/gauge-family.test.ts
 */
export function* curvingFamily(
  openings: readonly Pick<Profile, 'id' | 'ring'>[],
  tiltLimit: number,
  tell: (curve: ThicknessCurve) => void = () => undefined,
): Generator<{ done: number; total: number }, { readonly curves: readonly ThicknessCurve[] }, void> {
  const curves: ThicknessCurve[] = [];
  const total = openings.length;
  for (const { id, ring } of openings) {
    const steps = findingCurve(id, ring, tiltLimit);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { done: curves.length + step.value.done / step.value.total, total };
    curves.push(step.value);
    tell(step.value);
    yield { done: curves.length, total };
  }
  return { curves };
}
