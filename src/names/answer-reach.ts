import { openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { answerDifference } from './answer-names.ts';
import { correctionsOf, profilesIn, unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import { chambersText } from './say-list.ts';
import { goesIn } from './say-pair.ts';
import { namesOf } from './say-where.ts';
import { isSameOutline, type Meaning, withMeanings } from './take-meaning.ts';

/** What one blank or tool goes into. */
interface Reach {
  readonly goer: Profile;
  /** The lengths that the name stands for. */
  readonly lengths: readonly number[];
  readonly keyways: readonly Profile[];
}

/**
 * Two blanks or tools by what they go into: whether one can stand for the other, goes into more keyways, or into the same.
 *
 * @returns null where the words are said of one name: then it is no comparison.
 * @check tests/unit/names/ask.test.ts
 */
export function answerReach(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  const { turned, mentions } = reading;
  if (mentions.length < 2) return null;
  if (mentions.length > 2 || mentions.some(({ kind }) => kind === 'keyway')) return askForTwo(reading, knowledge);
  const ordered = turned.turns.has('replace') ? bySubstitute(turned.outline, mentions) : mentions;
  return withMeanings(question, ordered, 'entrant', knowledge, (meanings) => {
    const [one, two] = meanings.map((meaning) => reachOf(meaning, knowledge));
    if (!one || !two) return askForTwo(reading, knowledge);
    if (isPending(one.goer, knowledge) || isPending(two.goer, knowledge)) return notJudged(one, two);
    if (turned.turns.has('replace') && isSameOutline(one.goer, two.goer))
      return sayLengthOnly(answerDifference(question, mentions, knowledge, false));
    return told(meanings, one, two, sayReach(turned, one, two, openingsOf(knowledge.family).length));
  });
}

/** "replace X by Y", "instead of X use Y", "no X; will Y do": there the second stands for the first. */
function bySubstitute(outline: string, mentions: readonly Mention[]): readonly Mention[] {
  const second =
    /^[^N]*\b(instead of|rather than|in (place|lieu) of) NAME\b|\breplac\w+ (NAME )?(with|by)\b|\bsubstitut\w+ NAME (with|by)\b|\bNAME do$|\binstead$/;
  const goes = /where(ver)?( that)? NAME (go|goes|fits?|enters?|works?)$/;
  return second.test(outline) && !goes.test(outline) ? [...mentions].reverse() : mentions;
}

function reachOf({ profiles, alike }: Meaning, knowledge: Knowledge): Reach | null {
  const [goer] = profiles;
  if (!goer) return null;
  const lengths = [goer, ...alike].flatMap(({ chambers }) => chambers ?? []);
  return { goer, lengths, keyways: openingsOf(knowledge.family).filter((keyway) => goesIn(knowledge, goer, keyway)) };
}

function isPending(goer: Profile, knowledge: Knowledge): boolean {
  return openingsOf(knowledge.family).some((keyway) => goesIn(knowledge, goer, keyway) === undefined);
}

function notJudged(one: Reach, two: Reach): Answer {
  const sentences = [`What ${namesOf([one.goer, two.goer])} go into is not judged yet.`];
  return { kind: 'not judged yet', sentences, profiles: [one.goer.id, two.goer.id], choices: [] };
}

function askForTwo({ mentions }: Reading, knowledge: Knowledge): Answer {
  return notUnderstood(['Ask about two blanks or tools at a time. These can be asked:'], mentions, knowledge);
}

/** Common practice, no source: the section says nothing of the length. */
function sayLengthOnly(answer: Answer): Answer {
  return { ...answer, sentences: [...answer.sentences, 'Whether the length serves is no matter of the section.'] };
}

function told(meanings: readonly Meaning[], one: Reach, two: Reach, said: readonly string[]): Answer {
  const sentences = [...correctionsOf(meanings), ...said, ...unique(meanings.flatMap(({ notes }) => notes))];
  const profiles = unique([...profilesIn(meanings), ...one.keyways, ...two.keyways]).map(({ id }) => id);
  return { kind: 'answer', sentences, profiles, choices: [] };
}

function sayReach({ turns, outline }: Reading['turned'], one: Reach, two: Reach, count: number): string[] {
  if (turns.has('replace')) return sayReplace(one, two);
  if (turns.has('more keyways')) return sayMore(outline, one, two, count);
  return saySame(one, two);
}

function without(keyways: readonly Profile[], others: readonly Profile[]): Profile[] {
  return keyways.filter((keyway) => !others.includes(keyway));
}

/** Whether the first goes wherever the second goes. */
function sayReplace(one: Reach, two: Reach): string[] {
  const [a, b] = [one.goer.name, two.goer.name];
  const [missing, more] = [without(two.keyways, one.keyways), without(one.keyways, two.keyways)];
  const shape = `${a} and ${b} are of different shape.`;
  if (two.keyways.length === 0) return [`${b} goes into no keyway, so nothing need stand for it.`, shape];
  if (missing.length > 0) return [`No: ${a} does not go into ${namesOf(missing)}, where ${b} goes in.`, shape];
  const too = more.length > 0 ? [`It goes into ${namesOf(more)} too.`] : [];
  return [
    `Yes: ${a} goes into every keyway that ${b} goes into, ${namesOf(two.keyways)}.`,
    ...too,
    shape,
    ...sayLength(one, two),
  ];
}

function sayLength({ lengths: mine }: Reach, { lengths: yours }: Reach): string[] {
  if (mine.length === 0 || yours.length === 0 || mine.some((length) => yours.includes(length))) return [];
  return [`They differ in length too: ${chambersText(mine[0])} and ${chambersText(yours[0])}.`];
}

function sayMore(outline: string, one: Reach, two: Reach, count: number): string[] {
  const [mine, yours] = [one.keyways.length, two.keyways.length];
  const compares = /\b(than|as)\b/.test(outline);
  const yesOrNo = isAsMany(outline, mine, yours) ? 'Yes: ' : 'No: ';
  const start = compares ? yesOrNo : '';
  const alike = mine === yours ? ', the same number' : '';
  return [
    `${start}${one.goer.name} goes into ${mine} of ${count} keyways, ${two.goer.name} into ${yours} of ${count}${alike}.`,
    ...[one, two].flatMap(sayKeyways),
  ];
}

function isAsMany(outline: string, mine: number, yours: number): boolean {
  if (/\b(fewer|less) /.test(outline)) return mine < yours;
  return /\bas many /.test(outline) ? mine >= yours : mine > yours;
}

function saySame(one: Reach, two: Reach): string[] {
  const [onlyOne, onlyTwo] = [without(one.keyways, two.keyways), without(two.keyways, one.keyways)];
  const [a, b] = [one.goer.name, two.goer.name];
  if (onlyOne.length + onlyTwo.length === 0)
    return [`Yes: ${a} and ${b} go into the same keyways.`, ...sayKeyways(one)];
  return [`No: ${a} and ${b} do not go into the same keyways.`, ...[one, two].flatMap(sayKeyways)];
}

function sayKeyways({ goer, keyways }: Reach): string[] {
  return [`${goer.name} goes into ${keyways.length > 0 ? namesOf(keyways) : 'no keyway'}.`];
}
