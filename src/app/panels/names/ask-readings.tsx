import type { Family } from '../../../family/family.ts';

/** The readings beside this: a question in plain words. */
export function AskReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
