import { type Affine, compose, mapPoint, scaling, similarity } from '../../geom/affine.ts';
import type { Point } from '../../geom/point.ts';
import { type Vertex, vertexAt } from '../../geom/vertex.ts';
import type { Chain } from './chain.ts';
import { flattenSpline, splineFault } from './flatten-spline.ts';
import type { Notes } from './gather-notes.ts';
import type { DxfArc, DxfEllipse, DxfEntity, DxfLine, DxfPoint, DxfPolyline, DxfSpline } from './parse-entities.ts';
import { arcVertices, type EllipseArc, ellipseOfEdge, isWhole, mapArc } from './place-arc.ts';

/** An entity that is a line of the drawing, not a placement of others. */
export type DrawnEntity = Exclude<DxfEntity, { type: 'INSERT' }>;

/** A line in nanometres without its name. */
type Bare = Pick<Chain, 'vertices' | 'closed' | 'firm'>;

const SEEN_FROM_ABOVE = 'Look whether it is drawn flat, as seen from above, and draw it so if not.';
const DRAW_AGAIN = 'Draw it once more, or save the drawing once more.';
const FULL = 2 * Math.PI;

/**
 * The lines of an entity as placed by `map`. What cannot be drawn is noted.
 *
 * @param map from the units of the drawing to nanometres.
 * @returns arcs as bulges where `map` keeps circles round; other curves as chords.
 * @check tests/unit/interchange/dxf-read.test.ts
 */
export function entityChains(entity: DrawnEntity, map: Affine, label: string, notes: Notes): Chain[] {
  const line = Number(entity.handle);
  const bare = bareChains(entity, map, (what, cure = DRAW_AGAIN) => notes.add(line, what, cure));
  return bare.map((chain) => ({ ...chain, label, line }));
}

type Tell = (what: string, cure?: string) => void;

function bareChains(entity: DrawnEntity, map: Affine, tell: Tell): Bare[] {
  if (entity.type === 'LINE') return lineChain(entity, map, tell);
  if (entity.type === 'SPLINE') return splineChains(entity, map, tell);
  if (entity.type === 'ELLIPSE') return ellipseChain(entity, map, tell);
  const plane = ownPlane(entity);
  if (!plane) {
    tell(`${entity.type} lies in a tilted plane; left out`, SEEN_FROM_ABOVE);
    return [];
  }
  const placed = compose(map, plane);
  return 'vertices' in entity ? polylineChain(entity, placed, tell) : circleChain(entity, placed, tell);
}

/** Directions that differ less from straight up or down are taken for that. */
const UPRIGHT = 1e-6;

/**
 * The map from an entity's own plane into the drawing, or null where the plane is tilted.
 *
 * @source DXF reference, "Arbitrary axis algorithm": for the direction (0, 0, -1) the x axis is (-1, 0, 0), the y axis
 *   (0, 1, 0) (from memory).
 */
export function ownPlane(entity: Pick<DxfEntity, 'extrusionX' | 'extrusionY' | 'extrusionZ'>): Affine | null {
  const { extrusionX: x = 0, extrusionY: y = 0, extrusionZ: z = 1 } = entity;
  if (!(Math.hypot(x, y) <= UPRIGHT * Math.abs(z)) || z === 0) return null;
  return scaling(z < 0 ? -1 : 1, 1);
}

function tellTilt(type: string, points: readonly DxfPoint[], tell: Tell): void {
  const heights = points.map(({ z = 0 }) => z);
  const level = heights.every((z) => Math.abs(z - heights[0]) <= 1e-9 * (1 + Math.abs(z)));
  if (!level) tell(`${type} rises out of the plane; its heights (z) are left out`, SEEN_FROM_ABOVE);
}

function lineChain({ start, end }: DxfLine, map: Affine, tell: Tell): Bare[] {
  tellTilt('LINE', [start, end], tell);
  return [
    { vertices: [mapPoint(map, start.x, start.y), mapPoint(map, end.x, end.y)], closed: false, firm: [true, true] },
  ];
}

