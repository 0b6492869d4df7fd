import { sayMillimetres } from '../profile/check-milled.ts';
import type { Milled } from '../profile/profile.ts';
import { thinnestWeb } from '../profile/thinnest-web.ts';
import { reservedTable } from './access.ts';
import { type Confirmation, confirmPlan, type PlannedPart, pairFaults } from './confirm-plan.ts';
import type {
  DrawnPlan,
  DrawPlanInput,
  PairFault,
  PlannedProfile,
  PlanReport,
  PlanWeb,
  TiltedPairs,
} from './drawn-plan.ts';
import type { LimitWord } from './limit-word.ts';
import { type Placed, placeWards } from './place-wards.ts';
import { gapAllRound, leastWebOf } from './plan-gap.ts';
import { type PlannedNames, plannedNames } from './planned-names.ts';
import { sightLine } from './sight-line.ts';
import { bladeOf, keywayOf, type ShapeResult } from './ward-shapes.ts';
import { type WardSite, wardSites } from './ward-sites.ts';

/** A part that was drawn, with what it was milled by. */
interface DrawnPart extends PlannedPart {
  readonly milled: Milled;
}

/**
 * Makes a plan real: gives each of its sites a place on the blade, draws the milled blanks and keyways, and has every pair
 * judged by the fit core within tolerance. A plan that is not confirmed is not given.
 *
 * @yields how far it is, of how much.
 * @check tests/unit/plan/draw-plan.test.ts, tests/laws/draw-plan.test.ts
 */
export function* drawWardPlan(input: DrawPlanInput): Generator<{ done: number; total: number }, DrawnPlan, void> {
  const { plan, access, wardPlan, gap } = input;
  const total = 2 * access.sections.length * access.blanks.length;
  const layout = wardSites(plan.blade, gap, plan.depths);
  const hindrance = hindranceOf(input, layout.sites.length, layout.limits);
  if (hindrance) return { ok: false, pairs: [], ...hindrance };
  const placing = placeWards(wardPlan, access.table, layout.sites, plan.blade, gap);
  let step = placing.next();
  for (; !step.done; step = placing.next()) yield { done: 0, total };
  const sites = step.value.at.map((i) => layout.sites[i]);
  const drawn = drawParts(input, sites, plannedNames(access, input.names));
  if ('why' in drawn) return { ok: false, pairs: [], why: drawn.why };
  const found = yield* confirmPlan(drawn.openings, drawn.blanks, access.table, gap);
  const webs = drawn.blanks.map(({ id, milled }) => ({ id, thickness: thinnestWeb(milled)?.thickness ?? 0 }));
  const later = found.faults.length > 0 ? null : yield* confirmReserve(input, sites, drawn);
  const faults = [...found.faults, ...(later?.faults ?? [])];
  const why = [...(later?.why ?? []), ...pairLimits(faults, input), ...webLimits(webs, input)];
  if (why.length > 0) return { ok: false, why, pairs: faults };
  const report = reportOf(input, sites, step.value, drawn, found, webs, later?.sections ?? 0);
  return { ok: true, profiles: drawn.profiles, report };
}

type Hindrance = { readonly why: readonly LimitWord[]; readonly nearest?: string };

/** What keeps a plan from being drawn at all: faults of the blade, too few sites, wards for other sections or depths. */
function hindranceOf(
  { wardPlan, access, plan }: DrawPlanInput,
  room: number,
  limits: readonly LimitWord[],
): Hindrance | null {
  const faults = limits.filter(({ kind }) => kind === 'fault');
  if (faults.length > 0 && wardPlan.sites > 0) return { why: faults };
  if (wardPlan.sites > room) {
    const more = wardPlan.sites - room;
    const nearest = `${more} more ${more === 1 ? 'site' : 'sites'} on the blade, fewer different keyways, or fewer stops.`;
    const words = `The plan takes ${wardPlan.sites} ward sites and the blade has room for ${room}`;
    const binding = limits.filter(({ kind }) => kind === 'binds');
    return { why: [{ field: 'heightStep', kind: 'fault', words, cure: `Make room: ${nearest}` }, ...binding], nearest };
  }
  const deepest = Math.max(0, ...wardPlan.wards.flat(), ...wardPlan.grooves.flat());
  if (deepest > plan.depths || wardPlan.wards.length < access.sections.length) {
    const words = 'The wards were found for another plan';
    return { why: [{ field: 'depths', kind: 'fault', words, cure: 'Look for wards again.' }] };
  }
  return null;
}

interface DrawnParts {
  readonly openings: readonly DrawnPart[];
  readonly blanks: readonly DrawnPart[];
  readonly profiles: readonly PlannedProfile[];
}

/** A part made ready; where it cannot be made, a word why and none. */
function drawnPart(id: string, name: string, made: ShapeResult, why: LimitWord[]): DrawnPart[] {
  if (made.ok) return [{ id, name, ring: made.ring, milled: made.milled }];
  const words = `“${name}” cannot be drawn: ${made.what}`;
  why.push({ field: 'grooveWidth', kind: 'fault', words, cure: made.cure });
  return [];
}

