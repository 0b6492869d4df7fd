import type { StepShow } from '../../../family/lesson.ts';

/** What the kinds of steps are called, and what they show. */
export const SHOW_WORDS: Readonly<Record<StepShow, { label: string; hint: string }>> = {
  words: { label: 'Words', hint: 'title and words alone' },
  pair: { label: 'One pair', hint: 'one blank in one keyway' },
  wall: { label: 'Every keyway', hint: 'one blank in all keyways at once' },
  tiers: { label: 'Tiers', hint: 'from one keyway to all, line by line' },
  passage: { label: 'Common passage', hint: 'what keyways have in common' },
  question: { label: 'Question', hint: 'the room guesses, then the answer' },
};

/** The kinds in the order in which they are offered. */
export const SHOWS = Object.keys(SHOW_WORDS) as StepShow[];
