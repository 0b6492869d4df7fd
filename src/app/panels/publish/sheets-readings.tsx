import type { Family } from '../../../family/family.ts';

/** What belongs beside the Sheets sheet. */
export function SheetsReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
