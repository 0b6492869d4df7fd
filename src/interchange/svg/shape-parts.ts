import type { FileFault } from '../json/file-fault.ts';
import { type SvgElement, sayPlace } from './element.ts';
import { readLength, toPixels, type Viewport } from './measures.ts';
import { MAX_PATH_CHARACTERS, readPathData } from './path-data.ts';
import type { PathPart } from './path-part.ts';

/** The parts of a shape; none where the standard has it drawn nowhere. */
export type ShapeRead =
  | { readonly ok: true; readonly parts: readonly PathPart[]; readonly remark?: string }
  | { readonly ok: false; readonly fault: FileFault };

type Reader = (element: SvgElement, viewport: Viewport) => ShapeRead;

/** The basic shapes of SVG, each as the path that the standard says it equals. */
const SHAPES: ReadonlyMap<string, Reader> = new Map<string, Reader>([
  ['path', readPath],
  ['rect', readRectangle],
  ['circle', readCircle],
  ['ellipse', readEllipse],
  ['line', readLine],
  ['polyline', (element) => readPoints(element, [])],
  ['polygon', (element) => readPoints(element, [['Z']])],
]);

/** Whether an element is a shape with an outline. */
export function isShape(name: string): boolean {
  return SHAPES.has(name);
}

/**
 * The outline of a shape in its own user units, or a fault that names the attribute which makes no sense.
 *
 * @source Scalable Vector Graphics (SVG) 2, W3C Candidate Recommendation 2018, chapter 10 (basic shapes as paths).
 * @check tests/unit/interchange/svg-corpus.test.ts
 */
export function shapeParts(element: SvgElement, viewport: Viewport): ShapeRead {
  return SHAPES.get(element.name)?.(element, viewport) ?? drawn([]);
}

/** The whole that a percentage of an attribute is a part of. */
type Side = 'width' | 'height' | 'diagonal';

/**
 * A length attribute in user units.
 *
 * @returns `absent` where it is not given or `auto`, or a fault where it is no length.
 */
export function lengthOf(
  element: SvgElement,
  name: string,
  side: Side,
  viewport: Viewport,
  absent: number,
): number | FileFault {
  const text = element.attributes.get(name);
  if (text === undefined || text.trim() === '' || text.trim() === 'auto') return absent;
  const length = readLength(text);
  if (!length) return badNumber(element, name, text);
  return toPixels(length, wholeOf(side, viewport)) ?? partOfNothing(element, name);
}

function wholeOf(side: Side, { width, height }: Viewport): number | null {
  if (side === 'width') return width;
  if (side === 'height') return height;
  return width === null || height === null ? null : Math.hypot(width, height) / Math.SQRT2;
}

function badNumber(element: SvgElement, name: string, text: string): FileFault {
  const seen = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  return {
    path: sayPlace(element, name),
    what: `"${seen}" is not a length`,
    cure: 'Write a number, alone or with mm, cm, in, pt, pc, px or %; or delete the shape.',
  };
}

function partOfNothing(element: SvgElement, name: string): FileFault {
  return {
    path: sayPlace(element, name),
    what: 'is a percentage, and the drawing does not say of what',
    cure: 'Give the svg element a viewBox, or a width and a height.',
  };
}

function drawn(parts: readonly PathPart[], remark?: string): ShapeRead {
  return remark === undefined ? { ok: true, parts } : { ok: true, parts, remark };
}

/** Several length attributes at once: all their numbers, or the first fault. */
function lengthsOf(
  element: SvgElement,
  viewport: Viewport,
  wanted: readonly (readonly [name: string, side: Side])[],
  absent = 0,
): readonly number[] | FileFault {
  const numbers: number[] = [];
  for (const [name, side] of wanted) {
    const length = lengthOf(element, name, side, viewport, absent);
    if (typeof length !== 'number') return length;
    numbers.push(length);
  }
  return numbers;
}

function isFault(value: readonly number[] | FileFault): value is FileFault {
  return !Array.isArray(value);
}

function readPath(element: SvgElement): ShapeRead {
  const data = element.attributes.get('d')?.trim() ?? '';
  if (data === '' || data === 'none') return drawn([]);
  const read = readPathData(data);
  if (read.ok) return drawn(read.parts);
  const cure = 'Save the drawing again from the program that made it, or delete this path.';
  return { ok: false, fault: { path: sayPlace(element, 'd'), what: read.what, cure } };
}

function readRectangle(element: SvgElement, viewport: Viewport): ShapeRead {
  const sides = lengthsOf(element, viewport, [
    ['x', 'width'],
    ['y', 'height'],
    ['width', 'width'],
    ['height', 'height'],
  ]);
  if (isFault(sides)) return { ok: false, fault: sides };
  const radii = radiiOf(element, viewport);
  if (isFault(radii)) return { ok: false, fault: radii };
  const [x, y, width, height] = sides;
  if (width <= 0 || height <= 0) return drawn([], 'has no width or no height');
  // A radius that is not given takes the other's value; neither is more than half its side.
  const [rx, ry] = [Math.max(radii[0], -1), Math.max(radii[1], -1)];
  const across = Math.min(width / 2, firstGiven(rx, ry));
  const down = Math.min(height / 2, firstGiven(ry, rx));
  return drawn(across > 0 && down > 0 ? roundRectangle(sides, across, down) : plainRectangle(x, y, width, height));
}

