import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import type { Fit } from '../fit/fit.ts';
import type { Profile } from '../profile/profile.ts';

/** What is known of a family when it is taught. Verdicts are asked for, never kept. */
export interface TeachingKnowledge {
  readonly family: Family;
  /** The fit of a pair by ids; undefined where it is not judged. */
  fitOf(entrantId: string, openingId: string): Fit | undefined;
  /** A pair in one sentence with its reason; empty where it is not judged. */
  sentence(entrantId: string, openingId: string): string;
}

/** The keyways that a blank or tool was tried in, in chart order: those it goes into, those it does not. */
export interface Tried {
  /** Tight ones too. */
  readonly inside: readonly Profile[];
  readonly blocked: readonly Profile[];
  readonly unknown: readonly Profile[];
}

/**
 * What is known of one blank or tool in some keyways.
 *
 * @param openings all keyways of the family where not given.
 */
export function tryIn(
  { family, fitOf }: TeachingKnowledge,
  entrantId: string,
  openings: readonly Profile[] = openingsOf(family),
): Tried {
  const inside: Profile[] = [];
  const blocked: Profile[] = [];
  const unknown: Profile[] = [];
  for (const opening of openings) {
    const fit = fitOf(entrantId, opening.id);
    if (!fit) unknown.push(opening);
    else (fit.verdict === 'blocked' ? blocked : inside).push(opening);
  }
  return { inside, blocked, unknown };
}

/** The blanks of a family without its tools; all that goes in where it has tools only. */
export function blanksOf(family: Family): Profile[] {
  const entrants = entrantsOf(family);
  const blanks = entrants.filter(({ kind }) => kind === 'blank');
  return blanks.length > 0 ? blanks : entrants;
}

/** What a keyway is called in a list: its section, else its name. */
export function shortNameOf({ section, name }: Profile): string {
  return section ?? name;
}

/** "Heron, Smew and Bittern". */
export function listWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
