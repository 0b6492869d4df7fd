import type { Family } from '../../../family/family.ts';

/** The readings beside this: what an unknown outline is. */
export function IdentifyReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
