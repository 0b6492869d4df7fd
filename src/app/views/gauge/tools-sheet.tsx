import type { Family } from '../../../family/family.ts';

/** Tools x openings, and the fewest that do. */
export function ToolsSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
