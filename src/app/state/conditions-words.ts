import { readingText, type Units } from '../../family/length-text.ts';
import { type ConditionsState, isAltered } from './conditions-state.ts';

/** A tilt as it is spoken of: "2.0°". */
function tiltText(radians: number): string {
  return `${((radians * 180) / Math.PI).toFixed(1)}°`;
}

/** Whether pairs are judged, or their tolerance is taken, otherwise than the family file has it. */
export function isOtherThanDrawn(state: ConditionsState): boolean {
  return isAltered(state) || state.blankTolerance !== null || state.openingTolerance !== null;
}

/** What is otherwise than drawn, in a line: "worn 0.020 mm each, tilt up to 2.0°"; empty where nothing is. */
export function alteredText(state: ConditionsState, units: Units): string {
  const { wear, tiltLimit, blankTolerance, openingTolerance } = state;
  const parts: string[] = [];
  if (wear > 0) parts.push(`worn ${readingText(wear, units)} each`);
  if (tiltLimit > 0) parts.push(`tilt up to ${tiltText(tiltLimit)}`);
  if (blankTolerance !== null) parts.push(`blanks made to ±${readingText(blankTolerance, units)}`);
  if (openingTolerance !== null) parts.push(`keyways made to ±${readingText(openingTolerance, units)}`);
  return parts.join(', ');
}
