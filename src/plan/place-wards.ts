import type { BladeLimits } from '../family/plan.ts';
import { randomFrom, shuffled } from '../fit/monte-carlo.ts';
import type { GrooveSide } from '../profile/profile.ts';
import type { AccessTable } from './access-table.ts';
import { gapAllRound, type PlanGap } from './plan-gap.ts';
import { slantingWeb } from './slanting-web.ts';
import type { WardPlan } from './ward-plan.ts';
import type { WardSite } from './ward-sites.ts';

/** Which real site each site of a ward plan has, and what that comes to by estimate. Lengths in nanometres. */
export interface Placed {
  /** For each site of the ward plan the number of the real one. */
  readonly at: readonly number[];
  /** The least wear of both parts at which a forbidden pair would go in; Infinity where none is forbidden. */
  readonly guard: number;
  /** The thinnest web between grooves of opposite faces, over all blanks; Infinity where no blank has two such. */
  readonly web: number;
}

/** Starts of the search: the sites in order, and a few shuffled. */
const STARTS = 4;

/** Most rounds of exchanges from one start. */
const MOST_ROUNDS = 12;

/**
 * Gives each site of a ward plan a real one: first so that the least wear at which a forbidden pair goes in is greatest, then
 * so that fewest pairs have no more than that, then so that the thinnest web is thickest.
 *
 * The estimate of that wear: a blade that is stopped by D on one face gives way by the gap, and each of the four surfaces
 * wears: (D - 2 gap) / 4; stopped on both faces it cannot give way, and both depths count together. So what matters is which
 * sites share a face. Exchanges and moves to free sites from a few starts; no proof that nothing better exists.
 *
 * @param sites no fewer than the plan has.
 * @yields after each round.
 * @check tests/unit/plan/place-wards.test.ts against all placings of small plans
 */
export function* placeWards(
  wardPlan: WardPlan,
  table: AccessTable,
  sites: readonly WardSite[],
  blade: BladeLimits,
  gap: PlanGap,
): Generator<void, Placed, void> {
  const task = { sites, stops: stopsOf(wardPlan, table, sites), pairs: groovePairs(wardPlan, sites), blade };
  const random = randomFrom(1);
  let best: Scored | null = null;
  for (let start = 0; start < STARTS; start++) {
    const order = sites.map((_, i) => i);
    let found = scored(task, start === 0 ? spread(order, wardPlan.sites) : shuffled(order, random), wardPlan.sites);
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const next = bestExchange(task, found, wardPlan.sites);
      yield;
      if (!next) break;
      found = next;
    }
    if (!best || isBetter(found, best)) best = found;
  }
  const { order, stop, web } = best as Scored;
  const guard = stop === Number.POSITIVE_INFINITY ? stop : Math.max(0, (stop - 2 * gapAllRound(gap)) / 4);
  return { at: order.slice(0, wardPlan.sites), guard, web };
}

interface Task {
  readonly sites: readonly WardSite[];
  readonly stops: readonly Stops[];
  readonly pairs: readonly GroovePair[];
  readonly blade: BladeLimits;
}

/** Where a forbidden pair is stopped: sites of the ward plan, and by how much the ward is too deep there; nanometres. */
type Stops = readonly { readonly site: number; readonly by: number }[];

/** Two sites of the ward plan that some blank has grooves at, and their depths. */
interface GroovePair {
  readonly a: number;
  readonly b: number;
  readonly depthA: number;
  readonly depthB: number;
}

/** Real sites in an order of which the first belong to the ward plan, and what that comes to. */
interface Scored {
  readonly order: readonly number[];
  /** The least sum of what stops a forbidden pair on the two faces, and how many pairs have no more. */
  readonly stop: number;
  readonly least: number;
  readonly web: number;
}

function isBetter(a: Scored, b: Scored): boolean {
  if (a.stop !== b.stop) return a.stop > b.stop;
  if (a.least !== b.least) return a.least < b.least;
  return a.web > b.web + 0.5;
}

