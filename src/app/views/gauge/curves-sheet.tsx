import type { Family } from '../../../family/family.ts';

/** Thickness against height. */
export function CurvesSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
