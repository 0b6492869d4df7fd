import type { Family } from '../../../family/family.ts';

/** The readings beside this: names that are easily misread. */
export function MisleadingReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
