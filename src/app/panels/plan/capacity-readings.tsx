import type { Family } from '../../../family/family.ts';

/** The readings beside this: how many keys the family has. */
export function CapacityReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
