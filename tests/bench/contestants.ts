import clipperLib from 'clipper-lib';
import type { MainModule } from 'clipper2-wasm/dist/es/clipper2z.js';
import type { ManifoldToplevel } from 'manifold-3d/manifold.js';
import { goesIn, judgeEntry } from '../../src/fit/judge-fit.ts';
import type { Blank } from '../../src/fit/prepare-blank.ts';
import type { Opening } from '../../src/fit/prepare-opening.ts';
import type { Point } from '../../src/geom/point.ts';
import { plainOpening } from '../cases/fit-case.ts';
import { convolutionOf } from '../kit/engines/convolution.ts';
import { coreBlank, coreOpening } from '../kit/engines/core-answer.ts';
import { cornersOf, windowOf } from '../kit/engines/inner-fit-result.ts';

/** A pair made ready for everybody; making ready is not timed. */
export interface ReadyPair {
  readonly opening: readonly Point[];
  readonly blank: readonly Point[];
  readonly coreOpening: Opening;
  readonly coreBlank: Blank;
}

/** Answers for one pair whether the blank goes in. */
export interface Judge {
  readonly name: string;
  readonly judge: (pair: ReadyPair) => boolean;
}

/** Area, square nanometres, below which an engine that works by area sees nothing. */
const NOTHING = 1;

/** Makes pairs ready, each outline once however often it is used. */
export function readyPairs(pairs: readonly { opening: readonly Point[]; blank: readonly Point[] }[]): ReadyPair[] {
  const openings = new Map<readonly Point[], Opening>();
  const blanks = new Map<readonly Point[], Blank>();
  return pairs.map(({ opening, blank }) => ({
    opening,
    blank,
    coreOpening: kept(openings, opening, () => coreOpening(plainOpening(opening))),
    coreBlank: kept(blanks, blank, () => coreBlank(blank)),
  }));
}

function kept<K, V>(known: Map<K, V>, key: K, make: () => V): V {
  const found = known.get(key) ?? make();
  known.set(key, found);
  return found;
}

/** Ours: verdict only, contact included. */
export const ourVerdict: Judge = { name: 'ours, verdict', judge: (pair) => goesIn(pair.coreOpening, pair.coreBlank) };

/** Ours: verdict, clearance, placement and play. */
export const ourClearance: Judge = {
  name: 'ours, verdict + clearance',
  judge: (pair) => judgeEntry(pair.coreOpening, pair.coreBlank, 40_000).verdict !== 'blocked',
};

/** The inner-fit region as the part round which the convolution winds -1 times, in one pass of clipper2-wasm. */
export function clipper2Convolution(library: MainModule): Judge {
  const areaOf = (cycles: readonly number[][]): number => {
    const paths = new library.PathsD();
    for (const cycle of cycles) {
      const path = new library.PathD();
      path.assign(flatWithZ(cycle));
      paths.push_back(path);
      path.delete();
    }
    const region = library.UnionSelfD(paths, library.FillRule.Negative, 1);
    const area = library.AreaPathsD(region);
    paths.delete();
    region.delete();
    return area;
  };
  return { name: 'clipper2-wasm, convolution', judge: (pair) => windowOpen(pair) && areaOf(cyclesOf(pair)) > NOTHING };
}

/** The library keeps three numbers a point. */
function flatWithZ(cycle: readonly number[]): Float64Array {
  const flat = new Float64Array((cycle.length / 2) * 3);
  for (let i = 0, k = 0; i < cycle.length; i += 2, k += 3) {
    flat[k] = cycle[i];
    flat[k + 1] = cycle[i + 1];
  }
  return flat;
}

/** The same in one pass of manifold-3d's cross-sections. */
export function manifoldConvolution(library: ManifoldToplevel): Judge {
  const areaOf = (cycles: readonly number[][]): number => {
    const section = new library.CrossSection(cycles.map(asPairs), 'Negative');
    const area = section.area();
    section.delete();
    return area;
  };
  return { name: 'manifold-3d, convolution', judge: (pair) => windowOpen(pair) && areaOf(cyclesOf(pair)) > NOTHING };
}

