import type { Family } from '../../../family/family.ts';

/** Every name and what it stands for. */
export function RegisterSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
