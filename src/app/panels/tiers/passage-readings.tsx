import type { Family } from '../../../family/family.ts';

/** The readings beside this: what several keyways have in common. */
export function PassageReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
