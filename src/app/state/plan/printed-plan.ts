import type { Family } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import { boxOf, NM_PER_MM } from '../../../geom/point.ts';
import type { FamilyDocument } from '../../../interchange/json/read.ts';
import type { Access } from '../../../plan/access.ts';
import { areaTree, FREE, leafTicks, MUST } from '../../../plan/area-tree.ts';
import type { SiteLayout, WardSite } from '../../../plan/ward-sites.ts';
import type { GrooveSide, Milled, Profile } from '../../../profile/profile.ts';
import { thinnestWeb } from '../../../profile/thinnest-web.ts';
import { bandText, readingText, type Units, wearLengthText } from '../length-text.ts';
import type { Fact } from '../profile-facts.ts';
import { type ConfirmedPlan, drawnSections } from './drawn-sections.ts';
import { planReadings } from './report-readings.ts';
import type { SectionsQuestion } from './sections-question.ts';
import { wantedOf } from './sections-rows.ts';
import { heldBlank, plannedProfiles, verdicts } from './taken-standing.ts';

/** Whether a pair goes in, as it is printed; free: the plan lets it do either. */
export type PrintedEntry = 'enters' | 'tight' | 'blocked' | 'free' | 'unknown';

/** An area in the order of the tree. */
export interface PrintedArea {
  readonly name: string;
  /** How many groups it lies in. */
  readonly depth: number;
  /** Its section; null for a group. */
  readonly section: string | null;
}

/** A holder with the blanks that they carry. */
export interface PrintedHolder {
  readonly name: string;
  readonly enters: string;
  readonly blanks: string;
}

/** A section of the printed family: a keyway or a blank, with what is said under its picture. */
export interface PrintedSection {
  readonly profile: Profile;
  readonly title: string;
  readonly aside: string;
}

/** A site in the table of wards and grooves. */
export interface PrintedSite {
  readonly name: string;
  readonly side: GrooveSide;
  readonly bottom: number;
}

/** A row of that table: the depth at each site, nanometres; 0 for none. */
export interface PrintedRow {
  readonly name: string;
  readonly depths: readonly number[];
}

/** Everything that stands on the printed sheet of a planned family. */
export interface PrintedPlan {
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly areas: readonly PrintedArea[];
  readonly holders: readonly PrintedHolder[];
  readonly openings: readonly PrintedSection[];
  readonly blanks: readonly PrintedSection[];
  /** `entries[blank][opening]`. */
  readonly entries: readonly (readonly PrintedEntry[])[];
  readonly sites: readonly PrintedSite[];
  readonly wards: readonly PrintedRow[];
  readonly grooves: readonly PrintedRow[];
  readonly report: readonly Fact[];
}

/** What is printed: sections as they are drawn now, or those that the family holds. */
export type PrintSource =
  | { readonly from: 'drawn'; readonly confirmed: ConfirmedPlan }
  | { readonly from: 'family'; readonly document: FamilyDocument; readonly fits: KnownFits | null };

/**
 * The sheet of a planned family.
 *
 * @check tests/unit/app/printed-plan.test.ts
 */
export function printedPlan(
  family: Family,
  question: SectionsQuestion,
  source: PrintSource,
  units: Units,
): PrintedPlan {
  const { openings, blanks } =
    source.from === 'drawn' ? drawnSections(source.confirmed) : heldSections(source.document);
  const { access, layout } = question;
  const sites = printedSites(layout, [...openings, ...blanks]);
  return {
    title: family.name,
    facts: planFacts(question, { openings: openings.length, blanks: blanks.length, sites: sites.length }, units),
    areas: printedAreas(question),
    holders: printedHolders(question, blanks),
    openings: openings.map((profile) => ({
      profile,
      title: profile.name,
      aside: areasOf(question, profile),
    })),
    blanks: blanks.map((profile) => ({ profile, title: profile.name, aside: holdersOf(question, profile) })),
    entries: entriesOf(source, access, openings, blanks),
    sites,
    wards: openings.map((profile) => rowOf(profile, sites, layout)),
    grooves: blanks.map((profile) => rowOf(profile, sites, layout)),
    report:
      source.from === 'drawn'
        ? drawnReport(source.confirmed, access, units)
        : heldReport(source.fits, blanks, openings, units),
  };
}

