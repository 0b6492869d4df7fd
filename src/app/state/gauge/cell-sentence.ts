import { readingText, type Units } from '../../../family/length-text.ts';
import type { TightCause } from '../../../gauge/judge-strip.ts';
import type { ToolCell } from '../../../gauge/tool-table.ts';
import type { Profile } from '../../../profile/profile.ts';
import { spareText, thicknessFigure } from './gauge-lengths.ts';

/** What leaves a straight tool too little room, as it goes on after what it could be thicker by. */
const CAUSES: Readonly<Record<TightCause, string>> = {
  thickness: 'and keeps',
  height: 'but its height leaves it only',
  both: 'but its height, too, leaves it only',
};

/**
 * What a tool does in a keyway, as a sentence. A spare thickness has the digits of the table: rounded down.
 *
 * @param why what makes a straight tool tight; null where that is not known, and for a shaped one.
 * @check tests/unit/app/gauge-tools.test.ts
 */
export function cellSentence(cell: ToolCell, { name }: Profile, why: TightCause | null, units: Units): string {
  const { verdict, spare, clearance } = cell;
  if (spare !== null && verdict === 'blocked')
    return spare < 0 ? `Too thick for ${name}: ${spareText(spare, units)}.` : `It does not go into ${name}.`;
  if (verdict === 'blocked')
    return `In ${name} it is too deep by ${readingText(clearance, units)}. Shaped: judged by the full fit.`;
  if (spare === null)
    return `In ${name} it keeps ${readingText(clearance, units)} all round. Shaped: judged by the full fit.`;
  if (spare === 0) return `In ${name} it touches on both sides. Straight: gauged by the curve.`;
  const held = verdict === 'tight' && why ? `, ${CAUSES[why]} ${readingText(clearance, units)} all round` : '';
  return `In ${name} it could be thicker by ${thicknessFigure(spare, units)}${held}. Straight: gauged by the curve.`;
}
