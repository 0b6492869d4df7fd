import type { Family } from '../../../family/family.ts';

/** How many keys the family has. */
export function CapacitySheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
