import type { Family } from '../../../family/family.ts';

/** The readings beside this: does it go in?. */
export function QuizReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
