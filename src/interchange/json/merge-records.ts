import type { FileUnits } from '../../family/family.ts';
import { toFileLength } from '../../family/file-length.ts';
import { toNanometres } from './file-units.ts';
import type { ClaimFile, FamilyFile, LessonFile, NameFile, PlanFile } from './schema.ts';

/** The names, claims, lesson and plan of a family file. */
export type Records = Pick<FamilyFile, 'names' | 'claims' | 'lesson' | 'plan'>;

/**
 * The records of a family with those of another one: its names and claims come along, but those that are there already
 * and what speaks of sections that were left out; its lesson and its plan only where there is none yet. A claim may name a section by
 * its id: it then gets the id that the section has now.
 *
 * @param newIds ids of the sections that came along or were there already, by their id in the other family.
 * @check tests/unit/interchange/merge-families.test.ts
 */
export function mergeRecords(
  into: Records & Pick<FamilyFile, 'units'>,
  from: Records & Pick<FamilyFile, 'profiles' | 'units'>,
  newIds: ReadonlyMap<string, string>,
): Records {
  const theirIds = new Set(from.profiles.map(({ id }) => id));
  const names = (from.names ?? []).flatMap((entry) => nameOver(entry, newIds));
  const claims = (from.claims ?? []).flatMap((claim) => claimOver(claim, theirIds, newIds));
  const lesson = into.lesson ?? (from.lesson && lessonOver(from.lesson, newIds));
  const plan = into.plan ?? (from.plan && planOver(from.plan, from.units, into.units));
  return {
    ...fieldOf('names', withNew(into.names, names)),
    ...fieldOf('claims', withNew(into.claims, claims)),
    ...(lesson && { lesson }),
    ...(plan && { plan }),
  };
}

/** What becomes of the records of the other family, in words; empty where it has none. */
export function sayRecords(into: Records, from: Records, ours: string, theirs: string): string[] {
  const parts = [countOf(from.names?.length ?? 0, 'name'), countOf(from.claims?.length ?? 0, 'claim')].flat();
  const words = parts.length > 0 ? [`${parts.join(' and ')} of ${theirs} come along where they are new.`] : [];
  if (from.lesson)
    words.push(
      into.lesson
        ? `The lesson of ${theirs} is left out: ${ours} has one.`
        : `The lesson of ${theirs} becomes that of ${ours}.`,
    );
  if (from.plan)
    words.push(
      into.plan
        ? `The plan of ${theirs} is left out: ${ours} has one.`
        : `The plan of ${theirs} becomes that of ${ours}.`,
    );
  return words;
}

function countOf(count: number, thing: string): string[] {
  return count === 0 ? [] : [`${count} ${thing}${count === 1 ? '' : 's'}`];
}

function fieldOf<K extends keyof Records>(name: K, value: Records[K]): Pick<Records, K> | object {
  return value === undefined ? {} : { [name]: value };
}

/** A list with the entries of another one that it has not yet; the very same list where there is nothing new. */
function withNew<T extends object>(list: readonly T[] | undefined, more: readonly T[]): T[] | undefined {
  const known = new Set((list ?? []).map((entry) => JSON.stringify(entry)));
  const added = more.filter((entry) => !known.has(JSON.stringify(entry)));
  return added.length === 0 ? (list as T[] | undefined) : [...(list ?? []), ...added];
}

function nameOver(entry: NameFile, newIds: ReadonlyMap<string, string>): NameFile[] {
  if (entry.profile === undefined) return [entry];
  const profile = newIds.get(entry.profile);
  return profile === undefined ? [] : [{ ...entry, profile }];
}

/** A claim with the ids that its sections have now; none where it speaks of one by its id that was left out. */
function claimOver(claim: ClaimFile, theirIds: ReadonlySet<string>, newIds: ReadonlyMap<string, string>): ClaimFile[] {
  const now = (text: string) => (theirIds.has(text.trim()) ? newIds.get(text.trim()) : text);
  const [blank, opening] = [now(claim.blank), now(claim.opening)];
  return blank === undefined || opening === undefined ? [] : [{ ...claim, blank, opening }];
}

/** A lesson with the ids that its sections have now; those of sections that were left out stay and are told when it is shown. */
function lessonOver(lesson: LessonFile, newIds: ReadonlyMap<string, string>): LessonFile {
  const now = (id: string) => newIds.get(id) ?? id;
  return {
    ...lesson,
    steps: lesson.steps.map((step) => ({
      ...step,
      ...(step.blank === undefined ? {} : { blank: now(step.blank) }),
      ...(step.opening === undefined ? {} : { opening: now(step.opening) }),
      ...(step.openings === undefined ? {} : { openings: step.openings.map(now) }),
    })),
  };
}

/** A plan with its lengths in other units, to the same whole nanometre. */
function planOver(plan: PlanFile, from: FileUnits, to: FileUnits): PlanFile {
  if (from === to) return plan;
  const converted = Object.entries(plan.blade).map(([field, value]) =>
    typeof value === 'number' && field !== 'flankDeg'
      ? [field, toFileLength(toNanometres(value, from), to)]
      : [field, value],
  );
  return { ...plan, blade: Object.fromEntries(converted) };
}
