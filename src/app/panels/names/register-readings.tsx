import type { Family } from '../../../family/family.ts';

/** The readings beside this: every name and what it stands for. */
export function RegisterReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
