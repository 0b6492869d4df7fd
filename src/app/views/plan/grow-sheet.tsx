import type { Family } from '../../../family/family.ts';

/** How many sections more, and where the next ones go. */
export function GrowSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
