import type { Family } from '../../../family/family.ts';

/** The readings beside this: what charts and colleagues say, checked. */
export function ClaimsReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
