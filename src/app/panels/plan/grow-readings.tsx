import type { Family } from '../../../family/family.ts';

/** The readings beside this: how many sections more, and where the next ones go. */
export function GrowReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
