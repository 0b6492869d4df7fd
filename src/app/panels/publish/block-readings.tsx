import type { Family } from '../../../family/family.ts';

/** What belongs beside the Display block sheet. */
export function BlockReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
