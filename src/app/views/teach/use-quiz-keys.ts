import { useEffect, useRef } from 'react';
import type { Said } from '../../../teach/quiz.ts';
import { isFreeKey } from '../../panels/is-free-key.ts';

/** What the keys of the quiz do. */
interface QuizKeys {
  say(said: Said): void;
  /** The next question, or a round where none is on. */
  next(): void;
}

const ANSWERS: Readonly<Record<string, Said>> = {
  e: 'enters',
  '1': 'enters',
  t: 'tight',
  d: 'blocked',
  '2': 'blocked',
};

/** Whether Enter there is for the round: on a key it presses that, but the key of the sheet that is shown has nothing to do. */
function isForRound(target: Element): boolean {
  const key = target.closest('button, a');
  return !key || key.matches('[aria-current="page"]');
}

/** E or 1: it goes in. D or 2: it does not. T: it goes in, but tight. Enter goes on. */
export function useQuizKeys(keys: QuizKeys): void {
  const latest = useRef(keys);
  useEffect(() => {
    latest.current = keys;
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!isFreeKey(event) || event.repeat) return;
      const said = ANSWERS[event.key.toLowerCase()];
      if (said) latest.current.say(said);
      else if (event.key === 'Enter' && isForRound(event.target)) latest.current.next();
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, []);
}
