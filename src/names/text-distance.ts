import { distance } from 'fastest-levenshtein';

/**
 * How many letters two names differ in: the fewest insertions, removals and replacements that make one the other, two
 * neighbours that changed places counting once.
 *
 * @returns a whole number, or `most` + 1 where it would be more than `most`.
 * @source Levenshtein (1966) for the distance, computed by fastest-levenshtein.
 * @check tests/unit/names/resolve.test.ts
 */
export function textDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  if (isSwapped(a, b)) return Math.min(1, most + 1);
  return Math.min(distance(a, b), most + 1);
}

/** Whether two texts differ only in two neighbours that changed places. */
function isSwapped(a: string, b: string): boolean {
  if (a.length !== b.length || a === b) return false;
  let at = 0;
  while (a[at] === b[at]) at += 1;
  return a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2);
}
