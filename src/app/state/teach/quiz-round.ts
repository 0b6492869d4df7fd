import { type MarkedAnswer, makeQuiz, markAnswer, type QuizQuestion, type Said, scoreOf } from '../../../teach/quiz.ts';
import type { TeachingKnowledge } from '../../../teach/teaching-knowledge.ts';
import type { Session } from '../session.ts';
import { keepRound } from './quiz-score.ts';
import type { QuizRound } from './teach-state.ts';

type Window = Pick<Session, 'teach' | 'quizScore'>;

/** Begins a round; returns false where there is nothing to ask. */
export function beginRound({ teach }: Pick<Session, 'teach'>, knowledge: TeachingKnowledge, seed: number): boolean {
  const questions = makeQuiz(knowledge, seed);
  teach.setState({ round: questions.length > 0 ? { questions, said: [], telling: false } : null });
  return questions.length > 0;
}

/** The question that is on, or whose answer is being told; null at the end of the round. */
export function questionNow({ questions, said, telling }: QuizRound): { at: number; question: QuizQuestion } | null {
  const at = telling ? said.length - 1 : said.length;
  return at < questions.length ? { at, question: questions[at] } : null;
}

/** Takes an answer to the question that is on, and tells it. */
export function answerNow({ teach }: Pick<Session, 'teach'>, said: Said): void {
  const { round } = teach.getState();
  if (!round || round.telling || round.said.length >= round.questions.length) return;
  teach.setState({ round: { ...round, said: [...round.said, said], telling: true } });
}

/** Goes on to the next question; after the last one the round is at its end and its score is kept. */
export function goOn({ teach, quizScore }: Window, knowledge: TeachingKnowledge): void {
  const { round } = teach.getState();
  if (!round?.telling) return;
  const ended = { ...round, telling: false };
  teach.setState({ round: ended });
  if (round.said.length === round.questions.length) keepRound(quizScore, scoreOf(markedAnswers(ended, knowledge)));
}

/** All answers of a round as the core marks them now; null where a pair is not known any more. */
export function markedAnswers({ questions, said }: QuizRound, knowledge: TeachingKnowledge): (MarkedAnswer | null)[] {
  return said.map((word, i) => markAnswer(knowledge, questions[i], word));
}
