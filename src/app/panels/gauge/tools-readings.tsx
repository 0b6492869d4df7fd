import type { Family } from '../../../family/family.ts';

/** What belongs beside the Tools sheet. */
export function ToolsReadings({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
