import type { FileUnits } from '../../family/family.ts';
import { toFileLength } from '../../family/file-length.ts';
import { firstFree } from '../../family/first-free.ts';
import { outlineKey } from '../../profile/outline-key.ts';
import type { Profile } from '../../profile/profile.ts';
import { addProfile, freshId, replaceProfile } from './edit-profiles.ts';
import { sayLength, toNanometres } from './file-units.ts';
import { mergeRecords, sayRecords } from './merge-records.ts';
import { readPicture, writePicture } from './picture-file.ts';
import type { FamilyDocument } from './read.ts';
import type { FamilyFile, MilledFile, ProfileFile } from './schema.ts';

/** How a section of another family stands to those of the open one. */
export type MergeStanding = 'new' | 'same' | 'clash';

/** What becomes of one section: added (under a new id where its own is taken), put in place of ours, or left. */
export type MergeChoice = 'add' | 'replace' | 'skip';

/** One section of the other family. */
export interface MergeRow {
  /** Its id in the other family. */
  readonly id: string;
  readonly name: string;
  readonly kind: Profile['kind'];
  /** new: its id is free. same: the open family has it already, same id and same shape. clash: same id, other shape. */
  readonly standing: MergeStanding;
  /** Another section of the open family that has the same name; null where none has. */
  readonly namesake: string | null;
  /** What is done unless the user says otherwise. */
  readonly usual: MergeChoice;
}

/** What adding the sections of one family to another comes to. */
export interface MergePlan {
  readonly rows: readonly MergeRow[];
  /** How the two families differ in what they say of all their sections, in words. */
  readonly differences: readonly string[];
}

/**
 * What adding the sections of `from` to `into` comes to, before anything is done.
 *
 * @check tests/unit/interchange/merge-families.test.ts
 */
export function planMerge(into: FamilyDocument, from: FamilyDocument): MergePlan {
  const rows = from.family.profiles.map((profile): MergeRow => {
    const { id, name, kind } = profile;
    const standing = standingOf(into, profile);
    const namesake = into.family.profiles.find((other) => other.name === name && other.id !== id);
    return { id, name, kind, standing, namesake: namesake?.id ?? null, usual: standing === 'same' ? 'skip' : 'add' };
  });
  const differences = [
    ...differencesOf(into, from),
    ...sayRecords(into.file, from.file, into.family.name, from.family.name),
  ];
  return { rows, differences };
}

/**
 * The family `into` with the chosen sections of `from`: lengths in its own units, to the same whole nanometre; fields that
 * we do not know are taken along as they stand, and so are names, claims and, where there is none, the lesson. A section that is added under a name that another has is named apart.
 *
 * @param choices by the id in `from`; the usual one where not given.
 * @check tests/unit/interchange/merge-families.test.ts
 */
export function mergeFamilies(
  into: FamilyDocument,
  from: FamilyDocument,
  choices: ReadonlyMap<string, MergeChoice> = new Map(),
): FamilyFile {
  const newIds = new Map<string, string>();
  let file = into.file;
  for (const [i, { id, standing, usual }] of planMerge(into, from).rows.entries()) {
    const choice = choices.get(id) ?? usual;
    if (choice === 'skip' && standing !== 'same') continue;
    newIds.set(id, choice === 'add' ? freshOrOwn(file, id) : id);
    if (choice !== 'skip') file = withSection(file, from, i, choice, standing);
  }
  return { ...file, ...mergeRecords(into.file, from.file, newIds) };
}

/** The file with one section of another family, added or in place of ours. */
function withSection(
  file: FamilyFile,
  from: FamilyDocument,
  place: number,
  choice: MergeChoice,
  standing: MergeStanding,
): FamilyFile {
  const profile = inUnits(from.file.profiles[place], from.file.units, file.units);
  if (choice === 'replace' && standing !== 'new') return replaceProfile(file, profile.id, profile);
  const id = freshOrOwn(file, profile.id);
  const name = freshName(file, profile.name, from.family.name);
  return addProfile(file, id === profile.id && name === profile.name ? profile : { ...profile, id, name });
}

/** An id as it is where it is free, else one like it that is. */
function freshOrOwn(file: FamilyFile, id: string): string {
  return file.profiles.some((other) => other.id === id) ? freshId(file, id) : id;
}

/** Longest name that a section may have. */
const LONGEST_NAME = 200;

/** A name that no section of the family has: with the name of the family that it comes from behind it, where needed. */
function freshName({ profiles }: FamilyFile, name: string, family: string): string {
  const from = family.slice(0, 60);
  const behind = (n: number) => ['', ` (${from})`][n - 1] ?? ` (${from}, ${n - 1})`;
  const taken = profiles.map((profile) => profile.name);
  return firstFree(taken, (n) => name.slice(0, LONGEST_NAME - behind(n).length) + behind(n));
}

function standingOf(into: FamilyDocument, profile: Profile): MergeStanding {
  const ours = into.family.profiles.find(({ id }) => id === profile.id);
  if (!ours) return 'new';
  return isSame(ours, profile) ? 'same' : 'clash';
}

