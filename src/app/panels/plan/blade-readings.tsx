import type { Family } from '../../../family/family.ts';

/** The readings beside this: what the blades may be made like, and the places for wards. */
export function BladeReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
