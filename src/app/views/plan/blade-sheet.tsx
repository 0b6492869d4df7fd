import type { Family } from '../../../family/family.ts';

/** What the blades may be made like, and the places for wards. */
export function BladeSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
