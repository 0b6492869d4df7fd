import { type Units, wearLengthText } from '../../family/length-text.ts';
import { MEASURING, marginText, VERDICT_WORDS } from '../../family/margin-text.ts';
import type { Fit } from '../../fit/fit.ts';
import type { ThreeWay } from '../../fit/judge-tolerance.ts';
import type { WearFigures } from '../../jobs/judge-details.ts';

/** The answer for all parts in words: as a whole, and in two short lines for a cell of the wall. */
export const PARTS_WORDS: Readonly<Record<ThreeWay, { whole: string; word: string; rest: string }>> = {
  always: { whole: 'always enters', word: 'always', rest: 'enters' },
  depends: { whole: 'depends on the parts', word: 'depends', rest: 'on the parts' },
  never: { whole: 'never enters', word: 'never', rest: 'enters' },
};

/** What stands for a figure that does not come, since the judging was stopped. */
export const NOT_MEASURED = 'not measured';

/** The wear of both parts that lets a blank in: "goes in after 0.110 mm of wear", "goes in new". */
export function wearText(wear: WearFigures | undefined, units: Units): string {
  if (!wear) return MEASURING;
  if (wear.both === 0) return 'goes in new';
  if (wear.both === Number.POSITIVE_INFINITY) return 'no wear lets it in';
  return `goes in after ${wearLengthText(wear.both, units)} of wear`;
}

/** The same, short enough for a cell of the wall: "in after 0.110 mm". */
export function shortWearText(wear: WearFigures | undefined, units: Units): string {
  const text = wearText(wear, units);
  if (text === 'no wear lets it in') return 'not by wear';
  return text.replace(/^goes in after (.+) of wear$/, 'in after $1');
}

/** One pair in one line, for a tooltip or a screen reader: "Heron blank in Bittern keyway: blocked, 0.21 mm too deep". */
export function pairLine(entrantName: string, openingName: string, fit: Fit | undefined, units: Units): string {
  if (!fit) return `${entrantName} in ${openingName}: not judged yet`;
  return `${entrantName} in ${openingName}: ${VERDICT_WORDS[fit.verdict]}, ${marginText(fit, units)}`;
}

/** The letter by which the drawing and the readings call the nth collision. */
export function clashLetter(index: number): string {
  return String.fromCharCode(65 + (index % 26));
}
