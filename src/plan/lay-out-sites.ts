import type { BladeLimits } from '../family/plan.ts';
import { NM_PER_UM } from '../geom/point.ts';
import type { GrooveSide } from '../profile/profile.ts';
import { leastWebOf, type PlanGap } from './plan-gap.ts';
import { siteBand } from './site-shape.ts';
import { leastRise, slantingWeb } from './slanting-web.ts';

/** How sites of the two faces stand to each other. */
export type Arrangement = 'one-face' | 'level' | 'staggered' | 'thinned';

/** A place for a groove. */
export interface SitePlace {
  readonly side: GrooveSide;
  readonly bottom: number;
}

/** Places that can all be grooved at once, lowest first, with how they are arranged. */
export interface Arranged {
  readonly places: readonly SitePlace[];
  readonly arrangement: Arrangement;
  /** The thinnest web of a blade that has every groove at full depth, nanometres. */
  readonly web: number;
}

/** Most places on one face: far more than any blade has. */
const MOST_PLACES = 30;

/** Eighths of a step by which the right face is tried higher than the left; the first of equals is taken. */
const OFFSETS = [0, 4, 2, 6, 1, 3, 5, 7];

/**
 * The greatest number of places for grooves that one blade can have all at once: steps on each face from the lowest place
 * up, the right face higher by a part of a step. Two grooves of opposite faces that stand too close for the web between them are
 * not both taken. Of arrangements with as many places the one that has more on both faces is taken, since a blade that is stopped on
 * both sides cannot give way, then the one with the thicker web.
 *
 * @check tests/unit/plan/ward-sites.test.ts (counted by hand), tests/laws/ward-sites.test.ts (webs by thinnestWeb)
 */
export function layOutSites(blade: BladeLimits, gap: PlanGap): Arranged {
  const heights = faceHeights(blade, gap, 0);
  if (blade.sides !== 'both') return onOneFace(blade, blade.sides, heights);
  const apart = leastRise(blade, leastWebOf(gap));
  const tried = OFFSETS.map((eighths) => arrangedAt(blade, gap, apart, eighths));
  return tried.reduce((best, next) => (isBetter(next, best) ? next : best));
}

/** How many places {@link layOutSites} finds, without telling the web. */
export function countSites(blade: BladeLimits, gap: PlanGap): number {
  const level = faceHeights(blade, gap, 0).length;
  if (blade.sides !== 'both') return level;
  const apart = leastRise(blade, leastWebOf(gap));
  if (apart === 0) return 2 * level;
  return Math.max(...OFFSETS.map((eighths) => placesAt(blade, gap, apart, eighths).places.length));
}

/** More places, else more of them on the face that has fewer, else more than a micrometre of web more. */
function isBetter(a: Arranged, b: Arranged): boolean {
  if (a.places.length !== b.places.length) return a.places.length > b.places.length;
  const [ofA, ofB] = [fewerOf(a), fewerOf(b)];
  if (ofA !== ofB) return ofA > ofB;
  return a.web > b.web + NM_PER_UM;
}

/** How many places the face with fewer of them has. */
function fewerOf({ places }: Arranged): number {
  const left = places.filter(({ side }) => side === 'left').length;
  return Math.min(left, places.length - left);
}

function faceHeights(blade: BladeLimits, gap: PlanGap, offset: number): number[] {
  const { from, to } = siteBand(blade, gap);
  const room = to - from - offset - blade.grooveWidth;
  const count = room < 0 ? 0 : Math.floor(room / blade.heightStep + 1e-9) + 1;
  return Array.from({ length: Math.min(count, MOST_PLACES) }, (_, i) => from + offset + i * blade.heightStep);
}

function onOneFace(blade: BladeLimits, side: GrooveSide, heights: readonly number[]): Arranged {
  const places = heights.map((bottom) => ({ side, bottom }));
  return { places, arrangement: 'one-face', web: blade.thickness - blade.grooveDepth };
}

function arrangedAt(blade: BladeLimits, gap: PlanGap, apart: number, eighths: number): Arranged {
  const { places, offset, all } = placesAt(blade, gap, apart, eighths);
  const whole = offset === 0 ? 'level' : 'staggered';
  const arrangement = places.length < all ? 'thinned' : whole;
  return { places, arrangement, web: webOf(blade, places) };
}

/** The places with the right face so many eighths of a step higher, and how many there are before any is left out. */
function placesAt(blade: BladeLimits, gap: PlanGap, apart: number, eighths: number) {
  const offset = Math.round((blade.heightStep * eighths) / (8 * NM_PER_UM)) * NM_PER_UM;
  const all: SitePlace[] = [
    ...faceHeights(blade, gap, 0).map((bottom) => ({ side: 'left' as const, bottom })),
    ...faceHeights(blade, gap, offset).map((bottom) => ({ side: 'right' as const, bottom })),
  ].sort((a, b) => a.bottom - b.bottom || (a.side === 'left' ? -1 : 1));
  return { places: apart === 0 ? all : mostApart(all, apart), offset, all: all.length };
}

function webOf(blade: BladeLimits, places: readonly SitePlace[]): number {
  const depth = blade.grooveDepth;
  const rises = new Set(
    places.flatMap((a) =>
      places.filter((b) => a.side === 'left' && b.side === 'right').map((b) => Math.abs(b.bottom - a.bottom)),
    ),
  );
  const least = rises.size > 0 ? slantingWeb(blade, depth, depth, Math.min(...rises)) : Number.POSITIVE_INFINITY;
  return Math.min(blade.thickness - depth, least);
}

/** What can be reached with a certain highest place on each face. */
interface Reached {
  readonly left: number;
  readonly right: number;
  readonly count: number;
  /** The highest place and what was taken before it. */
  readonly last: { readonly place: SitePlace; readonly before: Reached } | null;
  /** How often the face changes from one place to the next: more of it spreads the wards over both faces. */
  readonly changes: number;
}

/** The most places of which no two on opposite faces are closer than `apart`; of equals the one that changes face most. */
function mostApart(all: readonly SitePlace[], apart: number): readonly SitePlace[] {
  const NONE = Number.NEGATIVE_INFINITY;
  let states = new Map<string, Reached>([['', { left: NONE, right: NONE, count: 0, last: null, changes: 0 }]]);
  for (const place of all) {
    const next = new Map(states);
    for (const state of states.values()) {
      const other = place.side === 'left' ? state.right : state.left;
      if (place.bottom - other >= apart) keepBest(next, withPlace(state, place));
    }
    states = next;
  }
  const places: SitePlace[] = [];
  let at = [...states.values()].reduce((a, b) => (outdoes(b, a) ? b : a)).last;
  for (; at !== null; at = at.before.last) places.push(at.place);
  return places.reverse();
}

function withPlace(state: Reached, place: SitePlace): Reached {
  const changes = state.changes + (state.last && state.last.place.side !== place.side ? 1 : 0);
  return { ...state, [place.side]: place.bottom, count: state.count + 1, changes, last: { place, before: state } };
}

function keepBest(states: Map<string, Reached>, state: Reached): void {
  const key = `${state.left} ${state.right}`;
  const before = states.get(key);
  if (!before || outdoes(state, before)) states.set(key, state);
}

function outdoes(a: Reached, b: Reached): boolean {
  return a.count !== b.count ? a.count > b.count : a.changes > b.changes;
}
