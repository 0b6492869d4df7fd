import { bandText, readingText, type Units } from '../family/length-text.ts';
import { explainPlacement } from '../fit/explain-placement.ts';
import { fitSentence } from '../fit/fit-sentence.ts';
import type { TeachingKnowledge } from '../teach/teaching-knowledge.ts';
import type { SheetGround } from './sheet-ground.ts';

/**
 * A ground as lessons and quizzes ask for it, reasons in the units of the order.
 *
 * @check tests/unit/publish/class-sheets.test.ts
 */
export function taughtGround({ family, fits }: Pick<SheetGround, 'family' | 'fits'>, units: Units): TeachingKnowledge {
  const rows = new Map(fits.profiles.map((id, i) => [id, i]));
  const columns = new Map(fits.openings.map((id, k) => [id, k]));
  const profiles = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const fitOf: TeachingKnowledge['fitOf'] = (entrantId, openingId) =>
    fits.fits[rows.get(entrantId) ?? -1]?.[columns.get(openingId) ?? -1];
  const sentence = (entrantId: string, openingId: string) => {
    const [entrant, opening] = [profiles.get(entrantId), profiles.get(openingId)];
    const fit = fitOf(entrantId, openingId);
    if (!entrant || !opening || !fit) return '';
    const explanation = explainPlacement(opening.ring, entrant.ring, fit.placement);
    const length = (nm: number) => readingText(nm, units);
    return fitSentence(entrant.name, opening.name, fit, explanation, length, (a, b) => bandText(a, b, units));
  };
  return { family, fitOf, sentence };
}