function asPairs(cycle: readonly number[]): [number, number][] {
  return Array.from({ length: cycle.length / 2 }, (_, i) => [cycle[2 * i], cycle[2 * i + 1]]);
}

interface LibPoint {
  X: number;
  Y: number;
}

/** The part of clipper-lib used here; its published types do not match the module. */
interface ClipperLib {
  readonly Clipper: {
    new (): {
      AddPaths(paths: LibPoint[][], role: number, closed: boolean): void;
      Execute(operation: number, solution: LibPoint[][], subject: number, clip: number): void;
    };
    MinkowskiSum(pattern: LibPoint[], path: LibPoint[], closed: boolean): LibPoint[][];
    Area(path: LibPoint[]): number;
    PointInPolygon(point: LibPoint, path: LibPoint[]): number;
  };
  readonly PolyType: { ptSubject: number; ptClip: number };
  readonly ClipType: { ctUnion: number; ctDifference: number };
  readonly PolyFillType: { pftNegative: number; pftNonZero: number };
}

const lib = clipperLib as unknown as ClipperLib;

/** The same in one pass of clipper-lib, plain JavaScript. */
export const clipperLibConvolution: Judge = {
  name: 'clipper-lib, convolution',
  judge: (pair) => {
    if (!windowOpen(pair)) return false;
    const clipper = new lib.Clipper();
    clipper.AddPaths(cyclesOf(pair).map(asLibPath), lib.PolyType.ptSubject, true);
    const region: LibPoint[][] = [];
    clipper.Execute(lib.ClipType.ctUnion, region, lib.PolyFillType.pftNegative, lib.PolyFillType.pftNegative);
    return region.reduce((sum, path) => sum + lib.Clipper.Area(path), 0) > NOTHING;
  },
};

/** As most would write it: clipper-lib's own Minkowski sum taken from the window, and a look at what is left. */
export const clipperLibMinkowski: Judge = {
  name: 'clipper-lib, MinkowskiSum',
  judge: ({ opening, blank }) => {
    const window = windowOf(plainOpening(opening), blank);
    if (!window) return false;
    const swept = lib.Clipper.MinkowskiSum(
      blank.map((p) => ({ X: -p.x, Y: -p.y })),
      asLib(opening),
      true,
    );
    const clipper = new lib.Clipper();
    clipper.AddPaths([asLib(cornersOf(window))], lib.PolyType.ptSubject, true);
    clipper.AddPaths(swept, lib.PolyType.ptClip, true);
    const left: LibPoint[][] = [];
    clipper.Execute(lib.ClipType.ctDifference, left, lib.PolyFillType.pftNonZero, lib.PolyFillType.pftNonZero);
    return left.some((path) => lib.Clipper.Area(path) > NOTHING && isInside(opening, blank, path[0]));
  },
};

/** Within a piece no outlines cross, so the blank is inside as a whole or outside; vertices that touch do not count. */
function isInside(opening: readonly Point[], blank: readonly Point[], at: LibPoint): boolean {
  const outline = asLib(opening);
  const places = blank.map((p) => lib.Clipper.PointInPolygon({ X: p.x + at.X, Y: p.y + at.Y }, outline));
  return places.filter((place) => place === 1).length > places.filter((place) => place === 0).length;
}

function asLib(points: readonly Point[]): LibPoint[] {
  return points.map((p) => ({ X: p.x, Y: p.y }));
}

function asLibPath(cycle: readonly number[]): LibPoint[] {
  return asPairs(cycle).map(([X, Y]) => ({ X, Y }));
}

/** The cheap test that every engine is given: the blank's box goes into the opening's box. */
function windowOpen({ opening, blank }: ReadyPair): boolean {
  return windowOf(plainOpening(opening), blank) !== null;
}

function cyclesOf({ opening, blank }: ReadyPair): number[][] {
  return convolutionOf(plainOpening(opening), blank);
}
