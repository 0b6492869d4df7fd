import { type Family, openingsOf } from '../family/family.ts';
import { boxOf } from '../geom/point.ts';
import { blankFromOpening } from '../profile/opening-from-blank.ts';
import type { GrowJudge, Part } from './grow-judge.ts';
import { ofMiddleSize } from './grow-sites.ts';

/** The parts of a family by what they have to do with a new section. */
export interface FamilyParts {
  readonly keyways: readonly Part[];
  /** Blanks that enter every keyway: they have to enter new ones too. Empty where none does, or there is one keyway. */
  readonly tops: readonly Part[];
  /** Blanks that enter some keyways and not all, with the number of those. */
  readonly groups: readonly (Part & { readonly enters: number })[];
  /** Blanks that enter one keyway or none. */
  readonly bases: readonly Part[];
  /** Blanks that keyways will get: the widest one of each keyway that has none of its own. Their ids are the keyways'. */
  readonly implied: readonly Part[];
}

/** The least gap that a blank leaves all round: the running clearance, or more where the tolerances ask for it. Nanometres. */
export function gapOf({ runningClearance, tolerance }: Family): number {
  return Math.max(runningClearance, 2 * tolerance, LEAST_GAP);
}

/** A blank with no gap at all could not be told from its keyway, nanometres. */
const LEAST_GAP = 1_000;

/**
 * The gap that a new blank leaves all round. Where most base blanks are of one size over all it is what a blank of that size
 * leaves in the keyway of middle size, which new keyways are drawn after: a new blank then is milled from the same stock.
 * Else, or where that would be too little, it is the least.
 *
 * @returns nanometres.
 * @check tests/unit/plan/grow-family.test.ts
 */
export function newGapOf(family: Family, { keyways, bases }: Pick<FamilyParts, 'keyways' | 'bases'>): number {
  const least = gapOf(family) + ROUNDING;
  const usual = usualSize(bases);
  if (!usual || keyways.length === 0) return least;
  const { width, height } = sizeOf(ofMiddleSize(keyways));
  const [aside, above] = [(width - usual.width) / 2, (height - usual.height) / 2];
  return Math.abs(aside - above) <= ROUNDING ? Math.max(least, Math.round(aside)) : least;
}

/** What rounding to whole micrometres may take, nanometres. */
export const ROUNDING = 1_000;

/** The size over all of more than half of the blanks; null where there is none. */
function usualSize(blanks: readonly Part[]): ReturnType<typeof sizeOf> | null {
  const sizes = blanks.map(sizeOf);
  const alike = (a: (typeof sizes)[number]) =>
    sizes.filter((b) => Math.abs(a.width - b.width) <= ROUNDING && Math.abs(a.height - b.height) <= ROUNDING).length;
  return sizes.find((one) => 2 * alike(one) > sizes.length) ?? null;
}

function sizeOf({ ring }: Part): { readonly width: number; readonly height: number } {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  return { width: maxX - minX, height: maxY - minY };
}

/**
 * Sorts the blanks of a family by the keyways that they go into, tight ones counted. Tools are left out: they open
 * nothing by themselves. A blank in several lengths is one.
 *
 * @check tests/unit/plan/grow-family.test.ts
 */
export function* partsOfFamily(
  family: Family,
  judge: GrowJudge,
): Generator<{ done: number; total: number }, FamilyParts, void> {
  const part = (id: string, ring: Part['ring'], band = family.tolerance): Part => ({ id, ring, band });
  const keyways = openingsOf(family).map(({ id, ring, tolerance }) => part(id, ring, tolerance));
  const blanks = distinct(
    family.profiles.filter(({ kind }) => kind === 'blank').map(({ id, ring, tolerance }) => part(id, ring, tolerance)),
  );
  const [tops, groups, bases]: [Part[], FamilyParts['groups'][number][], Part[]] = [[], [], []];
  const own = new Set<string>();
  for (const [i, blank] of blanks.entries()) {
    const entered = keyways.filter((keyway) => judge.goesIn(keyway, blank));
    if (entered.length === keyways.length && keyways.length > 1 && keyways.every((k) => judge.enters(k, blank).ok))
      tops.push(blank);
    else if (entered.length > 1) groups.push({ ...blank, enters: entered.length });
    else bases.push(blank);
    if (entered.length === 1) own.add(entered[0].id);
    yield { done: i + 1, total: blanks.length };
  }
  const implied = openingsOf(family).flatMap((opening) => {
    if (own.has(opening.id)) return [];
    const { name, ring } = opening;
    const made = blankFromOpening({ name, ring }, gapOf(family));
    return made.ok ? [part(opening.id, made.made.ring)] : [];
  });
  return { keyways, tops, groups, bases, implied };
}

/** Outlines that come several times, as blanks of other lengths do, once. */
function distinct(parts: readonly Part[]): Part[] {
  const seen = new Set<string>();
  return parts.filter(({ ring, band }) => {
    const content = `${band} ${ring.map(({ x, y }) => `${x} ${y}`).join(' ')}`;
    return !seen.has(content) && Boolean(seen.add(content));
  });
}
