import { entrantsOf, openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { answerGoesIntoAll } from './answer-entries.ts';
import { correctionsOf, profilesIn, unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import { goesIn } from './say-pair.ts';
import { namesOf } from './say-where.ts';
import { type Meaning, withMeanings } from './take-meaning.ts';

/**
 * Whether only some blanks go into a keyway, whether a blank goes into some keyways only, or what goes into them only.
 *
 * @returns null where the list that is told anyway shows it: "the only blank that goes into Y".
 * @check tests/unit/names/ask.test.ts
 */
export function answerOnly(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  const { form, entrants, openings, turned } = reading;
  if (form === 'pair') {
    if (turned.only === null || reading.negated) return refuse(reading, knowledge);
    return withMeanings(question, entrants, 'entrant', knowledge, (goers) =>
      withMeanings(question, openings, 'opening', knowledge, (keyways) =>
        turned.only === 'entrant'
          ? onlyThese(goers, keyways, reading, knowledge)
          : onlyThere(goers, keyways, knowledge),
      ),
    );
  }
  if (form === 'where' && turned.only === 'entrant')
    return /\b(all|every|each|everything|everywhere)\b/.test(turned.outline)
      ? answerGoesIntoAll({ ...reading, asked: 'blank' }, knowledge)
      : refuse(reading, knowledge);
  if (form !== 'what goes in' || turned.only === 'entrant') return null;
  if (turned.only === null || reading.negated) return refuse(reading, knowledge);
  return withMeanings(question, openings, 'opening', knowledge, (keyways) => ofOnly(keyways, reading, knowledge));
}

function refuse({ mentions }: Reading, knowledge: Knowledge): Answer {
  const why = 'What "only" is said of was not understood. These can be asked:';
  return notUnderstood([why], mentions, knowledge);
}

function answer(meanings: readonly Meaning[], said: readonly string[], profiles: readonly Profile[]): Answer {
  const sentences = [...correctionsOf(meanings), ...said, ...unique(meanings.flatMap(({ notes }) => notes))];
  return { kind: 'answer', sentences, profiles: unique(profiles).map(({ id }) => id), choices: [] };
}

function notJudged(profiles: readonly Profile[]): Answer {
  const sentences = ['That is not judged yet for all blanks and keyways.'];
  return { kind: 'not judged yet', sentences, profiles: profiles.map(({ id }) => id), choices: [] };
}

function isPending(goers: readonly Profile[], keyways: readonly Profile[], knowledge: Knowledge): boolean {
  return goers.some((goer) => keyways.some((keyway) => goesIn(knowledge, goer, keyway) === undefined));
}

/** "Does only X go into Y?" Blanks that differ in length only count as one. */
function onlyThese(
  goers: readonly Meaning[],
  keyways: readonly Meaning[],
  reading: Reading,
  knowledge: Knowledge,
): Answer {
  const [named, into] = [profilesIn(goers), profilesIn(keyways)];
  const same = [...named, ...goers.flatMap(({ alike }) => alike)];
  const blanks = reading.turned.outline.includes('tool') ? entrantsOf(knowledge.family) : blanksAnd(named, knowledge);
  if (isPending(blanks, into, knowledge)) return notJudged([...named, ...into]);
  const enters = (goer: Profile) => into.every((keyway) => goesIn(knowledge, goer, keyway));
  const others = blanks.filter((one) => enters(one) && !same.includes(one));
  const stopped = named.filter((goer) => !enters(goer));
  const said = sayOnlyThese(stopped, others, namesOf(into));
  return answer([...goers, ...keyways], said, [...named, ...into, ...others]);
}

function sayOnlyThese(stopped: readonly Profile[], others: readonly Profile[], where: string): string[] {
  const go = others.length > 1 ? 'go' : 'goes';
  if (stopped.length > 0) {
    const rest = others.length > 0 ? [`Into ${where} ${go} ${namesOf(others)}.`] : [];
    return [`No: ${namesOf(stopped)} ${stopped.length > 1 ? 'do' : 'does'} not go into ${where}.`, ...rest];
  }
  return [
    others.length > 0 ? `No: into ${where} ${go} also ${namesOf(others)}.` : `Yes: no other blank goes into ${where}.`,
  ];
}

/** All blanks, and tools too where one was named. */
function blanksAnd(named: readonly Profile[], { family }: Knowledge): Profile[] {
  const tools = named.some(({ kind }) => kind === 'tool');
  return entrantsOf(family).filter(({ kind }) => tools || kind === 'blank');
}

/** "Does X go only into Y?" */
function onlyThere(goers: readonly Meaning[], keyways: readonly Meaning[], knowledge: Knowledge): Answer {
  const [named, into] = [profilesIn(goers), profilesIn(keyways)];
  const openings = openingsOf(knowledge.family);
  if (isPending(named, openings, knowledge)) return notJudged([...named, ...into]);
  const entered = openings.filter((keyway) => named.some((goer) => goesIn(knowledge, goer, keyway)));
  const said = sayOnlyThere(named, into, entered);
  return answer([...goers, ...keyways], [said], [...named, ...into, ...entered]);
}

function sayOnlyThere(named: readonly Profile[], into: readonly Profile[], entered: readonly Profile[]): string {
  const beside = entered.filter((one) => !into.includes(one));
  const missing = into.filter((one) => !entered.includes(one));
  const who = `${namesOf(named)} ${named.length > 1 ? 'go' : 'goes'}`;
  if (missing.length > 0)
    return `No: ${who} into ${entered.length > 0 ? namesOf(entered) : 'no keyway'}, not into ${namesOf(missing, 'or')}.`;
  if (beside.length > 0) return `No: ${who} into ${namesOf(beside)} too.`;
  return `Yes: ${who} into ${namesOf(into)}, and into no other keyway.`;
}

/** "What goes only into Y?" */
function ofOnly(keyways: readonly Meaning[], { asked }: Reading, knowledge: Knowledge): Answer {
  const into = profilesIn(keyways);
  const openings = openingsOf(knowledge.family);
  const pool = entrantsOf(knowledge.family).filter(
    ({ kind }) => kind === asked || asked === null || asked === 'keyway',
  );
  if (isPending(pool, openings, knowledge)) return notJudged(into);
  const fits = (goer: Profile) => openings.every((one) => goesIn(knowledge, goer, one) === into.includes(one));
  const found = pool.filter(fits);
  const where = `${namesOf(into)} and into no other keyway`;
  const said =
    found.length > 0
      ? `Into ${where} ${found.length > 1 ? 'go' : 'goes'} ${namesOf(found)}.`
      : `Nothing goes into ${where}.`;
  return answer(keyways, [said], [...into, ...found]);
}
