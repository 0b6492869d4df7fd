import type { Family } from '../../../family/family.ts';

/** The readings beside this: the script, step by step. */
export function LessonReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
