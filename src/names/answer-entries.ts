import { entrantsOf, openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { correctionsOf, profilesIn, sayAlike, unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import type { Reading } from './read-question.ts';
import { chambersText, listed } from './say-list.ts';
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
export function answerWhere(
  entrants: readonly Meaning[],
  { turned }: Pick<Reading, 'turned'>,
  knowledge: Knowledge,
): Answer {
  const openings = openingsOf(knowledge.family);
  const goers = profilesIn(entrants);
  const entered = goers.map((goer) => openings.filter((opening) => goesIn(knowledge, goer, opening)));
  const sentences = [
    ...correctionsOf(entrants),
    ...(goers.length > 1 && isJudged(goers, openings, knowledge)
      ? sayTogether(goers, entered, openings, turned.outline)
      : []),
    ...(turned.turns.has('tightest') ? goers.flatMap((goer, i) => sayByRoom(goer, entered[i], knowledge)) : []),
    ...goers.flatMap((goer) => sayWhere(goer, knowledge)),
    ...entrants.flatMap(sayAlike),
    ...unique(entrants.flatMap(({ notes }) => notes)),
  ];
  const pending = goers.length > 0 && goers.every((goer) => isPending(goer, openings, knowledge));
  const profiles = unique([...goers, ...entered.flat()]).map(({ id }) => id);
  return { kind: pending ? 'not judged yet' : 'answer', sentences, profiles, choices: [] };
}

function isJudged(goers: readonly Profile[], openings: readonly Profile[], knowledge: Knowledge): boolean {
  return goers.every((goer) => openings.every((opening) => goesIn(knowledge, goer, opening) !== undefined));
}

/** What several go into together; where "neither" was asked, what none of them goes into. */
function sayTogether(
  goers: readonly Profile[],
  entered: readonly (readonly Profile[])[],
  openings: readonly Profile[],
  outline: string,
): string[] {
  const both = goers.length === 2 ? 'both' : 'all of them';
  if (/\b(neither|none)\b/.test(outline)) {
    const none = openings.filter((opening) => entered.every((keyways) => !keyways.includes(opening)));
    const who = goers.length === 2 ? 'Neither' : 'None';
    return none.length > 0 ? [`${who} of them goes into ${namesOf(none, 'or')}.`] : ['Each keyway takes one of them.'];
  }
  const shared = openings.filter((opening) => entered.every((keyways) => keyways.includes(opening)));
  if (shared.length === 0) return [`No keyway takes ${both}.`];
  return [`${both === 'both' ? 'Both' : 'All of them'} go into ${namesOf(shared)}.`];
}

/** The keyways that one goes into by the room that it has there. */
function sayByRoom(goer: Profile, entered: readonly Profile[], knowledge: Knowledge): string[] {
  const fits = entered.flatMap((opening) => {
    const fit = knowledge.fitOf(goer.id, opening.id);
    return fit ? [{ opening, fit }] : [];
  });
  if (fits.length < 2) return [];
  fits.sort((a, b) => a.fit.clearance - b.fit.clearance);
  const told = fits.slice(0, MOST_NAMES).map(({ opening, fit }) => `${opening.name} ${roomOf(fit, knowledge)}`);
  return [`${goer.name} by its room, the tightest first: ${listed(told)}.`];
}

function isPending(goer: Profile, openings: readonly Profile[], knowledge: Knowledge): boolean {
  return openings.length > 0 && openings.every((opening) => goesIn(knowledge, goer, opening) === undefined);
}

/** What is asked of some keyways: which kind and length, whether what does not go in, and what turns the question. */
type Asked = Pick<Reading, 'asked' | 'excluded' | 'negated' | 'chambers' | 'turned'>;

/**
 * What goes into a keyway, or into several at once; into some and not into others; or what does not go in.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerWhatGoesIn(openings: readonly Meaning[], asked: Asked, knowledge: Knowledge): Answer {
  const out = openings.filter(({ mention }) => asked.excluded.includes(mention));
  const [keyways, barred] = [profilesIn(openings.filter((one) => !out.includes(one))), profilesIn(out)];
  const pool = poolOf(asked, knowledge).filter((one) => !isOfGroups(asked) || isGroupBlank(one, knowledge));
  const answers = pool.map((entrant) => enteringAs(entrant, keyways, barred, knowledge));
  const [among, open] = [true, undefined].map((answer) => pool.filter((_, i) => answers[i] === answer));
  const [tightest] = keyways.length === 1 && asked.turned.turns.has('tightest') ? keyways : [];
  const entering = tightest ? byRoom(among, tightest, knowledge) : among;
  const pending = keyways.length > 0 && entering.length === 0 && open.length > 0;
  const negated = asked.negated && out.length === 0;
  const shown = negated ? pool.filter((_, i) => answers[i] === false) : entering;
  const sentences = [
    ...correctionsOf(openings),
    ...(asked.turned.turns.has('every blank') && !pending ? sayEvery(entering, pool, keyways, asked) : []),
    ...((keyways.length > 0 || barred.length > 0) && !pending
      ? [negated ? sayNotEntering(shown, keyways) : sayEntering(shown, keyways, barred, asked, knowledge)]
      : []),
    ...(tightest && entering.length > 1 ? ['They are told in order, the tightest first.'] : []),
    ...(negated || out.length > 0 ? [] : sayEach(entering, keyways, pool, knowledge)),
    ...(open.length > 0 ? [`Of these it is not judged yet: ${namesOf(open)}.`] : []),
    ...unique(openings.flatMap(({ notes }) => notes)),
  ];
  const profiles = [...keyways, ...barred, ...shown].map(({ id }) => id);
  return { kind: pending ? 'not judged yet' : 'answer', sentences, profiles, choices: [] };
}

/** Blanks, tools, or both, of any length or one, as asked for. */
export function poolOf({ asked, chambers }: Pick<Asked, 'asked' | 'chambers'>, { family }: Knowledge): Profile[] {
  const entrants = entrantsOf(family).filter((one) => chambers === null || one.chambers === chambers);
  return asked === 'blank' || asked === 'tool' ? entrants.filter(({ kind }) => kind === asked) : entrants;
}

function isOfGroups({ turned }: Asked): boolean {
  return /\bgroup (blank|key)s?\b/.test(turned.outline);
}

/** Whether a blank goes into several keyways but not into all. */
function isGroupBlank(one: Profile, knowledge: Knowledge): boolean {
  const openings = openingsOf(knowledge.family);
  const entered = openings.filter((opening) => goesIn(knowledge, one, opening));
  return one.kind === 'blank' && entered.length > 1 && entered.length < openings.length;
}

/** Blanks and tools that go into a keyway, the one with the least room first. */
function byRoom(entering: readonly Profile[], keyway: Profile, knowledge: Knowledge): Profile[] {
  const room = ({ id }: Profile) => knowledge.fitOf(id, keyway.id)?.clearance ?? 0;
  return [...entering].sort((a, b) => room(a) - room(b));
}

/** Whether something goes into all of some keyways and into none of others; undefined where that is not judged. */
function enteringAs(entrant: Profile, into: readonly Profile[], barred: readonly Profile[], knowledge: Knowledge) {
  const answers = [
    ...into.map((keyway) => goesIn(knowledge, entrant, keyway)),
    ...barred.map((keyway) => {
      const answer = goesIn(knowledge, entrant, keyway);
      return answer === undefined ? undefined : !answer;
    }),
  ];
  if (answers.includes(false)) return false;
  return answers.includes(undefined) ? undefined : true;
}

/** "Do all blanks go into Y?" */
function sayEvery(
  entering: readonly Profile[],
  pool: readonly Profile[],
  keyways: readonly Profile[],
  { asked, excluded, negated }: Asked,
): string[] {
  if (excluded.length > 0 || negated || keyways.length === 0) return [];
  const kinds = asked === 'blank' || asked === 'tool' ? `${asked}s` : 'blanks and tools';
  const out = pool.length - entering.length;
  if (out === 0) return [`Yes: all ${pool.length} ${kinds} go into ${namesOf(keyways)}.`];
  return [`No: ${out} of ${pool.length} ${kinds} ${out === 1 ? 'does' : 'do'} not go into ${namesOf(keyways, 'or')}.`];
}

function sayNotEntering(stopped: readonly Profile[], keyways: readonly Profile[]): string {
  const where = namesOf(keyways, 'or');
  if (stopped.length === 0) return `Everything in the family goes into ${namesOf(keyways)}.`;
  const all = keyways.length > 1 ? 'all of ' : '';
  return `Not into ${all}${all ? namesOf(keyways) : where} ${stopped.length === 1 ? 'goes' : 'go'}: ${namesOf(stopped)}.`;
}

function sayEntering(
  entering: readonly Profile[],
  keyways: readonly Profile[],
  barred: readonly Profile[],
  { asked, chambers, turned }: Asked,
  knowledge: Knowledge,
): string {
  const number = keyways.length > 2 ? 'all of ' : 'both ';
  const but = barred.length > 0 ? `, but not into ${namesOf(barred, 'or')},` : '';
  const where =
    keyways.length === 0
      ? `${barred.length > 1 ? 'neither ' : 'others than '}${namesOf(barred, 'nor')}`
      : `${keyways.length > 1 ? number : ''}${namesOf(keyways)}${but}`;
  const kind = asked === 'tool' || asked === 'blank' ? asked : 'blank or tool';
  const length = chambers === null ? '' : ` in ${chambersText(chambers)}`;
  if (entering.length === 0 && keyways.length === 0)
    return `Every ${kind}${length} goes into one of ${namesOf(barred)}.`;
  if (entering.length === 0) return `No ${kind}${length} goes into ${where.replace(/,$/, '')}.`;
  const texts = entering.map((entrant) =>
    keyways.length === 1 ? withRoom(entrant, keyways[0], knowledge) : entrant.name,
  );
  const shown =
    texts.length > MOST_NAMES ? [...texts.slice(0, MOST_NAMES), `${texts.length - MOST_NAMES} more`] : texts;
  const counted = entering.length > 3 || length !== '' || turned.turns.has('how many');
  const count = counted ? ` ${entering.length} ${countedKind(kind, entering.length)}${length}` : '';
  return `Into ${where} ${entering.length === 1 ? 'goes' : 'go'}${count}: ${listed(shown)}.`;
}

function countedKind(kind: string, count: number): string {
  if (kind === 'blank or tool') return count === 1 ? 'thing' : 'blanks and tools';
  return count === 1 ? kind : `${kind}s`;
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
 * @param asked only blanks or only tools, or those of one length, where that was asked for.
 * @check tests/unit/names/ask.test.ts
 */
export function answerGoesIntoAll(asked: Pick<Asked, 'asked' | 'chambers'>, knowledge: Knowledge): Answer {
  const openings = openingsOf(knowledge.family);
  const pool = poolOf(asked, knowledge);
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
