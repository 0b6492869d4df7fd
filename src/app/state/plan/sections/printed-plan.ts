import type { Family } from '../../../../family/family.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import type { Verdict } from '../../../../fit/fit.ts';
import { boxOf, NM_PER_MM } from '../../../../geom/point.ts';
import type { FamilyDocument } from '../../../../interchange/json/read.ts';
import type { Access } from '../../../../plan/access.ts';
import { areaTree, FREE, leafTicks, MUST } from '../../../../plan/area-tree.ts';
import { leastWebOf } from '../../../../plan/plan-gap.ts';
import type { SiteLayout, WardSite } from '../../../../plan/ward-sites.ts';
import type { GrooveSide, Milled, Profile } from '../../../../profile/profile.ts';
import type { Fact } from '../../profile-facts.ts';
import { drawnSections } from './drawn-sections.ts';
import type { PrintSource } from './print-source.ts';
import { drawnReport, heldReport, printedNotes } from './printed-report.ts';
import type { SectionsQuestion } from './sections-question.ts';
import { foundWords } from './sections-words.ts';
import { heldBlank, plannedProfiles, verdicts } from './taken-standing.ts';

/** Whether a pair goes in, and whether the plan lets it do either. */
export interface PrintedEntry {
  readonly verdict: Verdict | 'unknown';
  readonly isFree: boolean;
}

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
  /** What else is to be known of the report, in sentences. */
  readonly notes: readonly string[];
}

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
    facts: [
      { term: 'Keyways and blanks', value: `${openings.length} and ${blanks.length}` },
      { term: 'Ward sites', value: sitesText(source, sites.length) },
      ...planFacts(question, units),
    ],
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
        : heldReport(source, blanks, openings, units),
    notes: printedNotes(source, question, units),
  };
}

function heldSections(document: FamilyDocument) {
  const planned = plannedProfiles(document);
  return {
    openings: planned.filter(({ kind }) => kind === 'opening'),
    blanks: planned.filter(({ kind }) => kind === 'blank'),
  };
}

/** How many sites are used, and whether fewer would do. */
function sitesText(source: PrintSource, count: number): string {
  if (source.from === 'family') return String(count);
  const { found } = source;
  if (found.sites === 0) return '0';
  return foundWords(found, found.sites).replace(/ sites?/, '');
}

/** What is asked of blades, cutter and wards. */
function planFacts({ plan, gap }: SectionsQuestion, units: Units): Fact[] {
  const { blade } = plan;
  const length = (nm: number) => readingText(nm, units);
  const lengths: readonly (readonly [string, number])[] = [
    ['Radius of the back', blade.backRadius],
    ['Kept free for the cuts', blade.cutZone],
    ['Kept free at the back', blade.backZone],
    ['Width of a groove', blade.grooveWidth],
    ['From one groove to the next', blade.heightStep],
    ['Deepest groove', blade.grooveDepth],
    ['Radius at the root', blade.rootRadius],
    ['Least web', leastWebOf(gap)],
    ['Running clearance', gap.runningClearance],
    ['Tolerance, to either side', gap.tolerance],
  ];
  return [
    { term: 'Blade', value: `${length(blade.thickness)} × ${length(blade.height)}` },
    ...lengths.map(([term, nm]) => ({ term, value: length(nm) })),
    ...(plan.depths > 1 ? [{ term: 'From one depth to the next', value: length(blade.depthStep) }] : []),
    { term: 'Flank, from square', value: `${Math.round((blade.flank * 18_000) / Math.PI) / 100}°` },
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

/** Where a site lies on the blade, as closely as all lengths of the sheet: "left 1.400–2.000 mm". */
export function siteBandText({ side, bottom }: PrintedSite, width: number, units: Units): string {
  return `${side} ${readingText(bottom, units).split(' ')[0]}–${readingText(bottom + width, units)}`;
}

function entriesOf(
  source: PrintSource,
  { table }: Access,
  openings: readonly Profile[],
  blanks: readonly Profile[],
): PrintedEntry[][] {
  const verdictOf = source.from === 'drawn' ? null : verdicts(source.fits);
  return blanks.map((blank, b) =>
    openings.map((opening, s) => {
      // Every other pair is confirmed to do as the plan says; one that may do either does what its wards say.
      const isFree = table[s]?.[b] === null;
      if (source.from === 'family') return { verdict: verdictOf?.(blank.id, opening.id) ?? 'unknown', isFree };
      const { wards, grooves } = source.found;
      const enters = isFree ? wards[s].every((ward, i) => ward <= grooves[b][i]) : table[s][b] === 1;
      return { verdict: enters ? 'enters' : 'blocked', isFree };
    }),
  );
}

/** Width and height of a section, millimetres. */
export function sizeOf({ ring }: Profile): { readonly width: number; readonly height: number } {
  const { minX, maxX, minY, maxY } = boxOf(ring);
  return { width: (maxX - minX) / NM_PER_MM, height: (maxY - minY) / NM_PER_MM };
}
