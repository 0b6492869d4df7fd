import { symmetricDifference } from '../geom/clip.ts';
import { type Region, regionOf } from '../geom/region.ts';
import { signedArea } from '../geom/signed-area.ts';
import { makeDrawn, type Vertex } from '../geom/vertex.ts';
import { mirrorOutline } from './mirror-outline.ts';
import { moveOutline } from './move-outline.ts';
import { outlineBox } from './outline-box.ts';
import { middleOf, pullOnto } from './pull-onto.ts';
import { turnOutline } from './turn-outline.ts';

/** Which lines of two boxes come to lie on each other; null leaves that direction as it is. */
export interface BoxAlignment {
  readonly x: 'left' | 'middle' | 'right' | null;
  readonly y: 'bottom' | 'middle' | 'top' | null;
}

/**
 * An outline moved so that lines of its box lie on those of another outline's box.
 *
 * @accuracy 0.5 nm.
 * @check tests/unit/profile/align-outline.test.ts
 */
export function alignByBox(vertices: readonly Vertex[], onto: readonly Vertex[], { x, y }: BoxAlignment): Vertex[] {
  const [own, other] = [outlineBox(vertices), outlineBox(onto)];
  const left = other.minX - own.minX;
  const right = other.maxX - own.maxX;
  const bottom = other.minY - own.minY;
  const top = other.maxY - own.maxY;
  const across = { left, middle: (left + right) / 2, right };
  const up = { bottom, middle: (bottom + top) / 2, top };
  return moveOutline(vertices, { x: x ? across[x] : 0, y: y ? up[y] : 0 });
}

/** What an outline may be put through to lie on another as well as it can. */
export interface OverlapOptions {
  readonly turn: boolean;
  readonly mirror: boolean;
}

/** An outline laid onto another. */
export interface Overlap {
  readonly vertices: readonly Vertex[];
  /** By how much it was turned, radians, positive to the left; after mirroring. */
  readonly turned: number;
  readonly mirrored: boolean;
  /** Area that only one of the two covers, over the area of the other outline. */
  readonly apart: number;
}

/** Turns that the search starts from where turning is asked for: the four quarters. */
const QUARTERS = [0, Math.PI / 2, Math.PI, -Math.PI / 2];

/**
 * An outline laid onto another so that the points of each come near the other: from several starts the outline is pulled
 * onto the other by least squares of the distances of nearest points, and the start with the least symmetric difference
 * wins.
 *
 * @accuracy where the two have the same shape, 2 nm a vertex and 1e-6 radians; else a local optimum of the squared
 *   distances, the best of the starts.
 * @source iterative closest points: Besl & McKay, IEEE PAMI 14 (1992) 239-256; distances taken along normals: Chen &
 *   Medioni, Image and Vision Computing 10 (1992) 145-155 (both from memory).
 * @check tests/unit/profile/align-outline.test.ts
 */
export function alignByOverlap(
  vertices: readonly Vertex[],
  onto: readonly Vertex[],
  { turn, mirror }: OverlapOptions,
): Overlap {
  const target = regionFrom(onto);
  const tries = (mirror ? [false, true] : [false]).flatMap((mirrored) => {
    const shape = mirrored ? mirrorOutline(vertices, 'left-right') : vertices;
    return (turn ? QUARTERS : [0]).map((start) => ({ mirrored, ...laidOnto(shape, onto, start, turn) }));
  });
  const area = Math.max(1, areaOf(target));
  const scored = tries.map((tried) => ({
    ...tried,
    apart: areaOf(symmetricDifference(regionFrom(tried.vertices), target)) / area,
  }));
  return scored.reduce((best, next) => (next.apart < best.apart - 1e-9 ? next : best));
}

/** One try: turned by `start`, box middle on box middle, then pulled onto the other. */
function laidOnto(shape: readonly Vertex[], onto: readonly Vertex[], start: number, turn: boolean) {
  const centre = middleOf(shape);
  const turned = start === 0 ? [...shape] : turnOutline(shape, start, centre);
  const begun = alignByBox(turned, onto, { x: 'middle', y: 'middle' });
  const { angle, by } = pullOnto(begun, onto, turn);
  const about = middleOf(begun);
  // One turn from the outline as given, so that vertices are rounded once.
  const whole = angle + start === 0 ? shape : turnOutline(shape, start + angle, centre);
  return {
    vertices: moveOutline(whole, { x: about.x - centre.x + by.x, y: about.y - centre.y + by.y }),
    turned: wrapped(start + angle),
  };
}

function wrapped(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}

function regionFrom(vertices: readonly Vertex[]): Region {
  const made = makeDrawn(vertices);
  return made.ok ? regionOf(made.ring) : [];
}

function areaOf(region: Region): number {
  return region.reduce(
    (sum, { outer, holes }) => sum + [outer, ...holes].reduce((part, line) => part + signedArea(line), 0),
    0,
  );
}
