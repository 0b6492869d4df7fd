import { entrantsOf, openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import type { Sense } from './register.ts';
import { canBe, profilesOf, sameSection } from './resolve.ts';
import { chambersText, listed } from './say-list.ts';
import { goesIn, sayPair } from './say-pair.ts';
import { otherNames, saySense } from './say-sense.ts';
import { askBack, isSameOutline } from './take-meaning.ts';

/**
 * What some names are: each of their senses, what they are also called, and what goes where.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerWhatIs(question: string, mentions: readonly Mention[], knowledge: Knowledge): Answer {
  const { family, register } = knowledge;
  const stuck = mentions.find(({ resolution }) => resolution.kind !== 'found');
  if (stuck) return askBack(question, stuck, register);
  const senses = mentions.flatMap(sensesIn);
  const sentences = senses.flatMap((sense) => [
    ...saySense(sense, family, misread(sense)),
    ...(sense.note ? [endWithStop(sense.note)] : []),
    ...otherNames(sense, family),
  ]);
  const reach = senses.length === 1 ? sayReach(senses[0], knowledge) : [];
  const profiles = unique(senses.flatMap((sense) => profilesOf(family, sense))).map(({ id }) => id);
  const many = mentions.length === 1 && senses.length > 1 ? [`${mentions[0].text} names ${senses.length} things.`] : [];
  return { kind: 'answer', sentences: unique([...many, ...sentences, ...reach]), profiles, choices: [] };
}

/** The senses of a name that say different things; a section before the profiles that share its name. */
function sensesIn({ resolution }: Mention): Sense[] {
  const senses = resolution.kind === 'found' ? resolution.senses : [];
  return senses.filter(
    (sense, i) =>
      senses.findIndex(
        (o) =>
          o.kind === sense.kind &&
          o.section === sense.section &&
          o.profile === sense.profile &&
          o.scheme === sense.scheme,
      ) === i,
  );
}

/** A blank number is what is most often taken for a keyway. */
function misread({ kind, source }: Sense): 'keyway' | undefined {
  return kind === 'blank' && source === 'register' ? 'keyway' : undefined;
}

function endWithStop(text: string): string {
  return /[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;
}

/** What a name's things go into, or what goes into them, counted. */
function sayReach(sense: Sense, knowledge: Knowledge): string[] {
  const { family } = knowledge;
  const goers = profilesOf(family, sense, 'entrant');
  const alone = sense.kind === 'section' && sameSection(family, sense, 'opening').length === 0;
  if (goers.length > 0 && (sense.kind !== 'section' || alone)) return [sayGoer(goers, knowledge)];
  if (sense.kind !== 'keyway') return [];
  return profilesOf(family, sense, 'opening').map((opening) => {
    const entering = entrantsOf(family).filter((entrant) => goesIn(knowledge, entrant, opening));
    if (entering.length === 0) return `Nothing is known to go into it.`;
    return `Into it ${entering.length === 1 ? 'goes' : 'go'}: ${listed(entering.map(({ name }) => name))}.`;
  });
}

function sayGoer([goer, ...others]: readonly Profile[], knowledge: Knowledge): string {
  const openings = openingsOf(knowledge.family);
  const entered = openings.filter((opening) => goesIn(knowledge, goer, opening));
  const go = others.length > 0 ? 'They go' : 'It goes';
  if (openings.some((opening) => goesIn(knowledge, goer, opening) === undefined))
    return 'What it goes into is not judged yet.';
  if (entered.length === 0) return `${go} into none of the ${openings.length} keyways.`;
  return `${go} into ${entered.length} of ${openings.length} keyways: ${listed(entered.map(({ name }) => name))}.`;
}

/**
 * Whether the blanks or tools of one name differ; of a name for one thing, what it is.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerAlike(question: string, mentions: readonly Mention[], knowledge: Knowledge): Answer {
  const [sense] = mentions.flatMap(sensesIn);
  const goers = sense ? goersOf(sense, knowledge) : [];
  if (goers.length < 2) return answerWhatIs(question, mentions, knowledge);
  const [first, ...others] = goers;
  const names = listed(goers.map(({ name }) => name));
  const alike = others.every((other) => isSameOutline(first, other));
  const lengths = unique(goers.map(({ chambers }) => (chambers === undefined ? '' : chambersText(chambers))));
  const said = alike
    ? `${names} have one and the same section${lengths.length > 1 ? '; they differ in length only' : ''}. They go into the same keyways.`
    : `${names} are not all of one shape.`;
  const where = alike
    ? [sayGoer(goers, knowledge)]
    : goers.map((goer) => `${goer.name}: ${sayGoer([goer], knowledge)}`);
  return { kind: 'answer', sentences: [said, ...where], profiles: goers.map(({ id }) => id), choices: [] };
}

/**
 * What differs between two names: what kinds of things they are, their sections, lengths, and where they go.
 *
 * @param same whether it was asked if they are the same.
 * @check tests/unit/names/ask.test.ts
 */
export function answerDifference(
  question: string,
  mentions: readonly Mention[],
  knowledge: Knowledge,
  same: boolean,
): Answer {
  const { family, register } = knowledge;
  const [a, b] = mentions;
  const stuck = [a, b].find(({ resolution }) => resolution.kind !== 'found');
  if (stuck) return askBack(question, stuck, register);
  const [one, two] = alikeKinds(sensesIn(a), sensesIn(b));
  const profiles = unique([...profilesOf(family, one), ...profilesOf(family, two)]).map(({ id }) => id);
  const start = same ? { yes: 'Yes: ', no: 'No: ' } : { yes: '', no: '' };
  const sentences = unique([
    ...compare(one, two, knowledge, start),
    ...[one, two].flatMap((sense) => (sense.source === 'profile' ? [] : saySense(sense, family, misread(sense)))),
  ]);
  return { kind: 'answer', sentences, profiles, choices: [] };
}

/** One sense of each name, of one kind where there are such. */
function alikeKinds(first: readonly Sense[], second: readonly Sense[]): [Sense, Sense] {
  for (const one of first) {
    const two = second.find(({ kind }) => kind === one.kind);
    if (two) return [one, two];
  }
  return [first[0], second[0]];
}

interface Start {
  readonly yes: string;
  readonly no: string;
}

function compare(one: Sense, two: Sense, knowledge: Knowledge, start: Start): string[] {
  const { family } = knowledge;
  const [mine, yours] = [profilesOf(family, one), profilesOf(family, two)];
  const [a, b] = [one.text, two.text];
  if (mine.length > 0 && mine.length === yours.length && mine.every((profile) => yours.includes(profile)))
    return [`${start.yes}${a} and ${b} are two names of one thing, ${listed(mine.map(({ name }) => name))}.`];
  if (isOpening(one) !== isOpening(two)) return compareKinds(one, two, knowledge, start);
  if (isOpening(one) && isOpening(two)) return compareKeyways(one, two, knowledge, start);
  const [goer, other] = [goersOf(one, knowledge)[0], goersOf(two, knowledge)[0]];
  if (!goer || !other) return [`${start.no}${a} and ${b} are different names.`];
  if (isSameOutline(goer, other))
    return [`${start.no}${a} and ${b} have one and the same section${sayLengths(goer, other)}.`];
  return [`${start.no}${a} and ${b} are of different shape.`, ...compareReach(goer, other, one, two, knowledge)];
}

function isOpening({ kind }: Sense): boolean {
  return kind === 'keyway';
}

function goersOf(sense: Sense, { family }: Knowledge): Profile[] {
  return canBe(sense, 'entrant') ? profilesOf(family, sense, 'entrant') : sameSection(family, sense, 'entrant');
}

function sayLengths(a: Profile, b: Profile): string {
  if (a.chambers === undefined || b.chambers === undefined || a.chambers === b.chambers) return '';
  return `; they differ in length only: ${a.name} is for ${chambersText(a.chambers)}, ${b.name} for ${chambersText(b.chambers)}. They go into the same keyways`;
}

/** A blank and a keyway: two kinds of things, and whether the one goes into the other. */
function compareKinds(one: Sense, two: Sense, knowledge: Knowledge, start: Start): string[] {
  const [entrant, opening] = isOpening(one) ? [two, one] : [one, two];
  const said = `${start.no}${opening.text} is a keyway, ${entrant.text} is ${entrant.kind === 'section' ? 'a section' : 'something that goes into keyways'}.`;
  const [goer] = goersOf(entrant, knowledge);
  const [keyway] = profilesOf(knowledge.family, opening, 'opening');
  return goer && keyway ? [said, sayPair(goer, keyway, knowledge, false)] : [said];
}

/** Two keyways by what goes into each and into both. */
function compareKeyways(one: Sense, two: Sense, knowledge: Knowledge, start: Start): string[] {
  const { family } = knowledge;
  const [a, b] = [profilesOf(family, one, 'opening')[0], profilesOf(family, two, 'opening')[0]];
  if (!a || !b) return [`${start.no}${one.text} and ${two.text} are different names.`];
  if (isSameOutline(a, b)) return [`${start.no}${a.name} and ${b.name} are two keyways of one and the same shape.`];
  const blanks = entrantsOf(family).filter(({ kind }) => kind === 'blank');
  const into = (opening: Profile) => blanks.filter((blank) => goesIn(knowledge, blank, opening));
  const [first, second] = [into(a), into(b)];
  return [`${start.no}${a.name} and ${b.name} are different keyways.`, ...saySets(first, second, a.name, b.name)];
}

function saySets(first: readonly Profile[], second: readonly Profile[], a: string, b: string): string[] {
  const names = (profiles: readonly Profile[]) =>
    profiles.length > 0 ? listed(profiles.map(({ name }) => name)) : 'nothing';
  return [
    `Only into ${a}: ${names(first.filter((one) => !second.includes(one)))}.`,
    `Only into ${b}: ${names(second.filter((one) => !first.includes(one)))}.`,
    `Into both: ${names(first.filter((one) => second.includes(one)))}.`,
  ];
}

/** Two blanks or tools by the keyways that each goes into. */
function compareReach(goer: Profile, other: Profile, one: Sense, two: Sense, knowledge: Knowledge): string[] {
  const openings = openingsOf(knowledge.family);
  const reach = (blank: Profile) => openings.filter((opening) => goesIn(knowledge, blank, opening));
  const [mine, yours] = [reach(goer), reach(other)];
  const names = (profiles: readonly Profile[]) =>
    profiles.length > 0 ? listed(profiles.map(({ name }) => name)) : 'no keyway';
  const crossed = [crossing(goer, two, knowledge), crossing(other, one, knowledge)].flat();
  return [`${goer.name} goes into ${names(mine)}.`, `${other.name} goes into ${names(yours)}.`, ...crossed];
}

/** Why a blank does not go into the keyway of the other's section. */
function crossing(goer: Profile, other: Sense, knowledge: Knowledge): string[] {
  const [keyway] = sameSection(knowledge.family, other, 'opening');
  return keyway ? [sayPair(goer, keyway, knowledge, false)] : [];
}
