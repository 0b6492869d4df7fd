import { NM_PER_MM } from '../../../../geom/point.ts';
import { asTrustedRing } from '../../../../geom/ring.ts';
import type { Access } from '../../../../plan/access.ts';
import type { DrawnPlan, PlannedProfile } from '../../../../plan/drawn-plan.ts';
import type { SiteLayout, WardSite } from '../../../../plan/ward-sites.ts';
import { millOutline } from '../../../../profile/mill-outline.ts';
import type { GrooveSide, Profile } from '../../../../profile/profile.ts';

/** A plan that was drawn and confirmed. */
export type ConfirmedPlan = Extract<DrawnPlan, { ok: true }>;

/** The sections of a confirmed plan as profiles, in the order of the plan. */
export interface DrawnSections {
  readonly openings: readonly Profile[];
  readonly blanks: readonly Profile[];
}

const known = new WeakMap<ConfirmedPlan, DrawnSections>();

/**
 * The sections of a confirmed plan as profiles to be drawn and judged; the very same for the very same plan.
 *
 * @check tests/unit/app/drawn-sections.test.ts
 */
export function drawnSections(plan: ConfirmedPlan): DrawnSections {
  const before = known.get(plan);
  if (before) return before;
  const profiles = plan.profiles.flatMap((profile) => toProfile(profile) ?? []);
  const drawn = {
    openings: profiles.filter(({ kind }) => kind === 'opening'),
    blanks: profiles.filter(({ kind }) => kind === 'blank'),
  };
  known.set(plan, drawn);
  return drawn;
}

function toProfile({ id, kind, name, section, milled }: PlannedProfile): Profile | null {
  const outline = millOutline(milled);
  if (!Array.isArray(outline)) return null;
  return { id, kind, name, ...(section !== undefined && { section }), ring: asTrustedRing(outline), milled };
}

/** What a site of a ward plan is called, and where it lies. */
export interface NamedSite {
  /** Its place in the ward plan. */
  readonly at: number;
  /** Its number on the blade; a letter while it has no place there yet. */
  readonly name: string;
  readonly site: WardSite | null;
}

/**
 * The sites of a ward plan in the order in which they are shown: by their numbers on the blade once they are drawn, with
 * letters before.
 *
 * @param sites real sites in the order of the ward plan; null while nothing is drawn.
 * @check tests/unit/app/drawn-sections.test.ts
 */
export function namedSites(count: number, sites: readonly WardSite[] | null, { sites: all }: SiteLayout): NamedSite[] {
  if (!sites) return Array.from({ length: count }, (_, at) => ({ at, name: siteLetters(at), site: null }));
  const named = Array.from({ length: count }, (_, at) => {
    const site = sites[at] ?? null;
    return { at, site, number: site ? siteNumber(site, all) : 0 };
  });
  named.sort((a, b) => a.number - b.number);
  return named.map(({ at, site, number }) => ({ at, site, name: number > 0 ? String(number) : siteLetters(at) }));
}

/** The number of a site among all that the blade has room for, from 1; 0 where it is none of them. */
export function siteNumber({ side, bottom }: Pick<WardSite, 'side' | 'bottom'>, all: readonly WardSite[]): number {
  return all.findIndex((site) => site.side === side && site.bottom === bottom) + 1;
}

/** a, b … z, aa, ab … */
function siteLetters(at: number): string {
  const last = String.fromCharCode(97 + (at % 26));
  return at < 26 ? last : siteLetters(Math.floor(at / 26) - 1) + last;
}

/** The blank and the opening of a pair of the plan; null where they are not drawn (kept in reserve). */
export function drawnPair(
  drawn: DrawnSections,
  access: Access,
  section: number,
  blank: number,
): { readonly opening: Profile; readonly entrant: Profile } | null {
  const opening = section < access.sections.length ? drawn.openings[section] : undefined;
  const entrant = blank < access.blanks.length ? drawn.blanks[blank] : undefined;
  return opening && entrant ? { opening, entrant } : null;
}

/** A ward of a keyway with the name of its site. */
export interface NamedWard {
  readonly name: string;
  readonly side: GrooveSide;
  /** Height of its middle, millimetres. */
  readonly at: number;
}

/**
 * The wards of a milled keyway with the sites that they stand at.
 *
 * @check tests/unit/app/drawn-sections.test.ts
 */
export function wardNumbers({ milled }: Profile, sites: readonly NamedSite[]): NamedWard[] {
  return (milled?.grooves ?? []).map(({ side, bottom, width }) => {
    const off = ({ site }: NamedSite) => Math.abs((site?.bottom ?? 0) - bottom);
    const [nearest] = sites.filter(({ site }) => site?.side === side).sort((a, b) => off(a) - off(b));
    return { name: nearest?.name ?? '', side, at: (bottom + width / 2) / NM_PER_MM };
  });
}
