import { offset } from '../geom/clip.ts';
import { type Point, translatePoints } from '../geom/point.ts';
import { regionOf } from '../geom/region.ts';
import { makeRing, type Ring } from '../geom/ring.ts';
import { signedArea } from '../geom/signed-area.ts';
import { millOutline } from '../profile/mill-outline.ts';
import type { Groove, GrooveSide, Milled } from '../profile/profile.ts';
import { type CoverGroove, type Cutter, coverNeeds, type Need } from './groove-cover.ts';
import { type Slab, slabsOf } from './indents.ts';

/** The plain blade that is milled; what is null is searched. Nanometres. */
export interface PlainBlade {
  readonly thickness: number | null;
  readonly height: number | null;
}

/** A milled blade within an outline. */
export interface BladeWithin {
  readonly milled: Milled;
  /** Where the left end of its back lies. */
  readonly at: Point;
  /** Its outline where it lies. */
  readonly ring: Ring;
  /** Square nanometres. */
  readonly area: number;
}

/** Aslant stretches are cut into pieces no higher than this, nanometres. */
const PIECE = 10_000;

/** Upright stretches of a side at least this long may be the face, nanometres. */
const LEAST_FACE = 150_000;

/** Most places of a face and of an end that are tried. */
const MOST_FACES = 8;
const MOST_ENDS = 3;

/** Radii of the back that are tried, nanometres. */
const BACKS = [0, 100_000, 200_000, 300_000, 400_000, 500_000, 600_000];

/** Steps and the greatest of the radii that are looked through for one that just fits, nanometres. */
const BACK_STEP = 10_000;
const MOST_BACK = 1_000_000;

/** The ends of the blade may lie this share of the height inside the outline. */
const END_SHARE = 0.12;

/** The outline is taken smaller by this, nanometres: chords of a root stand into it by up to a micrometre. */
const CHORDS = 1_500;

/** Sizes are whole micrometres. */
const GRAIN = 1_000;

/** So many of the best blades are tried where one cannot be milled. */
const MOST_TRIED = 200;

/**
 * The blade with the greatest area that lies within an outline and is milled from a plain blade by one straight cutter.
 *
 * The faces are laid where the outline has upright stretches, its ends where it has level ones; for each face the grooves are
 * found that take off what lies outside (see coverNeeds). A face further in needs fewer grooves, one further out leaves more
 * land: all pairs are compared, the largest that can be milled is taken.
 *
 * @param outline a blade that passes; where it has several stretches at a height the main one counts.
 * @param lessBy the outline is taken smaller by this all round, nanometres.
 * @yields how many of the places of the ends are done.
 * @returns null where no such blade is left.
 * @accuracy the greatest among the faces, ends and radii that are tried; no claim that there is no greater one.
 * @check tests/unit/passage/mill-passage.test.ts, tests/laws/mill-blank.test.ts
 */
export function* bladeWithin(
  outline: Ring,
  plain: PlainBlade,
  cutter: Cutter,
  lessBy = 0,
): Generator<{ done: number; total: number }, BladeWithin | null, void> {
  const slabs = piecesOf(outline, lessBy + CHORDS);
  if (slabs.length === 0) return null;
  const trials: Trial[] = [];
  const ends = endsOf(slabs, plain);
  for (const [n, { from, to }] of ends.entries()) {
    for (const backRadius of backsOf(slabs, from))
      trials.push(...trialsBetween(slabs, { from, to, backRadius, plain, cutter }));
    yield { done: n + 1, total: ends.length };
  }
  trials.sort((a, b) => b.area - a.area);
  let best: BladeWithin | null = null;
  for (const trial of trials.slice(0, MOST_TRIED)) {
    if (best && trial.area < best.area) break;
    const made = milledFrom(trial, cutter);
    if (made && (!best || made.area > best.area)) best = made;
  }
  return best;
}

