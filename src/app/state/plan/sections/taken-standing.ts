import type { Family } from '../../../../family/family.ts';
import type { KnownFits } from '../../../../family/known-fits.ts';
import type { Verdict } from '../../../../fit/fit.ts';
import type { FamilyDocument } from '../../../../interchange/json/read.ts';
import type { Access } from '../../../../plan/access.ts';
import { outlineKey } from '../../../../profile/outline-key.ts';
import type { Profile } from '../../../../profile/profile.ts';
import type { DrawnSections } from './drawn-sections.ts';
import type { SectionsQuestion } from './sections-question.ts';

/** A planned pair of the family that is not as the plan asks. */
export interface WrongPair {
  readonly blank: Profile;
  readonly opening: Profile;
  /** What the plan asks for; stopped: it is blocked, but by too few wards. */
  readonly wanted: 'enters' | 'blocked' | 'stopped';
}

/**
 * How the planned sections of a family stand to its plan. none: it holds none. same: they are those that are drawn now.
 * serves: they are others, and keep the plan. waiting: they are others that are not judged yet. outdated: they do not
 * keep the plan.
 */
export type TakenStanding =
  | { readonly kind: 'none' | 'same' | 'serves' | 'waiting' }
  | {
      readonly kind: 'outdated';
      readonly wrong: readonly WrongPair[];
      /** Names of what the plan asks for and the family does not hold, and the other way round. */
      readonly missing: readonly string[];
      readonly extra: readonly string[];
    };

/** The planned sections of a document. */
export function plannedProfiles({ file, family }: FamilyDocument): Profile[] {
  return family.profiles.filter((_, i) => file.profiles[i]?.planned === true);
}

/**
 * How the planned sections of the open family stand to its plan as it is now.
 *
 * @param drawn what is drawn of the plan now; null where nothing is.
 * @param fits what is judged of the family.
 * @check tests/unit/app/taken-standing.test.ts
 */
export function takenStanding(
  document: FamilyDocument,
  { access, plan }: Pick<SectionsQuestion, 'access' | 'plan'>,
  drawn: DrawnSections | null,
  fits: KnownFits | null,
): TakenStanding {
  const planned = plannedProfiles(document);
  if (planned.length === 0) return { kind: 'none' };
  if (drawn && isSame(planned, drawn)) return { kind: 'same' };
  const held = heldParts(planned, access);
  if (held.missing.length > 0 || held.extra.length > 0) return { kind: 'outdated', wrong: [], ...held };
  return judged(access, plan.stops, held, fits);
}

function isSame(planned: readonly Profile[], { openings, blanks }: DrawnSections): boolean {
  const drawn = new Set([...openings, ...blanks].map(partKey));
  return planned.length === drawn.size && planned.every((profile) => drawn.has(partKey(profile)));
}

/** What a drawn part is known again by in a family, where it may have taken another id. */
function partKey({ kind, name, ring }: Profile): string {
  return `${kind} ${name} ${outlineKey(ring)}`;
}

/**
 * Names of planned sections that were changed since they were taken: most of the family's are as they are drawn now, and
 * these are not.
 *
 * @check tests/unit/app/taken-standing.test.ts
 */
export function changedSince(document: FamilyDocument, drawn: DrawnSections | null): string[] {
  const planned = plannedProfiles(document);
  if (!drawn) return [];
  const asDrawn = new Set([...drawn.openings, ...drawn.blanks].map(partKey));
  const names = new Set([...drawn.openings, ...drawn.blanks].map(({ kind, name }) => `${kind} ${name}`));
  const others = planned.filter((part) => !asDrawn.has(partKey(part)));
  if (2 * others.length > planned.length) return [];
  return others.filter(({ kind, name }) => names.has(`${kind} ${name}`)).map(({ name }) => name);
}

/** A drawn part as the family holds it; undefined where it does not. */
export function heldAs(family: Family, part: Profile): Profile | undefined {
  return family.profiles.find(({ kind, name, ring }) => {
    return kind === part.kind && name === part.name && outlineKey(ring) === outlineKey(part.ring);
  });
}

