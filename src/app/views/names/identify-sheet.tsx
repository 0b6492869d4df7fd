import type { Family } from '../../../family/family.ts';

/** What an unknown outline is. */
export function IdentifySheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
