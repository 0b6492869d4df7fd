import type { Box, Point } from '../geom/point.ts';
import type { Region } from '../geom/region.ts';
import { asTrustedRing } from '../geom/ring.ts';
import { simplifyOutline } from '../geom/simplify.ts';
import { climbOverlap, type Steps, searchOverlap } from './climb-overlap.ts';
import { leanTogether } from './lean-together.ts';
import { boxOfRegion, largestArea, moveRegion, type Shared, share, shareBoth, sharedBy } from './overlap-regions.ts';
import { finCore, withoutFins } from './widest-blank.ts';

/** How sure it is that no other alignment leaves a larger blade: a part that hangs together. */
export interface Sureness {
  /**
   * best: the largest part of the smallest region is shared, more there cannot be. agreed: every start came to the same
   * area. one-of-several: the starts ended at different areas, and the greatest was taken.
   */
  readonly kind: 'best' | 'agreed' | 'one-of-several';
  /** From how many alignments it was searched, and how many of them came to the area that was taken, to 0.1 %. */
  readonly starts: number;
  readonly same: number;
  /** The area of the largest part shared, and a bound that none can be above: that of the smallest region. Square nanometres. */
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
 * Moves regions, without a turn, to where the largest part that all of them share is greatest: a part hangs together where
 * a hundredth of a millimetre does. It is searched from several alignments (as drawn; backs level; boxes centred; walls on
 * one side level) by climbing, and once more by looking at a grid of places: the regions are laid on each other one by one,
 * the smallest first, then each is moved against what all others share until nothing gains, then all those that bound the
 * shared part on one side together.
 *
 * @param regions with area, in an order that does not depend on how they were chosen: the answer then does not either.
 * @returns moves in whole nanometres; a local optimum from the best start.
 * @check tests/outside/passage.test.ts, tests/laws/passage.test.ts
 */
export function* alignRegions(regions: readonly Region[]): Generator<Progress, Alignment, void> {
  const cores = coresOf(regions);
  const light = cores.map(lightened);
  const areas = cores.map(largestArea);
  const enough = Math.min(...areas) * (1 - ALL_SHARED);
  const order = regions.map((_, i) => i).sort((a, b) => areas[a] - areas[b] || a - b);
  const starts = regions.length === 1 ? [ORIGIN] : startsOf(cores.map(boxOfRegion));
  const each = regions.length * (MOST_ROUNDS + 1);
  const found: { moves: Point[]; area: number }[] = [];
  for (const [n, { moves: start, lay }] of starts.entries()) {
    const moves = [...start];
    const tell = (done: number) => ({ done: n * each + Math.min(done, each), total: starts.length * each });
    yield* layAll(light, moves, order, lay, tell);
    yield* improve(light, moves, tell);
    found.push({ moves, area: largestArea(sharedBy(cores, moves)) });
    if (found[n].area >= enough) break;
  }
  const best = found.reduce((a, b) => (b.area > a.area * (1 + ALL_SHARED) ? b : a));
  const same = found.filter(({ area }) => area >= best.area * (1 - SAME_AREA)).length;
  const climbed = same === found.length ? 'agreed' : 'one-of-several';
  const kind = best.area >= enough ? 'best' : climbed;
  const atMost = Math.min(...regions.map(bladeArea));
  const area = bladeArea(sharedBy(regions, best.moves));
  return { moves: best.moves, sure: { kind, starts: found.length, same, area, atMost } };
}

/** The area that a blade of a region may have. */
function bladeArea(region: Region): number {
  return largestArea(withoutFins(region)) || largestArea(region);
}

/** What a blade keeps off its fins, or the regions themselves where one is too thin for that. */
function coresOf(regions: readonly Region[]): readonly Region[] {
  const cores = regions.map(finCore);
  return cores.every(({ length }) => length > 0) ? cores : regions;
}

/** A region with fewer vertices, for the search only. */
function lightened(region: Region): Region {
  const lighten = (boundary: readonly Point[]) => simplifyOutline(boundary, SEARCHED_WITHIN);
  return region.map(({ outer, holes }) => ({ outer: asTrustedRing(lighten(outer)), holes: holes.map(lighten) }));
}

/** An alignment to begin with, and how a region is laid on others from there. */
interface Start {
  readonly moves: readonly Point[];
  readonly lay: typeof climbOverlap;
}

const ORIGIN: Start = { moves: [{ x: 0, y: 0 }], lay: climbOverlap };

/** The alignments that are searched from; those that differ in nothing once. */
function startsOf(boxes: readonly Box[]): Start[] {
  const middle = ({ minX, maxX }: Box) => Math.round((minX + maxX) / 2);
  const centred = boxes.map((box) => ({ x: -middle(box), y: -Math.round((box.minY + box.maxY) / 2) }));
  const climbed = [
    boxes.map(() => ({ x: 0, y: 0 })),
    boxes.map((box) => ({ x: -middle(box), y: -box.minY })),
    centred,
    boxes.map((box) => ({ x: -box.minX, y: -box.minY })),
    boxes.map((box) => ({ x: -box.maxX, y: -box.minY })),
  ];
  const different = climbed.filter((moves, i) => !climbed.slice(0, i).some((other) => isSameAlignment(moves, other)));
  return [...different.map((moves) => ({ moves, lay: climbOverlap })), { moves: centred, lay: searchOverlap }];
}

/** Whether all regions lie on each other in the same way. */
function isSameAlignment(a: readonly Point[], b: readonly Point[]): boolean {
  return a.every(({ x, y }, i) => x - a[0].x === b[i].x - b[0].x && y - a[0].y === b[i].y - b[0].y);
}

/** Lays the regions on each other, each where it leaves the largest part of what is shared so far. */
function* layAll(
  regions: readonly Region[],
  moves: Point[],
  order: readonly number[],
  lay: Start['lay'],
  tell: (done: number) => Progress,
): Generator<Progress, void, void> {
  let shared: Shared = null;
  for (const [n, i] of order.entries()) {
    if (shared !== null && shared.length > 0) moves[i] = lay(shared, regions[i], moves[i], LAYING).at;
    shared = share(shared, moveRegion(regions[i], moves[i]));
    yield tell(n + 1);
  }
}

/** Moves each region against the others, round after round; gives the area of the largest shared part in the end. */
function* improve(
  regions: readonly Region[],
  moves: Point[],
  tell: (done: number) => Progress,
): Generator<Progress, number, void> {
  let area = largestArea(sharedBy(regions, moves));
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