function heldSections(document: FamilyDocument) {
  const planned = plannedProfiles(document);
  return {
    openings: planned.filter(({ kind }) => kind === 'opening'),
    blanks: planned.filter(({ kind }) => kind === 'blank'),
  };
}

function planFacts(
  { plan, gap }: SectionsQuestion,
  counts: { readonly openings: number; readonly blanks: number; readonly sites: number },
  units: Units,
): Fact[] {
  const { blade } = plan;
  return [
    { term: 'Keyways', value: String(counts.openings) },
    { term: 'Blanks', value: String(counts.blanks) },
    { term: 'Ward sites used', value: String(counts.sites) },
    { term: 'Blade', value: `${readingText(blade.thickness, units)} × ${readingText(blade.height, units)}` },
    { term: 'Running clearance', value: readingText(gap.runningClearance, units) },
    { term: 'Tolerance, to either side', value: readingText(gap.tolerance, units) },
    { term: 'Stopped by', value: `at least ${plan.stops} ${plan.stops === 1 ? 'ward' : 'wards'}` },
    { term: 'Depths per site', value: String(plan.depths) },
    { term: 'In reserve', value: `${plan.reserve} ${plan.reserve === 1 ? 'section' : 'sections'}` },
  ];
}

function printedAreas({ plan, access }: SectionsQuestion): PrintedArea[] {
  const sections = new Map(access.sections.flatMap(({ name, areas }) => areas.map((id) => [id, name])));
  return areaTree(plan.areas).rows.map(({ area, depth, isGroup }) => ({
    name: area.name,
    depth,
    section: isGroup ? null : (sections.get(area.id) ?? null),
  }));
}

function printedHolders({ plan, access }: SectionsQuestion, blanks: readonly Profile[]): PrintedHolder[] {
  const tree = areaTree(plan.areas);
  return plan.holders.map((holder) => {
    const ticks = leafTicks(tree, holder);
    const named = (tick: number) => tree.leaves.flatMap(({ name }, i) => (ticks[i] === tick ? [name] : []));
    const [must, free] = [named(MUST), named(FREE)];
    const all = must.length === tree.leaves.length && must.length > 1 ? 'all areas' : must.join(', ');
    const enters = free.length > 0 ? `${all} (also may: ${free.join(', ')})` : all;
    const carried = access.blanks
      .filter(({ holders }) => holders.includes(holder.id))
      .map(({ id, name }) => heldBlank(blanks, id)?.name ?? name);
    return { name: holder.name, enters: enters || 'nothing yet', blanks: carried.join(', ') || 'none' };
  });
}

function areasOf({ plan, access }: SectionsQuestion, { section }: Profile): string {
  const names = new Map(plan.areas.map(({ id, name }) => [id, name]));
  const areas = access.sections.find(({ name }) => name === section)?.areas ?? [];
  return areas.map((id) => names.get(id) ?? id).join(', ');
}

function holdersOf({ plan, access }: SectionsQuestion, profile: Profile): string {
  const names = new Map(plan.holders.map((holder) => [holder.id, holder.name]));
  const blank = access.blanks.find((one) => heldBlank([profile], one.id) !== undefined);
  return blank?.holders.map((holder) => names.get(holder) ?? holder).join(', ') ?? '';
}

/** The sites that some section has a ward or groove at, numbered as on the blade; others by letters. */
function printedSites({ sites }: SiteLayout, profiles: readonly Profile[]): PrintedSite[] {
  const used = new Set(
    profiles.flatMap(({ milled }) => milled?.grooves.map((groove) => nearestSite(groove, sites)) ?? []),
  );
  return sites.flatMap(({ side, bottom }, i) => (used.has(i) ? [{ name: String(i + 1), side, bottom }] : []));
}

function rowOf({ name, milled }: Profile, sites: readonly PrintedSite[], layout: SiteLayout): PrintedRow {
  const depthAt = new Map((milled?.grooves ?? []).map((groove) => [nearestSite(groove, layout.sites), groove.depth]));
  return { name, depths: sites.map((site) => depthAt.get(Number(site.name) - 1) ?? 0) };
}

