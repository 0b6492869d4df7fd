import type { Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import { nearestOnSegment, squaredDistance } from '../geom/segment-distance.ts';
import { edgesOf } from './edge-index.ts';
import type { Contact, Feature } from './fit.ts';
import { floorOf, plugSideOf } from './plug-side.ts';

/** Most contacts that are told. */
const MOST = 8;

/** Two contacts on one side nearer than this in height are one, nanometres. */
const SAME_PLACE = 150_000;

/** A gap this much wider than the narrowest one does not limit the fit, nanometres. */
const ALSO_NARROW = 2_000;

interface Gap {
  readonly onBlank: Point;
  readonly onOpening: Point;
  readonly square: number;
  readonly corner: number;
  readonly across: Feature;
  readonly fromBlank: boolean;
  /** Direction out of the opening there. */
  readonly wall: readonly [number, number];
}

/**
 * The places where the placed blank comes nearest to the plug: the narrowest gap and all within 2 um of it,
 * one for each side and height.
 *
 * The distance between two outlines is reached at a vertex of one of them, so vertices of the blank are measured
 * against edges of the opening and the other way round.
 *
 * @param placed the outlines of the blank in the opening's coordinates, not colliding, nanometres.
 */
export function findContacts(opening: Region, placed: readonly (readonly Point[])[]): Contact[] {
  const walls = boundariesOf(opening);
  const floor = floorOf(opening);
  const reach = Math.min(leastSquare(placed, walls), leastSquare(walls, placed));
  const limit = (Math.sqrt(reach) + ALSO_NARROW) ** 2;
  const near = [...edgesWithin(placed, walls, limit, true), ...edgesWithin(walls, placed, limit, false)];
  const gaps = near.map((pair) => gapOf(pair, pair.fromBlank ? [placed, walls] : [walls, placed]));
  gaps.sort((a, b) => a.square - b.square);
  const contacts: Contact[] = [];
  for (const gap of gaps) {
    if (contacts.length === MOST) break;
    const contact = contactOf(gap, opening, floor);
    const told = contacts.some((c) => c.side === contact.side && Math.abs(c.height - contact.height) < SAME_PLACE);
    if (!told) contacts.push(contact);
  }
  return contacts;
}

/** A corner of one outline and an edge of the other one (both counted through all loops), and how near. */
interface NearPair {
  readonly corner: number;
  readonly edge: number;
  readonly square: number;
  readonly fromBlank: boolean;
}

type Loops = readonly (readonly Point[])[];

/** Least squared distance of a corner of the loops from an edge of the others. Plain numbers: a drag asks at every step. */
function leastSquare(loops: Loops, others: Loops): number {
  const edges = Float64Array.from(others.flatMap(edgesOf).flat());
  let least = Infinity;
  for (const loop of loops)
    for (const { x, y } of loop)
      for (let i = 0; i < edges.length; i += 4) {
        const away = squaredDistance(x, y, edges[i], edges[i + 1], edges[i + 2], edges[i + 3]);
        if (away < least) least = away;
      }
  return least;
}

/** Every corner of the loops with every edge of the others that is as near as `limit`: a corner may be near to two walls. */
function edgesWithin(loops: Loops, others: Loops, limit: number, fromBlank: boolean): NearPair[] {
  const edges = Float64Array.from(others.flatMap(edgesOf).flat());
  const found: NearPair[] = [];
  for (const [corner, { x, y }] of loops.flat().entries())
    for (let i = 0; i < edges.length; i += 4) {
      const square = squaredDistance(x, y, edges[i], edges[i + 1], edges[i + 2], edges[i + 3]);
      if (square <= limit) found.push({ corner, edge: i / 4, square, fromBlank });
    }
  return found;
}

/** What there is to say of a corner and an edge near to it. */
function gapOf({ corner, edge, square, fromBlank }: NearPair, [own, others]: readonly [Loops, Loops]): Gap {
  const p = own.flat()[corner];
  const { loop, i, first } = placeOf(others, edge);
  const next = (i + 1) % loop.length;
  const q = nearestOnSegment(p, loop[i], loop[next]);
  const across = featureAt(q, loop, i, next, first);
  if (fromBlank) return { onBlank: p, onOpening: q, square, corner, across, fromBlank, wall: outwards(loop, i) };
  const at = placeOf(own, corner);
  return { onBlank: q, onOpening: p, square, corner, across, fromBlank, wall: outwardsAtCorner(at.loop, at.i) };
}

/** The loop and the place in it of a corner or edge counted through all loops. */
function placeOf(loops: Loops, index: number): { loop: readonly Point[]; i: number; first: number } {
  let first = 0;
  for (const loop of loops) {
    if (index < first + loop.length) return { loop, i: index - first, first };
    first += loop.length;
  }
  throw new RangeError('placeOf: no such corner');
}

/** Whether the nearest place on an edge is one of its ends or between them. */
function featureAt(q: Point, loop: readonly Point[], i: number, next: number, first: number): Feature {
  for (const k of [i, next])
    if (Math.hypot(q.x - loop[k].x, q.y - loop[k].y) < 1) return { kind: 'corner', index: first + k };
  return { kind: 'edge', index: first + i };
}

function contactOf(found: Gap, opening: Region, floor: number): Contact {
  const { onBlank, onOpening, corner, across, fromBlank } = found;
  const gap = Math.sqrt(found.square);
  const own: Feature = { kind: 'corner', index: corner };
  return {
    onBlank,
    onOpening,
    blankFeature: fromBlank ? own : across,
    openingFeature: fromBlank ? across : own,
    gap,
    ...plugSideOf(opening, beyond(found, gap)),
    height: onOpening.y - floor,
  };
}

/** How far into the plug its side is looked for, nanometres. */
const STEP = 50;

/** A point just inside the plug, straight on from the blank through the contact; where they touch, straight off the opening's edge. */
function beyond({ onBlank, onOpening, wall }: Gap, gap: number): Point {
  const [dx, dy] = gap > 1 ? [onOpening.x - onBlank.x, onOpening.y - onBlank.y] : wall;
  const length = Math.hypot(dx, dy);
  return { x: onOpening.x + (dx / length) * STEP, y: onOpening.y + (dy / length) * STEP };
}

/** Direction out of the region at a corner: half way between those of its edges. */
function outwardsAtCorner(loop: readonly Point[], i: number): [number, number] {
  const before = outwards(loop, (i + loop.length - 1) % loop.length);
  const after = outwards(loop, i);
  const sum: [number, number] = [before[0] + after[0], before[1] + after[1]];
  return Math.hypot(...sum) > 1e-9 ? sum : after;
}

/** Direction out of the region at an edge of it. */
function outwards(loop: readonly Point[], i: number): [number, number] {
  const a = loop[i];
  const b = loop[(i + 1) % loop.length];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return [(b.y - a.y) / length, (a.x - b.x) / length];
}