/** A place in an order, as far apart as there is room for, so that grooves of both faces keep clear of each other. */
function spread(order: readonly number[], count: number): number[] {
  const step = order.length / Math.max(1, count);
  const first = Array.from({ length: count }, (_, i) => Math.floor(i * step));
  return [...first, ...order.filter((i) => !first.includes(i))];
}

function scored(task: Task, order: readonly number[], count: number): Scored {
  return { order, ...stopOf(task, order), web: webOf(task, order.slice(0, count)) };
}

/** The best of all exchanges of two places, one of them used; null where none is better. */
function bestExchange(task: Task, from: Scored, count: number): Scored | null {
  let best = from;
  for (let i = 0; i < count; i++)
    for (let k = i + 1; k < from.order.length; k++) {
      const order = [...from.order];
      [order[i], order[k]] = [order[k], order[i]];
      const sameFace = task.sites[order[i]].side === task.sites[order[k]].side;
      const stop = sameFace ? { stop: from.stop, least: from.least } : stopOf(task, order);
      if (stop.stop < best.stop) continue;
      const next = { order, ...stop, web: webOf(task, order.slice(0, count)) };
      if (isBetter(next, best)) best = next;
    }
  return best === from ? null : best;
}

function stopOf({ sites, stops }: Task, order: readonly number[]): { stop: number; least: number } {
  let [stop, least] = [Number.POSITIVE_INFINITY, 0];
  for (const pair of stops) {
    let [left, right] = [0, 0];
    for (const { site, by } of pair)
      if (sites[order[site]].side === 'left') left = Math.max(left, by);
      else right = Math.max(right, by);
    if (left + right < stop) [stop, least] = [left + right, 1];
    else if (left + right === stop) least++;
  }
  return { stop, least };
}

function webOf({ sites, pairs, blade }: Task, at: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { a, b, depthA, depthB } of pairs) {
    const [one, other] = [sites[at[a]], sites[at[b]]];
    if (one.side === other.side) continue;
    const rise = other.bottom - one.bottom;
    const [low, high] = rise >= 0 ? [depthA, depthB] : [depthB, depthA];
    least = Math.min(least, webOnce(blade, low, high, Math.abs(rise)));
  }
  return least;
}

const webs = new WeakMap<BladeLimits, Map<string, number>>();

/** {@link slantingWeb}, kept: a search asks for the same few webs over and over. */
function webOnce(blade: BladeLimits, low: number, high: number, rise: number): number {
  const known = webs.get(blade) ?? new Map<string, number>();
  webs.set(blade, known);
  const key = `${low} ${high} ${rise}`;
  const web = known.get(key) ?? slantingWeb(blade, low, high, rise);
  known.set(key, web);
  return web;
}

function stopsOf(
  { wards, grooves }: WardPlan,
  table: AccessTable,
  sites: readonly { readonly depths: readonly number[]; readonly side: GrooveSide }[],
): Stops[] {
  const depth = (number: number) => (number > 0 ? sites[0].depths[number - 1] : 0);
  const kinds = new Map<string, Stops>();
  for (const [i, ward] of wards.entries())
    for (const [j, groove] of grooves.entries()) {
      const cell = table[i]?.[j];
      if (cell === 1 || cell === null) continue;
      const stops = ward.flatMap((w, site) => (w > groove[site] ? [{ site, by: depth(w) - depth(groove[site]) }] : []));
      if (stops.length > 0) kinds.set(stops.map(({ site, by }) => `${site} ${by}`).join(), stops);
    }
  return [...kinds.values()];
}

function groovePairs({ grooves, sites: count }: WardPlan, sites: readonly WardSite[]): GroovePair[] {
  const found = new Map<string, GroovePair>();
  for (const groove of grooves)
    for (let a = 0; a < count; a++)
      for (let b = a + 1; b < count; b++) {
        if (groove[a] === 0 || groove[b] === 0) continue;
        const [depthA, depthB] = [sites[0].depths[groove[a] - 1], sites[0].depths[groove[b] - 1]];
        found.set(`${a} ${b} ${depthA} ${depthB}`, { a, b, depthA, depthB });
      }
  return [...found.values()];
}
