import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Conditions } from '../../../fit/conditions.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Doors } from '../doors.ts';
import type { Units } from '../length-text.ts';
import { pairSentence } from '../pair-sentence.ts';
import { columnNames } from './matrix-order.ts';
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

/** Most keyways of which is told what blocks; the others are counted. */
const MOST_TOLD = 12;

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
  const openings = openingsOf(from.family);
  const names = columnNames(openings);
  const judged = openings.map((opening) => ({ opening, fit: fitOf(from.fits, entrant.id, opening.id) }));
  const inside = judged.filter(({ fit }) => fit && fit.verdict !== 'blocked');
  const blocked = judged.filter(({ fit }) => fit?.verdict === 'blocked');
  const waiting = judged.length - inside.length - blocked.length;
  const name = (opening: Profile) => names.get(opening.id) ?? opening.name;
  const list = inside.length > 0 ? `: ${listed(inside.map(({ opening }) => name(opening)))}` : '';
  const head = `${entrant.name} enters ${inside.length} of ${openings.length} ${openings.length === 1 ? 'keyway' : 'keyways'}${list}.`;
  const open = waiting > 0 ? `${waiting} are not judged yet.` : '';
  if (!doors || blocked.length === 0) return { head, rest: open };
  const groups = new Map<string, string[]>();
  for (const { opening, fit } of blocked.slice(0, MOST_TOLD)) {
    const part = blockingPart(doors, entrant, opening, fit, from.conditions);
    groups.set(part, [...(groups.get(part) ?? []), name(opening)]);
  }
  const parts = [...groups].map(([part, where]) => `in ${listed(where)}${part && ` by the ${part}`}`);
  const more = blocked.length > MOST_TOLD ? [`in ${blocked.length - MOST_TOLD} more`] : [];
  return { head, rest: `It is blocked ${[...parts, ...more].join('; ')}. ${open}`.trim() };
}

function openingWords(opening: Profile, from: ToldFrom): ToldWords {
  const entrants = entrantsOf(from.family);
  const inside = entrants.filter(({ id }) => {
    const fit = fitOf(from.fits, id, opening.id);
    return fit && fit.verdict !== 'blocked';
  });
  const list = inside.length > 0 ? `: ${listed(inside.map(({ name }) => name))}` : '';
  return { head: `${opening.name} is entered by ${inside.length} of ${entrants.length}${list}.`, rest: '' };
}

/** "Heron, Smew and Bittern"; a long list is cut and counted. */
function listed(names: readonly string[]): string {
  if (names.length > MOST_TOLD)
    return `${names.slice(0, MOST_TOLD - 2).join(', ')} and ${names.length - MOST_TOLD + 2} more`;
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