/** The outline, a little smaller, in pieces from the back upwards. */
function piecesOf(outline: Ring, less: number): Slab[] {
  const [main] = offset(regionOf(outline), -less, 'mitre')
    .map(({ outer }) => outer)
    .sort((a, b) => signedArea(b) - signedArea(a));
  const made = main ? makeRing(main) : null;
  return made?.ok ? slabsOf(made.ring).flatMap(pieces) : [];
}

function pieces({ low, high, left, right }: Slab): Slab[] {
  const upright = left[0] === left[1] && right[0] === right[1];
  const count = upright ? 1 : Math.max(1, Math.ceil((high - low) / PIECE));
  const along = (ends: readonly [number, number], share: number) => ends[0] + (ends[1] - ends[0]) * share;
  return Array.from({ length: count }, (_, i) => {
    const [a, b] = [i / count, (i + 1) / count];
    return {
      low: along([low, high], a),
      high: along([low, high], b),
      left: [along(left, a), along(left, b)] as const,
      right: [along(right, a), along(right, b)] as const,
    };
  });
}

interface Ends {
  readonly from: number;
  readonly to: number;
}

/** Where the back and the upper edge may lie. */
function endsOf(slabs: readonly Slab[], { height }: PlainBlade): Ends[] {
  const [low, high] = [slabs[0].low, slabs[slabs.length - 1].high];
  const near = (high - low) * END_SHARE;
  const steps = slabs.slice(1).flatMap((slab, i) => {
    const below = slabs[i];
    return below.left[1] !== slab.left[0] || below.right[1] !== slab.right[0] ? [slab.low] : [];
  });
  const backs = [low, ...steps.filter((y) => y > low && y < low + near)].slice(0, MOST_ENDS);
  const tops = [high, ...steps.filter((y) => y < high && y > high - near).reverse()].slice(0, MOST_ENDS);
  const up = (y: number) => Math.ceil(y / GRAIN) * GRAIN;
  const down = (y: number) => Math.floor(y / GRAIN) * GRAIN;
  if (height === null) return backs.flatMap((from) => tops.map((to) => ({ from: up(from), to: down(to) })));
  // Of a given height the back is laid at the places of the back, or the upper edge at those of the upper edge.
  return [...backs.map(up), ...tops.map((to) => down(to) - height)]
    .map((from) => ({ from, to: from + height }))
    .filter(({ from, to }) => from >= low && to <= high);
}

interface Setting extends Ends {
  readonly backRadius: number;
  readonly plain: PlainBlade;
  readonly cutter: Cutter;
}

interface FaceTrial {
  readonly x: number;
  readonly grooves: readonly CoverGroove[];
  /** What the grooves take off. */
  readonly off: number;
}

interface Trial extends Ends {
  readonly backRadius: number;
  readonly left: FaceTrial;
  readonly right: FaceTrial;
  readonly area: number;
}

/** All pairs of faces with their grooves, for one place of the ends and one radius of the back. */
function trialsBetween(slabs: readonly Slab[], setting: Setting): Trial[] {
  const { from, to, backRadius, plain } = setting;
  const within = slabs.filter(({ low, high }) => high > from && low < to);
  const lefts = facesOf(within, 'left');
  const rights = facesOf(within, 'right');
  const { thickness } = plain;
  const more = (xs: readonly number[], by: number) => (thickness === null ? [] : xs.map((x) => x + by * thickness));
  const left = faceTrials(within, 'left', [...lefts, ...more(rights, -1)], setting);
  const right = faceTrials(within, 'right', [...rights, ...more(lefts, 1)], setting);
  const corners = (2 - Math.PI / 2) * backRadius * backRadius;
  return left.flatMap((l) =>
    right
      .filter((r) => r.x - l.x > 2 * GRAIN && (thickness === null || r.x - l.x === thickness))
      .map((r) => ({
        from,
        to,
        backRadius,
        left: l,
        right: r,
        area: (r.x - l.x) * (to - from) - l.off - r.off - corners,
      })),
  );
}

