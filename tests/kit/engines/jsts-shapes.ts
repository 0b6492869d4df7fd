import ConvexHull from 'jsts/org/locationtech/jts/algorithm/ConvexHull.js';
import MaximumInscribedCircle from 'jsts/org/locationtech/jts/algorithm/construct/MaximumInscribedCircle.js';
import DiscreteHausdorffDistance from 'jsts/org/locationtech/jts/algorithm/distance/DiscreteHausdorffDistance.js';
import InteriorPointArea from 'jsts/org/locationtech/jts/algorithm/InteriorPointArea.js';
import IndexedPointInAreaLocator from 'jsts/org/locationtech/jts/algorithm/locate/IndexedPointInAreaLocator.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import Location from 'jsts/org/locationtech/jts/geom/Location.js';
import PrecisionModel from 'jsts/org/locationtech/jts/geom/PrecisionModel.js';
import 'jsts/org/locationtech/jts/monkey.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import IndexedFacetDistance from 'jsts/org/locationtech/jts/operation/distance/IndexedFacetDistance.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import GeometryPrecisionReducer from 'jsts/org/locationtech/jts/precision/GeometryPrecisionReducer.js';
import type { Point } from '../../../src/geom/point.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import type { OpeningShape } from '../../cases/fit-case.ts';

/*
 * The one importer of JSTS (a JavaScript translation of the JTS Topology Suite), a well-known general-purpose
 * geometry library: everything the tests ask of it, under domain names. Its published types are mostly `any`, so
 * the part used here is written out.
 */

/** A JSTS geometry, as far as it is used here. */
export interface JstsGeometry {
  getArea(): number;
  getLength(): number;
  isEmpty(): boolean;
  getNumGeometries(): number;
  getGeometryN(n: number): JstsGeometry;
  getBoundary(): JstsGeometry;
  getEnvelopeInternal(): { getWidth(): number; getHeight(): number };
  getCoordinates(): Point[];
}

interface JstsPolygon extends JstsGeometry {
  getNumInteriorRing(): number;
  getExteriorRing(): JstsGeometry;
  getInteriorRingN(n: number): JstsGeometry;
}

const factory = new GeometryFactory();

function coordinatesOf(points: readonly Point[]): unknown[] {
  return points.map((p) => new Coordinate(p.x, p.y));
}

function linearRing(points: readonly Point[]): unknown {
  return factory.createLinearRing(coordinatesOf([...points, points[0]]));
}

/** The area inside an outline less its holes. */
export function jstsPolygon(outer: readonly Point[], holes: readonly (readonly Point[])[] = []): JstsGeometry {
  return factory.createPolygon(linearRing(outer), holes.map(linearRing));
}

/** The opening, moved. */
export function jstsOpening(opening: OpeningShape, by: Point = { x: 0, y: 0 }): JstsGeometry {
  const move = (outline: readonly Point[]): Point[] => outline.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
  return jstsPolygon(move(opening.outer), opening.islands.map(move));
}

/** Convex hull of points; null where they lie on one line. */
export function jstsHull(points: readonly Point[]): JstsGeometry | null {
  const hull = new ConvexHull(coordinatesOf(points), factory).getConvexHull() as JstsGeometry;
  return hull.getArea() > 0 ? hull : null;
}

/** What is in `a` and not in `b`. */
export function jstsDifference(a: JstsGeometry, b: JstsGeometry): JstsGeometry {
  try {
    return OverlayOp.difference(a, b) as JstsGeometry;
  } catch (error) {
    // This overlay gives up on crossings that rounding puts beside a line; on a grid of a picometre they are on it.
    if ((error as Error).name !== 'TopologyException') throw error;
    return OverlayOp.difference(onGrid(a), onGrid(b)) as JstsGeometry;
  }
}

function onGrid(geometry: JstsGeometry): JstsGeometry {
  return GeometryPrecisionReducer.reduce(geometry, new PrecisionModel(1_000)) as JstsGeometry;
}

/** The polygons of a geometry that have area, points and lines left out, each with its number of holes. */
export function jstsPieces(geometry: JstsGeometry): { readonly piece: JstsGeometry; readonly holes: number }[] {
  const all = Array.from({ length: geometry.getNumGeometries() }, (_, i) => geometry.getGeometryN(i));
  return all
    .filter((g) => g.getArea() > 0)
    .map((piece) => ({ piece, holes: (piece as JstsPolygon).getNumInteriorRing() }));
}

