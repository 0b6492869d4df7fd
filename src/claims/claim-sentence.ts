import type { Claim } from '../family/claim.ts';
import type { Bands } from '../fit/judge-tolerance.ts';
import type { CheckedClaim, ClaimPair } from './check-claims.ts';
import type { NamedSide } from './resolve-claims.ts';

/** What a sentence about a claim needs besides the claim. */
export interface ClaimWords {
  /** Writes a length, unit included; gets nanometres. */
  length(nm: number): string;
  /** The tolerance bands of a pair; undefined where nothing is to be said of them. */
  bands(pair: ClaimPair): Bands | undefined;
  /** What is in the way of a blocked pair: "blocked by the left ward at 3.1-4.0 mm, 0.42 mm too deep"; empty where it is not known. */
  obstacle(pair: ClaimPair): string;
}

/**
 * Why a claim stands as it does, in one or two sentences that name what decides and by how much.
 *
 * @check tests/unit/claims/claim-sentence.test.ts
 */
export function claimSentence(checked: CheckedClaim, words: ClaimWords): string {
  const { standing, pair, claim, blank, opening } = checked;
  if (standing === 'name not found') return [blank, opening].map(nameSentence).filter(Boolean).join(' ');
  if (standing === 'name ambiguous') return [blank, opening].map(ambiguousSentence).filter(Boolean).join(' ');
  if (!pair?.fit || standing === 'not judged yet') return 'Not judged yet.';
  if (standing === 'too close to call') return closeSentence(pair, words);
  const goesIn = goesInWords(pair, words);
  if (standing === 'confirmed') return claim.enters ? `Goes in${goesIn}.` : `${capital(blockedWords(pair, words))}.`;
  if (claim.enters)
    return `It does not go in: ${blockedWords(pair, words)}. No parts within their tolerance go together.`;
  return `It does go in${goesIn}, whatever the parts within their tolerance.`;
}

/** Who says the opposite of a claim: "The wall chart and 2 others say the opposite."; empty where nobody does. */
export function oppositeSentence({ against }: Pick<CheckedClaim, 'against'>, claims: readonly Claim[]): string {
  if (against.length === 0) return '';
  const sources = [...new Set(against.map((i) => sourceOf(claims[i])))];
  const more = sources.length - 2;
  const who = more > 0 ? [...sources.slice(0, 2), `${more} more`] : sources;
  return `${capital(listWords(who, 'and'))} ${sources.length === 1 ? 'says' : 'say'} the opposite.`;
}

/** Who says so, in words also where nobody is named. */
export function sourceOf(claim: Claim | undefined): string {
  return claim?.by?.trim() || 'somebody unnamed';
}

/** The margin of a claim's pair: the gap all round, or how much too deep; empty where it is not known. */
export function claimMargin({ pair }: Pick<CheckedClaim, 'pair'>, { length }: Pick<ClaimWords, 'length'>): string {
  const fit = pair?.fit;
  if (!fit || !Number.isFinite(fit.clearance)) return '';
  if (fit.verdict === 'blocked') return `${length(fit.clearance)} too deep`;
  return fit.clearance === 0 ? 'touching' : `+${length(fit.clearance)}`;
}

function goesInWords({ fit }: ClaimPair, { length }: ClaimWords): string {
  if (!fit) return '';
  return fit.clearance === 0 ? ', touching on both sides' : ` with ${length(fit.clearance)} all round`;
}

function blockedWords(pair: ClaimPair, words: ClaimWords): string {
  const known = words.obstacle(pair);
  if (known) return known;
  const margin = claimMargin({ pair }, words);
  return margin ? `blocked, ${margin}` : 'blocked';
}

function closeSentence(pair: ClaimPair, words: ClaimWords): string {
  const { fit, parts } = pair;
  const blocked = fit?.verdict === 'blocked';
  const nominal = blocked
    ? `As drawn it is ${blockedWords(pair, words)}`
    : `As drawn it goes in${goesInWords(pair, words)}`;
  const bands = words.bands(pair);
  if (parts !== 'depends')
    return `${nominal}, but the parts of that name have different tolerances: it depends on which.`;
  const sum = bands ? ` of ${words.length(bands.blank + bands.opening)} together` : '';
  return `${nominal}; within the tolerances${sum} some parts go in and some do not.`;
}

function nameSentence({ side, text, standing, candidates }: NamedSide): string {
  if (standing !== 'not found' && standing !== 'other kind') return '';
  const what = side === 'blank' ? 'blank or tool' : 'keyway';
  const fault = standing === 'other kind' ? `“${text}” names no ${what}.` : `No ${what} is called “${text}”.`;
  return candidates.length > 0 ? `${fault} Perhaps ${listWords(candidates, 'or')}.` : fault;
}

function ambiguousSentence({ text, standing, candidates }: NamedSide): string {
  if (standing !== 'ambiguous') return '';
  return `“${text}” stands for different outlines: ${listWords(candidates, 'and')}.`;
}

/** "Heron, Smew or Rail". */
function listWords(names: readonly string[], joining: 'and' | 'or'): string {
  const shown = names.slice(0, 5);
  if (names.length > shown.length) return `${shown.join(', ')} ${joining} others`;
  return shown.length === 1 ? shown[0] : `${shown.slice(0, -1).join(', ')} ${joining} ${shown[shown.length - 1]}`;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
