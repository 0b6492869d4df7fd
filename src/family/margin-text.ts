import type { Fit, Verdict } from '../fit/fit.ts';
import { isMeasured } from './fit-cache.ts';
import { gapText, type Units } from './length-text.ts';

/** The word that goes with each verdict's mark. */
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  enters: 'enters',
  tight: 'tight',
  blocked: 'blocked',
};

/** What stands for a figure that is on its way. */
export const MEASURING = 'measuring…';

/**
 * The margin of a pair as it stands under its picture: "+0.052 mm", "touching", "0.21 mm too deep".
 *
 * @param pending what stands for a figure that is not there.
 * @param lengthText how lengths are written: as readings, or shorter.
 */
export function marginText(fit: Fit, units: Units, pending = MEASURING, lengthText = gapText): string {
  if (!isMeasured(fit)) return pending;
  if (fit.verdict === 'blocked') return `${lengthText(fit.clearance, units)} too deep`;
  if (fit.clearance === 0) return 'touching';
  return `+${lengthText(fit.clearance, units)}`;
}