/** Centre and radius of the largest circle in a polygon, the radius at most `accuracy` too small. */
export function jstsInscribedCircle(
  polygon: JstsGeometry,
  accuracy: number,
): { readonly centre: Point; readonly radius: number } {
  const circle = new MaximumInscribedCircle(polygon, accuracy);
  const centre = circle.getCenter() as { getX(): number; getY(): number };
  const rim = circle.getRadiusPoint() as { getX(): number; getY(): number };
  const at = { x: centre.getX(), y: centre.getY() };
  return { centre: at, radius: Math.hypot(rim.getX() - at.x, rim.getY() - at.y) };
}

/**
 * The geometry less everything within `by` of its outline. The arcs round inward corners are polygons of 256 sides
 * to the full turn, inscribed: the result is too large by at most 7.6e-5 of `by`.
 */
export function jstsShrunken(geometry: JstsGeometry, by: number): JstsGeometry {
  return BufferOp.bufferOp(geometry, -by, fineArcs) as JstsGeometry;
}

const fineArcs = new BufferParameters(64);
fineArcs.setSimplifyFactor(0);

/**
 * The geometry and everything within `by` of it, arcs as polygons of `segments` sides to the quarter turn, inscribed:
 * too small by at most by (1 - cos(pi / 4 segments)).
 */
export function jstsGrown(geometry: JstsGeometry, by: number, segments: number): JstsGeometry {
  const arcs = new BufferParameters(segments);
  arcs.setSimplifyFactor(0);
  return BufferOp.bufferOp(geometry, by, arcs) as JstsGeometry;
}

/** The only polygon of a geometry as an opening, counter-clockwise, rounded to whole nanometres. */
export function openingOf(geometry: JstsGeometry): OpeningShape {
  const polygon = geometry.getGeometryN(0) as JstsPolygon;
  const islands = Array.from({ length: polygon.getNumInteriorRing() }, (_, i) =>
    outlineOf(polygon.getInteriorRingN(i)),
  );
  return { outer: outlineOf(polygon.getExteriorRing()), islands: islands.filter((island) => island.length >= 3) };
}

function outlineOf(ring: JstsGeometry): Point[] {
  const rounded = ring.getCoordinates().map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) }));
  const outline = rounded.slice(1).filter((p, i) => p.x !== rounded[i].x || p.y !== rounded[i].y);
  return signedArea(outline) < 0 ? outline.reverse() : outline;
}

/** Some point inside a geometry with area, well away from its outline. */
export function jstsInnerPoint(geometry: JstsGeometry): Point {
  const { x, y } = InteriorPointArea.getInteriorPoint(geometry) as Point;
  return { x, y };
}

/** Least distance between the outlines of two geometries. */
export function jstsOutlineDistance(a: JstsGeometry, b: JstsGeometry): number {
  return DistanceOp.distance(a.getBoundary(), b.getBoundary()) as number;
}

/** Answers, for one geometry with area, where a point lies and how far it is from the outline. */
export interface JstsProbe {
  /** Outline included. */
  contains(p: Point): boolean;
  distanceToOutline(p: Point): number;
}

/** Indexes a geometry for many questions. */
export function jstsProbe(geometry: JstsGeometry): JstsProbe {
  const locator = new IndexedPointInAreaLocator(geometry);
  const facets = new IndexedFacetDistance(geometry.getBoundary());
  return {
    contains: (p) => locator.locate(new Coordinate(p.x, p.y)) !== Location.EXTERIOR,
    distanceToOutline: (p) => facets.distance(factory.createPoint(new Coordinate(p.x, p.y))) as number,
  };
}

/**
 * The Hausdorff distance of the outlines of two geometries as far as it shows at places along them: every segment is cut
 * into so many parts. Never too large.
 */
export function jstsHausdorff(a: JstsGeometry, b: JstsGeometry, parts: number): number {
  return DiscreteHausdorffDistance.distance(a.getBoundary(), b.getBoundary(), 1 / parts) as number;
}

/** What is in one of the two only. */
export function jstsSymmetricDifference(a: JstsGeometry, b: JstsGeometry): JstsGeometry {
  try {
    return OverlayOp.symDifference(a, b) as JstsGeometry;
  } catch (error) {
    if ((error as Error).name !== 'TopologyException') throw error;
    return OverlayOp.symDifference(onGrid(a), onGrid(b)) as JstsGeometry;
  }
}
