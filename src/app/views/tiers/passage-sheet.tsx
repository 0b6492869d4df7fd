import type { Family } from '../../../family/family.ts';

/** What several keyways have in common. */
export function PassageSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
