import type { Family } from '../../../family/family.ts';

/** A question in plain words. */
export function AskSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
