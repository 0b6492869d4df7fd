import { type Conditions, plainConditions } from '../fit/conditions.ts';
import { blankUnder, judgePairEntry, openingUnder } from '../fit/judge-pair.ts';
import type { EntryTable } from './entry-table.ts';
import { entrantsOf, type Family, openingsOf } from './family.ts';
import { orRefuse } from './pair-refused.ts';

/**
 * What goes into what in a family, judged pair by pair without measuring how deep a blocked pair collides: a small part
 * of the work of {@link entryMatrix}. The caller decides between pairs whether to go on.
 *
 * @param conditions new parts held upright where not given.
 * @yields how many pairs are done, of how many.
 * @returns the table, every pair judged.
 * @throws PairRefused where a pair cannot be judged.
 * @check tests/unit/family/large-families.test.ts
 */
export function* judgeEntryTable(
  family: Family,
  conditions: Conditions = plainConditions(family.runningClearance),
): Generator<{ done: number; total: number }, EntryTable, void> {
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, shape: openingUnder(ring, conditions) }));
  const entrants = entrantsOf(family);
  const total = entrants.length * openings.length;
  const goesIn: boolean[][] = [];
  for (const profile of entrants) {
    const blank = blankUnder(profile.ring, conditions);
    const row: boolean[] = [];
    for (const { id, shape } of openings) {
      row.push(orRefuse(profile.id, id, () => judgePairEntry(shape, blank, conditions)).verdict !== 'blocked');
      yield { done: goesIn.length * openings.length + row.length, total };
    }
    goesIn.push(row);
  }
  return { entrants: entrants.map(({ id }) => id), openings: openings.map(({ id }) => id), goesIn };
}
