import { openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer } from './answer.ts';
import { poolOf } from './answer-entries.ts';
import { correctionsOf, profilesIn, unique } from './answer-pair.ts';
import type { Knowledge } from './knowledge.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import { goesIn } from './say-pair.ts';
import { namesOf, sayWhere } from './say-where.ts';
import { type Meaning, withMeanings } from './take-meaning.ts';

/**
 * What goes into all keyways but some, whether a blank does, or what else than some blanks goes into a keyway.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function answerExcept(question: string, reading: Reading, knowledge: Knowledge): Answer {
  const { turned, mentions, entrants, openings, negated } = reading;
  const rest = mentions.filter((mention) => !turned.excepted.includes(mention));
  const out = turned.excepted;
  const all = /\b(all|every|everything|everywhere|each)\b/.test(turned.outline);
  if (out.length === 0 || negated || rest.some((one) => !entrants.includes(one) && !openings.includes(one)))
    return refuse(reading, knowledge);
  if (rest.length === 0 || rest.every((one) => entrants.includes(one)))
    return all || rest.length > 0
      ? withMeanings(question, rest, 'entrant', knowledge, (goers) =>
          withMeanings(question, out, 'opening', knowledge, (barred) =>
            all ? allBut(goers, barred, reading, knowledge) : anyBut(goers, barred, reading, knowledge),
          ),
        )
      : refuse(reading, knowledge);
  if (!rest.every((one) => openings.includes(one))) return refuse(reading, knowledge);
  return withMeanings(question, rest, 'opening', knowledge, (keyways) =>
    withMeanings(question, out, 'entrant', knowledge, (known) => whatElse(keyways, known, reading, knowledge)),
  );
}

function refuse({ mentions }: Reading, knowledge: Knowledge): Answer {
  return notUnderstood(['What is left out was not understood. These can be asked:'], mentions, knowledge);
}

function answer(meanings: readonly Meaning[], said: readonly string[], profiles: readonly Profile[]): Answer {
  const sentences = [...correctionsOf(meanings), ...said, ...unique(meanings.flatMap(({ notes }) => notes))];
  return { kind: 'answer', sentences, profiles: unique(profiles).map(({ id }) => id), choices: [] };
}

function notJudged(profiles: readonly Profile[]): Answer {
  const sentences = ['That is not judged yet for all blanks and keyways.'];
  return { kind: 'not judged yet', sentences, profiles: profiles.map(({ id }) => id), choices: [] };
}

/** All keyways but some: what goes into them, or whether the named ones do. */
function allBut(goers: readonly Meaning[], barred: readonly Meaning[], reading: Reading, knowledge: Knowledge): Answer {
  const out = profilesIn(barred);
  const openings = openingsOf(knowledge.family);
  const wanted = openings.filter((one) => !out.includes(one));
  const pool = goers.length > 0 ? profilesIn(goers) : poolOf(reading, knowledge);
  if (pool.some((one) => openings.some((keyway) => goesIn(knowledge, one, keyway) === undefined)))
    return notJudged([...profilesIn(goers), ...out]);
  const entering = pool.filter((one) => wanted.every((keyway) => goesIn(knowledge, one, keyway)));
  const meanings = [...goers, ...barred];
  if (goers.length === 0) return answer(meanings, sayEntering(entering, out, knowledge), [...entering, ...out]);
  const said = pool.flatMap((one) => [...sayGoer(one, wanted, out, knowledge), ...sayWhere(one, knowledge)]);
  return answer(meanings, said, [...pool, ...openings.filter((k) => pool.some((one) => goesIn(knowledge, one, k)))]);
}

function sayEntering(entering: readonly Profile[], out: readonly Profile[], knowledge: Knowledge): string[] {
  const where = `every keyway but ${namesOf(out)}`;
  if (entering.length === 0) return [`Nothing goes into ${where}.`];
  const too = entering.filter((one) => out.some((keyway) => goesIn(knowledge, one, keyway)));
  return [
    `Into ${where} ${entering.length > 1 ? 'go' : 'goes'} ${namesOf(entering)}.`,
    ...too.map((one) => `${one.name} goes into ${namesOf(out.filter((k) => goesIn(knowledge, one, k)))} too.`),
  ];
}

/** Whether one goes into all keyways but some, and into none of these. */
function sayGoer(goer: Profile, wanted: readonly Profile[], out: readonly Profile[], knowledge: Knowledge): string[] {
  const missing = wanted.filter((keyway) => !goesIn(knowledge, goer, keyway));
  const too = out.filter((keyway) => goesIn(knowledge, goer, keyway));
  if (missing.length > 0) return [`No: ${goer.name} does not go into ${namesOf(missing, 'or')} either.`];
  if (too.length > 0) return [`${goer.name} goes into all of these, and into ${namesOf(too)} too.`];
  return [`Yes: ${goer.name} goes into every keyway but ${namesOf(out)}.`];
}

/** Whether blanks go into any keyway but some, and into which. */
function anyBut(goers: readonly Meaning[], barred: readonly Meaning[], reading: Reading, knowledge: Knowledge): Answer {
  const [named, out] = [profilesIn(goers), profilesIn(barred)];
  const openings = openingsOf(knowledge.family);
  if (named.some((one) => openings.some((keyway) => goesIn(knowledge, one, keyway) === undefined)))
    return notJudged([...named, ...out]);
  const others = openings.filter((one) => !out.includes(one));
  const into = (goer: Profile) => others.filter((keyway) => goesIn(knowledge, goer, keyway));
  const said = named.map((goer) => {
    const found = into(goer);
    const start = found.length > 0 ? 'Yes: ' : 'No: ';
    const where = found.length > 0 ? `${namesOf(found)}, apart from ${namesOf(out)}` : `no keyway but ${namesOf(out)}`;
    return `${reading.yesOrNo ? start : ''}${goer.name} goes into ${where}.`;
  });
  return answer([...goers, ...barred], said, [...named, ...named.flatMap(into)]);
}

/** What goes into some keyways beside what was named. */
function whatElse(
  keyways: readonly Meaning[],
  known: readonly Meaning[],
  reading: Reading,
  knowledge: Knowledge,
): Answer {
  const into = profilesIn(keyways);
  const left = [...profilesIn(known), ...known.flatMap(({ alike }) => alike)];
  const pool = poolOf(reading, knowledge).filter((one) => !left.includes(one));
  if (pool.some((one) => into.some((keyway) => goesIn(knowledge, one, keyway) === undefined))) return notJudged(into);
  const entering = pool.filter((one) => into.every((keyway) => goesIn(knowledge, one, keyway)));
  const where = `${namesOf(into)}, apart from ${namesOf(left)},`;
  const said =
    entering.length > 0
      ? `Into ${where} ${entering.length > 1 ? 'go' : 'goes'} ${namesOf(entering)}.`
      : `Into ${where} nothing goes.`;
  return answer([...keyways, ...known], [said], [...into, ...entering]);
}
