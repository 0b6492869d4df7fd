import { readingText, type Units } from '../../../family/length-text.ts';
import type { TightCause } from '../../../gauge/judge-strip.ts';
import type { ToolCell } from '../../../gauge/tool-table.ts';
import type { Profile } from '../../../profile/profile.ts';
import { spareText, thicknessFigure } from './gauge-lengths.ts';

/** What leaves a straight tool too little room, where that is not its thickness. */
const CAUSES: Readonly<Record<Exclude<TightCause, 'thickness'>, string>> = {
  height: 'its height leaves it',
  both: 'its thickness and its height leave it',
  corner: 'a corner of the keyway leaves it',
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
  const room = spare === 0 ? 'touches on both sides' : `could be thicker by ${thicknessFigure(spare, units)}`;
  const held =
    verdict === 'tight' && why && why !== 'thickness'
      ? `, but ${CAUSES[why]} only ${readingText(clearance, units)} all round`
      : '';
  return `In ${name} it ${room}${spare === 0 ? '' : held}. Straight: gauged by the curve.`;
}
