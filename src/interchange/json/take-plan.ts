import { firstFree } from '../../family/first-free.ts';
import type { PlannedProfile } from '../../plan/drawn-plan.ts';
import { milledProfile } from './edit-profiles.ts';
import type { FamilyFile, ProfileFile } from './schema.ts';

/**
 * The family with the profiles of a drawn plan, marked `planned`, in place of those planned before.
 *
 * A profile that was planned before, under the same id or else the same name, keeps its id, fields that we do not know, its length in chambers
 * and its note; a tolerance of its own does not stay, since the plan was judged with the family's. Ids of kept profiles are left alone: a planned one takes another id where its own is had.
 *
 * @param keepOthers whether profiles that were not planned stay; they come first.
 * @check tests/unit/interchange/take-plan.test.ts
 */
export function takePlan(file: FamilyFile, drawn: readonly PlannedProfile[], keepOthers: boolean): FamilyFile {
  const others = keepOthers ? file.profiles.filter((profile) => !isPlanned(profile)) : [];
  const planned = file.profiles.filter(isPlanned);
  const taken = new Set(others.map(({ id }) => id));
  const made = drawn.map((profile) => {
    const wanted = plannedBefore(profile, planned, drawn)?.id ?? profile.id;
    const id = firstFree(taken, (n) => (n === 1 ? wanted : `${wanted}-${n}`));
    taken.add(id);
    return plannedFile(
      { ...profile, id },
      planned.find((before) => before.id === id),
      file.units,
    );
  });
  return { ...file, profiles: [...others, ...made] };
}

/**
 * What a profile was when it was planned before: what has its id, else what is called the same. Ids were once made of names
 * in another way; what a lesson, a claim or a register says of such a profile by its id must still be said of it.
 */
function plannedBefore(
  { id, kind, name }: PlannedProfile,
  planned: readonly ProfileFile[],
  drawn: readonly PlannedProfile[],
): ProfileFile | undefined {
  const wanted = new Set(drawn.map((profile) => profile.id));
  return (
    planned.find((before) => before.id === id) ??
    planned.find((before) => before.kind === kind && before.name === name && !wanted.has(before.id))
  );
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
