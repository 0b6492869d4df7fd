import type { Family } from '../../../family/family.ts';

/** What belongs beside the Slides sheet. */
export function SlidesReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
