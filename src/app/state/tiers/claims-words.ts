import { type CheckedClaim, type ClaimPair, claimsSummary } from '../../../claims/check-claims.ts';
import { type ClaimWords, claimMargin, claimSentence, oppositeSentence } from '../../../claims/claim-sentence.ts';
import type { Claim } from '../../../family/claim.ts';
import type { Family } from '../../../family/family.ts';
import { isMeasured } from '../../../family/fit-cache.ts';
import { readingText, type Units } from '../../../family/length-text.ts';
import { bandsFor, type ConditionsState, conditionsFor } from '../conditions-state.ts';
import type { Doors } from '../doors.ts';
import { bandWriter, lengthWriter } from '../pair-sentence.ts';

type WordDoors = Pick<Doors, 'explainPlacement' | 'blockedWords' | 'shapesUnder'>;

/** What the reasons of a family's claims are worded with. */
export function claimWords(doors: WordDoors, family: Family, state: ConditionsState, units: Units): ClaimWords {
  const find = (id: string) => family.profiles.find((profile) => profile.id === id);
  const conditions = conditionsFor(state, family);
  return {
    length: (nm) => readingText(nm, units),
    bands: ({ entrantId, openingId }) => {
      const [entrant, opening] = [find(entrantId), find(openingId)];
      return entrant && opening && bandsFor(state, family, entrant, opening);
    },
    obstacle: ({ entrantId, openingId, fit }: ClaimPair) => {
      const [entrant, opening] = [find(entrantId), find(openingId)];
      if (!entrant || !opening || !fit || !isMeasured(fit)) return '';
      const worn = conditions.wear > 0 ? doors.shapesUnder(opening.ring, entrant.ring, conditions) : null;
      const { collisions } = worn
        ? doors.explainPlacement(worn.opening, worn.entrant, fit.placement)
        : doors.explainPlacement(opening.ring, entrant.ring, fit.placement);
      return doors.blockedWords(collisions, lengthWriter(units), bandWriter(units));
    },
  };
}

/** "Smew blank enters Heron keyway", by the names that the claim uses. */
export function claimLine({ blank, opening, enters }: Claim): string {
  return `${blank} ${enters ? 'enters' : 'does not enter'} ${opening}`;
}

/** Why a claim stands as it does, and who says the opposite. */
export function claimReason(checked: CheckedClaim, claims: readonly Claim[], words: ClaimWords): string {
  return [claimSentence(checked, words), oppositeSentence(checked, claims)].filter(Boolean).join(' ');
}

/** All of it as a text to be put into a letter: the figures, then what is not confirmed with its reason. */
export function claimsReportText(
  family: Family,
  rows: readonly CheckedClaim[],
  claims: readonly Claim[],
  words: ClaimWords,
): string {
  const lines = rows.map((one) => {
    const by = one.claim.by ? ` (${one.claim.by})` : '';
    const head = `${one.standing}: ${claimLine(one.claim)}${by}`;
    const margin = claimMargin(one, words);
    return one.standing === 'confirmed' ? `${head}, ${margin}` : `${head}. ${claimReason(one, claims, words)}`;
  });
  return [`${family.name}: ${claimsSummary(rows)}`, ...lines, ''].join('\n');
}
