import type { Family } from '../../../family/family.ts';

/** The readings beside this: who enters what: matrix and diagram. */
export function TiersReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
