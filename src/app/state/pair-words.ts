import type { Fit, Verdict } from '../../fit/fit.ts';
import { gapText, type Units } from './length-text.ts';

/** The word that goes with each verdict's mark. */
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  enters: 'enters',
  tight: 'tight',
  blocked: 'blocked',
};

/** The margin of a pair as it stands under its picture: "+0.052 mm", "touching", "0.21 mm too big". */
export function marginText(fit: Fit, units: Units): string {
  if (fit.verdict === 'blocked') return `${gapText(fit.clearance, units)} too big`;
  if (fit.clearance === 0) return 'touching';
  return `+${gapText(fit.clearance, units)}`;
}

/** One pair in one line, for a tooltip or a screen reader: "Heron blank in Bittern keyway: blocked, 0.21 mm too big". */
export function pairLine(entrantName: string, openingName: string, fit: Fit | undefined, units: Units): string {
  if (!fit) return `${entrantName} in ${openingName}: not judged yet`;
  return `${entrantName} in ${openingName}: ${VERDICT_WORDS[fit.verdict]}, ${marginText(fit, units)}`;
}

/** The letter by which the drawing and the readings call the nth collision. */
export function clashLetter(index: number): string {
  return String.fromCharCode(65 + (index % 26));
}
