import type { Family } from '../../../family/family.ts';

/** The script, step by step. */
export function LessonSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
