import type { Family } from '../../../family/family.ts';

/** The lesson as pages and as a file. */
export function SlidesSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
