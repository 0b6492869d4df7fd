import { firstFree } from '../../family/first-free.ts';
import type { PlannedProfile } from '../../plan/drawn-plan.ts';
import { milledProfile } from './edit-profiles.ts';
import type { FamilyFile, ProfileFile } from './schema.ts';

/**
 * The family with the profiles of a drawn plan, marked `planned`, in place of those planned before.
 *
 * A profile that was planned before under the same id keeps its place, fields that we do not know, its length in chambers
 * and its note; a tolerance of its own does not stay, since the plan was judged with the family's. Ids of kept profiles are left alone: a planned one takes another id where its own is had.
 *
 * @param keepOthers whether profiles that were not planned stay; they come first.
 * @check tests/unit/interchange/take-plan.test.ts
 */
export function takePlan(file: FamilyFile, drawn: readonly PlannedProfile[], keepOthers: boolean): FamilyFile {
  const others = keepOthers ? file.profiles.filter((profile) => !isPlanned(profile)) : [];
  const before = new Map(file.profiles.filter(isPlanned).map((profile) => [profile.id, profile]));
  const taken = new Set(others.map(({ id }) => id));
  const made = drawn.map((profile) => {
    const id = firstFree(taken, (n) => (n === 1 ? profile.id : `${profile.id}-${n}`));
    taken.add(id);
    return plannedFile({ ...profile, id }, before.get(id), file.units);
  });
  return { ...file, profiles: [...others, ...made] };
}

/** Whether a profile of a file was made from the plan. */
function isPlanned({ planned }: ProfileFile): boolean {
  return planned === true;
}

function plannedFile(
  { id, kind, name, section, milled }: PlannedProfile,
  before: ProfileFile | undefined,
  units: FamilyFile['units'],
): ProfileFile {
  const { outline: _o, milled: _m, section: _s, tolerance: _t, ...kept } = before ?? { id, kind, name };
  const head = { ...kept, id, kind, name, ...(section === undefined ? {} : { section }) };
  return { ...milledProfile(head, milled, units), planned: true };
}
