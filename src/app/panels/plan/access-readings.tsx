import type { Family } from '../../../family/family.ts';

/** The readings beside this: areas, holders, and the blanks that they need. */
export function AccessReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
