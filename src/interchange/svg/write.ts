import type { FileUnits } from '../../family/family.ts';
import { NM_PER_UNIT } from '../../family/file-length.ts';
import { type Box, boxOf, NM_PER_MM, type Point } from '../../geom/point.ts';
import { arcOf, edgePoints, type Vertex, vertexAt } from '../../geom/vertex.ts';
import type { Profile } from '../../profile/profile.ts';
import { cleanText, escapeXml } from './escape-xml.ts';

/** How profiles are written. */
export interface SvgWriting {
  /** Unit of the sheet's size, and of its numbers. */
  readonly units: FileUnits;
  /** Room between outlines, and from the outermost to the sheet's edge, nanometres. Default: 5 mm. */
  readonly gap?: number;
}

const DEFAULT_GAP = 5 * NM_PER_MM;

/** Line width in nanometres. Laser cutters take a line of at most 0.001 inch for a cut (common practice, no source). */
const HAIRLINE = 25_000;

/** Digits behind the point that tell every whole nanometre. */
const DIGITS: Readonly<Record<FileUnits, number>> = { mm: 6, in: 9 };

/** Radii are written finer: near a half circle, an arc's height hangs on their last digits. */
const RADIUS_DIGITS = 14;

/**
 * Near a half circle the radius hardly changes with the arc, so that a program with 7 digits would bend the arc by more
 * than a micrometre. Arcs between these bulges (150 and 210 degrees) are written as two; an exact half circle is not,
 * as a radius that is a little too small says it exactly.
 */
const UNSURE_BULGES = { from: Math.tan((37.5 * Math.PI) / 180), to: Math.tan((52.5 * Math.PI) / 180) };

/** By how much such a radius is too small, in nanometres: more than a program with 7 digits loses of its chord. */
const SHORT_OF_HALF = 10;

/** One profile's place on the sheet: what to add to its own coordinates, y still up. */
interface Placed {
  readonly profile: Profile;
  readonly vertices: readonly Vertex[];
  readonly right: number;
  readonly up: number;
}

/**
 * An SVG sheet with the outlines of profiles in a row, at true size: one user unit is one millimetre or one inch. Each
 * is one path with the profile's id and, as its title, its name; arcs stay arcs. Black hairlines without fill, no style
 * sheet, no metadata: what cutters and print shops take.
 *
 * @param profiles in the order of the row; each keeps its own shape and stands on a common line.
 * @returns the text of the file; without profiles, of an empty sheet.
 * @accuracy vertices to the whole nanometre; an arc that is written as two has its middle rounded to one.
 * @source Scalable Vector Graphics (SVG) 1.1, second edition, W3C 2011.
 * @check tests/laws/svg-round-trip.test.ts, tests/browser/svg-against-browser.test.ts
 */
export function writeSvg(profiles: readonly Profile[], options: SvgWriting): string {
  const { units, gap = DEFAULT_GAP } = options;
  const row = layOut(profiles, Math.round(gap));
  const say = (nm: number) => sayNumber(nm / NM_PER_UNIT[units], DIGITS[units]);
  const [width, height] = [say(row.width), say(row.height)];
  const ids = new Set<string>();
  const paths = row.placed.map((placed) => pathElement(placed, row.height, units, freeId(placed.profile.id, ids)));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}${units}" height="${height}${units}" viewBox="0 0 ${width} ${height}">`,
    `<g fill="none" stroke="#000000" stroke-width="${say(HAIRLINE)}">`,
    ...paths,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function layOut(profiles: readonly Profile[], gap: number): { placed: Placed[]; width: number; height: number } {
  const drawn = profiles.map((profile) => ({ profile, vertices: profile.drawn ?? profile.ring }));
  const boxes = drawn.map(({ vertices }) => boxOfDrawn(vertices));
  const tallest = Math.max(0, ...boxes.map(({ minY, maxY }) => maxY - minY));
  let x = gap;
  const placed = drawn.map(({ profile, vertices }, i) => {
    const { minX, maxX, minY } = boxes[i];
    const right = x - minX;
    x += maxX - minX + gap;
    return { profile, vertices, right, up: gap - minY };
  });
  return { placed, width: Math.max(x, gap + 1), height: Math.max(tallest + 2 * gap, 1) };
}

/** The box round an outline with its arcs, to the next nanometre outwards of their chords. */
function boxOfDrawn(vertices: readonly Vertex[]): Box {
  const points = vertices.flatMap((vertex, i): Point[] => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
  return boxOf(points);
}

function pathElement(
  { profile, vertices, right, up }: Placed,
  sheetHeight: number,
  units: FileUnits,
  id: string,
): string {
  const say = (nm: number) => sayNumber(nm / NM_PER_UNIT[units], DIGITS[units]);
  const place = ({ x, y }: Point) => `${say(x + right)} ${say(sheetHeight - y - up)}`;
  const edges = vertices.flatMap((from, i) => splitUnsure(from, vertices[(i + 1) % vertices.length]));
  const commands = edges.map(([from, to], i) => {
    const bulge = from.bulge ?? 0;
    if (bulge !== 0)
      return `A${sayRadii(from, to, units)} 0 ${Math.abs(bulge) > 1 ? 1 : 0} ${bulge > 0 ? 0 : 1} ${place(to)}`;
    // The last straight edge is the closing of the path.
    return i === edges.length - 1 ? '' : `L${place(to)}`;
  });
  const data = `M${place(vertices[0])}${commands.join('')}Z`;
  return `<path id="${escapeXml(id)}" d="${data}"><title>${escapeXml(profile.name)}</title></path>`;
}

function splitUnsure(from: Vertex, to: Vertex): (readonly [Vertex, Point])[] {
  const bulge = Math.abs(from.bulge ?? 0);
  const arc = arcOf(from, to);
  if (!arc || bulge === 1 || bulge < UNSURE_BULGES.from || bulge > UNSURE_BULGES.to) return [[from, to]];
  const angle = arc.start + arc.sweep / 2;
  const half = Math.tan(arc.sweep / 8);
  const x = Math.round(arc.centre.x + arc.radius * Math.cos(angle));
  const y = Math.round(arc.centre.y + arc.radius * Math.sin(angle));
  return [
    [vertexAt(from.x, from.y, half), { x, y }],
    [vertexAt(x, y, half), to],
  ];
}

/** Radius twice, then no turn. */
function sayRadii(from: Vertex, to: Point, units: FileUnits): string {
  const radius = arcOf(from, to)?.radius ?? 0;
  const half = Math.abs(from.bulge ?? 0) === 1;
  const told = sayNumber(
    (half ? Math.max(radius - SHORT_OF_HALF, radius / 2) : radius) / NM_PER_UNIT[units],
    half ? DIGITS[units] : RADIUS_DIGITS,
  );
  return `${told} ${told}`;
}

/** A number without an exponent and without needless zeros. */
function sayNumber(value: number, digits: number): string {
  const text = value.toFixed(digits);
  const short = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return short === '-0' ? '0' : short;
}

/** An id that is not on the sheet yet; blanks have no place in one. */
function freeId(wanted: string, taken: Set<string>): string {
  const plain = cleanText(wanted).trim().replace(/\s+/g, '-') || 'profile';
  let id = plain;
  for (let i = 2; taken.has(id); i++) id = `${plain}-${i}`;
  taken.add(id);
  return id;
}
