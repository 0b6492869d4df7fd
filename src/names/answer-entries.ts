import { entrantsOf, openingsOf } from '../family/family.ts';
import type { NameKind } from '../family/name-entry.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { correctionsOf, profilesIn, sayAlike, unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import { listed } from './say-list.ts';
import { goesIn, roomOf } from './say-pair.ts';
import { namesOf, sayWhere } from './say-where.ts';
import type { Meaning } from './take-meaning.ts';

/** Most names in one sentence. */
const MOST_NAMES = 40;

/**
 * What some blanks or tools go into, and what stops them elsewhere.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerWhere(entrants: readonly Meaning[], knowledge: Knowledge): Answer {
  const openings = openingsOf(knowledge.family);
  const goers = profilesIn(entrants);
  const entered = goers.map((goer) => openings.filter((opening) => goesIn(knowledge, goer, opening)));
  const sentences = [
    ...correctionsOf(entrants),
    ...goers.flatMap((goer) => sayWhere(goer, knowledge)),
    ...entrants.flatMap(sayAlike),
    ...unique(entrants.flatMap(({ notes }) => notes)),
  ];
  const pending = goers.length > 0 && goers.every((goer) => isPending(goer, openings, knowledge));
  const profiles = unique([...goers, ...entered.flat()]).map(({ id }) => id);
  return { kind: pending ? 'not judged yet' : 'answer', sentences, profiles, choices: [] };
}

function isPending(goer: Profile, openings: readonly Profile[], knowledge: Knowledge): boolean {
  return openings.length > 0 && openings.every((opening) => goesIn(knowledge, goer, opening) === undefined);
}

/**
 * What goes into a keyway, or into several at once.
 *
 * @param asked only blanks or only tools, where that was asked for.
 * @check tests/unit/names/ask.test.ts
 */
export function answerWhatGoesIn(openings: readonly Meaning[], asked: NameKind | null, knowledge: Knowledge): Answer {
  const keyways = profilesIn(openings);
  const pool = entrantsOf(knowledge.family).filter(
    ({ kind }) => (asked !== 'blank' && asked !== 'tool') || kind === asked,
  );
  const entering = pool.filter((entrant) => keyways.every((keyway) => goesIn(knowledge, entrant, keyway)));
  const open = pool.filter(
    (entrant) => !keyways.some((keyway) => goesIn(knowledge, entrant, keyway) === false) && !entering.includes(entrant),
  );
  const sentences = [
    ...correctionsOf(openings),
    ...(keyways.length > 0 && !(entering.length === 0 && open.length > 0)
      ? [sayEntering(entering, keyways, asked, knowledge)]
      : []),
    ...sayEach(entering, keyways, pool, knowledge),
    ...(open.length > 0 ? [`Of these it is not judged yet: ${namesOf(open)}.`] : []),
    ...unique(openings.flatMap(({ notes }) => notes)),
  ];
  const pending = keyways.length > 0 && entering.length === 0 && open.length > 0;
  const profiles = [...keyways, ...entering].map(({ id }) => id);
  return { kind: pending ? 'not judged yet' : 'answer', sentences, profiles, choices: [] };
}

function sayEntering(
  entering: readonly Profile[],
  keyways: readonly Profile[],
  asked: NameKind | null,
  knowledge: Knowledge,
) {
  const where = `${keyways.length > 1 ? `${keyways.length > 2 ? 'all of' : 'both'} ` : ''}${namesOf(keyways)}`;
  const kinds = asked === 'tool' ? 'tool' : 'blank';
  if (entering.length === 0)
    return `No ${asked === 'blank' || asked === 'tool' ? kinds : 'blank or tool'} goes into ${where}.`;
  const texts = entering.map((entrant) =>
    keyways.length === 1 ? withRoom(entrant, keyways[0], knowledge) : entrant.name,
  );
  const shown =
    texts.length > MOST_NAMES ? [...texts.slice(0, MOST_NAMES), `${texts.length - MOST_NAMES} more`] : texts;
  return `Into ${where} ${entering.length === 1 ? 'goes' : 'go'}: ${listed(shown)}.`;
}

