import type { Family } from '../../../family/family.ts';

/** Who enters what: matrix and diagram. */
export function TiersSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
