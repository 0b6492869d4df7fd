import type { Family } from '../../../family/family.ts';

/** Keyways from tight to wide. */
export function TightnessSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
