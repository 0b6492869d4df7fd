import { alikeWords } from '../family/guard-margin.ts';
import type { Plan } from '../family/plan.ts';
import type { DrawnPlan, PlannedProfile, PlanPair } from '../plan/drawn-plan.ts';
import type { Access } from '../plan/planned-access.ts';
import { sayConfirmed } from '../plan/say-confirmed.ts';
import type { WardPlan } from '../plan/ward-plan.ts';
import type { SiteLayout } from '../plan/ward-sites.ts';
import { shown } from './fit-table.ts';
import { mm, um } from './round-lengths.ts';

/** A plan that was drawn and confirmed, and what it was made from. */
export interface PlannedFamily {
  readonly plan: Plan;
  readonly access: Access;
  readonly layout: SiteLayout;
  readonly wardPlan: WardPlan;
  readonly drawn: Extract<DrawnPlan, { ok: true }>;
}

/** The report of a planned family as JSON. */
export function plannedJson({ layout, wardPlan, drawn, access }: PlannedFamily): string {
  const { report, profiles } = drawn;
  const pair = (one: PlanPair | null) => one && { blank: one.blank, opening: one.opening, um: um(one.length) };
  const of = (kind: PlannedProfile['kind']) => profiles.filter((profile) => profile.kind === kind);
  const byId = (parts: readonly PlannedProfile[], depths: readonly (readonly number[])[]) =>
    Object.fromEntries(parts.map(({ id }, i) => [id, depths[i]]));
  const value = {
    sites: wardPlan.sites,
    lowerBound: wardPlan.lowerBound,
    proved: wardPlan.proved,
    room: layout.sites.length,
    sections: access.sections.length,
    blanks: access.blanks.length,
    sitesMm: report.sites.map(({ side, bottom, depths }) => ({ side, bottom: mm(bottom), depths: depths.map(mm) })),
    wards: byId(of('opening'), wardPlan.wards),
    grooves: byId(of('blank'), wardPlan.grooves),
    pairs: report.pairs,
    gapUm: um(report.gap),
    smallestClearance: pair(report.clearance),
    guard: pair(report.guard),
    tilted: report.tilted && {
      limitDeg: Math.round((report.tilted.limit * 18_000) / Math.PI) / 100,
      judged: report.tilted.looked,
      atMargin: report.tilted.ofPairs,
      goesInWithinTolerance: pair(report.tilted.loosest),
    },
    reserveConfirmed: report.reserve,
    webMm: Object.fromEntries(report.webs.map(({ id, thickness }) => [id, mm(thickness)])),
    keyways: Object.fromEntries(
      report.sights.map(({ id, left, right, paracentric, strip }) => [
        id,
        { paracentric, leftPastCentreMm: mm(left), rightPastCentreMm: mm(right), lineOfSightMm: mm(strip) },
      ]),
    ),
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

const NO_TOLERANCE = 'The tolerance is 0, so all parts were taken exactly as drawn: set one before you trust this.';

/** The report of a planned family in words. */
export function plannedText({ layout, wardPlan, drawn, access }: PlannedFamily): string {
  const { report, profiles } = drawn;
  const nameOf = (id: string) => shown(profiles.find((profile) => profile.id === id)?.name ?? id);
  const { wanted, forbidden, free } = report.pairs;
  const proof = wardPlan.proved ? 'proved fewest' : `at least ${wardPlan.lowerBound} are needed`;
  const open = free > 0 ? `, ${free} either way` : '';
  const thinnest = report.webs.reduce((a, b) => (b.thickness < a.thickness ? b : a));
  const sees = report.sights.reduce((a, b) => (b.strip > a.strip ? b : a));
  const paracentric = report.sights.filter((sight) => sight.paracentric).length;
  const lines = [
    `${access.sections.length} keyways and ${access.blanks.length} blanks on ${wardPlan.sites} ward sites (${proof}, room for ${layout.sites.length})`,
    `Confirmed: ${wanted} pairs enter and ${forbidden} are blocked${open}, for all parts within tolerance`,
    ...pairLine('Smallest clearance', report.clearance, nameOf),
    ...pairLine('Guard margin, wear of both parts', report.guard, nameOf),
    ...(report.tolerance === 0 ? [NO_TOLERANCE] : []),
    ...sayConfirmed(report, nameOf),
    `Thinnest web ${mm(thinnest.thickness).toFixed(3)} mm, ${nameOf(thinnest.id)}`,
    `${paracentric} of ${report.sights.length} keyways are paracentric; widest line of sight ${sightText(sees.strip)}, ${nameOf(sees.id)}`,
    report.placed,
    'Wards by site and depth',
    ...depthLines(profiles, 'opening', wardPlan.wards),
    'Grooves by site and depth',
    ...depthLines(profiles, 'blank', wardPlan.grooves),
    'Sites',
    ...report.sites.map(({ side, bottom, depths }, i) => {
      const deep = depths.map((depth) => mm(depth).toFixed(2)).join(', ');
      return `  ${i + 1}  ${side}, from ${mm(bottom).toFixed(2)} mm, ${deep} mm deep`;
    }),
  ];
  return lines.join('\n');
}

function sightText(strip: number): string {
  return strip > 0 ? `${mm(strip).toFixed(2)} mm` : `none, wards pass each other by ${mm(-strip).toFixed(2)} mm`;
}

function pairLine(what: string, pair: PlanPair | null, nameOf: (id: string) => string): string[] {
  if (!pair) return [];
  const length = Number.isFinite(pair.length) ? `${um(pair.length)} um` : 'no wear lets a blank in';
  return [`${what} ${length}, ${nameOf(pair.blank)} in ${nameOf(pair.opening)}${alikeWords(pair)}`];
}

function depthLines(
  profiles: readonly PlannedProfile[],
  kind: PlannedProfile['kind'],
  depths: readonly (readonly number[])[],
): string[] {
  const parts = profiles.filter((profile) => profile.kind === kind);
  const width = Math.max(...parts.map(({ name }) => shown(name).length));
  return parts.map(({ name }, i) => `  ${shown(name).padEnd(width)}  ${depths[i].join(' ')}`);
}
