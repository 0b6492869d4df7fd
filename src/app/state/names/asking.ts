import type { Answer } from '../../../names/answer.ts';
import { ask } from '../../../names/ask.ts';
import type { Knowledge } from '../../../names/knowledge.ts';
import { pickProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { knowledgeNow } from './knowledge-now.ts';

/** Most questions that are remembered. */
const MOST_RECENT = 50;

/**
 * Asks a question in plain words: its answer is shown from then on and follows the family. What it asks about is picked,
 * so that the tray and the other views show it.
 */
export function askQuestion(session: Session, text: string): void {
  const question = text.trim();
  const { names } = session;
  if (question === '') return;
  const others = names.getState().recent.filter((other) => other !== question);
  const recent = [question, ...others].slice(0, MOST_RECENT);
  names.setState({ question, asked: question, recent, sheet: 'ask' });
  const answer = answerNow(session, question);
  if (answer) pickAnswered(session, answer);
}

/** The answer as things stand now; null where no family is open. */
export function answerNow(
  { doors, documents, results, conditions, settings }: Session,
  question: string,
): Answer | null {
  const family = documents.getState().document?.family;
  if (!family) return null;
  const { fits } = results.getState();
  const { units } = settings.getState();
  return answerTo(question, knowledgeNow(doors, { family, fits, conditions: conditions.getState(), units }));
}

const lastAnswers = new WeakMap<Knowledge, { readonly question: string; readonly answer: Answer }>();

/** {@link ask}, worked out once for the question that was asked last: the sheet and the readings both show it. */
export function answerTo(question: string, knowledge: Knowledge): Answer {
  const known = lastAnswers.get(knowledge);
  if (known?.question === question) return known.answer;
  const answer = ask(question, knowledge);
  lastAnswers.set(knowledge, { question, answer });
  return answer;
}

function pickAnswered({ selection, documents }: Session, { kind, pair, profiles }: Answer): void {
  if (pair) selection.setState({ ...pair, part: 'entrant' });
  else if (kind === 'answer' && profiles.length > 0) {
    const first = documents.getState().document?.family.profiles.find(({ id }) => id === profiles[0]);
    if (first) pickProfile(selection, first);
  }
}
