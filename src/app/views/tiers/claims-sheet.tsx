import type { Family } from '../../../family/family.ts';

/** What charts and colleagues say, checked. */
export function ClaimsSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
