import type { Family } from '../../../family/family.ts';

/** What belongs beside the Tightness sheet. */
export function TightnessReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
