import type { Family } from '../../../family/family.ts';

/** Charts, true-size sheets, answers and cards. */
export function SheetsSheet({ family }: { family: Family }) {
  return <p>{family.name}</p>;
}
