import { blankForLength } from '../../../../capacity/blank-lengths.ts';
import type { Capacity } from '../../../../capacity/capacity.ts';
import { entryTable, withEntrants } from '../../../../family/entry-table.ts';
import type { Family } from '../../../../family/family.ts';
import type { KnownFits } from '../../../../family/known-fits.ts';
import type { Profile } from '../../../../profile/profile.ts';

/** Blanks against keyways as far as they are judged: what the sections of a family are counted from. */
export interface JudgedBlanks {
  readonly blanks: readonly string[];
  readonly openings: readonly string[];
  /** `goesIn[blank][keyway]`; a pair that is not judged counts as going in. */
  readonly goesIn: readonly (readonly boolean[])[];
  /** Pairs that are not judged yet. */
  readonly open: number;
}

const latest = new WeakMap<Family, JudgedBlanks>();

/**
 * The blanks of a family, tools left out, with what they enter; the same value until a verdict changes.
 *
 * @returns null where nothing is judged or there is no keyway.
 */
export function judgedBlanks(family: Family, fits: KnownFits | null): JudgedBlanks | null {
  const judged = fits && readJudged(family, fits);
  if (!judged) return null;
  const before = latest.get(family);
  if (before && isSameJudged(before, judged)) return before;
  latest.set(family, judged);
  return judged;
}

function readJudged(family: Family, fits: KnownFits): JudgedBlanks | null {
  if (fits.openings.length === 0) return null;
  const blanks = new Set(family.profiles.filter(({ kind }) => kind === 'blank').map(({ id }) => id));
  const { entrants, openings, goesIn } = withEntrants(entryTable(fits), (id) => blanks.has(id));
  if (entrants.length === 0) return null;
  const open = goesIn.reduce((sum, row) => sum + row.filter((cell) => cell === null).length, 0);
  return { blanks: entrants, openings, goesIn: goesIn.map((row) => row.map((cell) => cell !== false)), open };
}

function isSameJudged(a: JudgedBlanks, b: JudgedBlanks): boolean {
  return (
    a.open === b.open &&
    isSameList(a.blanks, b.blanks) &&
    isSameList(a.openings, b.openings) &&
    isSameEntry(a.goesIn, b.goesIn)
  );
}

/** Whether the same blanks go into the same keyways, place by place. */
export function isSameEntry(a: JudgedBlanks['goesIn'], b: JudgedBlanks['goesIn']): boolean {
  return a.length === b.length && a.every((row, i) => isSameList(row, b[i]));
}

function isSameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a === b || (a.length === b.length && a.every((one, i) => one === b[i]));
}

/** A section that is counted: its keyway and the blank that its keys are cut on. */
export interface CountedSection {
  readonly keyway: Profile;
  readonly blank: Profile;
  /** Whether the blank is stated to be shorter than the keys. */
  readonly tooShort: boolean;
}

/** The sections that exclude each other, in chart order, each with a blank of the length that its keys need. */
export function countedSections(
  family: Family,
  { sections }: Capacity,
  { blanks, openings, goesIn }: JudgedBlanks,
  chambers: number,
): CountedSection[] {
  const byId = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const lengths = blanks.map((id) => byId.get(id)?.chambers);
  return (sections?.pairs ?? []).flatMap((pair) => {
    const own = blankForLength(goesIn, pair.blank, lengths, chambers);
    const keyway = byId.get(openings[pair.keyway]);
    const blank = byId.get(blanks[own.blank]);
    return keyway && blank ? [{ keyway, blank, tooShort: own.tooShort }] : [];
  });
}

/** A blank that enters several of the counted sections. */
export interface SharedBlank {
  readonly blank: Profile;
  readonly keyways: readonly Profile[];
}

/** The blanks whose bittings are shared by several counted sections, those that enter most first. */
export function sharedBlanks(family: Family, counted: readonly CountedSection[], judged: JudgedBlanks): SharedBlank[] {
  const columns = counted.map(({ keyway }) => ({ keyway, k: judged.openings.indexOf(keyway.id) }));
  const shared = judged.blanks.flatMap((id, b) => {
    const blank = family.profiles.find((profile) => profile.id === id);
    const keyways = columns.filter(({ k }) => judged.goesIn[b][k]).map(({ keyway }) => keyway);
    return blank && keyways.length > 1 ? [{ blank, keyways }] : [];
  });
  return shared.sort((a, b) => b.keyways.length - a.keyways.length);
}

/** The keyways that are not counted: each has no blank of its own that stays out of the others. */
export function uncountedKeyways(family: Family, counted: readonly CountedSection[]): Profile[] {
  const known = new Set(counted.map(({ keyway }) => keyway.id));
  return family.profiles.filter(({ id, kind }) => kind === 'opening' && !known.has(id));
}