interface HeldParts {
  readonly openings: readonly (Profile | undefined)[];
  readonly blanks: readonly (Profile | undefined)[];
  readonly missing: readonly string[];
  readonly extra: readonly string[];
}

/** The family's planned parts by their place in the plan. */
function heldParts(planned: readonly Profile[], access: Access): HeldParts {
  const openingBySection = new Map(planned.flatMap((p) => (p.kind === 'opening' && p.section ? [[p.section, p]] : [])));
  const blanksHeld = planned.filter(({ kind }) => kind === 'blank');
  const openings = access.sections.map(({ name }) => openingBySection.get(name));
  const blanks = access.blanks.map(({ id }) => heldBlank(blanksHeld, id));
  const used = new Set([...openings, ...blanks]);
  return {
    openings,
    blanks,
    missing: [
      ...access.sections.flatMap(({ name }, s) => (openings[s] ? [] : [`the keyway of ${name}`])),
      ...access.blanks.flatMap(({ name }, b) => (blanks[b] ? [] : [`the blank ${name}`])),
    ],
    extra: planned.filter((profile) => !used.has(profile)).map(({ name }) => name),
  };
}

/** The blank of a plan's id; one that found its id taken has a number behind it. */
export function heldBlank(blanks: readonly Profile[], id: string): Profile | undefined {
  const numbered = (other: string) => other.startsWith(`${id}-`) && /^\d+$/.test(other.slice(id.length + 1));
  return blanks.find((blank) => blank.id === id) ?? blanks.find((blank) => numbered(blank.id));
}

function judged(
  { table }: Access,
  stops: number,
  { openings, blanks }: HeldParts,
  fits: KnownFits | null,
): TakenStanding {
  const verdictOf = verdicts(fits);
  const wrong: WrongPair[] = [];
  for (const [s, opening] of openings.entries())
    for (const [b, blank] of blanks.entries()) {
      const cell = table[s][b];
      if (!opening || !blank || cell === null) continue;
      const verdict = verdictOf(blank.id, opening.id);
      if (!verdict) return { kind: 'waiting' };
      const wanted = wrongBy({ opening, blank, verdict }, cell, stops);
      if (wanted) wrong.push({ blank, opening, wanted });
    }
  return wrong.length === 0 ? { kind: 'serves' } : { kind: 'outdated', wrong, missing: [], extra: [] };
}

/** What a judged pair lacks of what the plan asks; null where nothing. */
function wrongBy(
  { opening, blank, verdict }: { readonly opening: Profile; readonly blank: Profile; readonly verdict: Verdict },
  cell: 0 | 1,
  stops: number,
): WrongPair['wanted'] | null {
  if (cell === 1) return verdict === 'enters' ? null : 'enters';
  if (verdict !== 'blocked') return 'blocked';
  return stoppingWards(opening, blank) < stops ? 'stopped' : null;
}

/**
 * How many wards of a milled keyway stand in a milled blank's way, each by itself: no groove of the blank on that side, at
 * about that height, is as deep. Infinity where one of them is not milled.
 */
export function stoppingWards(opening: Profile, blank: Profile): number {
  if (!opening.milled || !blank.milled) return Number.POSITIVE_INFINITY;
  const { grooves } = blank.milled;
  // Wards are drawn smaller than their grooves by the gap, so a groove for them is no shallower than they are.
  return opening.milled.grooves.filter(
    (ward) =>
      !grooves.some(
        ({ side, bottom, width, depth }) =>
          side === ward.side &&
          Math.abs(bottom + width / 2 - ward.bottom - ward.width / 2) < width &&
          depth >= ward.depth,
      ),
  ).length;
}

/** The verdicts that are known, by the ids of blank and opening. */
export function verdicts(fits: KnownFits | null): (blankId: string, openingId: string) => Verdict | undefined {
  const columns = new Map(fits?.openings.map((id, i) => [id, i]));
  const rows = new Map(fits?.profiles.map((id, i) => [id, i]));
  return (blankId, openingId) => fits?.fits[rows.get(blankId) ?? -1]?.[columns.get(openingId) ?? -1]?.verdict;
}
