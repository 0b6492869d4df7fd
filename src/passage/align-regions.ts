import type { Box, Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import { asTrustedRing } from '../geom/ring.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import { simplifyOutline } from '../geom/simplify.ts';
import { climbOverlap, type Steps } from './climb-overlap.ts';
import { areaOf, boxOfRegion, moveRegion, type Shared, share, shareBoth } from './overlap-regions.ts';

/** How sure it is that no other alignment shares more. */
export interface Sureness {
  /**
   * best: all of the smallest region is shared, more there cannot be. agreed: every start climbed to the same area.
   * one-of-several: the starts ended at different areas, and the greatest was taken.
   */
  readonly kind: 'best' | 'agreed' | 'one-of-several';
  /** From how many alignments it was climbed, and how many of them came to the area that was taken, to 0.1 %. */
  readonly starts: number;
  readonly same: number;
  /** The area shared, and a bound that none can be above: the area of the smallest region. Square nanometres. */
  readonly area: number;
  readonly atMost: number;
}

/** Where each region was moved, in the order given, and how sure that is. */
export interface Alignment {
  readonly moves: readonly Point[];
  readonly sure: Sureness;
}

/** Steps of a search, nanometres: where a region is laid on the others for the first time, and where all are improved. */
const LAYING: Steps = { first: 80_000, least: 2_000 };
const IMPROVING: Steps = { first: 20_000, least: 250 };
const LEANING: Steps = { first: 20_000, least: 1_000 };

/** Most rounds in which every region is moved once. */
const MOST_ROUNDS = 8;

/** Rounds end where one gains less than this share; starts that end within this share of each other are the same. */
const LEAST_GAIN = 1e-5;
const SAME_AREA = 1e-3;

/** What is shared of the smallest region is all of it where it falls short by less than this share. */
const ALL_SHARED = 1e-5;

/** The search looks at outlines that are off by no more than this, nanometres. */
const SEARCHED_WITHIN = 1_000;

type Progress = { done: number; total: number };

/**
 * Moves regions, without a turn, to where the part that all of them share is greatest. It is climbed from three
 * alignments (as drawn; backs level and middles in line; boxes centred): the regions are laid on each other one by one,
 * the smallest first, then each is moved against what all others share until nothing gains, then all those that bound the
 * shared part on one side together.
 *
 * @param regions with area, in an order that does not depend on how they were chosen: the answer then does not either.
 * @returns moves in whole nanometres; a local optimum from the best start.
 * @check tests/outside/passage.test.ts, tests/laws/passage.test.ts
 */
export function* alignRegions(regions: readonly Region[]): Generator<Progress, Alignment, void> {
  const light = regions.map(lightened);
  const areas = regions.map(areaOf);
  const atMost = Math.min(...areas);
  const order = regions.map((_, i) => i).sort((a, b) => areas[a] - areas[b] || a - b);
  const starts = startsOf(regions.map(boxOfRegion)).slice(0, regions.length === 1 ? 1 : undefined);
  const each = regions.length * (MOST_ROUNDS + 1);
  const found: { moves: Point[]; area: number }[] = [];
  for (const [n, start] of starts.entries()) {
    const moves = [...start];
    const tell = (done: number) => ({ done: n * each + Math.min(done, each), total: starts.length * each });
    yield* lay(light, moves, order, tell);
    yield* improve(light, moves, tell);
    found.push({ moves, area: areaOf(sharedBy(regions, moves)) });
    if (found[n].area >= atMost * (1 - ALL_SHARED)) break;
  }
  const best = found.reduce((a, b) => (b.area > a.area * (1 + ALL_SHARED) ? b : a));
  const same = found.filter(({ area }) => area >= best.area * (1 - SAME_AREA)).length;
  const climbed = same === found.length ? 'agreed' : 'one-of-several';
  const kind = best.area >= atMost * (1 - ALL_SHARED) ? 'best' : climbed;
  return { moves: best.moves, sure: { kind, starts: found.length, same, area: best.area, atMost } };
}

/** A region with fewer vertices, for the search only. */
function lightened(region: Region): Region {
  const lighten = (boundary: readonly Point[]) => simplifyOutline(boundary, SEARCHED_WITHIN);
  return region.map(({ outer, holes }) => ({ outer: asTrustedRing(lighten(outer)), holes: holes.map(lighten) }));
}

/** The alignments that are climbed from. */
function startsOf(boxes: readonly Box[]): Point[][] {
  const middle = ({ minX, maxX }: Box) => Math.round((minX + maxX) / 2);
  return [
    boxes.map(() => ({ x: 0, y: 0 })),
    boxes.map((box) => ({ x: -middle(box), y: -box.minY })),
    boxes.map((box) => ({ x: -middle(box), y: -Math.round((box.minY + box.maxY) / 2) })),
  ];
}

/** Lays the regions on each other, each where it leaves most of what is shared so far. */
function* lay(
  regions: readonly Region[],
  moves: Point[],
  order: readonly number[],
  tell: (done: number) => Progress,
): Generator<Progress, void, void> {
  let shared: Shared = null;
  for (const [n, i] of order.entries()) {
    if (shared !== null && shared.length > 0) moves[i] = climbOverlap(shared, regions[i], moves[i], LAYING).at;
    shared = share(shared, moveRegion(regions[i], moves[i]));
    yield tell(n + 1);
  }
}

/** Moves each region against the others, round after round; gives the area that is shared in the end. */
function* improve(
  regions: readonly Region[],
  moves: Point[],
  tell: (done: number) => Progress,
): Generator<Progress, number, void> {
  let area = areaOf(sharedBy(regions, moves));
  for (let round = 0; round < MOST_ROUNDS && regions.length > 1; round++) {
    const before = area;
    const steps = { ...IMPROVING, first: Math.max(IMPROVING.least, IMPROVING.first / 2 ** round) };
    const after = afterEach(regions, moves);
    let shared: Shared = null;
    for (const [i, region] of regions.entries()) {
      const rest = shareBoth(shared, after[i]);
      if (rest !== null && rest.length > 0) moves[i] = climbOverlap(rest, region, moves[i], steps).at;
      shared = share(shared, moveRegion(region, moves[i]));
      yield tell((round + 1) * regions.length + i);
    }
    area = leanTogether(regions, moves);
    if (area <= before * (1 + LEAST_GAIN)) break;
  }
  return area;
}

/** For each region what all later ones share. */
function afterEach(regions: readonly Region[], moves: readonly Point[]): Shared[] {
  const after: Shared[] = regions.map(() => null);
  for (let i = regions.length - 2; i >= 0; i--)
    after[i] = share(after[i + 1], moveRegion(regions[i + 1], moves[i + 1]));
  return after;
}

/** What all regions share where they were moved to. */
export function sharedBy(regions: readonly Region[], moves: readonly Point[]): Region {
  return regions.reduce<Shared>((shared, region, i) => share(shared, moveRegion(region, moves[i])), null) ?? [];
}

/** A wall of the shared part belongs to a region that is as near as this, nanometres. */
const ON_WALL = 50;

/** Walls that lean further than this from a direction (as a cosine) do not bound the shared part on that side. */
const FACING = 0.9;

/** Moves all regions together that bound the shared part on one side: alone each of them would gain nothing. */
function leanTogether(regions: readonly Region[], moves: Point[]): number {
  let shared = sharedBy(regions, moves);
  for (const out of OUTWARDS) {
    const walls = facingMiddles(shared, out);
    const group = regions.map((region, i) => boundsAny(moveRegion(region, moves[i]), walls));
    const members = group.filter(Boolean).length;
    if (members < 2 || members === regions.length) continue;
    const part = (wanted: boolean) =>
      regions.reduce<Shared>((all, r, i) => (group[i] === wanted ? share(all, moveRegion(r, moves[i])) : all), null);
    const [still, moving] = [part(false) ?? [], part(true) ?? []];
    if (still.length === 0 || moving.length === 0) continue;
    const { at } = climbOverlap(still, moving, { x: 0, y: 0 }, LEANING);
    if (at.x === 0 && at.y === 0) continue;
    for (const [i, its] of group.entries()) if (its) moves[i] = { x: moves[i].x + at.x, y: moves[i].y + at.y };
    shared = sharedBy(regions, moves);
  }
  return areaOf(shared);
}

const OUTWARDS: readonly Point[] = [
  { x: -1, y: 0 },
  { x: 1, y: 0 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
];

/** The middles of the edges that look out to one side. */
function facingMiddles(region: Region, out: Point): Point[] {
  return boundariesOf(region).flatMap((boundary) =>
    boundary.flatMap((a, i) => {
      const b = boundary[(i + 1) % boundary.length];
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      const facing = ((b.y - a.y) * out.x - (b.x - a.x) * out.y) / length;
      return facing > FACING ? [{ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }] : [];
    }),
  );
}

function boundsAny(region: Region, places: readonly Point[]): boolean {
  return boundariesOf(region).some((boundary) =>
    boundary.some((a, i) => {
      const b = boundary[(i + 1) % boundary.length];
      return places.some((p) => {
        const near = nearestOnSegment(p, a, b);
        return Math.hypot(near.x - p.x, near.y - p.y) <= ON_WALL;
      });
    }),
  );
}
