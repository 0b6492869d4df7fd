import type { Tiers } from '../../../family/tiers.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { MatrixOrder } from './tiers-state.ts';

/**
 * Profiles in the order that the matrix has them in: as in the chart, by name with numbers by their size, or by tier, the
 * highest first among blanks and the lowest first among keyways. What has no tier stands last; equals keep the chart's order.
 *
 * @param tiers null while not all is judged: then the order by tier is that of the chart.
 * @check tests/unit/app/tiers-matrix.test.ts
 */
export function inOrder(profiles: readonly Profile[], order: MatrixOrder, tiers: Tiers | null): readonly Profile[] {
  if (order === 'name') return [...profiles].sort((a, b) => NAMES.compare(a.name, b.name));
  if (order === 'chart' || !tiers) return profiles;
  const rank = ({ id, kind }: Profile): number => {
    if (kind === 'opening') return tiers.tierOfOpening.get(id) ?? Number.POSITIVE_INFINITY;
    return -(tiers.tierOfEntrant.get(id) ?? Number.NEGATIVE_INFINITY);
  };
  return [...profiles].sort((a, b) => compare(rank(a), rank(b)));
}

const NAMES = new Intl.Collator('en', { numeric: true });

/** Unlike a difference it is no number's absence where both are without end. */
function compare(a: number, b: number): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** What a column is called: its section where no other keyway has the same, else its whole name. */
export function columnNames(openings: readonly Profile[]): ReadonlyMap<string, string> {
  const times = new Map<string, number>();
  for (const { section } of openings) if (section) times.set(section, (times.get(section) ?? 0) + 1);
  return new Map(
    openings.map(({ id, name, section }) => [id, section && times.get(section) === 1 ? section : name] as const),
  );
}