function drawParts(
  { plan, access, wardPlan, gap }: DrawPlanInput,
  sites: readonly WardSite[],
  names: PlannedNames,
): DrawnParts | { readonly why: readonly LimitWord[] } {
  const why: LimitWord[] = [];
  const part = (id: string, name: string, made: ShapeResult) => drawnPart(id, name, made, why);
  const openings = access.sections.flatMap((_, i) =>
    part(names.openings[i].id, names.openings[i].name, keywayOf(plan.blade, sites, wardPlan.wards[i], gap)),
  );
  const blanks = access.blanks.flatMap((_, j) =>
    part(names.blanks[j].id, names.blanks[j].name, bladeOf(plan.blade, sites, wardPlan.grooves[j])),
  );
  if (why.length > 0) return { why };
  const profiles: PlannedProfile[] = [
    ...openings.map(({ id, name, milled }, i) => ({
      ...{ id, kind: 'opening' as const, name, section: names.sections[i], milled },
    })),
    ...blanks.map(({ id, name, milled }, j) => {
      const { section } = names.blanks[j];
      return { id, kind: 'blank' as const, name, ...(section === undefined ? {} : { section }), milled };
    }),
  ];
  return { openings, blanks, profiles };
}

interface ConfirmedReserve {
  readonly sections: number;
  readonly faults: readonly PairFault[];
  readonly why: readonly LimitWord[];
}

/** Draws the keyways kept in reserve with a blank each, and judges them with all that is planned. */
function* confirmReserve(
  { plan, access, wardPlan, gap }: DrawPlanInput,
  sites: readonly WardSite[],
  { openings, blanks }: DrawnParts,
): Generator<{ done: number; total: number }, ConfirmedReserve | null, void> {
  const sections = Math.min(plan.reserve, wardPlan.wards.length - access.sections.length);
  const missing = access.blanks.length + sections > wardPlan.grooves.length;
  if (sections <= 0 || missing) return null;
  const why: LimitWord[] = [];
  const later = Array.from({ length: sections }, (_, k) => k);
  const part = (k: number, kind: 'keyway' | 'blank', made: ShapeResult): DrawnPart[] =>
    drawnPart(`reserve-${kind}-${k + 1}`, `${kind} ${k + 1} kept in reserve`, made, why);
  const wards = (k: number) => wardPlan.wards[access.sections.length + k];
  const grooves = (k: number) => wardPlan.grooves[access.blanks.length + k];
  const more = {
    openings: later.flatMap((k) => part(k, 'keyway', keywayOf(plan.blade, sites, wards(k), gap))),
    blanks: later.flatMap((k) => part(k, 'blank', bladeOf(plan.blade, sites, grooves(k)))),
  };
  if (why.length > 0) return { sections, faults: [], why };
  // What is planned was judged already.
  const table = reservedTable(access, sections).map((row, i) =>
    row.map((cell, j) => (i < openings.length && j < blanks.length ? null : cell)),
  );
  const all = { openings: [...openings, ...more.openings], blanks: [...blanks, ...more.blanks] };
  const judging = pairFaults(all.openings, all.blanks, table, gap);
  for (;;) {
    const step = judging.next();
    if (step.done) return { sections, faults: step.value, why };
    yield { done: 1, total: 1 };
  }
}

/** Pairs that were not confirmed, and the limit that would help. */
function pairLimits(faults: readonly PairFault[], { gap, plan }: DrawPlanInput): LimitWord[] {
  return faults.map(({ kind, words }): LimitWord => {
    if (kind !== 'goes-in')
      return { field: 'grooveWidth', kind: 'fault', words, cure: 'Give wider grooves, or smaller flanks and radii.' };
    const cure = `Give grooves deeper than ${sayMillimetres(plan.blade.grooveDepth)}, or less tolerance than ${sayMillimetres(gap.tolerance)}.`;
    return { field: 'grooveDepth', kind: 'fault', words, cure };
  });
}

/** A blank whose web is thinner than the least one; what rounding takes is not held against it. */
function webLimits(webs: readonly PlanWeb[], { gap, wardPlan }: DrawPlanInput): LimitWord[] {
  const least = leastWebOf(gap);
  const thin = webs.find(({ thickness }) => wardPlan.sites > 0 && thickness < least - WEB_GRAIN);
  if (!thin) return [];
  const words = `A blank has a web of ${sayMillimetres(Math.round(thin.thickness))}, less than the least web of ${sayMillimetres(least)}`;
  return [{ field: 'leastWeb', kind: 'fault', words, cure: 'Give shallower grooves or a thicker blade.' }];
}

/** Webs are measured between chords, nanometres. */
const WEB_GRAIN = 2_000;

function reportOf(
  { gap }: DrawPlanInput,
  sites: readonly WardSite[],
  placed: Placed,
  { openings }: DrawnParts,
  { counts, clearance, guard, tilted }: Confirmation,
  webs: readonly PlanWeb[],
  reserve: number,
): PlanReport {
  const sights = openings.map(({ id, milled }) => sightLine(id, milled));
  return {
    sites,
    placed: placedWords(placed),
    gap: gapAllRound(gap),
    tolerance: gap.tolerance,
    pairs: counts,
    clearance,
    guard,
    tilted: tilted && tiltedOf(tilted),
    reserve,
    webs,
    sights,
  };
}

/** Without the faults that a confirmed plan does not have. */
function tiltedOf({ limit, looked, ofPairs, loosest }: TiltedPairs): TiltedPairs {
  return { limit, looked, ofPairs, loosest };
}

function placedWords({ guard, web }: Placed): string {
  const um = (nm: number) => sayMillimetres(Math.round(nm / 1000) * 1000);
  const first = Number.isFinite(guard)
    ? `Sites are placed for the greatest guard margin (about ${um(guard)})`
    : 'Sites are placed in order';
  return Number.isFinite(web) ? `${first}, then for the thickest web between the faces (${um(web)}).` : `${first}.`;
}
