import type { Family } from '../../../family/family.ts';

/** The readings beside this: what each blade bears, by material. */
export function StrengthReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
