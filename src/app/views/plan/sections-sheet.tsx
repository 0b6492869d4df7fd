import type { Family } from '../../../family/family.ts';

/** The wards of each section, proved, drawn and judged. */
export function SectionsSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
