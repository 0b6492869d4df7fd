import { type EntryTable, entryTable } from '../../../family/entry-table.ts';
import { entrantsOf, type Family } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Units } from '../../../family/length-text.ts';
import { nameList } from '../../../family/name-list.ts';
import { tierNames, tierSentence } from '../../../family/tier-sentence.ts';
import type { Conditions } from '../../../fit/conditions.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Doors } from '../doors.ts';
import { pairSentence } from '../pair-sentence.ts';
import type { Pointed } from './tiers-state.ts';
import { blockingPart, fitOf } from './told-blocks.ts';

/** What a sentence is told from. */
export interface ToldFrom {
  readonly family: Family;
  readonly fits: KnownFits | null;
  readonly conditions: Conditions;
  readonly units: Units;
  readonly halted: boolean;
}

/** One line in large type and what is to be added. */
export interface ToldWords {
  readonly head: string;
  readonly rest: string;
}

type TellingDoors = Pick<Doors, 'explainPlacement' | 'fitSentence' | 'shapesUnder' | 'partName'>;

/** Most keyways of which it is looked up what blocks; the sentence counts the others. */
const MOST_LOOKED = 16;

/** What is known of a pair, a blank or a keyway, in sentences; what blocks is looked up for that one only. */
export function toldWords(doors: TellingDoors, { entrantId, openingId }: Pointed, from: ToldFrom): ToldWords {
  const byId = (id: string | null) => from.family.profiles.find((profile) => profile.id === id);
  const entrant = byId(entrantId);
  const opening = byId(openingId);
  if (entrant && opening) return pairWords(doors, entrant, opening, from);
  if (entrant) return entrantWords(doors, entrant, from);
  return opening ? openingWords(opening, from) : { head: '', rest: '' };
}

function pairWords(doors: TellingDoors, entrant: Profile, opening: Profile, from: ToldFrom): ToldWords {
  const fit = fitOf(from.fits, entrant.id, opening.id);
  const { head } = entrantWords(null, entrant, from);
  if (!fit) return { head: `${entrant.name} in ${opening.name}: not judged yet.`, rest: head };
  return { head: pairSentence(doors, { entrant, opening, fit, ...from }, from.units, from.halted), rest: head };
}

function entrantWords(doors: TellingDoors | null, entrant: Profile, from: ToldFrom): ToldWords {
  if (!from.fits) return { head: entrant.name, rest: '' };
  let looked = 0;
  const blockedBy = (entrantId: string, openingId: string): string => {
    const opening = from.family.profiles.find(({ id }) => id === openingId);
    if (!doors || !opening || looked >= MOST_LOOKED) return '';
    looked++;
    return blockingPart(doors, entrant, opening, fitOf(from.fits, entrantId, openingId), from.conditions);
  };
  const words = { nameOf: tierNames(from.family), blockedBy };
  const sentence = tierSentence(rowTable(from.fits, entrant.id), entrant.id, words);
  const cut = sentence.indexOf(BLOCKED);
  if (cut < 0) return { head: sentence, rest: '' };
  return { head: `${sentence.slice(0, cut)}.`, rest: doors ? `I${sentence.slice(cut + 3)}` : '' };
}

/** Where the sentence is cut into a line in large type and what is added to it. */
const BLOCKED = '; it is blocked';

/** The table of one row: the sentence asks for no other. */
function rowTable(fits: KnownFits, entrantId: string): EntryTable {
  const at = fits.profiles.indexOf(entrantId);
  return entryTable({ ...fits, profiles: fits.profiles.slice(at, at + 1), fits: fits.fits.slice(at, at + 1) });
}

function openingWords(opening: Profile, from: ToldFrom): ToldWords {
  const entrants = entrantsOf(from.family);
  const inside = entrants.filter(({ id }) => {
    const fit = fitOf(from.fits, id, opening.id);
    return fit && fit.verdict !== 'blocked';
  });
  const list = inside.length > 0 ? `: ${nameList(inside.map(({ name }) => name))}` : '';
  return { head: `The ${opening.name} is entered by ${inside.length} of ${entrants.length}${list}.`, rest: '' };
}
