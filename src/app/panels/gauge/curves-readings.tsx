import type { Family } from '../../../family/family.ts';

/** What belongs beside the Thickness sheet. */
export function CurvesReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
