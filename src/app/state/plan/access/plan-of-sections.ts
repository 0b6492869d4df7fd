import { entrantsOf, type Family, openingsOf } from '../../../../family/family.ts';
import type { KnownFits } from '../../../../family/known-fits.ts';
import type { HolderFile } from '../../../../interchange/json/edit-plan.ts';
import type { PlanFile } from '../../../../interchange/json/schema.ts';

/**
 * A plan of what a family is already: an area for each section that has a keyway, a holder for each blank that enters
 * several of them but not all.
 *
 * @param empty what the plan has besides its areas and holders.
 * @param fits the judged pairs; a pair that is not known yet counts as blocked.
 */
export function planOfSections(family: Family, fits: KnownFits | null, empty: PlanFile): PlanFile {
  const openings = openingsOf(family);
  const names = [...new Set(openings.map(({ section, name }) => section ?? name))];
  const areas = names.map((name, i) => ({ id: `area-${i + 1}`, name }));
  const placeOf = new Map(openings.map(({ id, section, name }) => [id, names.indexOf(section ?? name)]));
  const blanks = entrantsOf(family).filter(({ kind }) => kind === 'blank');
  const sets = new Map<string, { readonly name: string; readonly enters: readonly number[] }>();
  for (const { id, name } of blanks) {
    const enters = entered(fits, id, placeOf, names.length);
    const key = enters.join();
    if (enters.length > 1 && !sets.has(key)) sets.set(key, { name, enters });
  }
  const all = names.map((_, i) => i).join();
  const groups = [...sets].filter(([key]) => key !== all).map(([, set]) => set);
  const holders: HolderFile[] = groups.map(({ name, enters }, i) => ({
    id: `holder-${i + 1}`,
    name,
    enters: enters.map((place) => areas[place].id),
  }));
  return { ...empty, areas, holders, allSection: sets.has(all) || sets.size === 0 };
}

/** Places of the sections all of whose keyways a blank enters. */
function entered(fits: KnownFits | null, id: string, placeOf: ReadonlyMap<string, number>, count: number): number[] {
  const row = fits?.fits[fits.profiles.indexOf(id)];
  if (!fits || !row) return [];
  const goesIn = new Array<boolean>(count).fill(true);
  for (const [k, opening] of fits.openings.entries()) {
    const place = placeOf.get(opening);
    if (place !== undefined && (row[k]?.verdict ?? 'blocked') === 'blocked') goesIn[place] = false;
  }
  return goesIn.flatMap((goes, place) => (goes ? [place] : []));
}
