import type { Answer } from './answer.ts';
import { answerBetween } from './answer-between.ts';
import { answerEachOther } from './answer-each-other.ts';
import { answerExcept } from './answer-except.ts';
import { answerGroup } from './answer-group.ts';
import { answerLengths } from './answer-lengths.ts';
import { answerOnly } from './answer-only.ts';
import { answerRank } from './answer-rank.ts';
import { answerReach } from './answer-reach.ts';
import { EXAMPLE_FORMS } from './example-forms.ts';
import type { Knowledge } from './knowledge.ts';
import { notUnderstood } from './not-understood.ts';
import type { Reading } from './read-question.ts';
import type { Turn } from './turn-words.ts';

/** The answer to a question that is turned, or null where the ordinary answer holds. */
type Answering = (question: string, reading: Reading, knowledge: Knowledge) => Answer | null;

/** How each turn is answered; the first that has an answer gives it. Not named: the ordinary answer takes it up. */
const ANSWERS: readonly (readonly [Turn, Answering])[] = [
  ['posture', answerPosture],
  ['replace', answerReach],
  ['each other', answerEachOther],
  ['above', answerRank],
  ['below', answerRank],
  ['group', answerGroup],
  ['except', answerExcept],
  ['only', answerOnly],
  ['more keyways', answerReach],
  ['same keyways', answerReach],
  ['length', answerLengths],
  ['comparison', answerComparison],
  ['tightest', answerTightest],
  ['most', refuse],
  ['safety', refuse],
  ['between', answerBetween],
];

/**
 * Answers a question that some word turns into another one, or says that it is not understood.
 *
 * @returns null where nothing turns it, or the ordinary answer takes the turn into account.
 * @check tests/unit/names/ask.test.ts
 */
export function answerTurned(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  const { turned, form, negated } = reading;
  if (turned.clauses.length > 1) return answerTwice(reading, knowledge);
  for (const [turn, answer] of ANSWERS) {
    const given = turned.turns.has(turn) ? answer(question, reading, knowledge) : null;
    if (given) return given;
  }
  return form === 'goes into all' && negated ? refuse(question, reading, knowledge) : null;
}

function refuse(_: string, { mentions }: Reading, knowledge: Knowledge): Answer {
  return notUnderstood(['That was not understood. These can be asked:'], mentions, knowledge);
}

function answerPosture(_: string, { mentions }: Reading, knowledge: Knowledge): Answer {
  const only =
    'A blade is judged the right way up only, as it is drawn: nothing can be said of it upside down, mirrored';
  return notUnderstood([`${only} or turned round.`, 'These can be asked:'], mentions, knowledge);
}

/** Two questions in one: each by itself, ready-made. */
function answerTwice({ turned, mentions }: Reading, knowledge: Knowledge): Answer {
  const choices = turned.clauses.map(([one, two]) => {
    const question = EXAMPLE_FORMS[0].question([one.text, two.text]);
    return { label: question, question };
  });
  return notUnderstood(['That asks more than one thing. Ask one at a time:'], mentions, knowledge, choices);
}

/** A comparison that is not of keyways or lengths: only room can be told, each pair by itself: "better than X does". */
function answerComparison(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  const byPairs = !reading.yesOrNo || /\bthan NAME does?\b/.test(reading.turned.outline);
  return reading.form === 'pair' && byPairs ? null : refuse(question, reading, knowledge);
}

function answerTightest(question: string, reading: Reading, knowledge: Knowledge): Answer | null {
  return reading.form === 'what goes in' || reading.form === 'where' ? null : refuse(question, reading, knowledge);
}
