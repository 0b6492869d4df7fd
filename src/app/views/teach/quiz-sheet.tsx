import type { Family } from '../../../family/family.ts';

/** Does it go in?. */
export function QuizSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
