import openClipper2, {
  type MainModule,
  type Path64,
  type Paths64,
  type PolyPath64,
} from 'clipper2-wasm/dist/es/clipper2z.js';
import { boxOf, type Point } from '../../../src/geom/point.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';
import {
  bisectionOf,
  cornersOf,
  type InnerFit,
  largestPassing,
  NO_AREA,
  SLIVER,
  windowOf,
} from './inner-fit-result.ts';

/*
 * The one importer of clipper2-wasm, a polygon clipping library compiled to WebAssembly. Whole-number coordinates,
 * here sixteenths of a nanometre.
 */

const SCALE = 16;

/** The library with the objects made in one calculation, so that all can be given back. */
export interface Clipper2 {
  readonly library: MainModule;
  path(points: readonly Point[]): Path64;
  paths(list: readonly (readonly Point[])[]): Paths64;
  keep<T extends { delete(): void }>(made: T): T;
  release(): void;
}

let loaded: MainModule | undefined;

/** Loads the library; must have been awaited once before anything else of this file runs. */
export async function loadClipper2(): Promise<MainModule> {
  loaded ??= await openClipper2();
  return loaded;
}

/** A workplace for one calculation. */
export function clipper2(): Clipper2 {
  if (!loaded) throw new Error('await loadClipper2() first');
  const library = loaded;
  const made: { delete(): void }[] = [];
  const keep = <T extends { delete(): void }>(object: T): T => {
    made.push(object);
    return object;
  };
  const path = (points: readonly Point[]): Path64 => {
    const result = keep(new library.Path64());
    result.assign(
      BigInt64Array.from(points.flatMap((p) => [BigInt(Math.round(p.x * SCALE)), BigInt(Math.round(p.y * SCALE)), 0n])),
    );
    return result;
  };
  const paths = (list: readonly (readonly Point[])[]): Paths64 => {
    const result = keep(new library.Paths64());
    for (const points of list) result.push_back(path(points));
    return result;
  };
  const release = (): void => {
    for (const object of made) object.delete();
  };
  return { library, path, paths, keep, release };
}

/**
 * The inner-fit region by sweeping and clipper2-wasm: the library's own Minkowski sum of every outline of the opening
 * with the mirrored blank's outline, taken from the window. What is left falls into pieces in each of which the blank
 * collides everywhere or nowhere; those where it lies inside the opening are kept.
 */
export function clipper2InnerFit(opening: OpeningShape, blank: readonly Point[]): InnerFit {
  const window = windowOf(opening, blank);
  if (!window) return NO_AREA;
  const clipper = clipper2();
  const { library, keep } = clipper;
  const mirrored = clipper.path(blank.map((p) => ({ x: -p.x, y: -p.y })));
  let free = clipper.paths([cornersOf(window)]);
  for (const outline of [opening.outer, ...opening.islands]) {
    const swept = keep(library.MinkowskiSum64(mirrored, clipper.path(outline), true));
    free = keep(library.Difference64(free, swept, library.FillRule.NonZero));
  }
  const pieces = piecesOf(clipper, free)
    .map((outlines) => describedPiece(clipper, outlines))
    .filter((piece) => piece !== null);
  clipper.release();
  return summedUp(pieces.filter((piece) => collidesNowhere(opening, blank, piece.centre)));
}

interface Piece {
  readonly area: number;
  readonly holes: number;
  readonly centre: Point;
  readonly radius: number;
  readonly short: number;
  readonly play: InnerFit['play'];
}

function summedUp(pieces: readonly Piece[]): InnerFit {
  if (pieces.length === 0) return NO_AREA;
  const best = pieces.reduce((a, b) => (b.radius > a.radius ? b : a));
  return {
    area: pieces.reduce((sum, piece) => sum + piece.area, 0),
    radius: best.radius,
    short: best.short,
    witness: best.centre,
    play: best.play,
    pieces: pieces.length,
    holes: pieces.reduce((sum, piece) => sum + piece.holes, 0),
  };
}

/** Outer outlines, each with its holes, as the library nests them. */
function piecesOf({ library, keep }: Clipper2, region: Paths64): Point[][][] {
  const nothing = keep(new library.Paths64());
  const tree = keep(new library.PolyPath64());
  library.BooleanOpOut64(library.ClipType.Union, library.FillRule.NonZero, region, nothing, tree);
  return childrenOf(tree).flatMap(outerWithHoles);
}

function outerWithHoles(outer: PolyPath64): Point[][][] {
  const holes = childrenOf(outer);
  const inHoles = holes.flatMap(childrenOf).flatMap(outerWithHoles);
  return [[pointsOf(outer.polygon()), ...holes.map((hole) => pointsOf(hole.polygon()))], ...inHoles];
}

function childrenOf(node: PolyPath64): PolyPath64[] {
  return Array.from({ length: node.count() }, (_, i) => node.child(i));
}

function pointsOf(path: Path64): Point[] {
  return Array.from({ length: path.size() }, (_, i) => path.get(i)).map((p) => ({
    x: Number(p.x) / SCALE,
    y: Number(p.y) / SCALE,
  }));
}

/** Area, holes and the last inward offset that leaves something; null for a sliver. */
function describedPiece(clipper: Clipper2, outlines: readonly Point[][]): Piece | null {
  const { library } = clipper;
  const paths = clipper.paths(outlines);
  const area = library.AreaPaths64(paths) / SCALE ** 2;
  if (area <= (SLIVER * outlines.reduce((sum, outline) => sum + lengthOf(outline), 0)) / 2) return null;
  const box = boxOf(outlines[0]);
  const most = Math.min(box.maxX - box.minX, box.maxY - box.minY) / 2;
  const last = largestPassing(most, (by) => {
    const left = library.InflatePaths64(
      paths,
      -by * SCALE,
      library.JoinType.Round,
      library.EndType.Polygon,
      2,
      SCALE / 2,
    );
    const found = left.size() > 0 ? pointsOf(left.get(0))[0] : null;
    left.delete();
    return found;
  });
  const play = { lateral: box.maxX - box.minX, vertical: box.maxY - box.minY };
  return {
    area,
    holes: outlines.length - 1,
    centre: last?.found ?? outlines[0][0],
    radius: last?.by ?? 0,
    short: bisectionOf(most),
    play,
  };
}

function lengthOf(outline: readonly Point[]): number {
  return outline.reduce(
    (sum, p, i) =>
      sum + Math.hypot(outline[(i + 1) % outline.length].x - p.x, outline[(i + 1) % outline.length].y - p.y),
    0,
  );
}

/** At a placement where no outlines cross: the blank lies in the opening, and no island in the blank. */
function collidesNowhere(opening: OpeningShape, blank: readonly Point[], by: Point): boolean {
  const moved = blank.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
  const clipper = clipper2();
  const { library, keep } = clipper;
  const isIn = (p: Point, outline: readonly Point[]): boolean => {
    const point = keep(new library.Point64(BigInt(Math.round(p.x * SCALE)), BigInt(Math.round(p.y * SCALE)), 0n));
    return library.PointInPolygon64(point, clipper.path(outline)) === library.PointInPolygonResult.IsInside;
  };
  const inside = moved.some((p) => isIn(p, opening.outer) && opening.islands.every((island) => !isIn(p, island)));
  const clear = opening.islands.every((island) => island.every((p) => !isIn(p, moved)));
  clipper.release();
  return inside && clear;
}