/** The two radii of an element, below 0 where one is not given; or what is wrong with them. */
function radiiOf(element: SvgElement, viewport: Viewport): ReturnType<typeof lengthsOf> {
  const names = [
    ['rx', 'width'],
    ['ry', 'height'],
  ] as const;
  return lengthsOf(element, viewport, names, -1);
}

function firstGiven(own: number, other: number): number {
  return Math.max(0, own >= 0 ? own : other);
}

function plainRectangle(x: number, y: number, width: number, height: number): PathPart[] {
  return [['M', x, y], ['L', x + width, y], ['L', x + width, y + height], ['L', x, y + height], ['Z']];
}

function roundRectangle([x, y, width, height]: readonly number[], rx: number, ry: number): PathPart[] {
  const [right, bottom] = [x + width, y + height];
  return [
    ['M', x + rx, y],
    ['L', right - rx, y],
    ['A', rx, ry, 0, 0, 1, right, y + ry],
    ['L', right, bottom - ry],
    ['A', rx, ry, 0, 0, 1, right - rx, bottom],
    ['L', x + rx, bottom],
    ['A', rx, ry, 0, 0, 1, x, bottom - ry],
    ['L', x, y + ry],
    ['A', rx, ry, 0, 0, 1, x + rx, y],
    ['Z'],
  ];
}

function readCircle(element: SvgElement, viewport: Viewport): ShapeRead {
  const lengths = lengthsOf(element, viewport, [
    ['cx', 'width'],
    ['cy', 'height'],
    ['r', 'diagonal'],
  ]);
  if (isFault(lengths)) return { ok: false, fault: lengths };
  const [x, y, r] = lengths;
  return roundShape(x, y, r, r);
}

function readEllipse(element: SvgElement, viewport: Viewport): ShapeRead {
  const lengths = lengthsOf(element, viewport, [
    ['cx', 'width'],
    ['cy', 'height'],
  ]);
  if (isFault(lengths)) return { ok: false, fault: lengths };
  const radii = radiiOf(element, viewport);
  if (isFault(radii)) return { ok: false, fault: radii };
  const [x, y] = lengths;
  return roundShape(x, y, firstGiven(radii[0], radii[1]), firstGiven(radii[1], radii[0]));
}

function roundShape(x: number, y: number, rx: number, ry: number): ShapeRead {
  if (rx <= 0 || ry <= 0) return drawn([], 'has no radius');
  return drawn([['M', x + rx, y], ['A', rx, ry, 0, 0, 1, x - rx, y], ['A', rx, ry, 0, 0, 1, x + rx, y], ['Z']]);
}

function readLine(element: SvgElement, viewport: Viewport): ShapeRead {
  const ends = lengthsOf(element, viewport, [
    ['x1', 'width'],
    ['y1', 'height'],
    ['x2', 'width'],
    ['y2', 'height'],
  ]);
  if (isFault(ends)) return { ok: false, fault: ends };
  return drawn([
    ['M', ends[0], ends[1]],
    ['L', ends[2], ends[3]],
  ]);
}

function tooLong(element: SvgElement, length: number): ShapeRead {
  const what = `has ${length} characters, over ${MAX_PATH_CHARACTERS}`;
  const cure = 'Simplify the shape, or delete it.';
  return { ok: false, fault: { path: sayPlace(element, 'points'), what, cure } };
}

const POINT_NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g;

function readPoints(element: SvgElement, end: readonly PathPart[]): ShapeRead {
  const text = element.attributes.get('points') ?? '';
  if (text.length > MAX_PATH_CHARACTERS) return tooLong(element, text.length);
  const strange = /[^\s,]+/.exec(text.replace(POINT_NUMBER, (hit) => ' '.repeat(hit.length)));
  const numbers = (text.match(POINT_NUMBER) ?? []).map(Number);
  if (strange || !numbers.every(Number.isFinite)) {
    const what = `"${(strange?.[0] ?? 'a number that is too large').slice(0, 40)}" is not a coordinate`;
    const cure = 'Write pairs of numbers, or delete the shape.';
    return { ok: false, fault: { path: sayPlace(element, 'points'), what, cure } };
  }
  const parts: PathPart[] = [];
  for (let i = 0; i + 1 < numbers.length; i += 2) parts.push([i === 0 ? 'M' : 'L', numbers[i], numbers[i + 1]]);
  const odd = numbers.length % 2 === 1;
  return drawn(
    parts.length > 0 ? [...parts, ...end] : [],
    odd ? 'ends with half a point, which is left out' : undefined,
  );
}
