import type { Family } from '../../../family/family.ts';

/** What each blade bears, by material. */
export function StrengthSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
