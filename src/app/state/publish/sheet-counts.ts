import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { SheetOrder } from '../../../publish/sheet-order.ts';
import type { Fact } from '../profile-facts.ts';

/**
 * Of how many keyways and of how many blanks and tools a sheet is.
 *
 * @check tests/unit/app/publish-counts.test.ts
 */
export function sheetCounts(family: Family, order: SheetOrder): readonly Fact[] {
  const keyways = openingsOf(family).length;
  const entrants = entrantsOf(family);
  const blanks = entrants.filter(({ kind }) => kind === 'blank').length;
  const counts = (of: readonly [openings: number, word: string, entrants: number]): Fact[] => [
    { term: 'keyways', value: String(of[0]) },
    { term: of[1], value: String(of[2]) },
  ];
  if (order.sheet === 'scale' && !order.all)
    return counts([Math.min(1, keyways), 'blanks and tools', Math.min(1, entrants.length)]);
  // A card for one holder or blank names keyways only.
  if (order.sheet === 'card' && order.of !== undefined) return [{ term: 'keyways', value: String(keyways) }];
  const withoutTools = 'blanksOnly' in order && order.blanksOnly;
  return counts([keyways, withoutTools ? 'blanks' : 'blanks and tools', withoutTools ? blanks : entrants.length]);
}
