import type { Family } from '../../../family/family.ts';

/** Names that are easily misread. */
export function MisleadingSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
