import type { Profile } from '../profile/profile.ts';
import { type ThicknessCurve, uprightCurve } from './thickness-curve.ts';

/**
 * The curves of some openings, one after the other.
 *
 * @param tiltLimit radians; 0: strips stand upright.
 * @param tell gets each curve as it comes.
 * @yields how much is done.
 */
export function* curvingFamily(
  openings: readonly Profile[],
  tiltLimit: number,
  tell: (curve: ThicknessCurve) => void,
): Generator<{ done: number; total: number }, { readonly curves: readonly ThicknessCurve[] }, void> {
  const curves: ThicknessCurve[] = [];
  for (const { id, ring } of openings) {
    const curve = uprightCurve(id, ring);
    curves.push(curve);
    tell(curve);
    yield { done: curves.length, total: openings.length };
  }
  return { curves };
}
