import type { Units } from '../../../family/length-text.ts';
import type { Point } from '../../../geom/point.ts';
import { arcOf, type Vertex } from '../../../geom/vertex.ts';
import { NM_OF_UNIT } from '../ruler-steps.ts';

/** Digits after the point of what is read while drawing. */
const DIGITS = { mm: 3, in: 4 } as const;

/** A length while drawing, without its unit: three decimals of a millimetre or four of an inch. */
function drawnNumber(nm: number, units: Units): string {
  const text = (nm / NM_OF_UNIT[units]).toFixed(DIGITS[units]);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** A movement while drawing, with its sign. */
function shiftNumber(nm: number, units: Units): string {
  const text = drawnNumber(nm, units);
  return nm > 0 && Number(text) !== 0 ? `+${text}` : text;
}

/** A place: "x 1.250, y 3.400 mm". */
export function placeText({ x, y }: Point, units: Units): string {
  return `x ${drawnNumber(x, units)}, y ${drawnNumber(y, units)} ${units}`;
}

/** Length, radius and bow of an edge: "edge 2.000 mm", "arc: radius 1.250, bow 0.500 mm". */
export function edgeText(from: Vertex, to: Point, units: Units): string {
  const arc = arcOf(from, to);
  if (!arc) return `edge ${drawnNumber(Math.hypot(to.x - from.x, to.y - from.y), units)} ${units}`;
  const bow = (Math.abs(from.bulge ?? 0) * Math.hypot(to.x - from.x, to.y - from.y)) / 2;
  return `arc: radius ${drawnNumber(arc.radius, units)}, bow ${drawnNumber(bow, units)} ${units}`;
}

/** The direction of a line in degrees from the right, counter-clockwise, from 0 up to 360. */
function directionText(from: Point, to: Point): string {
  const degrees = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return `${((degrees + 360) % 360).toFixed(1)}°`;
}

/**
 * What is read at a vertex while it is dragged: where it is, how far it has come, its two edges and the angle inside.
 *
 * @param from where it was when the drag began; null where it was not dragged.
 */
export function vertexLines(
  vertices: readonly Vertex[],
  index: number,
  from: Point | null,
  units: Units,
): readonly string[] {
  const n = vertices.length;
  const at = vertices[index];
  const before = vertices[(index + n - 1) % n];
  const after = vertices[(index + 1) % n];
  const shift = from && `Δx ${shiftNumber(at.x - from.x, units)}, Δy ${shiftNumber(at.y - from.y, units)} ${units}`;
  return [
    placeText(at, units),
    ...(shift ? [shift] : []),
    `${edgeText(before, at, units)} in`,
    `${edgeText(at, after, units)} out`,
    `angle ${((angleAt(before, at, after) * 180) / Math.PI).toFixed(1)}°`,
  ];
}

/** The angle inside a counter-clockwise outline at `at`, between its two edges where they meet there; radians. */
export function angleAt(before: Vertex, at: Vertex, after: Point): number {
  // An arc leaves its chord by half its own angle to the right and comes in by as much to the left.
  const coming = Math.atan2(at.y - before.y, at.x - before.x) + 2 * Math.atan(before.bulge ?? 0);
  const going = Math.atan2(after.y - at.y, after.x - at.x) - 2 * Math.atan(at.bulge ?? 0);
  const full = 2 * Math.PI;
  return (((coming + Math.PI - going) % full) + full) % full;
}

/** What is read of an edge while it is bowed or moved. */
export function edgeLines(
  vertices: readonly Vertex[],
  edge: number,
  from: Point | null,
  units: Units,
): readonly string[] {
  const at = vertices[edge];
  const to = vertices[(edge + 1) % vertices.length];
  const shift = from && `Δx ${shiftNumber(at.x - from.x, units)}, Δy ${shiftNumber(at.y - from.y, units)} ${units}`;
  return [...(shift ? [shift] : []), edgeText(at, to, units), `direction ${directionText(at, to)}`];
}

/** What is read at the pen: the place, and the line that leads to it. */
export function penLines(last: Point | null, at: Point, units: Units): readonly string[] {
  if (!last) return [placeText(at, units)];
  const length = drawnNumber(Math.hypot(at.x - last.x, at.y - last.y), units);
  return [placeText(at, units), `${length} ${units} at ${directionText(last, at)}`];
}