/** Whether two profiles are one and the same for the fit: kind and outline to the nanometre. */
function isSame(a: Profile, b: Profile): boolean {
  if (a.kind !== b.kind || a.ring.length !== b.ring.length) return false;
  return a.ring.every(({ x, y }, i) => x === b.ring[i].x && y === b.ring[i].y);
}

/** A profile's value with its lengths in other units. */
function inUnits(profile: ProfileFile, from: FileUnits, to: FileUnits): ProfileFile {
  if (from === to) return profile;
  const length = (value: number) => toFileLength(toNanometres(value, from), to);
  const { outline, milled, tolerance, picture } = profile;
  return {
    ...profile,
    ...(tolerance === undefined ? {} : { tolerance: length(tolerance) }),
    ...(outline ? { outline: outline.map(([x, y, bulge]) => pointIn(length(x), length(y), bulge)) } : {}),
    ...(milled ? { milled: milledIn(milled, length) } : {}),
    ...(picture ? { picture: writePicture(readPicture(picture, from), to, picture) } : {}),
  };
}

function pointIn(x: number, y: number, bulge?: number): [number, number] | [number, number, number] {
  return bulge === undefined ? [x, y] : [x, y, bulge];
}

function milledIn(milled: MilledFile, length: (value: number) => number): MilledFile {
  return {
    ...milled,
    thickness: length(milled.thickness),
    height: length(milled.height),
    ...(milled.backRadius === undefined ? {} : { backRadius: length(milled.backRadius) }),
    grooves: milled.grooves.map((groove) => ({
      ...groove,
      bottom: length(groove.bottom),
      width: length(groove.width),
      depth: length(groove.depth),
      ...(groove.rootRadius === undefined ? {} : { rootRadius: length(groove.rootRadius) }),
    })),
  };
}

function differencesOf({ file, family: ours }: FamilyDocument, { family: theirs }: FamilyDocument): string[] {
  const say = (nm: number) => sayLength(nm, file.units);
  const differences: string[] = [];
  if (ours.runningClearance !== theirs.runningClearance)
    differences.push(
      `${theirs.name} has a running clearance of ${say(theirs.runningClearance)}, ${ours.name} of ${say(ours.runningClearance)}, which then holds for all.`,
    );
  if (ours.tolerance !== theirs.tolerance)
    differences.push(
      `${theirs.name} states a tolerance of ${say(theirs.tolerance)}, ${ours.name} of ${say(ours.tolerance)}, which then holds for every section that states none of its own.`,
    );
  if (ours.tiltLimit !== theirs.tiltLimit)
    differences.push(
      `${theirs.name} lets a blade lean by ${sayDegrees(theirs.tiltLimit)}, ${ours.name} by ${sayDegrees(ours.tiltLimit)}, which then holds for all.`,
    );
  if (theirs.leastWeb !== undefined && ours.leastWeb !== theirs.leastWeb)
    differences.push(
      `${theirs.name} wants a web of at least ${say(theirs.leastWeb)}, ${ours.name} ${ours.leastWeb === undefined ? 'sets none' : `of ${say(ours.leastWeb)}`}, which then holds for all.`,
    );
  differences.push(...sectionsThatDiffer(ours.profiles, theirs));
  differences.push(...theirs.profiles.flatMap((profile) => factsThatDiffer(ours.profiles, profile)));
  if (ours.units !== theirs.units)
    differences.push(`${theirs.name} is written in ${theirs.units}; its lengths are converted to ${ours.units}.`);
  return differences;
}

/** Sections that both families have by name, with keyways or blanks of another shape: names of them mean two things then. */
function sectionsThatDiffer(ours: readonly Profile[], { name, profiles }: FamilyDocument['family']): string[] {
  const shapes = (list: readonly Profile[], { section, kind }: Profile) =>
    new Set(list.filter((p) => p.section === section && p.kind === kind).map(({ ring }) => outlineKey(ring)));
  const differ = profiles.filter((profile) => {
    const here = profile.section === undefined ? new Set() : shapes(ours, profile);
    return here.size > 0 && !here.has(outlineKey(profile.ring));
  });
  return [...new Set(differ.map(({ section }) => section))].map(
    (section) =>
      `The section ${section} has another shape in ${name}. Where both are kept, names and claims of ${section} mean either; give one of them another section name.`,
  );
}

function sayDegrees(radians: number): string {
  return `${Number(((radians * 180) / Math.PI).toFixed(4))}°`;
}

/** What is said otherwise of a section that both have with one outline; that of the open family stays. */
function factsThatDiffer(profiles: readonly Profile[], profile: Profile): string[] {
  const ours = profiles.find(({ id }) => id === profile.id);
  if (!ours || !isSame(ours, profile)) return [];
  const facts = ['name', 'section', 'chambers', 'tolerance'] as const;
  const other = facts.filter((fact) => ours[fact] !== profile[fact]).map((fact): string => fact);
  if ((ours.milled === undefined) !== (profile.milled === undefined)) other.push('form (milled or drawn)');
  if (other.length === 0) return [];
  return [
    `${ours.name} is there already with the same outline but another ${other.join(', ')}; left out, it stays so.`,
  ];
}
