import { entrantsOf, openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { correctionsOf, profilesIn, unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import { goesIn } from './say-pair.ts';
import { namesOf } from './say-where.ts';
import { type Meaning, withMeanings } from './take-meaning.ts';

/**
 * The order of blanks: one stands above another where it goes into every keyway that the other goes into, and into more.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerRank(question: string, reading: Reading, knowledge: Knowledge): Answer {
  const { mentions, turned } = reading;
  const above = turned.turns.has('above');
  if (mentions.length === 0 || mentions.length > 2 || mentions.some(({ kind }) => kind === 'keyway'))
    return notUnderstood(['Ask which blank stands above or below one blank. These can be asked:'], mentions, knowledge);
  return withMeanings(question, mentions, 'entrant', knowledge, (meanings) => {
    const [one, two] = meanings.map(({ profiles }) => profiles[0]);
    if (!one || (mentions.length === 2 && !two))
      return notUnderstood(['One of them has no blank. These can be asked:'], mentions, knowledge);
    if (isPending(knowledge)) return notJudged(meanings);
    return two ? sayRank(meanings, above ? [one, two] : [two, one], knowledge) : list(meanings, one, above, knowledge);
  });
}

function isPending(knowledge: Knowledge): boolean {
  const { family } = knowledge;
  return blanksOf(knowledge).some((one) => openingsOf(family).some((k) => goesIn(knowledge, one, k) === undefined));
}

function blanksOf({ family }: Knowledge): Profile[] {
  return entrantsOf(family).filter(({ kind }) => kind === 'blank');
}

function notJudged(meanings: readonly Meaning[]): Answer {
  const profiles = profilesIn(meanings).map(({ id }) => id);
  return { kind: 'not judged yet', sentences: ['The order of the blanks is not judged yet.'], profiles, choices: [] };
}

function reachOf(goer: Profile, knowledge: Knowledge): Profile[] {
  return openingsOf(knowledge.family).filter((keyway) => goesIn(knowledge, goer, keyway));
}

function isAbove(upper: Profile, lower: Profile, knowledge: Knowledge): boolean {
  const [many, few] = [reachOf(upper, knowledge), reachOf(lower, knowledge)];
  return many.length > few.length && few.every((keyway) => many.includes(keyway));
}

function told(meanings: readonly Meaning[], said: readonly string[], profiles: readonly Profile[]): Answer {
  const sentences = [...correctionsOf(meanings), ...said, ...unique(meanings.flatMap(({ notes }) => notes))];
  return { kind: 'answer', sentences, profiles: unique(profiles).map(({ id }) => id), choices: [] };
}

/** Whether the first of two stands above the second. */
function sayRank(
  meanings: readonly Meaning[],
  [upper, lower]: readonly [Profile, Profile],
  knowledge: Knowledge,
): Answer {
  const [many, few] = [reachOf(upper, knowledge), reachOf(lower, knowledge)];
  const missing = few.filter((keyway) => !many.includes(keyway));
  const [a, b] = [upper.name, lower.name];
  const same = `No: ${a} and ${b} go into the same keyways.`;
  const said = missing.length > 0 ? `No: ${a} does not go into ${namesOf(missing, 'or')}, where ${b} goes in.` : same;
  const yes = `Yes: ${a} goes into every keyway that ${b} goes into, and into more.`;
  return told(meanings, [isAbove(upper, lower, knowledge) ? yes : said], [upper, lower, ...many, ...few]);
}

/** What stands above one, or below it. */
function list(meanings: readonly Meaning[], one: Profile, above: boolean, knowledge: Knowledge): Answer {
  const found = blanksOf(knowledge).filter((other) =>
    above ? isAbove(other, one, knowledge) : isAbove(one, other, knowledge) && reachOf(other, knowledge).length > 0,
  );
  const where = `${above ? 'Above' : 'Below'} ${one.name}`;
  const stands = found.length === 1 ? 'stands' : 'stand';
  const why = above
    ? 'Each goes into every keyway that it goes into, and into more.'
    : 'It goes into every keyway that each of them goes into, and into more.';
  const said = found.length > 0 ? [`${where} ${stands} ${namesOf(found)}.`, why] : [`${where} stands nothing.`];
  return told(meanings, said, [one, ...found]);
}
