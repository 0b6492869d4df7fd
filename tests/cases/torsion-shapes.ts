import type { Ring } from '../../src/geom/ring.ts';
import { makeDrawn, type Vertex, vertexAt } from '../../src/geom/vertex.ts';

/** A section as the strength core takes it. */
export interface DrawnSection {
  readonly ring: Ring;
  readonly drawn: readonly Vertex[];
}

/** A corner in millimetres, and the bulge of the edge that leaves it. */
export type MmVertex = readonly [x: number, y: number, bulge?: number];

/** A section of corners in millimetres, arcs as bulges. @throws Error where it is no outline. */
export function sectionOfMm(vertices: readonly MmVertex[]): DrawnSection {
  const made = makeDrawn(vertices.map(([x, y, bulge]) => vertexAt(Math.round(x * 1e6), Math.round(y * 1e6), bulge)));
  if (!made.ok) throw new Error(made.fault.message);
  return made;
}

/** Corners of an arc about a centre, in parts of at most a quarter turn; its last point is left to what follows. */
export function arcOfMm(cx: number, cy: number, radius: number, start: number, sweep: number): MmVertex[] {
  const parts = Math.ceil(Math.abs(sweep) / (Math.PI / 2) - 1e-9);
  return Array.from({ length: parts }, (_, k) => {
    const angle = start + (sweep * k) / parts;
    return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle), Math.tan(sweep / parts / 4)] as const;
  });
}

/** A full circle about the origin. */
export function circle(radius: number): DrawnSection {
  return sectionOfMm(arcOfMm(0, 0, radius, 0, 2 * Math.PI));
}

/** A sector with its tip at the origin; its angle in degrees. */
export function sector(radius: number, degrees: number): DrawnSection {
  const angle = (degrees * Math.PI) / 180;
  const end: MmVertex = [radius * Math.cos(angle), radius * Math.sin(angle)];
  return sectionOfMm([...(degrees === 180 ? [] : [[0, 0] as const]), ...arcOfMm(0, 0, radius, 0, angle), end]);
}

/** A round bar with a circular groove about a point of its rim. */
export function groovedBar(radius: number, groove: number): DrawnSection {
  const half = 2 * Math.asin(groove / (2 * radius));
  const [px, py] = [radius * Math.cos(half), radius * Math.sin(half)];
  const open = Math.atan2(py, radius - px);
  return sectionOfMm([
    ...arcOfMm(0, 0, radius, half, 2 * (Math.PI - half)),
    ...arcOfMm(radius, 0, groove, Math.PI + open, -2 * open),
  ]);
}

/** A shaft with a slot from its crown: half the slot's width, its depth from the crown. */
export function keyedShaft(radius: number, half: number, depth: number): DrawnSection {
  const off = Math.asin(half / radius);
  const top = radius * Math.cos(off);
  return sectionOfMm([
    ...arcOfMm(0, 0, radius, Math.PI / 2 + off, 2 * (Math.PI - off)),
    [half, top],
    [half, radius - depth],
    [-half, radius - depth],
  ]);
}

/** A fillet at an inner corner that the outline reaches along one axis and leaves along the other. */
function filletOfMm(x: number, y: number, radius: number, outX: number, outY: number): MmVertex[] {
  if (radius === 0) return [[x, y]];
  // Turns right by a quarter; its centre lies off the corner by the radius both ways.
  const from = Math.atan2(-outY, -outX) + Math.PI / 4;
  const arc = arcOfMm(x + outX * radius, y + outY * radius, radius, from, -Math.PI / 2);
  return [
    ...arc,
    [
      x + outX * radius + radius * Math.cos(from - Math.PI / 2),
      y + outY * radius + radius * Math.sin(from - Math.PI / 2),
    ],
  ];
}

/** An L: a level leg, thickness `b`, an upright one, thickness `d`, lengths over all, a fillet between them. */
export function angleSection(level: number, b: number, upright: number, d: number, fillet: number): DrawnSection {
  return sectionOfMm([[0, 0], [level, 0], [level, b], ...filletOfMm(d, b, fillet, 1, 1), [d, upright], [0, upright]]);
}

/** A T: a flange of `width` and thickness `tf` on a stem of `stem` below it and thickness `tw`, fillets between them. */
export function teeSection(width: number, tf: number, stem: number, tw: number, fillet: number): DrawnSection {
  return sectionOfMm([
    [-tw / 2, 0],
    [tw / 2, 0],
    ...filletOfMm(tw / 2, stem, fillet, 1, -1),
    [width / 2, stem],
    [width / 2, stem + tf],
    [-width / 2, stem + tf],
    [-width / 2, stem],
    ...filletOfMm(-tw / 2, stem, fillet, -1, -1),
  ]);
}

/** A round tube slit along its length, by a gap in degrees. */
export function slitTube(outside: number, wall: number, degrees: number): DrawnSection {
  const gap = (degrees * Math.PI) / 180;
  const sweep = 2 * Math.PI - gap;
  const end = (radius: number, angle: number): MmVertex => [radius * Math.cos(angle), radius * Math.sin(angle)];
  return sectionOfMm([
    ...arcOfMm(0, 0, outside, gap / 2, sweep),
    end(outside, gap / 2 + sweep),
    ...arcOfMm(0, 0, outside - wall, gap / 2 + sweep, -sweep),
    end(outside - wall, gap / 2),
  ]);
}

/** A polygon in millimetres. */
export function polygonOfMm(corners: readonly (readonly [number, number])[], scale = 1): DrawnSection {
  return sectionOfMm(corners.map(([x, y]) => [x * scale, y * scale] as const));
}
