import type { Family } from '../../../family/family.ts';

/** Areas, holders, and the blanks that they need. */
export function AccessSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
