import type { Family } from '../../../family/family.ts';

/** Openings and blanks as solids to print. */
export function BlockSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