/** Where a side has long upright stretches, whole micrometres, outermost first. */
function facesOf(slabs: readonly Slab[], side: GrooveSide): number[] {
  const lengths = new Map<number, number>();
  const inward = side === 'left' ? Math.ceil : Math.floor;
  const outermost = slabs.map(({ left, right }) => (side === 'left' ? Math.min(...left) : -Math.max(...right)));
  for (const slab of slabs) {
    const [a, b] = slab[side];
    if (a === b) lengths.set(a, (lengths.get(a) ?? 0) + slab.high - slab.low);
  }
  const long = [...lengths].filter(([, length]) => length >= LEAST_FACE).map(([x]) => x);
  const edge = Math.min(...outermost);
  const all = [side === 'left' ? edge : -edge, ...long].map((x) => inward(x / GRAIN) * GRAIN);
  const outward = (x: number) => (side === 'left' ? x : -x);
  return [...new Set(all)].sort((a, b) => outward(a) - outward(b)).slice(0, MOST_FACES);
}

function faceTrials(slabs: readonly Slab[], side: GrooveSide, xs: readonly number[], setting: Setting): FaceTrial[] {
  const { from, to, cutter } = setting;
  const [least, most] = [
    Math.min(...slabs.flatMap(({ left }) => left)),
    Math.max(...slabs.flatMap(({ right }) => right)),
  ];
  const within = [...new Set(xs)].filter((x) => x >= least && x <= most);
  return within.flatMap((x) => {
    const grooves = coverNeeds(needsOf(slabs, side, x, setting), to - from, cutter);
    return grooves ? [{ x, grooves, off: grooves.reduce((sum, { area }) => sum + area, 0) }] : [];
  });
}

/** How deep below a face the blade must have no material, from the back upwards. */
function needsOf(slabs: readonly Slab[], side: GrooveSide, x: number, { from, to, backRadius }: Setting): Need[] {
  return slabs.map(({ low, high, left, right }) => {
    const deep = side === 'left' ? Math.max(...left) - x : x - Math.min(...right);
    const [a, b] = [Math.max(low, from) - from, Math.min(high, to) - from];
    return { low: a, high: b, depth: deep <= roundedOff(b, backRadius) ? 0 : deep };
  });
}

/** Radii of the back to try: some, and the smallest that takes off what is needed at both corners. */
function backsOf(slabs: readonly Slab[], from: number): number[] {
  const [left, right] = [facesOf(slabs, 'left')[0], facesOf(slabs, 'right')[0]];
  const fits = (radius: number) =>
    slabs
      .filter(({ low, high }) => low < from + radius && high > from)
      .every((slab) => {
        const rounded = roundedOff(slab.high - from, radius);
        return Math.max(...slab.left) - left <= rounded && right - Math.min(...slab.right) <= rounded;
      });
  for (let radius = BACK_STEP; radius <= MOST_BACK; radius += BACK_STEP) if (fits(radius)) return [...BACKS, radius];
  return [...BACKS];
}

/** How deep the rounding of the back lets an outline stand in at a height. */
function roundedOff(height: number, radius: number): number {
  return height >= radius ? 0 : radius - Math.sqrt(radius * radius - (radius - height) ** 2);
}

function milledFrom({ from, to, backRadius, left, right }: Trial, { flank, rootRadius }: Cutter): BladeWithin | null {
  const grooves = (side: GrooveSide, { grooves: some }: FaceTrial): Groove[] =>
    some.map(({ bottom, top, depth }) => ({ side, bottom, width: top - bottom, depth, flank, rootRadius }));
  const milled: Milled = {
    thickness: right.x - left.x,
    height: to - from,
    backRadius,
    grooves: [...grooves('left', left), ...grooves('right', right)],
  };
  const points = millOutline(milled);
  if (!Array.isArray(points)) return null;
  const at = { x: left.x, y: from };
  const made = makeRing(translatePoints(points, at));
  return made.ok ? { milled, at, ring: made.ring, area: signedArea(made.ring) } : null;
}
