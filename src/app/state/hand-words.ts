import { gapText, type Units } from '../../family/length-text.ts';
import type { Explanation } from '../../fit/explain-placement.ts';
import type { Doors } from './doors.ts';
import { bandWriter, lengthWriter } from './pair-sentence.ts';

/**
 * What the hand feels at a placement: "Here it is blocked by the left ward at 3.1–4.0 mm, 0.42 mm too deep." or
 * "Here it goes in, 0.031 mm from the right wall."
 */
export function handSentence(
  doors: Pick<Doors, 'blockedWords' | 'partName'>,
  explanation: Explanation,
  units: Units,
): string {
  const { collisions, contacts, gap } = explanation;
  if (collisions.length > 0)
    return `Here it is ${doors.blockedWords(collisions, lengthWriter(units), bandWriter(units))}.`;
  const where = contacts.length > 0 ? `the ${doors.partName(contacts[0])}` : 'the plug';
  if (gap === 0) return `Here it goes in, touching ${where}.`;
  return `Here it goes in, ${gapText(gap, units)} from ${where}.`;
}
