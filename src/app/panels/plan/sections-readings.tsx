import type { Family } from '../../../family/family.ts';

/** The readings beside this: the wards of each section, proved, drawn and judged. */
export function SectionsReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