function circleChain(entity: DxfArc, map: Affine, tell: Tell): Bare[] {
  const { type, x, y, r, startAngle = 0, endAngle = FULL } = entity;
  if (!(r > 0)) {
    tell(`the radius of ${type} is ${r}, must be above 0; left out`);
    return [];
  }
  const turn = type === 'CIRCLE' ? FULL : sweepOf(startAngle, endAngle);
  const start = type === 'CIRCLE' ? 0 : startAngle;
  return [arcChain({ centre: { x, y }, u: { x: r, y: 0 }, v: { x: 0, y: r }, start, sweep: turn }, map)];
}

function ellipseChain(entity: DxfEllipse, map: Affine, tell: Tell): Bare[] {
  const { x, y, majorX, majorY, majorZ = 0, axisRatio, startAngle = 0, endAngle = FULL } = entity;
  const plane = ownPlane(entity);
  if (!plane || Math.abs(majorZ) > UPRIGHT * Math.hypot(majorX, majorY)) {
    tell('ELLIPSE lies in a tilted plane; left out', SEEN_FROM_ABOVE);
    return [];
  }
  if (!(Math.hypot(majorX, majorY) > 0) || !(Math.abs(axisRatio) > 0)) {
    tell('an axis of ELLIPSE has no length; left out');
    return [];
  }
  // Centre and major axis are in the drawing's own coordinates; only the minor axis depends on where the entity faces.
  const [facing] = plane;
  const minor = axisRatio * facing;
  const axes = { u: { x: majorX, y: majorY }, v: { x: -majorY * minor, y: majorX * minor } };
  return [arcChain({ centre: { x, y }, ...axes, start: startAngle, sweep: sweepOf(startAngle, endAngle) }, map)];
}

/** From one angle to the next one of the same direction; a whole turn where they are the same. */
function sweepOf(start: number, end: number): number {
  const sweep = (((end - start) % FULL) + FULL) % FULL;
  return sweep < 1e-12 || FULL - sweep < 1e-12 ? FULL : sweep;
}

function arcChain(arc: EllipseArc, map: Affine): Bare {
  return { vertices: arcVertices(mapArc(map, arc)), closed: isWhole(arc), firm: [false, false] };
}

function polylineChain(entity: DxfPolyline, map: Affine, tell: Tell): Bare[] {
  const { type, vertices, closed = false, polygonMesh, polyfaceMesh } = entity;
  if (polygonMesh || polyfaceMesh) {
    tell('POLYLINE is a mesh, not a line; left out', 'Draw the section as a closed line.');
    return [];
  }
  if (vertices.length < 2) {
    tell(`${type} has ${vertices.length} vertices; left out`);
    return [];
  }
  tellTilt(type, vertices, tell);
  const shape = similarity(map);
  const count = closed ? vertices.length : vertices.length - 1;
  const placed = vertices.flatMap((vertex, i) => {
    const bulge = i < count ? (vertex.bulge ?? 0) : 0;
    return placeEdge({ x: vertex.x, y: vertex.y, bulge }, vertices[(i + 1) % vertices.length], map, shape);
  });
  return [{ vertices: placed, closed, firm: [true, true] }];
}

/** The vertices of an edge from its first one on, without its last. */
function placeEdge(from: Vertex, to: Point, map: Affine, shape: -1 | 0 | 1): Vertex[] {
  const { x, y } = mapPoint(map, from.x, from.y);
  const bulge = from.bulge ?? 0;
  if (shape !== 0 || bulge === 0) return [vertexAt(x, y, shape * bulge)];
  const arc = ellipseOfEdge(from, to);
  if (!arc) return [{ x, y }];
  const [first, ...rest] = arcVertices(mapArc(map, arc));
  return [vertexAt(x, y, first.bulge), ...rest.slice(0, -1)];
}

function splineChains(entity: DxfSpline, map: Affine, tell: Tell): Bare[] {
  const { degree, controlPoints, knots, weights } = entity;
  const spline = { degree, controlPoints: controlPoints.map(({ x, y }) => mapPoint(map, x, y)), knots, weights };
  const fault = splineFault(spline);
  if (fault) {
    tell(`SPLINE cannot be drawn: ${fault}; left out`);
    return [];
  }
  tellTilt('SPLINE', controlPoints, tell);
  return flattenSpline(spline).map((vertices) => ({ vertices, closed: false, firm: [true, true] }));
}
