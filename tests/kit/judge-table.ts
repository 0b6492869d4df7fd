import type { EntryTable } from '../../src/family/entry-table.ts';
import { entrantsOf, type Family, openingsOf } from '../../src/family/family.ts';
import { goesIn } from '../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';

/** Every pair of a family judged by its outlines, as yes or no: verdicts only, so it is quick. */
export function judgeTable(family: Family): EntryTable {
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  const ready = openings.map(({ ring }) => prepareOpening(ring));
  return {
    openings: openings.map(({ id }) => id),
    entrants: entrants.map(({ id }) => id),
    goesIn: entrants.map(({ ring }) => {
      const blank = prepareBlank(ring);
      return ready.map((opening) => goesIn(opening, blank));
    }),
  };
}