function withRoom(entrant: Profile, keyway: Profile, knowledge: Knowledge): string {
  const fit = knowledge.fitOf(entrant.id, keyway.id);
  return fit ? `${entrant.name} ${roomOf(fit, knowledge)}` : entrant.name;
}

/** Of several keyways: that the blanks of each alone do not go into the others. */
function sayEach(
  entering: readonly Profile[],
  keyways: readonly Profile[],
  pool: readonly Profile[],
  knowledge: Knowledge,
) {
  if (keyways.length < 2) return [];
  return keyways.flatMap((keyway) => {
    const own = pool.filter(
      (e) => e.section === keyway.section && keyway.section !== undefined && !entering.includes(e),
    );
    const stopped = own.filter((e) => keyways.some((other) => goesIn(knowledge, e, other) === false));
    return stopped.length > 0
      ? [`${namesOf(stopped)} ${stopped.length > 1 ? 'go' : 'goes'} only into part of these.`]
      : [];
  });
}

/**
 * What goes into every keyway of the family, else what goes into most.
 *
 * @param asked only blanks or only tools, where that was asked for.
 * @check tests/unit/names/ask.test.ts
 */
export function answerGoesIntoAll(asked: NameKind | null, knowledge: Knowledge): Answer {
  const openings = openingsOf(knowledge.family);
  const pool = entrantsOf(knowledge.family).filter(
    ({ kind }) => (asked !== 'blank' && asked !== 'tool') || kind === asked,
  );
  const counts = pool.map((entrant) => openings.filter((opening) => goesIn(knowledge, entrant, opening)).length);
  const open = pool.filter((entrant, i) => counts[i] < openings.length && mayEnterAll(entrant, openings, knowledge));
  const all = pool.filter((_, i) => counts[i] === openings.length);
  const pending = all.length === 0 && open.length > 0;
  const sentences = pending
    ? ['What goes into every keyway is not judged yet.']
    : [sayAll(all, pool, counts, openings), ...all.slice(0, 3).map((one) => sayTightest(one, openings, knowledge))];
  return { kind: pending ? 'not judged yet' : 'answer', sentences, profiles: all.map(({ id }) => id), choices: [] };
}

function mayEnterAll(entrant: Profile, openings: readonly Profile[], knowledge: Knowledge): boolean {
  return openings.every((opening) => goesIn(knowledge, entrant, opening) !== false);
}

function sayAll(
  all: readonly Profile[],
  pool: readonly Profile[],
  counts: readonly number[],
  openings: readonly Profile[],
) {
  if (openings.length === 0) return 'The family has no keyways.';
  const every = openings.length === 1 ? 'the one keyway' : `all ${openings.length} keyways`;
  if (all.length > 0) return `${namesOf(all)} ${all.length > 1 ? 'go' : 'goes'} into ${every}.`;
  const most = Math.max(0, ...counts);
  const best = pool.filter((_, i) => counts[i] === most);
  if (most === 0) return `Nothing goes into ${every}.`;
  const reach = `into ${most} of ${openings.length}`;
  return `Nothing goes into ${every}; ${namesOf(best)} ${best.length > 1 ? 'go' : 'goes'} into the most, ${reach}.`;
}

/** Where the smallest gap is of a blank that goes into all. */
function sayTightest(entrant: Profile, openings: readonly Profile[], knowledge: Knowledge): string {
  const rooms = openings.map(
    (opening) => knowledge.fitOf(entrant.id, opening.id)?.clearance ?? Number.POSITIVE_INFINITY,
  );
  const least = Math.min(...rooms);
  const where = openings[rooms.indexOf(least)];
  return `${entrant.name} has the least room in ${where.name}: ${knowledge.length(least)} all round.`;
}