/** The number of the site on a groove's face that its lower edge is nearest to; -1 where there is none. */
function nearestSite({ side, bottom }: Milled['grooves'][number], sites: readonly WardSite[]): number {
  let best = -1;
  for (const [i, site] of sites.entries()) {
    if (site.side !== side) continue;
    if (best < 0 || Math.abs(site.bottom - bottom) < Math.abs(sites[best].bottom - bottom)) best = i;
  }
  return best;
}

/** Where a site lies on the blade: "left 1.4–2.0 mm". */
export function siteBandText({ side, bottom }: PrintedSite, width: number, units: Units): string {
  return `${side} ${bandText(bottom, bottom + width, units)}`;
}

const ENTRIES = { must: 'enters', not: 'blocked', free: 'free' } as const;

function entriesOf(
  source: PrintSource,
  { table }: Access,
  openings: readonly Profile[],
  blanks: readonly Profile[],
): PrintedEntry[][] {
  if (source.from === 'drawn') return blanks.map((_, b) => openings.map((_, s) => ENTRIES[wantedOf(table[s][b])]));
  const verdictOf = verdicts(source.fits);
  return blanks.map(({ id }) => openings.map((opening) => verdictOf(id, opening.id) ?? 'unknown'));
}

function drawnReport(confirmed: ConfirmedPlan, access: Access, units: Units): Fact[] {
  const { report, profiles } = confirmed;
  const { clearance, guard, pairs } = report;
  const names = new Map(profiles.map(({ id, name }) => [id, name]));
  const pairText = ({ blank, opening }: { blank: string; opening: string }) =>
    `${names.get(blank) ?? blank} in ${names.get(opening) ?? opening}`;
  const { sections, blanks } = access;
  return [
    { term: 'Pairs judged by their outlines', value: `${pairs.wanted} enter, ${pairs.forbidden} stay out` },
    {
      term: 'Smallest clearance',
      value: clearance ? `${readingText(clearance.length, units)}, ${pairText(clearance)}` : 'none',
    },
    {
      term: 'Guard margin, wear of both parts',
      value: guard ? `${wearLengthText(guard.length, units)}, ${pairText(guard)}` : 'no wear lets any pair in',
    },
    ...planReadings(report, access).map(({ what, kind, place, figure }) => ({
      term: what,
      value: `${figure(units)}, ${(kind === 'blank' ? blanks : sections)[place]?.name ?? ''}`,
    })),
  ];
}

function heldReport(
  fits: KnownFits | null,
  blanks: readonly Profile[],
  openings: readonly Profile[],
  units: Units,
): Fact[] {
  const facts: Fact[] = [];
  const ids = new Set(openings.map(({ id }) => id));
  let least: { length: number; pair: string } | null = null;
  for (const blank of blanks) {
    const row = fits?.fits[fits.profiles.indexOf(blank.id)];
    for (const [i, fit] of row?.entries() ?? []) {
      const opening = fits?.openings[i] ?? '';
      if (!fit || fit.verdict === 'blocked' || !ids.has(opening)) continue;
      const name = openings.find(({ id }) => id === opening)?.name ?? opening;
      if (!least || fit.clearance < least.length) least = { length: fit.clearance, pair: `${blank.name} in ${name}` };
    }
  }
  facts.push({
    term: 'Smallest clearance',
    value: least ? `${readingText(least.length, units)}, ${least.pair}` : 'not judged yet',
  });
  const webs = blanks.flatMap(({ name, milled }) => {
    const web = milled && thinnestWeb(milled);
    return web ? [{ name, thickness: web.thickness }] : [];
  });
  const thinnest = webs.sort((a, b) => a.thickness - b.thickness)[0];
  if (thinnest)
    facts.push({ term: 'Thinnest web', value: `${readingText(thinnest.thickness, units)}, ${thinnest.name}` });
  return facts;
}

/** Width and height of a section, millimetres. */
export function sizeOf({ ring }: Profile): { readonly width: number; readonly height: number } {
  const { minX, maxX, minY, maxY } = boxOf(ring);
  return { width: (maxX - minX) / NM_PER_MM, height: (maxY - minY) / NM_PER_MM };
}
